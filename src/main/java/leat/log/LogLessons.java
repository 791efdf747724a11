package leat.log;

import java.util.List;

/**
 * What a log teaches the plan. NaN where it is silent.
 *
 * <p>Source: sheet log.md sections 2 and 3; arithmetic of means and of a straight line.
 *
 * @param dip volume by which a run of the pump lowers the tank, m3, when it is larger than the
 *     hysteresis; what the plan calls hold_up
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
    boolean dipBelowHysteresis,
    double capWet,
    double capDry,
    double pouredEc,
    int pourings,
    double ecDrift) {
  private static final double MONTH_MS = 30 * 86_400_000.0;
  private static final double SEEN = 0.03;
  private static final int LEAST = 3;

  static LogLessons of(Judge judge, StepVolumes volumes, LogSystem system, List<LogEvent> events) {
    double mean = judge.lessons.mean();
    boolean seen = mean > SEEN;
    double dip = seen ? mean * volumes.meanStep() + volumes.meanHysteresis() : Double.NaN;
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
        dip,
        mean == mean && !seen,
        judge.cap.wetCounts(),
        judge.cap.dryCounts(),
        n > 0 ? ec / n : Double.NaN,
        (int) n,
        n >= LEAST && spread > 0 ? (n * te - t * ec) / spread : Double.NaN);
  }
}
