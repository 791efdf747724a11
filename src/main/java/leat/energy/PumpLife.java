package leat.energy;

/**
 * How long a pump lasts, and how likely it survives a season.
 *
 * <pre>wear = run + starts x wear of a start
 * survival = exp(-wear/MTBF)</pre>
 *
 * <p>An MTBF of 20 000 h is no promise of 20 000 h: 37 % survive that long. It says nothing of
 * wear-out.
 *
 * <p>Source: exponential life distribution; sheet energy.md section 4, check values
 * energy-relay.csv.
 *
 * @param seasonRunS running in a season, s
 * @param seasonWearS running with the wear of starts in a season, s
 * @param seasons seasons it lasts
 * @param survivesSeason probability to survive a season, 0 to 1
 */
public record PumpLife(
    double seasonRunS, double seasonWearS, double seasons, double survivesSeason) {
  /**
   * The life of a pump that runs and starts so much.
   *
   * @param wear the pump's figures
   * @param seasonRunS running in a season, s, above 0
   * @param seasonStarts starts in a season
   * @return the pump's life
   * @throws leat.numeric.Impossible if the running is not above 0 or the starts are negative
   */
  public static PumpLife of(PumpWear wear, double seasonRunS, double seasonStarts) {
    Accepted.someTime("run", seasonRunS);
    Accepted.count("starts", seasonStarts);
    double worn = seasonRunS + seasonStarts * wear.startWearS();
    return new PumpLife(seasonRunS, worn, wear.lifeS() / worn, Math.exp(-worn / wear.mtbfS()));
  }
}
