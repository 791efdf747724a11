package leat.climate;

import leat.numeric.Impossible;

/**
 * Light behind a window under an even sky with nothing opposite, at a leaf level with the pane's
 * lower edge before its middle. Direct sun in a south window adds; houses and reveals take.
 *
 * <pre>share = (atan(W/2d) - (d/R) atan(W/2R))/pi, R = sqrt(d^2 + H^2)</pre>
 *
 * <p>Source: view factor of a rectangle at right angles, sheet season-light.md section 2 (summed in
 * 400 x 400 patches), check values season-light.csv.
 */
public final class WindowSill {
  private WindowSill() {}

  /**
   * Share of the whole even sky's light.
   *
   * @param widthM width of the pane, m
   * @param heightM height of the pane over the leaf, m
   * @param distanceM distance of the leaf from the pane, m
   * @return -, under a half
   * @throws Impossible if one is not above 0
   */
  public static double skyShare(double widthM, double heightM, double distanceM) {
    double half = Impossible.unlessPositive("window", widthM) / 2;
    double d = Impossible.unlessPositive("distance", distanceM);
    double r = Math.hypot(d, Impossible.unlessPositive("window", heightM));
    return (Math.atan(half / d) - d / r * Math.atan(half / r)) / Math.PI;
  }

  /**
   * Light at the leaf.
   *
   * @param naturalMolM2 light in the open, mol/m2 a day
   * @param skyShare share of the sky, -
   * @param glass share the pane lets through, 0 to 1
   * @return mol/m2 a day
   * @throws Impossible if a share is outside 0 to 1
   */
  public static double molM2(double naturalMolM2, double skyShare, double glass) {
    return DailyLight.insideMolM2(naturalMolM2, glass, skyShare);
  }
}
