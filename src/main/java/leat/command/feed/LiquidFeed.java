package leat.command.feed;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.numeric.Impossible;
import leat.plan.Refused;
import leat.quantity.NamedQuantity;
import leat.quantity.NumberText;
import leat.quantity.QuantityReader;
import leat.quantity.Units;
import leat.quantity.Unreadable;
import leat.solution.Element;
import leat.solution.ElementName;
import leat.solution.Elements;
import leat.solution.Label;
import leat.solution.recipes.Weighed;

/** A liquid feed by its label, for {@code leat dose salts}. */
final class LiquidFeed {
  static final String NAME = "feed";
  static final Column ELEMENT = Column.plain("element", "element");
  static final Column BROUGHT = Column.of("from_feed_mg_L", "the feed brings", Show.MG_L);
  static final Column POURED = Column.of("poured_mL", "pour", Show.ML);
  static final Column FEED_RATE = Column.of("rate_mL_L", "rate", Show.ML_L);
  private static final Column DENSITY = Column.plain("density", "density");

  private static final int FIGURES = 3;

  private final Label label;
  private final Label.Basis basis;
  private final double density;
  private final double rate;
  private final double litres;

  LiquidFeed(Call call, double litres) {
    this.litres = litres;
    this.label = label(call);
    Double typed = call.above0("--density");
    this.basis = typed == null ? Label.Basis.WEIGHT_IN_VOLUME : Label.Basis.WEIGHT_IN_WEIGHT;
    this.density = typed == null ? 1 : Units.G_ML.fromBase(typed);
    Double dose = call.above0("--rate");
    if (dose == null) {
      throw call.needs("--rate");
    }
    this.rate = dose;
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

  Weighed weighed() {
    return Weighed.poured(NAME, label, rate, basis, density, litres);
  }

  /** Whether its weight is known. */
  boolean weighs() {
    return basis == Label.Basis.WEIGHT_IN_WEIGHT;
  }

  double pouredMl() {
    return Weighed.pouredMl(rate, litres);
  }

  /** What the feed alone brings, a row for each element that its label prints. */
  Answer brings() {
    Answer table = new Answer(ELEMENT, BROUGHT);
    Elements brought = label.ofLiquid(rate, basis, density);
    for (int i = 0; i < Element.count(); i++) {
      Element element = Element.at(i);
      if (brought.knows(element)) {
        table.row().set(ELEMENT, element.label()).set(BROUGHT, brought.of(element));
      }
    }
    return table;
  }

  /** How much of it, for the text. */
  Row words() {
    return Row.aside(POURED, FEED_RATE, DENSITY)
        .set(POURED, Litres.baseOfMl(pouredMl()))
        .set(FEED_RATE, rate)
        .set(DENSITY, NumberText.shortest(density));
  }

  void taken(Answer answer) {
    if (weighs()) {
      answer.taken(words(), "the label's per cent are by weight, {density} g/mL");
      if (!Label.USUAL_DENSITY.holds(density)) {
        answer.mind("odd-density", "liquid feeds weigh 0.95 to 1.6 g/mL: is that this bottle's?");
      }
    } else {
      answer.taken(
          words(), "the label's per cent are by volume, g in 100 mL; with --density by weight");
    }
  }
}
