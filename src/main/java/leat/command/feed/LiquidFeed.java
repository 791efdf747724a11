package leat.command.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.NamedQuantity;
import leat.quantity.NumberText;
import leat.quantity.QuantityReader;
import leat.quantity.Units;
import leat.quantity.Unreadable;
import leat.solution.ElementName;
import leat.solution.Label;
import leat.solution.recipes.LabelledBottle;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.Weighed;
import leat.system.LabelsOf;

/** Liquid feed by its labels, for {@code leat dose salts}: of flags, else the plan's bottles. */
final class LiquidFeed {
  static final Column POURED = Column.of("poured_mL", "pour", Show.ML);
  static final Column FEED_RATE = Column.of("rate_mL_L", "rate in tower water", Show.ML_L);
  private static final Column DENSITY = Column.plain("density", "density");
  private static final Column BOTTLES = Column.plain("bottles", "bottles");

  private static final int FIGURES = 3;

  private final List<LabelledBottle> bottles;
  private final boolean typed;
  private final double litres;

  private LiquidFeed(List<LabelledBottle> bottles, boolean typed, double litres) {
    this.bottles = bottles;
    this.typed = typed;
    this.litres = litres;
  }

  /** The feed of a call; null when it is about salts alone. */
  static LiquidFeed of(Call call, double litres) {
    if (call.has("--feed")) {
      return new LiquidFeed(List.of(typed(call)), true, litres);
    }
    return isOfPlan(call)
        ? new LiquidFeed(LabelsOf.of(call.plan().section("feed")), false, litres)
        : null;
  }

  /** Whether the bottles of the plan are meant: no flag names another, and no salts are there. */
  static boolean isOfPlan(Call call) {
    if (call.has("--feed")
        || call.has("--weighed")
        || call.has("--salt")
        || call.has("--scale-step")) {
      return false;
    }
    Plan plan = call.plan();
    Section feed = plan.section("feed");
    boolean salts =
        call.has("--ask")
            && (!feed.sections("salts").isEmpty()
                || feed.section("stock").named("grams").size() > 0);
    return !salts && LabelsOf.isKnown(feed);
  }

  private static LabelledBottle typed(Call call) {
    Label label = label(call);
    Double density = call.above0("--density");
    Double rate = call.above0("--rate");
    if (rate == null) {
      throw call.needs("--rate");
    }
    return new LabelledBottle(
        "feed", label, rate, density == null ? null : (Double) Units.G_ML.fromBase(density));
  }

  private static Label label(Call call) {
    List<String> typed = call.texts("--feed");
    Label label = Label.blank();
    for (int i = 0; i < typed.size(); i++) {
      label = with(label, typed.get(i));
    }
    return label;
  }

  private static Label with(Label label, String typed) {
    try {
      if (typed.indexOf('=') >= 0) {
        NamedQuantity one = EcPrediction.named("--feed", typed, Units.PERCENT);
        return label.with(ElementName.of(one.name()), one.quantity().in(Units.PERCENT));
      }
      String[] parts = parts(typed);
      if (parts == null) {
        throw new Refused(EcErrors.noLabel(typed));
      }
      return label.withNpk(number(parts[0]), number(parts[1]), number(parts[2]));
    } catch (Impossible | Unreadable e) {
      throw new Refused(EcErrors.badFeedLabel(typed, e.getMessage()));
    }
  }

  private static double number(String text) {
    return QuantityReader.number(text.strip());
  }

  /** The three figures between two hyphens, or null. */
  private static String[] parts(String typed) {
    int first = typed.indexOf('-');
    int second = first < 0 ? -1 : typed.indexOf('-', first + 1);
    if (first <= 0 || second < 0 || typed.indexOf('-', second + 1) >= 0) {
      return null;
    }
    String[] parts = new String[FIGURES];
    parts[0] = typed.substring(0, first);
    parts[1] = typed.substring(first + 1, second);
    parts[2] = typed.substring(second + 1);
    return parts;
  }

  List<LabelledBottle> bottles() {
    return bottles;
  }

  /** All bottles, as weighed salts. */
  List<Weighed> weighed() {
    List<Weighed> all = new ArrayList<>();
    for (int i = 0; i < bottles.size(); i++) {
      all.add(bottles.get(i).weighed(litres));
    }
    return all;
  }

  /** The bottle at a place of a recipe, where bottles stand behind the salts; null for a salt. */
  LabelledBottle bottle(int place, Recipe recipe) {
    int i = place - (recipe.salts().size() - bottles.size());
    return i < 0 ? null : bottles.get(i);
  }

  /** Whether its weight is known. */
  boolean weighs() {
    for (int i = 0; i < bottles.size(); i++) {
      if (!bottles.get(i).weighs()) {
        return false;
      }
    }
    return true;
  }

  /** What is poured of a bottle, m3. */
  Double poured(LabelledBottle one) {
    return Litres.baseOfMl(one.pouredMl(litres));
  }

  /** What the feed alone brings, a row for each element that its labels print. */
  Answer brings() {
    return LabelTable.of(LabelledBottle.together(bottles));
  }

  /** How much of it, for the text. */
  Row words() {
    double ml = 0;
    for (int i = 0; i < bottles.size(); i++) {
      ml += bottles.get(i).pouredMl(litres);
    }
    return words(bottles.get(0)).set(POURED, Litres.baseOfMl(ml)).set(BOTTLES, bottles.size());
  }

  /** How much of one bottle, for the text. */
  Row words(LabelledBottle one) {
    return Row.aside(POURED, FEED_RATE, DENSITY, BOTTLES)
        .set(POURED, poured(one))
        .set(FEED_RATE, one.rateMlPerL())
        .set(DENSITY, NumberText.significant(one.weighs() ? one.densityGMl() : 1, 3));
  }

  void taken(Answer answer) {
    if (!typed) {
      LabelTable.taken(answer, bottles);
      LabelTable.minds(answer, bottles);
    } else if (weighs()) {
      answer.taken(words(), "the label's per cent are by weight, {density} g/mL");
      if (bottles.get(0).isOddlyDense()) {
        LabelTable.odd(answer);
      }
    } else {
      answer.taken(
          words(), "the label's per cent are by volume, g in 100 mL; with --density by weight");
    }
  }
}
