package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Smooth bends and corrugated hose.
 *
 * <pre>
 * bend   K = f th r + (0.10 + 2.4 f) sin(th/2) + 6.6 f (sqrt(sin(th/2)) + sin(th/2))/r^(4 th/pi)   (includes its own length)
 * corrugation  K = (1 - (D/(D + 0.438 S))^2)^2;  equal f = K D/S
 * </pre>
 *
 * <p>Source: D. C. Rennels and H. M. Hudson, Pipe Flow, 2012; R. Hawthorne, Product Engineering
 * 1963 (by the sheet's provenance). Check values: hydraulics-fittings.csv.
 */
public final class Bend {
  private Bend() {}

  /**
   * Smooth bend, with its own length.
   *
   * @param degrees turned, degrees, above 0 to 360
   * @param radiusOverBore of the centre line, -, 0.5 to 100
   * @param frictionFactor Darcy by {@link Colebrook}, -, above 0
   * @return K, -
   * @throws Impossible outside
   */
  public static double smooth(double degrees, double radiusOverBore, double frictionFactor) {
    Impossible.unlessWithin("angle", degrees, 0, 360, "a bend turns by 0 to 360 degrees");
    Impossible.unlessWithin(
        "bend radius", radiusOverBore, 0.5, 100, "a bend's radius is half a bore or more");
    double f = Impossible.unlessPositive("friction factor", frictionFactor);
    double theta = Math.toRadians(degrees);
    double sine = Math.sin(theta / 2);
    return f * theta * radiusOverBore
        + (0.10 + 2.4 * f) * sine
        + 6.6 * f * (Math.sqrt(sine) + sine) / Math.pow(radiusOverBore, 4 * theta / Math.PI);
  }

  /**
   * One corrugation of a corrugated hose.
   *
   * @param bore m, above 0
   * @param pitch from corrugation to corrugation, m, above 0
   * @return K, -
   * @throws Impossible unless both are above 0
   */
  public static double corrugation(double bore, double pitch) {
    double d = Impossible.unlessPositive("bore", bore);
    double ratio = d / (d + 0.438 * Impossible.unlessPositive("pitch", pitch));
    double part = 1 - ratio * ratio;
    return part * part;
  }

  /**
   * Darcy friction factor that equals the corrugations of a hose.
   *
   * @param bore m, above 0
   * @param pitch m, above 0
   * @return -
   * @throws Impossible unless both are above 0
   */
  public static double corrugatedFactor(double bore, double pitch) {
    return corrugation(bore, pitch) * bore / pitch;
  }
}
