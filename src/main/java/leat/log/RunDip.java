package leat.log;

import leat.numeric.Impossible;

/**
 * How much lower a running pump makes the sender read, and back from that to the litres that a run
 * keeps above the tank. A run takes its litres up in a first part of it, the ramp, and the float
 * moves only once the level has fallen by the hysteresis. Over rows at any moment of a run the mean
 * is
 *
 * <pre>
 * seen = ((d - h)^2 r/(2 d) + (1 - r)(d - h))        r = ramp / run, d = hold-up, h = hysteresis
 * </pre>
 *
 * <p>A mean of running rows that is taken for the whole dip reads low by the ramp's share.
 *
 * <p>Source: mean of a straight ramp, by integration. How long the ramp lasts is common practice,
 * no source.
 */
public final class RunDip {
  /** Time in which a tower takes up what it holds, s. Common practice, no source. */
  public static final double RAMP_S = 60;

  private RunDip() {}

  /**
   * Mean volume by which running rows read lower.
   *
   * @param dip what a run keeps up, m3
   * @param hysteresis litres by which a reading lasts on the way down, m3
   * @param ramp part of a run in which it is taken up, 0 to 1
   * @return m3; 0 when the hysteresis hides the dip
   * @throws Impossible if a number is negative or the ramp above 1
   */
  public static double seen(double dip, double hysteresis, double ramp) {
    check(hysteresis, ramp);
    double u = Impossible.ifNegative("dip", dip) - hysteresis;
    return u > 0 ? u * u * ramp / (2 * dip) + (1 - ramp) * u : 0;
  }

  /**
   * What a run keeps up, from what is seen of it.
   *
   * @param seen mean volume by which running rows read lower, m3
   * @param hysteresis as in {@link #seen}, m3
   * @param ramp as there, 0 to 1
   * @return m3
   * @throws Impossible as {@link #seen}
   */
  public static double dip(double seen, double hysteresis, double ramp) {
    check(hysteresis, ramp);
    Impossible.ifNegative("seen", seen);
    // 2 (u + h) seen = u^2 ramp + 2 (1 - ramp) u (u + h)
    double a = 2 - ramp;
    double b = 2 * (1 - ramp) * hysteresis - 2 * seen;
    double c = -2 * hysteresis * seen;
    return hysteresis + (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
  }

  /**
   * The hysteresis, where it is known what a run keeps up.
   *
   * @param seen as in {@link #dip}, m3
   * @param dip what a run keeps up, m3
   * @param ramp as there, 0 to 1
   * @return m3; 0 when more is seen than the run keeps up
   * @throws Impossible as {@link #seen}
   */
  public static double hysteresis(double seen, double dip, double ramp) {
    check(0, ramp);
    Impossible.ifNegative("seen", seen);
    Impossible.unlessPositive("dip", dip);
    if (ramp == 0) {
      return Math.max(0, dip - seen);
    }
    double b = 1 - ramp;
    double u = (-b + Math.sqrt(b * b + 2 * ramp * seen / dip)) * dip / ramp;
    return Math.max(0, dip - u);
  }

  private static void check(double hysteresis, double ramp) {
    Impossible.ifNegative("hysteresis", hysteresis);
    Impossible.unlessWithin("ramp", ramp, 0, 1, "a part of a run is 0 to 1");
  }
}
