package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Working;
import leat.cli.Call;
import leat.plan.Plan;
import leat.quantity.Units;
import leat.solution.recipes.MixEc;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.RecipeFit;
import leat.system.SaltsOf;

/** The answer of {@code leat dose salts}, put together. */
final class SaltAnswer {
  private final Call call;
  private final Plan plan;
  private final Recipe recipe;
  private final RecipeFit fit;
  private final MixEc ec;
  private final double volume;
  private final LiquidFeed liquid;

  SaltAnswer(Call call, Recipe recipe, RecipeFit fit, MixEc ec, double volume, LiquidFeed liquid) {
    this.call = call;
    this.plan = call.plan();
    this.recipe = recipe;
    this.fit = fit;
    this.ec = ec;
    this.volume = volume;
    this.liquid = liquid;
  }

  Answer answer() {
    SaltRows rows = new SaltRows(recipe, fit, ec);
    Answer answer = rows.wide(liquid);
    Answer figures = rows.figures(plan, volume, liquid == null || liquid.weighs());
    Answer elements = rows.elements();
    arrays(answer.jsonObject(figures), rows, elements);
    Double within = call.from0("--within");
    boolean over = within != null && fit != null && !fit.isWithin(Units.PERCENT.fromBase(within));
    SaltText text = new SaltText(recipe, fit, ec, liquid, figures.row(0));
    text.sentence(answer, over ? within : null, DoseSaltsCommand.forward(call));
    text.figures(answer, elements);
    answer.taken(Phrase.of(water()));
    if (liquid != null) {
      liquid.taken(answer);
    }
    call.withTaken(answer);
    SaltMinds.tell(answer, recipe, fit, liquid);
    next(answer);
    workings(answer);
    return over || fit != null && !fit.missing().isEmpty() ? answer.no() : answer;
  }

  private void arrays(Answer answer, SaltRows rows, Answer elements) {
    answer
        .array("salts", rows.salts(liquid))
        .array("elements", elements)
        .array("ions", IonTable.of(recipe.ions()));
    if (liquid != null) {
      answer.array("label", liquid.brings());
    }
  }

  private String water() {
    if (SaltsOf.hasWater(plan)) {
      return "the ions of the plan's water";
    }
    return plan.section("water").has("ec") ? "the EC of the plan's water" : "pure water";
  }

  private void next(Answer answer) {
    if (fit != null && !fit.unbrought().isEmpty()) {
      answer.next(call.again("dose salts") + " --list   which salt brings what is missing");
    } else if (recipe.totalGrams() == 0) {
      return;
    } else if (call.has("--scale-step") || liquid != null) {
      answer.next("dissolve one after the other, stir, then  leat ec READING  to compare");
    } else {
      answer.next(
          call.again("dose salts", "--volume", "--ask", "--salt", "--weighed", "--within")
              + " --scale-step \"0.1 g\"   to see what your scale makes of it");
    }
  }

  private void workings(Answer answer) {
    Answer label = liquid == null ? null : liquid.brings();
    if (label != null && label.size() > 0 && liquid.bottles().size() > 1) {
      LabelTable.working(answer, label, liquid.bottles());
    } else if (label != null && label.size() > 0) {
      answer.working(
          label.row(0).with(liquid.words()),
          LabelTable.BROUGHT,
          "mg/L = rate x share on the label x density, oxides counted as their element",
          "{element} from {rate_mL_L}, density {density} g/mL",
          "as good as the label",
          "weights of IUPAC 2021");
    }
    if (fit != null) {
      misses(answer);
    }
  }

  private void misses(Answer answer) {
    Row row = Row.aside(SaltText.COUNT).set(SaltText.COUNT, fit.elements().size());
    answer.working(
        Working.number(
            "sum of squared misses",
            "minimise sum ((got - asked)/asked)^2 over grams >= 0",
            Answer.filled(row, "{count} asked"),
            fit.exact() ? 0 : fit.sumSqRelMiss(),
            4,
            "any",
            "non-negative least squares, Lawson and Hanson 1974; weights of IUPAC 2021"));
  }
}
