package leat.command.run;

import static leat.command.run.DutyFlags.CONTROLLER;
import static leat.command.run.DutyFlags.DC;
import static leat.command.run.DutyFlags.INRUSH;
import static leat.command.run.DutyFlags.MAINS;
import static leat.command.run.DutyFlags.POWER;
import static leat.command.run.DutyFlags.REST;
import static leat.command.run.DutyFlags.RUN;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat duty}: the timing, the price, the period, the relay, a suggestion. */
final class TimingFlags {
  private static final Flag AGAINST =
      Flag.of(
              "--against",
              "RUN/REST",
              Kind.TIMING,
              "15 min/15 min",
              "another timing to compare with")
          .repeatable();
  private static final Flag PRICE =
      Flag.of(
              "--price",
              "PRICE",
              Kind.quantity(Dimension.MONEY_PER_ENERGY),
              "0.31 EUR/kWh",
              "price of energy")
          .sets("tariff.price");
  private static final Flag STANDING =
      Flag.of(
              "--standing",
              "PRICE",
              Kind.quantity(Dimension.MONEY_PER_TIME),
              "0.30 EUR/d",
              "standing charge of the meter")
          .sets("tariff.standing");
  private static final Flag STANDING_SHARE =
      Flag.of(
          "--standing-share",
          "SHARE",
          Kind.quantity(Dimension.SHARE),
          "10 %",
          "share of the standing charge that the tower bears; none otherwise");
  private static final Flag DAYS = Flag.of("--days", "N", Kind.DAYS, "180", "length of the period");
  private static final Flag FROM =
      Flag.of("--from", "DATE", Kind.DATE, "2027-04-10", "first day of the period")
          .sets("season.from");
  private static final Flag TO =
      Flag.of("--to", "DATE", Kind.DATE, "2027-10-15", "last day of the period").sets("season.to");
  private static final Flag TIME_ZONE =
      Flag.of("--time-zone", "ZONE", Kind.TEXT, "Europe/Vienna", "time zone of the clock")
          .sets("site.time_zone");
  private static final Flag RELAY =
      Flag.of(
              "--relay",
              "CURRENT",
              Kind.quantity(Dimension.CURRENT),
              "10 A",
              "what the relay's contact is rated for, resistive")
          .sets("controller.relay.rated");
  private static final Flag CYCLES =
      Flag.of("--cycles", "N", Kind.COUNT, "100000", "operations the relay is rated for")
          .sets("controller.relay.cycles");
  private static final Flag COIL =
      Flag.of(
              "--coil",
              "POWER",
              Kind.quantity(Dimension.POWER),
              "0.4 W",
              "draw of the relay's coil")
          .sets("controller.relay.coil");
  private static final Flag SUGGEST =
      Flag.on("--suggest", "proposes the timing of least energy, from the plan's towers");
  private static final Flag MOST_STARTS =
      Flag.of(
              "--most-starts",
              "RATE",
              Kind.quantity(Dimension.RATE),
              "4 /h",
              "with --suggest, most starts an hour")
          .belongsTo("--suggest");
  private static final Flag PLUG_WATER =
      Flag.of(
              "--plug-water",
              "VOLUME",
              Kind.quantity(Dimension.VOLUME),
              "20 mL",
              "with --suggest, water that one plug and its roots hold")
          .belongsTo("--suggest");
  private static final Flag PLANT_USE =
      Flag.of(
              "--plant-use",
              "FLOW",
              Kind.quantity(Dimension.FLOW),
              "0.12 L/d",
              "with --plug-water, what one plant drinks; else by the plan's season")
          .belongsTo("--suggest");
  private static final Flag DRY_LIMIT =
      Flag.of("--dry-limit", "TIME", Kind.quantity(Dimension.TIME), "30 min", "longest rest by day")
          .sets("dry_limit.day");
  private static final Flag DRY_LIMIT_NIGHT =
      Flag.of(
              "--dry-limit-night",
              "TIME",
              Kind.quantity(Dimension.TIME),
              "60 min",
              "longest rest at night")
          .sets("dry_limit.night");
  private static final Flag WETTING =
      Flag.of(
              "--wetting",
              "TIME",
              Kind.quantity(Dimension.TIME),
              "20 s",
              "how long the lowest pot is wetted")
          .sets("wetting");

  private TimingFlags() {}

  static Flag[] all() {
    return new Flag[] {
      POWER, RUN, REST, AGAINST,
      PRICE, STANDING, STANDING_SHARE, DAYS,
      FROM, TO, TIME_ZONE, CONTROLLER,
      RELAY, CYCLES, COIL, INRUSH,
      MAINS, DC, SUGGEST, MOST_STARTS,
      PLUG_WATER, PLANT_USE, DRY_LIMIT, DRY_LIMIT_NIGHT,
      WETTING,
    };
  }
}
