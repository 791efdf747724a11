package leat.season;

import leat.numeric.Impossible;

/**
 * The marks of the tank as volumes. The usual order is heel, intake, low, full, rim; another order
 * is computed all the same and told by {@link Doubt}.
 *
 * @param fullL filled up to here, L
 * @param lowL topped up from here, L
 * @param intakeL the pump draws air under this, L
 * @param rimL runs over above this, L
 * @param heelL stays in when drained, L
 */
public record Marks(double fullL, double lowL, double intakeL, double rimL, double heelL) {
  /**
   * @throws Impossible if full or rim is not above 0, or a mark is negative or absurd
   */
  public Marks {
    Impossible.unlessPositive("full", Accepted.litres("full", fullL));
    Accepted.litres("low", lowL);
    Accepted.litres("intake", intakeL);
    Impossible.unlessPositive("rim", Accepted.litres("rim", rimL));
    Accepted.litres("heel", heelL);
  }

  Marks full(double litres) {
    return new Marks(litres, lowL, intakeL, rimL, heelL);
  }

  Marks low(double litres) {
    return new Marks(fullL, litres, intakeL, rimL, heelL);
  }

  Marks rim(double litres) {
    return new Marks(fullL, lowL, intakeL, litres, heelL);
  }
}
