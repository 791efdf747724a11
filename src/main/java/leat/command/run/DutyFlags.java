package leat.command.run;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags that the commands of the pump's timing share. */
final class DutyFlags {
  private DutyFlags() {}

  static final Kind POWER = Kind.quantity(Dimension.POWER);
  static final Kind TIME = Kind.quantity(Dimension.TIME);
  static final Kind VOLTAGE = Kind.quantity(Dimension.VOLTAGE);
  static final Kind SHARE = Kind.quantity(Dimension.SHARE);

  /** Those of {@code leat duty} itself. */
  static Flag[] all() {
    return new Flag[] {
      power(),
      run(),
      rest(),
      Flag.of(
              "--against",
              "RUN/REST",
              Kind.TIMING,
              "15 min/15 min",
              "another timing to compare with")
          .repeatable(),
      Flag.of(
              "--price",
              "PRICE",
              Kind.quantity(Dimension.MONEY_PER_ENERGY),
              "0.31 EUR/kWh",
              "price of energy")
          .sets("tariff.price"),
      Flag.of(
              "--standing",
              "PRICE",
              Kind.quantity(Dimension.MONEY_PER_TIME),
              "0.30 EUR/d",
              "standing charge of the meter")
          .sets("tariff.standing"),
      Flag.of(
          "--standing-share",
          "SHARE",
          SHARE,
          "10 %",
          "share of the standing charge that the tower bears; none otherwise"),
      Flag.of("--days", "N", Kind.DAYS, "180", "length of the period"),
      Flag.of("--from", "DATE", Kind.DATE, "2027-04-10", "first day of the period")
          .sets("season.from"),
      Flag.of("--to", "DATE", Kind.DATE, "2027-10-15", "last day of the period").sets("season.to"),
      Flag.of("--time-zone", "ZONE", Kind.TEXT, "Europe/Vienna", "time zone of the clock")
          .sets("site.time_zone"),
      controller(),
      Flag.of(
              "--relay",
              "CURRENT",
              Kind.quantity(Dimension.CURRENT),
              "10 A",
              "what the relay's contact is rated for, resistive")
          .sets("controller.relay.rated"),
      Flag.of("--cycles", "N", Kind.COUNT, "100000", "operations the relay is rated for")
          .sets("controller.relay.cycles"),
      Flag.of("--coil", "POWER", POWER, "0.4 W", "draw of the relay's coil")
          .sets("controller.relay.coil"),
      inrush(),
      mains(),
      dc(),
      Flag.on("--suggest", "proposes the timing of least energy, from the plan's towers"),
      Flag.of(
              "--most-starts",
              "RATE",
              Kind.quantity(Dimension.RATE),
              "4 /h",
              "with --suggest, most starts an hour")
          .belongsTo("--suggest"),
      Flag.of(
              "--plug-water",
              "VOLUME",
              Kind.quantity(Dimension.VOLUME),
              "20 mL",
              "with --suggest, water that one plug and its roots hold")
          .belongsTo("--suggest"),
      Flag.of(
              "--plant-use",
              "FLOW",
              Kind.quantity(Dimension.FLOW),
              "0.12 L/d",
              "with --plug-water, what one plant drinks; else by the plan's season")
          .belongsTo("--suggest"),
      Flag.of("--dry-limit", "TIME", TIME, "30 min", "longest rest by day").sets("dry_limit.day"),
      Flag.of("--dry-limit-night", "TIME", TIME, "60 min", "longest rest at night")
          .sets("dry_limit.night"),
      Flag.of("--wetting", "TIME", TIME, "20 s", "how long the lowest pot is wetted")
          .sets("wetting"),
    };
  }

  static Flag power() {
    return Flag.of("--power", "POWER", POWER, "22 W", "electrical power of the pump while it runs")
        .sets("pump.power");
  }

  static Flag run() {
    return Flag.of("--run", "TIME", TIME, "90 s", "how long the pump runs; also --on")
        .alias("--on");
  }

  static Flag rest() {
    return Flag.of("--rest", "TIME", TIME, "12 min", "how long it rests; also --off")
        .alias("--off");
  }

  static Flag controller() {
    return Flag.of("--controller", "POWER", POWER, "1.2 W", "draw of the controller, all the time")
        .sets("controller.power");
  }

  static Flag mains() {
    return Flag.of("--mains", "VOLTAGE", VOLTAGE, "230 V", "mains voltage the pump runs on")
        .sets("pump.supply.mains");
  }

  static Flag dc() {
    return Flag.of("--dc", "VOLTAGE", VOLTAGE, "12 V", "direct voltage the pump runs on")
        .sets("pump.supply.dc");
  }

  static Flag inrush() {
    return Flag.of(
            "--inrush",
            "N",
            Kind.NUMBER,
            "6",
            "current at the moment of starting, times the running current")
        .sets("controller.relay.inrush");
  }
}
