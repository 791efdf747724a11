package leat.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * The values a sweep takes: "10 mm, 12 mm, 16 mm" or "0.8..1.4 m step 0.2 m". A value has a unit,
 * or needs none by its dimension.
 */
public final class Variation {
  /** Most values of one variation. */
  public static final int MOST = 10000;

  private static final int LONGEST = 20000;

  private Variation() {}

  /**
   * @param typed a list with commas, or a range with a step
   * @param wanted what each value is
   * @return the values in the order typed, the upper end of a range included when a step meets it;
   *     each with its own typed text
   * @throws Unreadable if it is neither, or more than {@link #MOST}
   */
  public static List<Quantity> of(String typed, Dimension wanted) {
    if (typed.length() > LONGEST) {
      throw QuantityErrors.tooLong(wanted, 0, typed.length());
    }
    int step = Compounds.word(typed, "step", typed.length());
    if (step >= 0) {
      return stepped(typed, step, wanted);
    }
    int[] mark = Compounds.rangeMark(typed, 0, typed.length());
    if (mark != null) {
      throw QuantityErrors.noStep(Spelling.trim(typed), 0, typed.length());
    }
    return listed(typed, wanted);
  }

  private static List<Quantity> listed(String typed, Dimension wanted) {
    List<Quantity> values = new ArrayList<>();
    Unit bare = QuantityReader.bare(wanted);
    int from = 0;
    while (from <= typed.length()) {
      int comma = typed.indexOf(',', from);
      int to = comma < 0 ? typed.length() : comma;
      values.add(QuantityReader.read(typed, from, to, wanted, bare));
      if (values.size() > MOST) {
        throw QuantityErrors.tooManyValues(MOST, Spelling.trim(typed), 0, typed.length());
      }
      from = to + 1;
    }
    return values;
  }

  private static List<Quantity> stepped(String typed, int word, Dimension wanted) {
    int[] mark = Compounds.rangeMark(typed, 0, word);
    if (mark == null) {
      throw QuantityErrors.noStep(Spelling.trim(typed), 0, typed.length());
    }
    Unit bare = QuantityReader.bare(wanted);
    Span span =
        bare == null
            ? Compounds.range(typed, 0, mark, word, wanted)
            : bare(typed, mark, word, bare);
    Quantity step =
        QuantityReader.read(typed, word + 4, typed.length(), wanted, span.high().unit());
    Unit unit = span.high().unit();
    double size = unit.fromBase(step.value()) - unit.fromBase(0);
    if (!(size > 0)) {
      throw QuantityErrors.badStep(step.typed(), word, typed.length());
    }
    return values(typed, span, unit, step);
  }

  private static Span bare(String typed, int[] mark, int word, Unit bare) {
    Quantity low = QuantityReader.read(typed, 0, mark[0], bare.dimension(), bare);
    Quantity high = QuantityReader.read(typed, mark[1], word, bare.dimension(), bare);
    if (low.value() > high.value()) {
      throw QuantityErrors.rangeDown(Spelling.trim(typed.substring(0, word)), 0, word);
    }
    return new Span(low, high);
  }

  private static List<Quantity> values(String typed, Span span, Unit unit, Quantity step) {
    double low = span.low().in(unit);
    double high = span.high().in(unit);
    double size = step.in(unit);
    double steps = Math.floor((high - low) / size + 1e-9);
    if (steps >= MOST) {
      throw QuantityErrors.tooManyValues(MOST, Spelling.trim(typed), 0, typed.length());
    }
    List<Quantity> values = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      String number = NumberText.shortest(low + i * size);
      String currency = span.high().currency();
      double value = Double.parseDouble(number);
      values.add(
          currency == null ? Quantity.of(value, unit) : Quantity.money(value, currency, unit));
    }
    return values;
  }
}
