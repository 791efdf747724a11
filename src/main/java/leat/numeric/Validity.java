package leat.numeric;

/**
 * The range in which a correlation was fitted or checked, as data: cautions, the manual's table and
 * tests read it. Leaving it is doubtful, not impossible.
 */
public final class Validity {
  private final String[] names;
  private final double[] low;
  private final double[] high;

  private Validity(String[] names, double[] low, double[] high) {
    this.names = names;
    this.low = low;
    this.high = high;
  }

  /** A range in one variable, named with its unit, both ends included. */
  public static Validity of(String name, double low, double high) {
    return new Validity(new String[] {name}, new double[] {low}, new double[] {high});
  }

  /** This range and one more variable. */
  public Validity and(String name, double lowest, double highest) {
    int n = names.length;
    String[] moreNames = java.util.Arrays.copyOf(names, n + 1);
    double[] moreLow = java.util.Arrays.copyOf(low, n + 1);
    double[] moreHigh = java.util.Arrays.copyOf(high, n + 1);
    moreNames[n] = name;
    moreLow[n] = lowest;
    moreHigh[n] = highest;
    return new Validity(moreNames, moreLow, moreHigh);
  }

  /** Whether all values, in the order of declaration, lie inside. */
  public boolean holds(double... values) {
    for (int i = 0; i < names.length; i++) {
      if (!(values[i] >= low[i] && values[i] <= high[i])) {
        return false;
      }
    }
    return true;
  }

  /** Number of variables. */
  public int size() {
    return names.length;
  }

  /** Name, with unit, of variable {@code i}. */
  public String name(int i) {
    return names[i];
  }

  /** Lower end of variable {@code i}. */
  public double low(int i) {
    return low[i];
  }

  /** Upper end of variable {@code i}. */
  public double high(int i) {
    return high[i];
  }
}
