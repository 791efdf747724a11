package leat.season;

import leat.numeric.Impossible;

/**
 * The marks of the tank as volumes. The usual order is heel, intake, low, full, rim; another order
 * is computed all the same and told by {@link Doubt}.
 *
 * <p>All are volumes of the whole solution with the pump off. Running towers hold some of it, so
 * the level at the pump falls to the intake while that much more is there: the plants drink down to
 * {@link #airL}. The rim is not moved: what the towers hold comes back at each stop, and rain falls
 * longer than a run.
 *
 * <p>Source: mass balance of water.
 *
 * @param fullL filled up to here, L
 * @param lowL topped up from here, L
 * @param intakeL the pump draws air under this, L
 * @param rimL runs over above this, L
 * @param heelL stays in when drained, L
 * @param heldL in the towers while they run, L
 */
public record Marks(
    double fullL, double lowL, double intakeL, double rimL, double heelL, double heldL) {
  /**
   * @throws Impossible if full or rim is not above 0, or a mark is negative or absurd
   */
  public Marks {
    Impossible.unlessPositive("full", Accepted.litres("full", fullL));
    Accepted.litres("low", lowL);
    Accepted.litres("intake", intakeL);
    Impossible.unlessPositive("rim", Accepted.litres("rim", rimL));
    Accepted.litres("heel", heelL);
    Accepted.litres("held", heldL);
  }

  /** Marks of a tank whose towers hold nothing, or nobody knows what. */
  public Marks(double fullL, double lowL, double intakeL, double rimL, double heelL) {
    this(fullL, lowL, intakeL, rimL, heelL, 0);
  }

  /** The running pump draws air under this, L. */
  public double airL() {
    return intakeL + heldL;
  }

  Marks full(double litres) {
    return new Marks(litres, lowL, intakeL, rimL, heelL, heldL);
  }

  Marks low(double litres) {
    return new Marks(fullL, litres, intakeL, rimL, heelL, heldL);
  }

  Marks rim(double litres) {
    return new Marks(fullL, lowL, intakeL, litres, heelL, heldL);
  }
}
