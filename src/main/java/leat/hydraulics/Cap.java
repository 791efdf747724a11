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
 * @param gapForce pressure between discs, N, upper bound; 0 for a slot
 */
public record Cap(double jetForce, double weight, double holdDown, double gapForce) {
  /** The cap should hold down this many times the jet's force, - (practice). */
  public static final double SAFE = 2;

  /**
   * A cap over a jet.
   *
   * @param jet that strikes it
   * @param gapForce of the gap, N, 0 or more; see {@link Gap#pressureForce()}
   * @param mass of the cap, kg, above 0
   * @param grip force that lifts it off besides its weight, N, 0 or more: 0 lies loose
   * @return the balance
   * @throws Impossible outside
   */
  public static Cap of(Jet jet, double gapForce, double mass, double grip) {
    Impossible.unlessWithin("mass", mass, 1e-6, 1e6, "a cap has a mass above 0");
    Impossible.unlessWithin("grip", grip, 0, 1e9, "a grip is 0 or more");
    Impossible.ifNegative("gap force", gapForce);
    double weight = mass * Liquid.GRAVITY;
    return new Cap(jet.force(), weight, weight + grip, gapForce);
  }

  /** Jet's force over the weight, -. */
  public double liftRatio() {
    return jetForce / weight;
  }

  /** The jet lifts the cap by its weight alone. */
  public boolean lifts() {
    return jetForce > weight;
  }

  /** The jet lifts the cap against weight and grip. */
  public boolean liftsAgainstGrip() {
    return jetForce > holdDown;
  }

  /** Jet and pressure in the gap together exceed the weight; an upper bound: "may lift". */
  public boolean liftsWithGapPressure() {
    return jetForce + gapForce > weight;
  }

  /** Weight and grip reach {@link #SAFE} times the jet's force. */
  public boolean safe() {
    return holdDown >= SAFE * jetForce;
  }

  /** Least grip that makes it safe, N; 0 if the weight does. */
  public double gripToBeSafe() {
    return Math.max(0, SAFE * jetForce - weight);
  }

  /** Least mass that makes it safe with the grip it has, kg; 0 if the grip does alone. */
  public double massToBeSafe() {
    return Math.max(0, SAFE * jetForce - (holdDown - weight)) / Liquid.GRAVITY;
  }
}
