package leat.solution.tank;

/** The least and the most of the answers of a top-up over a band of volumes. */
final class TopupBounds {
  /** Volumes looked at where rain falls in; our own choice. */
  private static final int RAIN_SAMPLES = 32;

  boolean some;
  boolean none;
  Double drainLow;
  Double drainHigh;
  Double waterLow;
  Double waterHigh;
  Double feedLow;
  Double feedHigh;

  /** Takes an answer into account; its amounts are null when it is none. */
  void take(Double drain, Double water, Double feed) {
    some |= drain != null;
    none |= drain == null;
    drainLow = smaller(drainLow, drain);
    drainHigh = larger(drainHigh, drain);
    waterLow = smaller(waterLow, water);
    waterHigh = larger(waterHigh, water);
    feedLow = smaller(feedLow, feed);
    feedHigh = larger(feedHigh, feed);
  }

  /** Whether some volumes have an answer and others none. */
  boolean doubtful() {
    return some && none;
  }

  /**
   * The volumes inside a band that must be looked at besides its ends: none without rain; with
   * rain, which makes the EC depend on the volume, many, and where it begins to run over.
   */
  static double[] between(double fullL, double rainL, double lowL, double highL) {
    if (rainL <= 0 || lowL >= highL) {
      return new double[0];
    }
    double[] volumes = new double[RAIN_SAMPLES + 1];
    for (int i = 1; i < RAIN_SAMPLES; i++) {
      volumes[i - 1] = lowL + (highL - lowL) * i / RAIN_SAMPLES;
    }
    volumes[RAIN_SAMPLES - 1] = within(fullL - rainL, lowL, highL);
    volumes[RAIN_SAMPLES] = within(fullL, lowL, highL);
    return volumes;
  }

  private static double within(double volume, double lowL, double highL) {
    return Math.min(Math.max(volume, lowL), highL);
  }

  private static Double smaller(Double a, Double b) {
    if (a == null || b == null) {
      return a == null ? b : a;
    }
    return Math.min(a, b);
  }

  private static Double larger(Double a, Double b) {
    if (a == null || b == null) {
      return a == null ? b : a;
    }
    return Math.max(a, b);
  }
}
