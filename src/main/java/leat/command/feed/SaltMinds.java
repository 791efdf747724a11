package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.solution.Element;
import leat.solution.Ion;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.RecipeFit;

/** What to mind about weighed salts. */
final class SaltMinds {
  private static final Column OFF = Column.number("off_pct", "off by", 2);
  private static final Column NAME = Column.plain("name", "name");

  private SaltMinds() {}

  private static Row name(String name) {
    return Row.aside(NAME).set(NAME, name);
  }

  static void tell(Answer answer, Recipe recipe, RecipeFit fit, LiquidFeed liquid) {
    if (fit != null) {
      ofFit(answer, fit);
    }
    boolean rounded = fit != null && !fit.leftOut().isEmpty();
    if (recipe.hasTooLittle() || rounded) {
      answer.mind(
          "too-little",
          "under 0.1 g no home scale weighs: dissolve a hundred times as much in a hundred times the water, and pour what one dose needs.");
    }
    apart(answer, recipe, liquid);
    charges(answer, recipe);
    if (!recipe.ionsComplete()) {
      answer.mind(
          "hidden-ions",
          "one product does not say what form its nitrogen has: EC and charge come out too low.");
    }
  }

  private static void apart(Answer answer, Recipe recipe, LiquidFeed liquid) {
    if (liquid != null && liquid.bottles().size() > 1) {
      answer.mind(
          "parts-apart",
          "never mix the bottles undiluted: what settles out never dissolves again.");
    } else if (meets(recipe)) {
      answer.mind(
          "calcium-apart",
          "dissolve the calcium salt apart and pour it in last: strong, it falls out with sulfate and phosphate.");
    }
  }

  private static boolean meets(Recipe recipe) {
    return recipe.saltIons().of(Ion.CA) > 0
        && (recipe.fromSalts().orElse(Element.S, 0) > 0
            || recipe.fromSalts().orElse(Element.P, 0) > 0);
  }

  private static void ofFit(Answer answer, RecipeFit fit) {
    if (!fit.unbrought().isEmpty()) {
      answer.mind(
          "unbrought",
          name(SaltText.names(fit.unbrought())),
          "no salt here brings {name}: leat dose salts --list shows which do.");
    }
    for (int i = 0; i < fit.idle().size(); i++) {
      answer.mind("idle", name(fit.idle().get(i).name()), "{name} brings nothing that was asked.");
    }
    if (!fit.unique()) {
      StringBuilder names = new StringBuilder();
      for (int i = 0; i < fit.leaveOut().size(); i++) {
        names.append(i == 0 ? "" : ", ").append(fit.leaveOut().get(i).name());
      }
      answer.mind(
          "not-unique",
          name(names.toString()),
          "other weighings do as well; this one is the lightest. Ask one element more, or leave out {name}.");
    }
  }

  private static void charges(Answer answer, Recipe recipe) {
    if (!recipe.ionsComplete()) {
      return;
    }
    if (recipe.saltIons().isDoubtful()) {
      answer.mind(
          "label-ions",
          Row.aside(OFF).set(OFF, recipe.saltIons().offPct()),
          "the charges of the salts miss each other by {off_pct} %: a label does not print all that is in the bag, and the EC comes out too low.");
    } else if (recipe.ions().isDoubtful()) {
      answer.mind(
          "charge-balance",
          Row.aside(OFF).set(OFF, recipe.ions().offPct()),
          "the charges miss each other by {off_pct} %: the water's analysis lacks an ion.");
    }
  }
}
