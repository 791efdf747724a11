package leat.energy;

import leat.numeric.Impossible;

/**
 * A relay's contact. A rating for alternating current says nothing on direct current, which
 * contacts break badly: take the column of the supply in use.
 *
 * <p>Source: electrical endurance as in IEC 61810-1, commonly stated as 100 000 cycles at rated
 * resistive load, mechanical endurance ten times that or more, often 10 million (public relay
 * notes); sheet energy.md section 4.
 *
 * @param ratedA resistive rating at the voltage in use, A
 * @param ratedOperations cycles at that load
 * @param mechanicalOperations cycles without load, the cap of any life
 * @param lifeExponent n of the life at lighter load, 0 for no credit
 */
public record Contact(
    double ratedA, double ratedOperations, double mechanicalOperations, double lifeExponent) {
  /** Cycles at rated resistive load. */
  public static final double USUAL_OPERATIONS = 1e5;

  /** Cycles without load. */
  public static final double USUAL_MECHANICAL_OPERATIONS = 1e7;

  /** No credit for a light load. */
  public static final double DEFAULT_LIFE_EXPONENT = 0;

  /**
   * @throws Impossible if a rating is not above 0 or the exponent is outside 0 to 5
   */
  public Contact {
    Accepted.amperes("relay rating", ratedA);
    Accepted.count("relay cycles", Impossible.unlessPositive("relay cycles", ratedOperations));
    Accepted.count(
        "mechanical cycles", Impossible.unlessPositive("mechanical cycles", mechanicalOperations));
    Impossible.unlessWithin("life exponent", lifeExponent, 0, 5, "it lies between 0 and 5");
  }

  /**
   * A board relay with the usual mechanical life and no credit for a light load.
   *
   * @param ratedA resistive rating, A
   * @param ratedOperations cycles at that load
   * @return the contact
   * @throws Impossible if one is not above 0
   */
  public static Contact of(double ratedA, double ratedOperations) {
    return new Contact(ratedA, ratedOperations, USUAL_MECHANICAL_OPERATIONS, DEFAULT_LIFE_EXPONENT);
  }
}
