package leat.stability;

import leat.numeric.Impossible;

/**
 * A body that merely stands, wind square to one side of its foot: does it tip, does it slide.
 *
 * <pre>
 * M_over = q sum(cf A z);   M_right = g m e;   tips at sqrt(2 M_right/(rho sum(cf A z)))
 * slides at sqrt(2 mu g m/(rho sum(cf A)));   use = 1.5 M_over/(0.9 M_right)
 * </pre>
 *
 * <p>Speeds are gusts at the tower and do not hang on the wind chosen. The same record does for the
 * tower on its lid: heights from the lid, the tower's mass, its foot's radius as lever.
 *
 * <p>Source: balance of moments; sheet stability-build.md section 3. Check values:
 * stability-overturn.csv.
 *
 * @param mass kg, above 0, over the middle of the foot
 * @param lever from the middle to the leeward edge, m, above 0
 * @param faces what the wind meets
 * @param friction against the ground, -, above 0
 */
public record Standing(double mass, double lever, Faces faces, double friction) {
  /** Refuses what cannot stand. */
  public Standing {
    Impossible.unlessPositive("mass", mass);
    Impossible.unlessPositive("foot", lever);
    Impossible.unlessPositive("friction", friction);
  }

  /**
   * A body on a foot of its own size along the wind.
   *
   * @param mass kg, above 0
   * @param foot size along the wind, m, above 0: twice the lever
   * @param faces what the wind meets
   * @param friction against the ground, -, above 0
   * @return the body
   * @throws Impossible outside
   */
  public static Standing onFoot(double mass, double foot, Faces faces, double friction) {
    return new Standing(mass, foot / 2, faces, friction);
  }

  /** Weight, N. */
  public double weight() {
    return Equilibrium.GRAVITY * mass;
  }

  /** Wind force, N, at a pressure in Pa. */
  public double force(double pressure) {
    return Impossible.ifNegative("wind pressure", pressure) * faces.drag();
  }

  /** Overturning moment, N m, at a pressure in Pa. */
  public double overturning(double pressure) {
    return Impossible.ifNegative("wind pressure", pressure) * faces.moment();
  }

  /** Righting moment, N m. */
  public double righting() {
    return weight() * lever;
  }

  /** Righting over overturning, -, at a pressure in Pa; null when nothing pushes. */
  public Double safety(double pressure) {
    double over = overturning(pressure);
    return over > 0 ? Double.valueOf(righting() / over) : null;
  }

  /** Factored overturning over factored righting, -, at a pressure in Pa: 1 is the limit. */
  public double utilisation(double pressure) {
    return Equilibrium.WIND * overturning(pressure) / (Equilibrium.WEIGHT * righting());
  }

  /** Whether it stands with the factors, at a pressure in Pa. */
  public boolean passes(double pressure) {
    return utilisation(pressure) <= 1;
  }

  /** Gust that tips it, m/s, in air of a density in kg/m3; null when no wind can. */
  public Double tipsAt(double density) {
    return speed(righting(), faces.moment(), density);
  }

  /** Gust up to which it passes, m/s, in air of a density in kg/m3; null when every. */
  public Double passesTo(double density) {
    return speed(righting() / Equilibrium.LEAST_SAFETY, faces.moment(), density);
  }

  /**
   * What keeps the foot in its place over the wind force, -, with the factors, at a pressure in Pa,
   * where lines to the ground pull level with {@code pull} N and press on the foot with {@code
   * press} N: friction of what presses, and the pull; null when nothing pushes.
   */
  public Double slideSafety(double pressure, double pull, double press) {
    double force = force(pressure);
    double holds = pull + friction * (Equilibrium.WEIGHT * weight() + press);
    return force > 0 ? Double.valueOf(holds / (Equilibrium.WEIGHT * force)) : null;
  }

  /** Friction that does not slide with such lines at a pressure in Pa, with the factors, -. */
  public double frictionNotToSlide(double pressure, double pull, double press) {
    return Math.max(0, Equilibrium.WIND * force(pressure) - pull)
        / (Equilibrium.WEIGHT * weight() + press);
  }

  /** Gust that shifts it, m/s, in air of a density in kg/m3; null when no wind can. */
  public Double slidesAt(double density) {
    return speed(friction * weight(), faces.drag(), density);
  }

  /** Whole mass that passes at a pressure in Pa, kg. */
  public double massToPass(double pressure) {
    return Equilibrium.LEAST_SAFETY * overturning(pressure) / (Equilibrium.GRAVITY * lever);
  }

  /** Mass to add over the middle of the foot so that it passes at a pressure in Pa, kg. */
  public double massToAdd(double pressure) {
    return Math.max(0, massToPass(pressure) - mass);
  }

  /** Whole mass that does not slide at a pressure in Pa, with the same factors, kg. */
  public double massNotToSlide(double pressure) {
    return Equilibrium.LEAST_SAFETY * force(pressure) / (Equilibrium.GRAVITY * friction);
  }

  private static Double speed(double holds, double perPressure, double density) {
    return perPressure > 0 ? Double.valueOf(Air.speed(density, holds / perPressure)) : null;
  }
}
