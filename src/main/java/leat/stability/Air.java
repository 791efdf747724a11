package leat.stability;

import leat.numeric.Impossible;

/**
 * Density of air and the pressure of its speed.
 *
 * <pre>
 * rho = p/(R (t + 273.15));   q = rho v^2/2
 * </pre>
 *
 * <p>Source: EN 1991-1-4:2005, 4.5 (1.25 kg/m3, recommended); ideal gas of dry air, R as in the
 * 1976 standard atmosphere (1.2250 kg/m3 at 15 C, 1013.25 hPa). Check values:
 * stability-velocity-pressure.csv.
 */
public final class Air {
  /** Density unless the plan says otherwise, kg/m3 (EN 1991-1-4, 4.5). */
  public static final double DENSITY = 1.25;

  /** Gas constant of dry air, J/(kg K). */
  private static final double GAS_CONSTANT = 287.05;

  private static final double KELVIN = 273.15;
  private static final double FASTEST = 150;

  private Air() {}

  /**
   * Density of dry air; damp air is up to 1 % lighter.
   *
   * @param celsius degrees Celsius, -90 to 60
   * @param pressure at the place, Pa, 30 000 to 110 000
   * @return kg/m3
   * @throws Impossible outside
   */
  public static double density(double celsius, double pressure) {
    Impossible.unlessWithin("temperature", celsius, -90, 60, "air has -90 to 60 degrees");
    Impossible.unlessWithin("air pressure", pressure, 3e4, 1.1e5, "air has 300 to 1100 hPa");
    return pressure / (GAS_CONSTANT * (celsius + KELVIN));
  }

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
