package leat.log;

import leat.numeric.Impossible;

/**
 * Level at which a reading at rest gives way to the next lower one. The dip of a pump's run shakes
 * the hysteresis out:
 *
 * <pre>falling edge at rest = L - max(0, h - d)      rising edge = L</pre>
 *
 * <p>Source: sheet log.md section 2; check values log-edges.csv.
 */
public final class FallingEdge {
  private FallingEdge() {}

  /**
   * The level of the last reading of a step at rest.
   *
   * @param step level at which the step begins while the level rises, m (or the volume there, m3;
   *     then all are volumes)
   * @param hysteresis how much lower its reading lasts, m
   * @param dip how far a run of the pump lowers the level, m; 0 when it never runs
   * @return level, m
   * @throws Impossible if the hysteresis or the dip is negative
   */
  public static double atRest(double step, double hysteresis, double dip) {
    Impossible.ifNegative("hysteresis", hysteresis);
    Impossible.ifNegative("dip", dip);
    return step - Math.max(0, hysteresis - dip);
  }
}
