package leat.command.feed;

import static leat.cli.RowStream.COLUMN;
import static leat.cli.RowStream.PREFIX;
import static leat.cli.RowStream.ROWS;
import static leat.cli.RowStream.STRICT;
import static leat.command.feed.EcTyped.AT;
import static leat.command.feed.EcTyped.SCALE;
import static leat.command.feed.FullMark.FULL;
import static leat.command.feed.LabelRate.PARTS;
import static leat.command.feed.LabelRate.RATE;
import static leat.command.feed.LabelRate.RATE_EC;
import static leat.command.feed.RainSeenText.WAS;
import static leat.command.feed.RainSeenText.WAS_EC;
import static leat.command.sense.LoggedTank.LOG;
import static leat.command.sense.LoggedTank.NOW;

import leat.cli.Flag;
import leat.command.sense.LevelColumns;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat topup}: what is in the tank, the marks, the feed, the rain. */
final class TopupFlags {
  private static final Flag VOLUME =
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.VOLUMES,
          "31 L",
          "what is in the tank; a band as 28..34 L when a stepped sender reads it");
  private static final Flag READING =
      Flag.of(
          "--reading",
          "OHM",
          Kind.TEXT,
          "119",
          "instead of a volume, what the plan's sender reads, with the pump off");
  private static final Flag COUNTS =
      Flag.on("--counts", LevelColumns.COUNTS_MEANING).belongsTo("--reading", "--column");
  private static final Flag MOTION =
      Flag.of(
              "--motion",
              "WAY",
              Kind.choice("unknown", "rising", "falling"),
              "falling",
              LevelColumns.MOTION_MEANING)
          .belongsTo("--reading", "--column");
  private static final Flag EC =
      Flag.of("--ec", "EC", Kind.TEXT, "2.1 mS/cm", "what the meter reads in it: EC, or ppm");
  private static final Flag TARGET =
      Flag.of(
          "--target",
          "EC",
          Kind.TEXT,
          "1.6 mS/cm",
          "EC aimed at, or ppm; target.ec of the plan otherwise");
  private static final Flag WATER_EC =
      Flag.of("--water-ec", "EC", Kind.TEXT, "0.3 mS/cm", EcTyped.WATER_EC_MEANING);
  private static final Flag WEIGH =
      Flag.of(
              "--weigh",
              "SALT=GRAMS",
              Kind.GRAMS,
              "potassium-nitrate=80",
              StockCommand.WEIGH_MEANING)
          .repeatable();
  private static final Flag MAKES =
      Flag.of(
              "--makes",
              "VOLUME",
              Kind.quantity(Dimension.VOLUME),
              "200 L",
              StockCommand.MAKES_MEANING)
          .sets("feed.stock.makes");
  private static final Flag RAIN =
      Flag.of(
          "--rain",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "3 L",
          "rain that has fallen in since the reading; rain that is in volume and EC already counts by itself");
  private static final Flag RAINFALL =
      Flag.of(
          "--rainfall",
          "DEPTH",
          Kind.quantity(Dimension.LENGTH),
          "12 mm",
          "the same by a rain gauge, over tank.rain_area of the plan");
  private static final Flag RAIN_EC =
      Flag.of("--rain-ec", "EC", Kind.quantity(Dimension.EC), "0.03 mS/cm", "EC of the rain")
          .sets("rain.ec");
  private static final Flag PH =
      Flag.of(
          "--ph",
          "PH",
          Kind.NUMBER,
          "6.1",
          "pH of the tank, to tell the pH of the mix; target.ph of the plan otherwise");
  private static final Flag CAN =
      Flag.of(
              "--can",
              "VOLUME",
              Kind.quantity(Dimension.VOLUME),
              "10 L",
              "biggest can: splits the water")
          .sets("season.catch");

  private TopupFlags() {}

  static Flag[] all() {
    return new Flag[] {
      VOLUME, READING, COUNTS, LOG,
      NOW, MOTION, EC, AT,
      SCALE, FULL, TARGET, WATER_EC,
      RATE, RATE_EC, PARTS, WEIGH,
      MAKES, RAIN, RAINFALL, RAIN_EC,
      PH, WAS, WAS_EC, CAN,
      COLUMN, ROWS, PREFIX, STRICT,
    };
  }
}
