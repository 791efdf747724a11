package leat.stability;

import leat.numeric.Impossible;

/**
 * A joint of a merely stacked tower: a ring that bears weight and the wind's moment.
 *
 * <pre>
 * N = W + P;   M = q sum(cf A (z - z_joint)) of the parts above
 * opens when M is over N (Ro^2 + Ri^2)/(4 Ro), rolls over the rim when M is over N Ro
 * </pre>
 *
 * <p>Pump off: dry parts and plants, no film. A spigot bears moment that is not counted. Plastic
 * creeps: a tie fades, so a spring, and tighten it again.
 *
 * <p>Source: core of a ring section as on a public page on strength of materials; sheet
 * stability-build.md section 5. Check values: stability-joint.csv.
 *
 * @param height of the joint over the foot plane, m
 * @param outer diameter of the ring, m
 * @param inner diameter of the ring, m; the outer one when the wall is not known, 4 % too good
 * @param mass above, kg
 * @param above faces above, heights from the joint
 * @param tie preload of a rod or cord, N, 0 for none
 */
public record Joint(
    double height, double outer, double inner, double mass, Faces above, double tie) {
  /** Refuses what is no ring. */
  public Joint {
    Impossible.ifNegative("height", height);
    Impossible.unlessPositive("diameter", outer);
    Impossible.unlessWithin("wall", inner, 0, outer, "a wall is 0 to half the diameter thick");
    Impossible.ifNegative("mass", mass);
    Impossible.ifNegative("tie", tie);
  }

  /** Radius of the ring's core, m: a force inside it leaves no gap. */
  public double core() {
    return (outer * outer + inner * inner) / (8 * outer);
  }

  /** Press on the joint, N. */
  public double pressed() {
    return weight() + tie;
  }

  /** Moment of the wind at a pressure in Pa, N m. */
  public double moment(double pressure) {
    return Impossible.ifNegative("wind pressure", pressure) * above.moment();
  }

  /** Gust that opens the windward edge: it leaks, m/s; null when no wind can. */
  public Double opensAt(double density) {
    return at(core(), density);
  }

  /** Gust that rolls the parts over the rim, m/s; null when no wind can. */
  public Double rollsAt(double density) {
    return at(outer / 2, density);
  }

  /** Whether the parts above roll over at a pressure in Pa. */
  public boolean rolls(double pressure) {
    return moment(pressure) > pressed() * outer / 2;
  }

  /** Whole preload that keeps it shut at a pressure in Pa, N; 0 when the weight does. */
  public double tieToStayShut(double pressure) {
    return Math.max(0, moment(pressure) / core() - weight());
  }

  private double weight() {
    return Equilibrium.GRAVITY * mass;
  }

  private Double at(double arm, double density) {
    double perPressure = above.moment();
    return perPressure > 0
        ? Double.valueOf(Air.speed(density, pressed() * arm / perPressure))
        : null;
  }
}
