package leat.energy;

/**
 * The second route of {@link Bill}: what a real controller does that runs free: each cycle takes
 * the timing in force at its pump start and keeps it to its end, across midnight, band and window
 * borders; a run that straddles a border is charged by the part in each band. The first start is
 * the period's first instant.
 *
 * <p>It differs from {@link Bill} by at most one longest cycle of running for each change of timing
 * in the period, plus one; neither is tuned to the other. A timing without pause starts the pump
 * once and asks for the timing in force again after each of its runs.
 *
 * <p>Source: sheet energy.md section 2, columns stepped_* of energy-tariff.csv (counted second by
 * second there; here a stretch at a time).
 *
 * @param starts starts of the pump, whole
 * @param runS running of the pump, s
 * @param pumpJByBand energy of the pump in each band, J
 * @param othersJByBand energy of controller and coil in each band, J
 * @param totalJ all energy, J
 * @param energyCost its cost, money
 */
record FreeRun(
    double starts,
    double runS,
    double[] pumpJByBand,
    double[] othersJByBand,
    double totalJ,
    double energyCost) {

  /** The controller's way through a period. */
  static FreeRun of(Timetable timetable, Tariff tariff, Draw draw, Dates dates) {
    Controller controller = new Controller(tariff.size());
    double[] bandS = new double[tariff.size()];
    Stretches stretches =
        new Stretches(dates, Windows.borders(timetable.windows(), tariff.windows()));
    double at = 0;
    while (stretches.next()) {
      int band = stretches.inForce(tariff.windows());
      bandS[band] += stretches.seconds();
      Timing timing = timetable.timing(stretches.inForce(timetable.windows()));
      controller.through(at, at + stretches.seconds(), timing, band);
      at += stretches.seconds();
    }
    return controller.charged(bandS, tariff, draw);
  }

  /** The state that a controller carries from one stretch into the next. */
  private static final class Controller {
    private final double[] runS;
    private double nextStart;
    private double runsUntil = -1;
    private double starts;

    Controller(int bands) {
      runS = new double[bands];
    }

    void through(double from, double to, Timing timing, int band) {
      if (runsUntil > from) {
        runS[band] += Math.min(runsUntil, to) - from;
      }
      while (nextStart < to) {
        cycles(to, timing, band);
      }
    }

    /** All cycles that start between the next start and {@code to}. */
    private void cycles(double to, Timing timing, int band) {
      double cycle = timing.cycleS();
      double n = Math.max(1, Math.ceil((to - nextStart) / cycle));
      if (n > 1 && nextStart + (n - 1) * cycle >= to) {
        n--;
      }
      double last = nextStart + (n - 1) * cycle;
      starts += timing.withoutPause() ? 1 : n;
      if (runsUntil == nextStart) {
        starts--;
      }
      runS[band] += (n - 1) * timing.runS() + Math.min(timing.runS(), to - last);
      runsUntil = last + timing.runS();
      nextStart = timing.withoutPause() ? runsUntil : last + cycle;
    }

    FreeRun charged(double[] bandS, Tariff tariff, Draw draw) {
      double[] pumpJ = new double[bandS.length];
      double[] othersJ = new double[bandS.length];
      double run = 0;
      double all = 0;
      double cost = 0;
      for (int k = 0; k < bandS.length; k++) {
        if (bandS[k] > 0) {
          pumpJ[k] = draw.pumpW() * runS[k];
          othersJ[k] = draw.othersW(Math.min(1, runS[k] / bandS[k])) * bandS[k];
        }
        run += runS[k];
        all += pumpJ[k] + othersJ[k];
        cost += (pumpJ[k] + othersJ[k]) * tariff.pricePerJ(k);
      }
      return new FreeRun(starts, run, pumpJ, othersJ, all, cost);
    }
  }
}
