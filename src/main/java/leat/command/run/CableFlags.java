package leat.command.run;

import static leat.command.run.DutyFlags.DC;
import static leat.command.run.DutyFlags.INRUSH;
import static leat.command.run.DutyFlags.POWER;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat duty cable}: the supply, the pump, the wire. */
final class CableFlags {
  private static final Flag LENGTH =
      Flag.of(
              "--length",
              "LENGTH",
              Kind.quantity(Dimension.LENGTH),
              "14 m",
              "length of the cable, one way")
          .sets("pump.supply.cable.length");
  private static final Flag SECTION =
      Flag.of(
              "--section",
              "AREA",
              Kind.quantity(Dimension.AREA),
              "1.5 mm2",
              "copper section of one core; the least that will do otherwise")
          .sets("pump.supply.cable.section");
  private static final Flag GAUGE =
      Flag.of("--gauge", "AWG", Kind.TEXT, "18 AWG", "wire gauge in place of --section");
  private static final Flag STRANDS =
      Flag.of(
          "--strands",
          "WORD",
          Kind.choice("flexible", "solid"),
          "flexible",
          "flexible cord, or solid and stranded wire");
  private static final Flag TEMPERATURE =
      Flag.of(
          "--temperature",
          "TEMP",
          Kind.quantity(Dimension.TEMPERATURE),
          "40 C",
          "temperature of the copper (default 20 C)");
  private static final Flag LEAST_VOLTAGE =
      Flag.of(
          "--least-voltage",
          "VOLTAGE",
          Kind.quantity(Dimension.VOLTAGE),
          "9 V",
          "voltage the pump needs to start");
  private static final Flag DROP =
      Flag.of(
          "--drop",
          "SHARE",
          Kind.quantity(Dimension.SHARE),
          "5 %",
          "drop that is still good (default 5 %)");

  private CableFlags() {}

  static Flag[] all() {
    return new Flag[] {
      DC, POWER, LENGTH, SECTION,
      GAUGE, STRANDS, TEMPERATURE, INRUSH,
      LEAST_VOLTAGE, DROP,
    };
  }
}
