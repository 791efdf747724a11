package leat.command.feed;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat stock}: the salts, the bottles, the season. */
final class StockFlags {
  private static final Flag WEIGH =
      Flag.of(
              "--weigh",
              "SALT=GRAMS",
              Kind.GRAMS,
              "potassium-nitrate=80",
              StockCommand.WEIGH_MEANING)
          .repeatable();
  private static final Flag FOR =
      Flag.of(
          "--for",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "45 L",
          "the grams are for this much tower water, as `dose salts` tells them; for one bottle"
              + " otherwise");
  private static final Flag BOTTLE =
      Flag.of("--bottle", "VOLUME", Kind.quantity(Dimension.VOLUME), "1 L", "size of each bottle")
          .sets("feed.stock.bottle");
  private static final Flag MAKES =
      Flag.of(
              "--makes",
              "VOLUME",
              Kind.quantity(Dimension.VOLUME),
              "200 L",
              StockCommand.MAKES_MEANING)
          .sets("feed.stock.makes");
  private static final Flag COLDEST =
      Flag.of(
              "--coldest",
              "TEMP",
              Kind.quantity(Dimension.TEMPERATURE),
              "5 C",
              "coldest night where the bottles stand")
          .sets("feed.stock.coldest");
  private static final Flag ONE_BOTTLE = Flag.on("--one-bottle", "judges all salts in one bottle");
  private static final Flag SEASON =
      Flag.of(
          "--season",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "900 L",
          "solution the season takes; from the plan otherwise");

  private StockFlags() {}

  static Flag[] all() {
    return new Flag[] {
      WEIGH, FOR, BOTTLE, MAKES, COLDEST, ONE_BOTTLE, SEASON,
    };
  }
}
