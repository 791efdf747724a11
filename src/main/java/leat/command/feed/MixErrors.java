package leat.command.feed;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.plan.Problem;

/**
 * Messages of the commands that mix a tank ({@code topup}, {@code acid}, {@code stock}, {@code
 * clean}), one named method each; the error gallery holds an entry for each.
 */
public final class MixErrors {
  private MixErrors() {}

  /** More in the tank than it holds to the rim. */
  public static Problem overTheRim(String typed, double capacity) {
    return new Problem(
        "over-the-rim",
        null,
        "--volume",
        "the tank holds "
            + Phrase.of(capacity, Show.L).render(false)
            + " to the rim; got \""
            + typed
            + "\"");
  }

  /** A salt that is none. */
  public static Problem unknownSalt(leat.plan.Plan plan, String typed) {
    return new Problem(
        "unknown-stock-salt", null, "--weigh", leat.system.StockOf.unknown(plan, typed));
  }

  /** A salt weighed below zero. */
  public static Problem negativeWeight(String salt) {
    return new Problem(
        "negative-weight", null, "--weigh " + salt, "a weight cannot be negative; leave it out");
  }
}
