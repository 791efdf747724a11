package leat.log;

import java.util.List;
import leat.level.CapSensor;

/**
 * What a log teaches the plan. NaN where it is silent.
 *
 * <p>Source: sheet log.md sections 2 and 3; arithmetic of means and of a straight line.
 *
 * @param dip volume by which a run of the pump lowers the tank, m3, when it is larger than the
 *     hysteresis; what the plan calls hold_up. Not known where rows meet the pump always at the
 *     same moments of its run
 * @param dipLow low end of it: no time is needed to take it up, m3
 * @param dipHigh high end of it: the whole run takes it up, m3
 * @param hysteresis volume by which a reading lasts on the way down, m3, where the plan says what a
 *     run keeps up
 * @param dipBelowHysteresis whether running rows never read lower: the dip is at most the
 *     hysteresis
 * @param capWet counts of the cap's sensor while the pump runs
 * @param capDry counts of it in a failure
 * @param pouredEc mean EC after pourings, mS/cm, to be held against what was poured
 * @param pourings how many pourings that is, -
 * @param ecDrift change of that EC, mS/cm in 30 days, by a straight line through three or more
 */
public record LogLessons(
    double dip,
    double dipLow,
    double dipHigh,
    double hysteresis,
    boolean dipBelowHysteresis,
    double capWet,
    double capDry,
    double pouredEc,
    int pourings,
    double ecDrift) {
  private static final double MONTH_MS = 30 * 86_400_000.0;
  private static final double SEEN = 0.03;
  private static final int LEAST = 3;

  /** Part of the span from wet to dry by which counts may lie off. Common practice, no source. */
  private static final double CAP_OFF = 0.1;

  /** Drift of the EC in 30 days that is worth a check of the meter, mS/cm. Common practice. */
  private static final double DRIFT = 0.05;

  /**
   * Whether the cap's counts as seen lie off those of the plan.
   *
   * @param system has the plan's counts
   */
  public boolean isCapOff(LogSystem system) {
    CapSensor cap = system.cap();
    return cap != null
        && (Math.abs(cap.dryness(capWet)) > CAP_OFF || Math.abs(cap.dryness(capDry) - 1) > CAP_OFF);
  }

  /** Whether the EC after pourings moves more than pourings do. */
  public boolean isDrifting() {
    return Math.abs(ecDrift) > DRIFT;
  }

  static LogLessons of(Judge judge, StepVolumes volumes, LogSystem system, List<LogEvent> events) {
    double mean = judge.lessons.dipSteps();
    boolean seen = mean > SEEN;
    double below = mean * volumes.meanStep();
    double h = volumes.meanHysteresis();
    double ramp = system.meanRunS() > 0 ? Math.min(1, RunDip.RAMP_S / system.meanRunS()) : 0.5;
    double holdUp = system.holdUp();
    boolean evenly = seen && judge.lessons.meetsAnyMoment(system.runShare());
    double n = 0;
    double t = 0;
    double ec = 0;
    double tt = 0;
    double te = 0;
    for (int i = 0; i < events.size(); i++) {
      LogEvent e = events.get(i);
      if (e.ecAfter() == e.ecAfter()) {
        double x = (e.end() - events.get(0).start()) / MONTH_MS;
        n++;
        t += x;
        ec += e.ecAfter();
        tt += x * x;
        te += x * e.ecAfter();
      }
    }
    double spread = n * tt - t * t;
    return new LogLessons(
        evenly ? RunDip.dip(below, h, ramp) : Double.NaN,
        seen ? RunDip.dip(below, h, 0) : Double.NaN,
        evenly ? RunDip.dip(below, h, 1) : Double.NaN,
        evenly && holdUp > 0 ? RunDip.hysteresis(below, holdUp, ramp) : Double.NaN,
        mean == mean && !seen,
        judge.cap.wetCounts(),
        judge.cap.dryCounts(),
        n > 0 ? ec / n : Double.NaN,
        (int) n,
        n >= LEAST && spread > 0 ? (n * te - t * ec) / spread : Double.NaN);
  }
}
