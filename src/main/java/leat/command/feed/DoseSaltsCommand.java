package leat.command.feed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.numeric.Impossible;
import leat.plan.Named;
import leat.plan.Origin;
import leat.plan.Plan;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.quantity.IonAmount;
import leat.quantity.NamedQuantity;
import leat.quantity.Nearest;
import leat.quantity.Units;
import leat.quantity.Unreadable;
import leat.solution.Element;
import leat.solution.ElementName;
import leat.solution.Ion;
import leat.solution.IonName;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.recipes.Asked;
import leat.solution.recipes.MixEc;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.RecipeFit;
import leat.solution.recipes.Weighed;
import leat.system.SaltsOf;

/** {@code leat dose salts}: grams of salts for asked elements, and the forward sum. */
public final class DoseSaltsCommand extends Command {
  static final String WEIGHED_MEANING =
      "a salt that was weighed into --volume, to tell what it makes";

  @Override
  public String name() {
    return "dose salts";
  }

  @Override
  public Flag[] flags() {
    return DoseSaltsFlags.all();
  }

  @Override
  public Answer answer(Call call) {
    if (call.has("--list")) {
      return SaltList.answer(call);
    }
    Plan plan = call.plan();
    check(call);
    List<Asked> asked = asked(call);
    double volume = DoseCommand.volume(call, plan);
    double litres = Litres.of(volume);
    LiquidFeed liquid = LiquidFeed.of(call, litres);
    Ions water = SaltsOf.water(plan);
    Double step = call.above0("--scale-step");
    RecipeFit fit;
    Recipe recipe;
    if (forward(call)) {
      recipe = weighed(call, liquid, litres, water);
      fit = asked.isEmpty() ? null : RecipeFit.judge(asked, recipe, water);
    } else {
      fit = RecipeFit.solve(asked, offered(call), litres, water);
      fit = step == null ? fit : fit.rounded(Units.G.fromBase(step));
      recipe = fit.recipe();
    }
    MixEc ec = MixEc.of(recipe, water, plan.section("water").maybe("ec"));
    return new SaltAnswer(call, recipe, fit, ec, volume, liquid).answer();
  }

  /** What was weighed or poured, by the steps of the scale. */
  private static Recipe weighed(Call call, LiquidFeed liquid, double litres, Ions water) {
    List<Weighed> weighed = EcPrediction.weighed(call);
    if (liquid != null) {
      weighed.addAll(liquid.weighed());
    }
    Recipe recipe = Recipe.mix(weighed, litres, water);
    Double step = call.above0("--scale-step");
    return step == null ? recipe : recipe.rounded(Units.G.fromBase(step), water);
  }

  /** Whether the sum goes from what is weighed to what it brings. */
  static boolean forward(Call call) {
    return call.has("--weighed") || call.has("--feed") || LiquidFeed.isOfPlan(call);
  }

  private void check(Call call) {
    String forward = call.has("--weighed") ? "--weighed" : "--feed";
    if (forward(call) && call.has("--salt")) {
      throw new Refused(CommandErrors.notBoth(this, forward, "--salt"));
    }
    if (call.has("--feed") && call.has("--scale-step")) {
      throw new Refused(CommandErrors.notBoth(this, "--feed", "--scale-step"));
    }
    if (!forward(call) && !call.has("--ask")) {
      throw new Refused(
          CommandErrors.neededOneOf(
              this,
              "--ask says what is wanted, such as --ask N=150; --weighed what was weighed; --feed the figures of a label; --list shows the salts"));
    }
  }

  private static List<Asked> asked(Call call) {
    List<String> typed = call.texts("--ask");
    List<Asked> all = new ArrayList<>();
    for (int i = 0; i < typed.size(); i++) {
      all.add(asked(typed.get(i)));
    }
    return all;
  }

  /** One element and its amount, by weight, by number or by charge. */
  private static Asked asked(String typed) {
    int equals = typed.indexOf('=');
    String amount = typed.substring(equals + 1);
    if (equals > 0 && IonAmount.isCounted(amount)) {
      ElementName name = element(typed.substring(0, equals).strip());
      if (!name.isOxide()) {
        return new Asked(name.element(), counted(typed, amount, name.element()));
      }
    }
    NamedQuantity one = EcPrediction.named("--ask", typed, Units.MG_L);
    return Asked.of(element(one.name()).name(), one.quantity().value());
  }

  private static double counted(String typed, String amount, Element element) {
    try {
      return IonAmount.mgPerL(amount, element.atom().weight(), Ion.chargesOf(element));
    } catch (Unreadable e) {
      throw new Refused(PlanErrors.unreadable(Origin.flag("--ask", typed), "", e));
    }
  }

  private static ElementName element(String name) {
    try {
      return ElementName.of(name);
    } catch (Impossible e) {
      String near = Nearest.of(name, Arrays.asList(ElementName.names()));
      String meant = near == null ? ofWord(name) : near;
      throw new Refused(EcErrors.noElement("--ask", name, e.getMessage(), meant));
    }
  }

  /** The element of an ion's English word, such as potassium; null when it is none. */
  private static String ofWord(String name) {
    try {
      Element element = IonName.of(name.toLowerCase(java.util.Locale.ROOT)).ion().element();
      return element == null ? null : element.label();
    } catch (Impossible e) {
      return null;
    }
  }

  private static List<Salt> offered(Call call) {
    List<String> names = call.texts("--salt");
    List<Salt> salts = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      salts.add(EcPrediction.salt(call, "--salt", names.get(i)));
    }
    if (salts.isEmpty()) {
      salts = SaltsOf.own(call.plan());
      call.taken()
          .note(
              salts.isEmpty()
                  ? "the salts of the plan's recipe"
                  : "the plan's own salts, all of them");
      salts = salts.isEmpty() ? ofRecipe(call) : salts;
    }
    return salts;
  }

  /** The salts that feed.stock weighs, when no others are offered. */
  private static List<Salt> ofRecipe(Call call) {
    Named grams = call.plan().section("feed").section("stock").named("grams");
    if (grams.size() == 0) {
      throw call.needs("--salt");
    }
    List<Salt> salts = new ArrayList<>();
    for (int i = 0; i < grams.size(); i++) {
      salts.add(EcPrediction.salt(call, "feed.stock.grams", grams.name(i)));
    }
    return salts;
  }
}
