package leat.level;

/**
 * A cylinder lying on its side, with flat ends.
 *
 * <pre>A(z) = 2 a sqrt(z (D - z))
 * V(z) = a R^2/2 (phi - sin phi),   phi = 2 atan2(sqrt(z (D - z)), R - z)</pre>
 *
 * with D the diameter, R = D/2 and a the inside length. This is the textbook's {@code a (R^2
 * acos((R-z)/R) - (R-z) sqrt(2 R z - z^2))} in a form that keeps its digits in a thin segment;
 * below {@value #SERIES_BELOW} rad phi - sin phi is summed as its series.
 *
 * <p>Source: geometry (circular segment). Check values: sheets level-tank-volume.csv and
 * level-tank-shapes.csv.
 */
public final class LyingCylinder implements Tank {
  private static final double SERIES_BELOW = 1.0;

  private final double diameter;
  private final double length;

  /**
   * @param diameter inside diameter, m
   * @param length inside length along the axis, m
   * @throws Impossible if a size is not above 0
   */
  public LyingCylinder(double diameter, double length) {
    this.diameter = Accepted.size("diameter", diameter);
    this.length = Accepted.size("length", length);
  }

  @Override
  public double height() {
    return diameter;
  }

  @Override
  public double area(double level) {
    double z = checkedLevel(level);
    return 2 * length * Math.sqrt(z * (diameter - z));
  }

  @Override
  public double volume(double level) {
    double z = checkedLevel(level);
    double radius = diameter / 2;
    double phi = 2 * Math.atan2(Math.sqrt(z * (diameter - z)), radius - z);
    return length * radius * radius / 2 * lessItsSine(phi);
  }

  /** phi - sin phi, without loss of digits near 0; phi in rad. */
  private static double lessItsSine(double phi) {
    if (phi >= SERIES_BELOW) {
      return phi - Math.sin(phi);
    }
    double square = phi * phi;
    double sum = 1;
    for (int k = 8; k >= 1; k--) {
      sum = 1 - square / ((2 * k + 2) * (2 * k + 3)) * sum;
    }
    return phi * square / 6 * sum;
  }

  @Override
  public double level(double volume) {
    return Inverse.level(this, checkedVolume(volume), 0, diameter);
  }
}
