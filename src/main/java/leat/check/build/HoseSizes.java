package leat.check.build;

/**
 * Bores of hose that one can buy, m: sheet hydraulics-bores.csv, family hose, usual rows (a hose
 * maker's public table after EN ISO 1307:2008).
 */
final class HoseSizes {
  private static final double[] BORES = {0.008, 0.010, 0.0125, 0.016, 0.019, 0.025, 0.0315};
  private static final String[] NAMES = {
    "8 mm", "10 mm", "12.5 mm", "16 mm", "19 mm", "25 mm", "31.5 mm"
  };

  /** So much may be lacking, m: inch and metric names of one size differ by more. */
  private static final double TO_SPARE = 0.00005;

  private HoseSizes() {}

  static int size() {
    return BORES.length;
  }

  static double bore(int i) {
    return BORES[i];
  }

  /** As it is typed: "16 mm". */
  static String name(int i) {
    return NAMES[i];
  }

  /** The narrowest size not under a bore; {@link #size} when none is so wide. */
  static int notUnder(double bore) {
    int i = 0;
    while (i < BORES.length && BORES[i] < bore - TO_SPARE) {
      i++;
    }
    return i;
  }

  /** The widest size not over a bore; -1 when none is so narrow. */
  static int notOver(double bore) {
    int i = BORES.length - 1;
    while (i >= 0 && BORES[i] > bore + TO_SPARE) {
      i--;
    }
    return i;
  }
}
