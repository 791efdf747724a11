package leat.command.feed;

import leat.plan.Origin;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.quantity.Dimension;
import leat.quantity.NumberText;
import leat.quantity.QuantityReader;
import leat.quantity.Unit;
import leat.quantity.Units;
import leat.quantity.Unreadable;
import leat.solution.conductivity.PpmScale;

/** Reads what an EC meter shows: an EC, or ppm of a known scale. */
final class EcText {
  /** Scale of ppm readings, or null when unknown. */
  final PpmScale scale;

  /** Unit of a bare number, or null when one must be typed. */
  private final Unit bare;

  /** Whether a bare number is ppm. */
  private final boolean barePpm;

  private EcText(PpmScale scale, Unit bare, boolean barePpm) {
    this.scale = scale;
    this.bare = bare;
    this.barePpm = barePpm;
  }

  /**
   * @param scale of ppm, or null
   * @param word mS/cm, uS/cm, dS/m, mS/m or ppm for bare numbers, or null
   */
  static EcText of(PpmScale scale, String word) {
    return new EcText(
        scale, word == null ? null : Units.find(Dimension.EC, word), "ppm".equals(word));
  }

  /**
   * The unit that a column's name ends in, such as {@code ec_uS_cm}, {@code EC (mS/cm)} or {@code
   * EC uS/cm} with its micro sign, or null.
   */
  static String unitOf(String column) {
    String name = plain(column);
    String[][] ends = {{"mS_cm", "mS/cm"}, {"uS_cm", "uS/cm"}, {"dS_m", "dS/m"}, {"mS_m", "mS/m"}};
    for (int i = 0; i < ends.length; i++) {
      if (name.endsWith(ends[i][0])) {
        return ends[i][1];
      }
    }
    return column.contains("ppm") ? "ppm" : null;
  }

  /** A heading without brackets at its end, its slash and micro sign as in a column's name. */
  private static String plain(String column) {
    int to = column.length();
    while (to > 0 && ")] ".indexOf(column.charAt(to - 1)) >= 0) {
      to--;
    }
    return column.substring(0, to).replace('/', '_').replace('\u00b5', 'u').replace('\u03bc', 'u');
  }

  /** Whether a text is a ppm reading. */
  boolean isPpm(String typed) {
    String text = typed.strip();
    return endsInPpm(text) || barePpm && endsInDigit(text);
  }

  private static boolean endsInPpm(String text) {
    int n = text.length();
    return n > 3 && text.substring(n - 3).equalsIgnoreCase("ppm");
  }

  private static boolean endsInDigit(String text) {
    return !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
  }

  /**
   * The number before "ppm".
   *
   * @throws Unreadable if there is none
   */
  double ppm(String typed) {
    String text = typed.strip();
    return QuantityReader.number(endsInPpm(text) ? text.substring(0, text.length() - 3) : text);
  }

  /**
   * The EC as read, mS/cm.
   *
   * @throws Unreadable for anything else, and for ppm without a scale
   */
  double read(String typed) {
    if (isPpm(typed)) {
      double ppm = ppm(typed);
      if (scale == null) {
        throw EcErrors.ppmWithoutScale(
            typed.strip(),
            NumberText.significant(PpmScale.PPM500.ec(ppm), 3),
            NumberText.significant(PpmScale.PPM640.ec(ppm), 3),
            NumberText.significant(PpmScale.PPM700.ec(ppm), 3));
      }
      return scale.ec(ppm);
    }
    return bare == null
        ? QuantityReader.read(typed, Dimension.EC).value()
        : QuantityReader.read(typed, bare).value();
  }

  /** The same for an operand. */
  double operand(String typed) {
    try {
      return read(typed);
    } catch (Unreadable e) {
      throw new Refused(PlanErrors.unreadable(Origin.flag("leat ec", typed), "", e));
    }
  }
}
