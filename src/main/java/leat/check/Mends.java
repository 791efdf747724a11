package leat.check;

import leat.answer.Phrase;
import leat.answer.Show;

/**
 * Words of advice: a key and a value that would pass. The value is rounded to what is shown away
 * from the limit, so that it passes as it stands there.
 */
public final class Mends {
  private static final int DIGITS = 3;

  private Mends() {}

  /** Adds "key of value", a value that must be reached. */
  public static Phrase of(Phrase words, String key, double least, Show show) {
    return words.add(key + " of ").add(up(least, show), show);
  }

  /** Adds "key of value", a value that must not be passed. */
  public static Phrase atMost(Phrase words, String key, double most, Show show) {
    return words.add(key + " of ").add(down(most, show), show);
  }

  /** The value rounded up to three digits of the metric unit. */
  static double up(double value, Show show) {
    return rounded(value, show, true);
  }

  /** The value rounded down to three digits of the metric unit. */
  static double down(double value, Show show) {
    return rounded(value, show, false);
  }

  private static double rounded(double value, Show show, boolean up) {
    double shown = show.metric().fromBase(value);
    if (shown == 0) {
      return value;
    }
    double step = Math.pow(10, Math.floor(Math.log10(Math.abs(shown))) + 1 - DIGITS);
    double steps = shown / step;
    double near = Math.rint(steps);
    if (Math.abs(steps - near) < 1e-9) {
      return show.metric().toBase(near * step);
    }
    return show.metric().toBase((up ? Math.ceil(steps) : Math.floor(steps)) * step);
  }
}
