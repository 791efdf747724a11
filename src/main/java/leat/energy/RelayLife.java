package leat.energy;

import java.util.OptionalDouble;
import leat.numeric.Impossible;

/**
 * How long a relay's contact lasts: one cycle is one operation.
 *
 * <pre>operations = rated (I_rated/I_inrush)^n, at most the mechanical life
 * days = operations/starts a day</pre>
 *
 * <p>Source: sheet energy.md section 4, check values energy-relay.csv. The exponent is a rule of
 * thumb (one maker's curve: 150 000 at 12 A resistive, 300 000 at 3 A inductive), so its default is
 * 0.
 *
 * @param runA running current, A
 * @param inrushA inrush current, A
 * @param suits whether the inrush is no more than the contact's resistive rating
 * @param contactUse inrush over that rating, 1 is just suiting
 * @param operations operations it can make; empty when it does not suit
 * @param startsPerDay mean starts a day
 * @param days days of running it lasts; empty when it does not suit or never starts
 * @param seasons seasons it lasts; empty likewise
 */
public record RelayLife(
    double runA,
    double inrushA,
    boolean suits,
    double contactUse,
    OptionalDouble operations,
    double startsPerDay,
    OptionalDouble days,
    OptionalDouble seasons) {

  /**
   * The life of a contact that starts so often.
   *
   * @param motor the pump as a load
   * @param contact the relay's contact
   * @param seasonStarts starts in a season, 0 or more
   * @param seasonDays length of the season, days
   * @return the relay's life
   * @throws Impossible if the starts are negative or the season is not above 0
   */
  public static RelayLife of(Motor motor, Contact contact, double seasonStarts, double seasonDays) {
    Accepted.count("starts", seasonStarts);
    Accepted.days(seasonDays);
    double inrush = motor.inrushA();
    boolean suits = inrush <= contact.ratedA();
    OptionalDouble operations =
        suits ? OptionalDouble.of(operations(inrush, contact)) : OptionalDouble.empty();
    OptionalDouble seasons = OptionalDouble.empty();
    OptionalDouble days = OptionalDouble.empty();
    if (suits && seasonStarts > 0) {
      seasons = OptionalDouble.of(operations.getAsDouble() / seasonStarts);
      days = OptionalDouble.of(operations.getAsDouble() / (seasonStarts / seasonDays));
    }
    return new RelayLife(
        motor.runA(),
        inrush,
        suits,
        inrush / contact.ratedA(),
        operations,
        seasonStarts / seasonDays,
        days,
        seasons);
  }

  /**
   * Days that so many operations last, when nothing is known of the contact but its count.
   *
   * @param operations operations it can make, above 0
   * @param startsPerDay mean starts a day, 0 or more
   * @return days; empty when it never starts
   * @throws Impossible if the operations are not above 0 or the starts are negative
   */
  public static OptionalDouble days(double operations, double startsPerDay) {
    Accepted.count("relay cycles", Impossible.unlessPositive("relay cycles", operations));
    Accepted.count("starts", startsPerDay);
    return startsPerDay > 0 ? OptionalDouble.of(operations / startsPerDay) : OptionalDouble.empty();
  }

  private static double operations(double inrushA, Contact contact) {
    double rated = contact.ratedOperations();
    if (contact.lifeExponent() > 0) {
      rated =
          inrushA > 0
              ? rated * Math.pow(contact.ratedA() / inrushA, contact.lifeExponent())
              : contact.mechanicalOperations();
    }
    return Math.min(rated, contact.mechanicalOperations());
  }
}
