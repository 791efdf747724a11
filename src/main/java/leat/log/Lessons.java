package leat.log;

/**
 * How far a run of the pump lowers the reading, learned row by row.
 *
 * <p>Source: sheet log.md; the bounds are our own, no source.
 */
final class Lessons {
  /** Running rows before the dip is trusted. Common practice, no source. */
  private static final int LEAST_ROWS = 20;

  /** Part of a step that says the dip is larger than the hysteresis. */
  private static final double SEEN = 0.03;

  private static final int LOOK = 64;

  private final StepVolumes volumes;
  private long rows;
  private long steps;

  Lessons(StepVolumes volumes) {
    this.volumes = volumes;
  }

  void row(LogRow row) {
    if (!row.pumpOn() || row.step < 0 || row.rest < row.step) {
      return;
    }
    rows++;
    steps += row.rest - row.step;
    if (rows % LOOK == 0) {
      volumes.learned(mean() > SEEN ? 1 : 0.5);
    }
  }

  /** Mean steps by which running rows read lower; NaN with too few of them. */
  double mean() {
    return rows >= LEAST_ROWS ? (double) steps / rows : Double.NaN;
  }
}
