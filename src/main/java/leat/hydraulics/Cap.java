package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Whether the water lifts the cap.
 *
 * <p>Source: sheet hydraulics.md section 9 and hydraulics-tower.md section 4; check values:
 * hydraulics-cap.csv.
 *
 * @param jetForce N
 * @param weight of the cap, N
 * @param holdDown weight and grip, N
 */
public record Cap(double jetForce, double weight, double holdDown) {
  /** The cap should hold down this many times the jet's force, - (practice). */
  public static final double SAFE = 2;

  /**
   * A cap over a jet.
   *
   * @param jet that strikes it
   * @param mass of the cap, kg, above 0
   * @param grip force that lifts it off besides its weight, N, 0 or more: 0 lies loose
   * @return the balance
   * @throws Impossible outside
   */
  public static Cap of(Jet jet, double mass, double grip) {
    Impossible.unlessWithin("mass", mass, 1e-6, 1e6, "a cap has a mass above 0");
    Impossible.unlessWithin("grip", grip, 0, 1e9, "a grip is 0 or more");
    double weight = mass * Liquid.GRAVITY;
    return new Cap(jet.force(), weight, weight + grip);
  }

  /** The jet lifts the cap against weight and grip. */
  public boolean liftsAgainstGrip() {
    return jetForce > holdDown;
  }
}
