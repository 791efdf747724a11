package leat.hydraulics;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Smooth bends, coiled hose and corrugated hose.
 *
 * <pre>
 * bend   K = f th r + (0.10 + 2.4 f) sin(th/2) + 6.6 f (sqrt(sin(th/2)) + sin(th/2))/r^(4 th/pi)   (includes its own length)
 * coil   laminar  1/(1 - (1 - (11.6/De)^0.45)^(1/0.45)) on 64/Re,  De = Re sqrt(D/Dc) &gt; 11.6   (White 1929)
 *        turbulent (Re (D/Dc)^2)^0.05, not below 1, on Colebrook   (Ito 1959)
 *        change over at Re 20000 (D/Dc)^0.32
 * corrugation  K = (1 - (D/(D + 0.438 S))^2)^2;  equal f = K D/S
 * </pre>
 *
 * <p>Source: D. C. Rennels and H. M. Hudson, Pipe Flow, 2012; C. M. White 1929; H. Ito 1959; R.
 * Hawthorne, Product Engineering 1963 (by the sheet's provenance). Check values:
 * hydraulics-fittings.csv.
 */
public final class Bend {
  /** Dean numbers of White's factor. */
  public static final Validity COIL_LAMINAR = Validity.of("Dean number", 11.6, 2000);

  private static final double DEAN_START = 11.6;

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
   * Friction factor of a coil over that of the straight tube in the same regime: 64/Re below the
   * critical Reynolds number, {@link Colebrook} above.
   *
   * @param re Reynolds number, -, above 0
   * @param boreOverCoil bore over the coil's diameter, centre to centre, -, above 0 to 0.5
   * @return ratio, -, 1 or more
   * @throws Impossible outside
   */
  public static double coilRatio(double re, double boreOverCoil) {
    if (re > coilCritical(boreOverCoil)) {
      return Math.max(1, Math.pow(re * boreOverCoil * boreOverCoil, 0.05));
    }
    double dean = Impossible.unlessPositive("Reynolds number", re) * Math.sqrt(boreOverCoil);
    if (dean <= DEAN_START) {
      return 1;
    }
    return 1 / (1 - Math.pow(1 - Math.pow(DEAN_START / dean, 0.45), 1 / 0.45));
  }

  /**
   * Reynolds number at which the flow in a coil turns turbulent.
   *
   * @param boreOverCoil bore over the coil's diameter, -, above 0 to 0.5
   * @return Re, -
   * @throws Impossible outside
   */
  public static double coilCritical(double boreOverCoil) {
    Impossible.unlessWithin("coil", boreOverCoil, 1e-6, 0.5, "a coil is at least two bores wide");
    return 20000 * Math.pow(boreOverCoil, 0.32);
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
