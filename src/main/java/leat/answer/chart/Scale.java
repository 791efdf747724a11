package leat.answer.chart;

/**
 * The ends of an axis and the step of its ticks, in the unit shown: for values whole steps of 1, 2
 * or 5 that hold all series, marks and, for bars, 0; along, the first and the last place.
 *
 * @param low where it begins
 * @param high where it ends
 * @param step from tick to tick
 */
public record Scale(double low, double high, double step) {
  /** So near to a whole step a value lies on it. */
  private static final double ON_STEP = 1e-9;

  /** Steps that are easy to count by, of a power of ten. */
  private static final double[] EASY = {1, 2, 5, 10};

  /** The scale up, for about so many steps. */
  public static Scale up(Chart chart, boolean us, int steps) {
    double[] ends = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (Series series : chart.series()) {
      take(ends, series.y(), chart.y(), us);
      if (series.hasLow()) {
        take(ends, series.low(), chart.y(), us);
      } else if (series.kind() == Series.Kind.BARS) {
        take(ends, new double[] {0}, chart.y(), us);
      }
    }
    for (Mark mark : chart.marks()) {
      if (mark.across()) {
        take(ends, new double[] {mark.value()}, chart.y(), us);
      }
    }
    return chart.y().isTime() ? exact(ends) : whole(ends, steps);
  }

  /** The scale along: from the first place to the last. */
  public static Scale along(Chart chart, boolean us) {
    double[] ends = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (Series series : chart.series()) {
      take(ends, series.x(), chart.x(), us);
    }
    for (Mark mark : chart.marks()) {
      if (!mark.across()) {
        take(ends, new double[] {mark.value()}, chart.x(), us);
      }
    }
    return exact(ends);
  }

  private static void take(double[] ends, double[] values, Axis axis, boolean us) {
    for (double value : values) {
      double shown = axis.shown(value, us);
      if (!Double.isNaN(shown)) {
        ends[0] = Math.min(ends[0], shown);
        ends[1] = Math.max(ends[1], shown);
      }
    }
  }

  private static Scale exact(double[] ends) {
    if (ends[0] > ends[1]) {
      return new Scale(0, 1, 1);
    }
    double room = ends[1] > ends[0] ? 0 : Math.max(1, Math.abs(ends[0]) / 10);
    return new Scale(ends[0] - room, ends[1] + room, step(ends[1] - ends[0] + 2 * room, 5));
  }

  private static Scale whole(double[] ends, int steps) {
    if (ends[0] > ends[1]) {
      return new Scale(0, 1, 1);
    }
    double size = Math.max(Math.abs(ends[0]), Math.abs(ends[1]));
    boolean flat = ends[1] - ends[0] <= size * ON_STEP;
    double low = flat ? Math.min(0, ends[0]) : ends[0];
    double high = flat ? (size == 0 ? 1 : Math.max(0, ends[1])) : ends[1];
    double step = step(high - low, steps);
    return new Scale(
        step * Math.floor(low / step + ON_STEP), step * Math.ceil(high / step - ON_STEP), step);
  }

  /** The easy step that gives about {@code steps} of them, never more than twice as many. */
  static double step(double range, int steps) {
    double bare = range / Math.max(1, steps);
    double ten = Math.pow(10, Math.floor(Math.log10(bare)));
    for (double easy : EASY) {
      if (bare <= easy * ten * (1 + ON_STEP)) {
        return easy * ten;
      }
    }
    return 10 * ten;
  }

  /** Where a value lies, 0 at the low end, 1 at the high. */
  public double share(double shown) {
    return (shown - low) / (high - low);
  }
}
