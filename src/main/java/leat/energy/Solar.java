package leat.energy;

import leat.numeric.Impossible;

/**
 * A solar panel that covers the day's energy. Days without sun are not covered: the battery is.
 *
 * <pre>panel W = J a day/(3600 x peak sun hours x performance x battery efficiency)</pre>
 *
 * <p>Source: daily balance; peak sun hours are kWh/m2 a day on the panel's plane; size by the month
 * with the highest load over sun (public off-grid design page); performance 0.7 from one guide;
 * sheet energy.md section 5, check values energy-backup.csv.
 */
public final class Solar {
  /** Performance of panel, wires and controller, no unit (one guide, else common practice). */
  public static final double USUAL_PERFORMANCE = 0.7;

  /** Energy a lead battery returns at the hopeful end; about 0.7 is returned (public note). */
  public static final double LEAD_EFFICIENCY = 0.85;

  /** Energy a lithium battery returns (common practice). */
  public static final double LITHIUM_EFFICIENCY = 0.95;

  private Solar() {}

  /**
   * Rated power of the panel.
   *
   * @param dayJ energy a day, J
   * @param peakSunHours kWh/m2 a day on the panel's plane, h, above 0
   * @param performance share left after losses, above 0 to 1
   * @param batteryEfficiency share of the charged energy the battery returns, above 0 to 1
   * @return W
   * @throws Impossible if the energy is negative or another is outside its range
   */
  public static double panelW(
      double dayJ, double peakSunHours, double performance, double batteryEfficiency) {
    Accepted.energy(dayJ);
    sun(peakSunHours);
    Impossible.unlessWithin(
        "performance", performance, 0.01, 1, "it lies between 1 and 100 per cent");
    Impossible.unlessWithin(
        "battery efficiency", batteryEfficiency, 0.01, 1, "it lies between 1 and 100 per cent");
    return dayJ / (3600 * peakSunHours * performance * batteryEfficiency);
  }

  private static double sun(double hours) {
    return Impossible.unlessWithin(
        "peak sun", hours, 0.01, 24, "peak sun hours lie between 0.01 and 24 a day");
  }
}
