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
import leat.plan.Kind;
import leat.plan.Named;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.quantity.Dimension;
import leat.quantity.NamedQuantity;
import leat.quantity.Nearest;
import leat.quantity.Units;
import leat.solution.ElementName;
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
    return new Flag[] {
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "45 L",
          "finished solution; the plan's tank at full otherwise"),
      Flag.of(
              "--ask",
              "ELEMENT=MG_L",
              Kind.TEXT,
              "N=150",
              "an element wanted, in mg/L; N-NO3 and N-NH4 apart; oxides such as K2O too")
          .repeatable(),
      Flag.of(
              "--salt",
              "NAME",
              Kind.TEXT,
              "potassium-nitrate",
              "a salt that may be weighed; feed.salts of the plan otherwise")
          .repeatable(),
      Flag.of("--weighed", "SALT=GRAMS", Kind.TEXT, "potassium-nitrate=21 g", WEIGHED_MEANING)
          .repeatable(),
      Flag.of(
              "--within",
              "SHARE",
              Kind.quantity(Dimension.SHARE),
              "5 %",
              "exit code 1 when an asked element is missed by more")
          .belongsTo("--ask"),
      Flag.of(
          "--scale-step",
          "STEP",
          Kind.quantity(Dimension.MASS),
          "0.1 g",
          "smallest step of the scale: every salt to its nearest step"),
      Flag.of(
              "--feed",
              "FIGURES",
              Kind.TEXT,
              "4-2-6",
              "a liquid feed by the figures of its label: N-P-K as printed (P2O5 and K2O), or MgO=1 for another figure; the labels of feed.parts of the plan otherwise")
          .repeatable(),
      Flag.of(
              "--rate",
              "RATE",
              Kind.quantity(Dimension.VOLUME_RATIO),
              "5 mL/L",
              "dose of the liquid feed, with --feed")
          .belongsTo("--feed"),
      Flag.of(
              "--density",
              "DENSITY",
              Kind.quantity(Dimension.MASS_CONCENTRATION),
              "1.18 g/mL",
              "its density, when the label's per cent are by weight; by volume otherwise")
          .belongsTo("--feed"),
      Flag.on("--list", CropsCommand.LIST_MEANING),
    };
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
    RecipeFit fit = null;
    Recipe recipe;
    if (forward(call)) {
      List<Weighed> weighed = EcPrediction.weighed(call);
      if (liquid != null) {
        weighed.addAll(liquid.weighed());
      }
      recipe = Recipe.mix(weighed, litres, water);
      recipe = step == null ? recipe : recipe.rounded(Units.G.fromBase(step), water);
      fit = asked.isEmpty() ? null : RecipeFit.judge(asked, recipe, water);
    } else {
      fit = RecipeFit.solve(asked, offered(call), litres, water);
      fit = step == null ? fit : fit.rounded(Units.G.fromBase(step));
      recipe = fit.recipe();
    }
    MixEc ec = MixEc.of(recipe, water, plan.section("water").maybe("ec"));
    return new SaltAnswer(call, recipe, fit, ec, volume, liquid).answer();
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
      NamedQuantity one = EcPrediction.named("--ask", typed.get(i), Units.MG_L);
      try {
        ElementName.of(one.name());
      } catch (Impossible e) {
        String near = Nearest.of(one.name(), Arrays.asList(ElementName.names()));
        throw new Refused(EcErrors.noElement("--ask", one.name(), e.getMessage(), near));
      }
      all.add(Asked.of(one.name(), one.quantity().value()));
    }
    return all;
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
