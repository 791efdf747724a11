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

  /** Share of running rows may differ so much from the plan's. Common practice, no source. */
  private static final double MEETS = 0.25;

  private static final int LOOK = 64;

  private final StepVolumes volumes;
  private long rows;
  private long steps;

  /** The stay at one step at rest: whole when it was reached by a fall of one step. */
  private int stayAt = StepReader.BLANK;

  private boolean whole;
  private int stayRows;
  private int staySteps;
  private int deepest;
  private long wholeRows;
  private long known;
  private long running;
  private long wholeSteps;

  Lessons(StepVolumes volumes) {
    this.volumes = volumes;
  }

  /**
   * A row.
   *
   * @param fails whether no water comes to the cap
   */
  void row(LogRow row, boolean fails) {
    stay(row.rest);
    whole &= !fails;
    known += row.pump == row.pump ? 1 : 0;
    running += row.pumpOn() ? 1 : 0;
    if (!row.pumpOn() || row.step < 0 || row.rest < row.step) {
      return;
    }
    rows++;
    steps += row.rest - row.step;
    stayRows++;
    staySteps += row.rest - row.step;
    deepest = Math.max(deepest, row.rest - row.step);
    if (rows % LOOK == 0) {
      volumes.learned(mean() > SEEN ? 1 : 0.5);
    }
  }

  /** Mean steps by which running rows read lower; NaN with too few of them. */
  double mean() {
    return rows >= LEAST_ROWS ? (double) steps / rows : Double.NaN;
  }

  /**
   * Only a stay from one falling edge to the next meets every level of a step alike: not one at the
   * blind top, at the bottom, after a pouring, with a stuck float or without water.
   */
  private void stay(int rest) {
    if (rest == stayAt) {
      return;
    }
    boolean fell = rest >= 0 && rest == stayAt - 1;
    if (fell && whole && stayAt > deepest) {
      wholeRows += stayRows;
      wholeSteps += staySteps;
    }
    whole = fell;
    stayAt = rest;
    stayRows = 0;
    staySteps = 0;
  }

  /** The stay is not a whole one: rows are missing in it. */
  void gap() {
    whole = false;
  }

  /** Mean steps by which running rows of whole stays read lower; NaN with too few of them. */
  double dipSteps() {
    return wholeRows >= LEAST_ROWS ? (double) wholeSteps / wholeRows : Double.NaN;
  }

  /**
   * Whether rows meet the pump at any moment of its run. A logger whose rhythm goes into the pump's
   * meets it always at the same ones, and then oftener or more seldom than it runs.
   *
   * @param runShare part of the day that the pump runs, 0 to 1
   */
  boolean meetsAnyMoment(double runShare) {
    double share = (double) running / Math.max(1, known);
    return runShare > 0 && Math.abs(share / runShare - 1) <= MEETS;
  }
}
