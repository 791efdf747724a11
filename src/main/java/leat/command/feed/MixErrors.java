package leat.command.feed;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.plan.Problem;
import leat.quantity.Unreadable;

/**
 * Messages of the commands that mix a tank ({@code topup}, {@code acid}, {@code stock}, {@code
 * clean}), one named method each; the error gallery holds an entry for each.
 */
public final class MixErrors {
  private MixErrors() {}

  /** More in the tank than it holds to the rim. */
  public static Problem overTheRim(String flag, String typed, double capacity, boolean us) {
    return new Problem(
        "over-the-rim",
        null,
        flag,
        "the tank holds "
            + Phrase.of(capacity, Show.L).render(us)
            + " to the rim; got \""
            + typed
            + "\"");
  }

  /** The same in a row. */
  static Unreadable rowOverTheRim(String cell, double capacity, boolean us) {
    String message = overTheRim(cell, cell, capacity, us).message();
    return new Unreadable("over-the-rim", message, 0, cell.length(), null);
  }

  /** A column of which nobody knows what it holds. */
  public static Problem noSuchRows(String column) {
    return new Problem(
        "rows-of-what",
        null,
        "--column \"" + column + "\"",
        "its name should end in what it holds: a volume (_L, litres, gal), an EC (_mS_cm, _uS_cm, ppm), or what the plan's sender reads (_ohm, counts)");
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

  /** An EC typed that no tank has. */
  public static Problem slip(String flag, String message) {
    return new Problem("ec-slip", null, flag, message);
  }

  /** Why an EC aimed at is asked back. */
  public static String slippedTarget(double ec, double highest) {
    return "an EC of "
        + Phrase.of(ec, Show.MS_CM).render(false)
        + " is more than any crop here likes ("
        + Phrase.of(highest, Show.MS_CM).render(false)
        + " at most); did you mean \""
        + Phrase.of(leat.solution.EcSlip.meant(ec), Show.MS_CM).render(false)
        + "\"?";
  }

  /** Why an EC read is asked back. */
  public static String slippedReading(double ec, double aimed) {
    return "an EC of "
        + Phrase.of(ec, Show.MS_CM).render(false)
        + " is more than any tank of plants has, with "
        + Phrase.of(aimed, Show.MS_CM).render(false)
        + " aimed at; did you mean \""
        + Phrase.of(leat.solution.EcSlip.meant(ec), Show.MS_CM).render(false)
        + "\"?";
  }

  /** A level where the shape of the tank is not known. */
  public static Problem levelOfNoTank(String flag, String typed) {
    return new Problem(
        "level-of-no-tank",
        null,
        flag,
        "a level needs a plan whose tank has its shape and sizes; give litres, such as \"45 L\"; got \""
            + typed
            + "\"");
  }

  /** A recipe that is a bottle and not what the plants get. */
  public static Problem recipeIsStock(double makes) {
    return new Problem(
        "recipe-is-stock",
        null,
        "--makes",
        "weighed into "
            + Phrase.of(makes, Show.L).render(false)
            + " this is a stock bottle: --makes is the tower water that the salts are meant for");
  }

  /** A recipe that is no feed: by its EC kilograms of it would be weighed. */
  public static Problem recipeAddsLittle(double gain, double makes) {
    return new Problem(
        "recipe-adds-little",
        null,
        "--weigh",
        "these salts add "
            + Phrase.of(gain, Show.MS_CM).render(false)
            + " to the "
            + Phrase.of(makes, Show.L).render(false)
            + " that they make, too little to steer an EC by: name the salts of the whole feed");
  }

  /** A liquid dose where the plan's feed is weighed. */
  public static Problem doseIsWeighed(leat.cli.Command command, String again) {
    return new Problem(
        "dose-is-weighed",
        null,
        "leat " + command.name(),
        "this plan's feed is weighed (feed.stock.grams):  "
            + again
            + " --volume ... --ec ...   tells the grams; for a liquid give --rate and --rate-ec");
  }

  /** Salts of one's own, but no recipe that says how many grams of each belong together. */
  public static Problem noRecipe(leat.cli.Command command, String again) {
    return new Problem(
        "no-recipe",
        null,
        "leat " + command.name(),
        "this plan feeds by the gram (feed.salts) and has no recipe: write feed.stock (grams, makes), or type it:  "
            + again
            + " --volume ... --ec ... --weigh SALT=GRAMS --makes VOLUME; for a liquid give --rate and --rate-ec");
  }

  /** A pH aimed at that no tank of plants has. */
  public static Problem sourTarget(leat.plan.Section target, double ph) {
    return target.problem(
        "ph",
        "sour-target",
        "no tank of plants is brought to pH "
            + leat.quantity.NumberText.shortest(ph)
            + ", 4 is the least: is that an EC? A pH is wanted here, such as 5.8");
  }
}
