package leat.level;

import leat.numeric.Impossible;

/**
 * Getting pairs of poured volume and ohms ready for {@link SenderFit}.
 *
 * <p>Source: arithmetic.
 */
public final class Pours {
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
    double sum = Impossible.ifNegative("litres", start);
    double[] totals = new double[additions.length];
    for (int i = 0; i < totals.length; i++) {
      sum += additions[i];
      if (!(sum >= -1e-12) || Double.isInfinite(sum)) {
        throw new Impossible("litres", "more is taken out than was poured in");
      }
      totals[i] = Math.max(sum, 0);
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
   * @param values values by row
   * @param order indexes
   */
  public static double[] inOrder(double[] values, int[] order) {
    double[] out = new double[order.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = values[order[i]];
    }
    return out;
  }
}
