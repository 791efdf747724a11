package leat.command.run;

import static leat.command.run.DutyFlags.CONTROLLER;
import static leat.command.run.DutyFlags.DC;
import static leat.command.run.DutyFlags.POWER;
import static leat.command.run.DutyFlags.REST;
import static leat.command.run.DutyFlags.RUN;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat duty backup}: the load, the battery, the outage. */
final class BackupFlags {
  private static final Flag HOURS =
      Flag.of(
              "--hours",
              "TIME",
              Kind.quantity(Dimension.TIME),
              "6 h",
              "how long the power cut lasts")
          .sets("backup.hours");
  private static final Flag BATTERY =
      Flag.of(
              "--battery",
              "VOLTAGE",
              Kind.quantity(Dimension.VOLTAGE),
              "12.8 V",
              "voltage of the battery")
          .sets("backup.battery");
  private static final Flag CAPACITY =
      Flag.of(
              "--capacity",
              "CHARGE",
              Kind.quantity(Dimension.CHARGE),
              "20 Ah",
              "capacity of the battery you have")
          .sets("backup.capacity");
  private static final Flag CHEMISTRY =
      Flag.of(
              "--chemistry",
              "WORD",
              Kind.choice("lithium", "lead"),
              "lead",
              "lithium (iron phosphate) or lead")
          .sets("backup.chemistry");
  private static final Flag DEPTH =
      Flag.of(
              "--depth",
              "SHARE",
              Kind.quantity(Dimension.SHARE),
              "80 %",
              "share of it that may be taken out")
          .sets("backup.depth");
  private static final Flag RESERVE =
      Flag.of(
              "--reserve",
              "SHARE",
              Kind.quantity(Dimension.SHARE),
              "25 %",
              "reserve for age and cold")
          .sets("backup.reserve");
  private static final Flag INVERTER =
      Flag.of(
              "--inverter",
              "SHARE",
              Kind.quantity(Dimension.SHARE),
              "85 %",
              "efficiency of the inverter")
          .sets("backup.inverter");
  private static final Flag IDLE =
      Flag.of(
              "--idle",
              "POWER",
              Kind.quantity(Dimension.POWER),
              "4 W",
              "draw of the inverter with nothing on")
          .sets("backup.idle");
  private static final Flag SUN =
      Flag.of(
          "--sun",
          "HOURS",
          Kind.quantity(Dimension.TIME_PER_DAY),
          "3.2 h/d",
          "peak sun hours of the worst month, for a solar panel that covers every day");

  private BackupFlags() {}

  static Flag[] all() {
    return new Flag[] {
      HOURS, BATTERY, CAPACITY, CHEMISTRY,
      DEPTH, RESERVE, INVERTER, IDLE,
      POWER, RUN, REST, CONTROLLER,
      DC, SUN,
    };
  }
}
