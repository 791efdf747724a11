package leat.level;

import java.util.Arrays;
import leat.numeric.Impossible;

/**
 * Getting pairs of poured volume and ohms ready for {@link SenderFit}: running totals, order, which
 * way the ohms go, and how near two readings of one step lie.
 *
 * <p>Source: arithmetic; {@link Isotonic}.
 */
public final class Pours {
  /** Least window for one step that is suggested, ohm. */
  private static final double LEAST_SAME_WITHIN = 1.0;

  private Pours() {}

  /**
   * Running totals of additions.
   *
   * @param start volume in the tank before the first, m3
   * @param additions volumes added (negative: taken out), m3
   * @return volume after each, m3
   * @throws Impossible if more is taken out than is there
   */
  public static double[] runningTotals(double start, double[] additions) {
    double sum = Accepted.volumeOrZero("litres", start);
    double[] totals = new double[additions.length];
    for (int i = 0; i < totals.length; i++) {
      sum += additions[i];
      if (!(sum >= -1e-12)) {
        throw new Impossible("litres", "more is taken out than was poured in");
      }
      totals[i] = sum > 1e-12 ? Accepted.volume("litres", sum) : 0;
    }
    return totals;
  }

  /**
   * The order of rows by volume, ties as they came.
   *
   * @param volumes volumes, m3
   * @return indexes into the rows, by rising volume
   */
  public static int[] order(double[] volumes) {
    int[] order = new int[volumes.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    int[] spare = new int[order.length];
    mergeSort(volumes, order, spare, 0, order.length);
    return order;
  }

  private static void mergeSort(double[] key, int[] order, int[] spare, int from, int to) {
    if (to - from < 2) {
      return;
    }
    int middle = (from + to) >>> 1;
    mergeSort(key, order, spare, from, middle);
    mergeSort(key, order, spare, middle, to);
    int a = from;
    int b = middle;
    for (int k = from; k < to; k++) {
      boolean left = a < middle && (b >= to || key[order[a]] <= key[order[b]]);
      spare[k] = order[left ? a++ : b++];
    }
    System.arraycopy(spare, from, order, from, to - from);
  }

  /**
   * Rows in another order.
   *
   * @param values values by row, in any unit
   * @param order indexes
   */
  public static double[] inOrder(double[] values, int[] order) {
    double[] out = new double[order.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = values[order[i]];
    }
    return out;
  }

  /** So much of the whole range among readings of one volume means that it was not one. */
  private static final double MOST_OF_RANGE = 0.5;

  /** So many rows of one volume are asked about. */
  private static final int REPEATS = 3;

  /**
   * Whether volumes look like additions, not like what the tank holds: rows of one and the same
   * volume whose readings spread over half of the whole range, or rows that put the ohms in order
   * as they come but not by their volumes. Common practice, no source.
   *
   * @param volumes volumes in the order of the file, m3
   * @param ohms readings, ohm
   */
  public static boolean looksLikeAdditions(double[] volumes, double[] ohms) {
    if (volumes.length < REPEATS) {
      return false;
    }
    double range = range(ohms, null, 0);
    if (!(range > LEAST_SAME_WITHIN)) {
      return false;
    }
    for (int i = 0; i < volumes.length; i++) {
      if (repeats(volumes, volumes[i]) >= REPEATS
          && range(ohms, volumes, volumes[i]) > MOST_OF_RANGE * range) {
        return true;
      }
    }
    double inFile = residual(ohms);
    double byVolume = residual(inOrder(ohms, order(volumes)));
    return byVolume > MOST_OF_RANGE * range && inFile < byVolume / REPEATS;
  }

  /** Root of the squares left by the better of the two monotone curves, ohm. */
  private static double residual(double[] ohms) {
    return Math.sqrt(
        Math.min(
            Isotonic.residual(ohms, Isotonic.fit(ohms, false)),
            Isotonic.residual(ohms, Isotonic.fit(ohms, true))));
  }

  private static int repeats(double[] volumes, double volume) {
    int n = 0;
    for (int i = 0; i < volumes.length; i++) {
      n += volumes[i] == volume ? 1 : 0;
    }
    return n;
  }

  /** Range of the readings, of one volume only when {@code volumes} are given, ohm. */
  private static double range(double[] ohms, double[] volumes, double volume) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < ohms.length; i++) {
      if (volumes == null || volumes[i] == volume) {
        low = Math.min(low, ohms[i]);
        high = Math.max(high, ohms[i]);
      }
    }
    return high - low;
  }

  /** Which way the ohms go, and how sure. */
  public enum Direction {
    /** They rise as the tank fills. */
    RISES,
    /** They fall. */
    FALLS,
    /** The readings do not say. */
    UNCLEAR
  }

  /**
   * Which way the ohms go as the tank fills, by which monotone curve leaves the smaller residual.
   *
   * @param volumes volumes, m3, in any order
   * @param ohms readings, ohm
   * @throws Impossible if there are fewer than two pairs or one is not a number
   */
  public static Direction direction(double[] volumes, double[] ohms) {
    checkPairs(volumes, ohms);
    double[] sorted = inOrder(ohms, order(volumes));
    double up = Isotonic.residual(sorted, Isotonic.fit(sorted, false));
    double down = Isotonic.residual(sorted, Isotonic.fit(sorted, true));
    if (up == down) {
      return Direction.UNCLEAR;
    }
    return up < down ? Direction.RISES : Direction.FALLS;
  }

  /**
   * A value for {@code sameWithin} when nobody states one: half of the smallest jump, where jumps
   * are told from scatter by the widest ratio between neighbouring sizes of change; at least 1 ohm.
   *
   * @param volumes volumes, m3, in any order
   * @param ohms readings, ohm
   * @throws Impossible if there are fewer than two pairs or one is not a number
   */
  public static double suggestedSameWithin(double[] volumes, double[] ohms) {
    boolean falls = direction(volumes, ohms) == Direction.FALLS;
    double[] fit = Isotonic.fit(inOrder(ohms, order(volumes)), falls);
    double[] change = new double[fit.length - 1];
    for (int i = 0; i < change.length; i++) {
      change[i] = Math.max(Math.abs(fit[i + 1] - fit[i]), LEAST_SAME_WITHIN);
    }
    Arrays.sort(change);
    double ratio = 1;
    double jump = 0;
    for (int i = 0; i < change.length; i++) {
      double before = i == 0 ? LEAST_SAME_WITHIN : change[i - 1];
      if (change[i] / before > ratio) {
        ratio = change[i] / before;
        jump = change[i];
      }
    }
    return Math.max(jump / 2, LEAST_SAME_WITHIN);
  }

  static void checkPairs(double[] volumes, double[] ohms) {
    if (volumes.length != ohms.length || volumes.length < 2) {
      throw new Impossible("pairs", "at least two pairs of litres and ohms are needed");
    }
    for (int i = 0; i < volumes.length; i++) {
      Accepted.volumeOrZero("litres", volumes[i]);
      if (!(Math.abs(ohms[i]) <= 1e9)) {
        throw new Impossible("ohm", "a reading that is open or empty cannot be fitted");
      }
    }
  }
}
