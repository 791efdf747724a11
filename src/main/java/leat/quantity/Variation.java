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
    Span span = Compounds.range(typed, 0, mark, word, wanted);
    Unit unit = span.high().unit();
    double size = unit.fromBase(step(typed, word + 4, span.high())) - unit.fromBase(0);
    if (!(size > 0)) {
      String got = Spelling.trim(typed.substring(word + 4));
      throw QuantityErrors.badStep(got, word, typed.length());
    }
    return values(typed, span, unit, size);
  }

  /** The step in the base; the step of a temperature is a difference. */
  private static double step(String typed, int from, Quantity like) {
    int to = typed.length();
    if (like.dimension() == Dimension.TEMPERATURE) {
      return QuantityReader.read(typed, from, to, Dimension.TEMPERATURE_DIFFERENCE, null).value();
    }
    Unit bare = QuantityReader.bare(like.dimension());
    return QuantityReader.read(typed, from, to, like.dimension(), bare).value();
  }

  private static List<Quantity> values(String typed, Span span, Unit unit, double size) {
    double low = span.low().in(unit);
    double high = span.high().in(unit);
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
