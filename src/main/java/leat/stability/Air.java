package leat.stability;

import leat.numeric.Impossible;

/**
 * The pressure of the air's speed.
 *
 * <pre>
 * q = rho v^2/2
 * </pre>
 *
 * <p>Source: EN 1991-1-4:2005, 4.5 (1.25 kg/m3, recommended). Check values:
 * stability-velocity-pressure.csv.
 */
public final class Air {
  /** Density unless the plan says otherwise, kg/m3 (EN 1991-1-4, 4.5). */
  public static final double DENSITY = 1.25;

  private static final double FASTEST = 150;

  private Air() {}

  /**
   * Pressure of a wind speed.
   *
   * @param density of air, kg/m3, 0.3 to 2
   * @param speed m/s, 0 to 150
   * @return Pa
   * @throws Impossible outside
   */
  public static double pressure(double density, double speed) {
    checked(density);
    return 0.5 * density * checkedSpeed(speed) * speed;
  }

  /**
   * Wind speed that makes a pressure.
   *
   * @param density of air, kg/m3, 0.3 to 2
   * @param pressure of the wind, Pa, 0 or more
   * @return m/s
   * @throws Impossible outside
   */
  public static double speed(double density, double pressure) {
    checked(density);
    return Math.sqrt(2 * Impossible.ifNegative("wind pressure", pressure) / density);
  }

  private static void checked(double density) {
    Impossible.unlessWithin("air density", density, 0.3, 2, "air weighs 0.3 to 2 kg/m3");
  }

  static double checkedSpeed(double speed) {
    return Impossible.unlessWithin(
        "wind", speed, 0, FASTEST, "a wind blows with 0 to 150 m/s; no storm is faster");
  }
}
