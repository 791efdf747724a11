package leat.command.feed;

import java.util.ArrayList;
import java.util.List;
import leat.cli.Call;
import leat.cli.ShellWord;
import leat.plan.Named;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.NamedQuantity;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.Weighed;
import leat.solution.tank.TopupSalts;
import leat.system.SaltsOf;

/**
 * The salts that a tower is fed with by the gram: those of {@code --weigh}, else of the plan.
 *
 * @param recipe the salts in the water that they make
 * @param makes that water, m3
 */
record WeighedRecipe(Recipe recipe, double makes) {
  /** The recipe of a call; refused where it makes so little that it would be a stock bottle. */
  static WeighedRecipe of(Call call) {
    double makes = makes(call);
    Recipe recipe = Recipe.mix(weighed(call), Litres.of(makes), Ions.NONE);
    if (recipe.ec() == null) {
      throw new Refused(MixErrors.recipeIsStock(makes));
    }
    if (recipe.ec().ec25() < TopupSalts.LEAST_GAIN_MS_CM) {
      throw new Refused(MixErrors.recipeAddsLittle(recipe.ec().ec25(), makes));
    }
    return new WeighedRecipe(recipe, makes);
  }

  private static double makes(Call call) {
    Section stock = call.plan().section("feed").section("stock");
    if (!stock.has("makes")) {
      throw call.has("--weigh") ? call.needs("--makes") : stock.missing("makes");
    }
    return stock.need("makes");
  }

  private static List<Weighed> weighed(Call call) {
    return call.has("--weigh") ? typed(call, call.values("--weigh")) : ofPlan(call);
  }

  private static List<Weighed> typed(Call call, List<Object> typed) {
    List<Weighed> all = new ArrayList<>();
    for (int i = 0; i < typed.size(); i++) {
      NamedQuantity one = (NamedQuantity) typed.get(i);
      add(all, "--weigh", weighed(salt(call, "--weigh", one.name()), one.quantity().value()));
    }
    return all;
  }

  private static List<Weighed> ofPlan(Call call) {
    List<Weighed> all = new ArrayList<>();
    Named grams = call.plan().section("feed").section("stock").named("grams");
    for (int i = 0; i < grams.size(); i++) {
      Salt salt = salt(call, "feed.stock.grams", grams.name(i));
      add(all, "feed.stock.grams", weighed(salt, (Double) grams.value(i)));
    }
    return all;
  }

  /** One more, unless it is there already, under whatever name. */
  private static void add(List<Weighed> all, String flag, Weighed one) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).salt().name().equals(one.salt().name())) {
        throw new Refused(EcErrors.saltTwice(flag, one.salt().name()));
      }
    }
    all.add(one);
  }

  private static Weighed weighed(Salt salt, double kg) {
    if (kg < 0) {
      throw new Refused(MixErrors.negativeWeight(salt.name()));
    }
    return new Weighed(salt, Units.G.fromBase(kg));
  }

  private static Salt salt(Call call, String flag, String name) {
    Salt salt = SaltsOf.find(call.plan(), name);
    if (salt == null) {
      throw new Refused(EcErrors.noSalt(flag, name, SaltsOf.names(call.plan())));
    }
    return salt;
  }

  /** The salts as flags of {@code leat dose salts}. */
  String weighed() {
    StringBuilder flags = new StringBuilder();
    for (int i = 0; i < size(); i++) {
      Weighed one = recipe.salts().get(i);
      String typed = one.salt().name() + "=" + NumberText.shortest(one.grams());
      flags.append(" --weighed ").append(ShellWord.quoted(typed));
    }
    return flags.toString();
  }

  /** How many salts. */
  int size() {
    return recipe.salts().size();
  }

  /** Name of a salt. */
  String name(int salt) {
    return recipe.salts().get(salt).salt().name();
  }

  /** What it adds to pure water, mS/cm. */
  double gainMsCm() {
    return recipe.ec().ec25();
  }

  /** kg of all salts for so many litres of it. */
  Double kg(double litres) {
    return Litres.baseOfG(recipe.gramsFor(litres));
  }

  /** kg of one salt for so many litres of it. */
  Double kg(int salt, double litres) {
    return Litres.baseOfG(recipe.gramsFor(salt, litres));
  }
}
