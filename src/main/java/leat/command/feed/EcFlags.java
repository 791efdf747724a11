package leat.command.feed;

import static leat.cli.RowStream.COLUMN;
import static leat.cli.RowStream.PREFIX;
import static leat.cli.RowStream.ROWS;
import static leat.cli.RowStream.STRICT;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat ec}: the reading, the standard, the ions. */
final class EcFlags {
  private static final Flag AT =
      Flag.of(
          "--at",
          "TEMPERATURE",
          Kind.quantity(Dimension.TEMPERATURE),
          "18 C",
          "temperature of a reading without compensation; leave it out when the meter says ATC");
  private static final Flag SCALE =
      Flag.of(
          "--scale",
          "500|640|700",
          Kind.NUMBER,
          "500",
          "ppm scale of the meter; meters.ec.scale of the plan otherwise");
  private static final Flag COEFFICIENT =
      Flag.of(
          "--coefficient",
          "SHARE",
          Kind.quantity(Dimension.SHARE),
          "2 %",
          "change of the EC per degree Celsius, instead of 1.91 %");
  private static final Flag NATURAL_WATER =
      Flag.on("--natural-water", "function of ISO 7888 for tap and well water, 0 to 35.9 C");
  private static final Flag STANDARD =
      Flag.of(
          "--standard",
          "EC",
          Kind.quantity(Dimension.EC),
          "1.413 mS/cm",
          "checks the meter: the value on the bottle of potassium chloride standard, at 25 C");
  private static final Flag COMPENSATES =
      Flag.of(
              "--compensates",
              "YES",
              Kind.YES_NO,
              "true",
              "whether the meter brings its readings to 25 C itself (ATC)")
          .sets("meters.ec.compensates");
  private static final Flag ION =
      Flag.of(
              "--ion",
              "NAME=MG_L",
              Kind.TEXT,
              "NO3=620",
              "an ion of the solution, in mg/L, mmol/L or meq/L: predicts the EC; N-NO3 counts the nitrogen only")
          .repeatable();
  private static final Flag WEIGHED =
      Flag.of(
              "--weighed",
              "SALT=GRAMS",
              Kind.TEXT,
              "potassium-nitrate=21 g",
              DoseSaltsCommand.WEIGHED_MEANING)
          .repeatable();
  private static final Flag VOLUME =
      Flag.of(
              "--volume",
              "VOLUME",
              Kind.quantity(Dimension.VOLUME),
              "45 L",
              "finished solution, with --weighed")
          .belongsTo("--weighed");
  private static final Flag UNIT =
      Flag.of(
          "--unit",
          "UNIT",
          Kind.choice("mS/cm", "uS/cm", "dS/m", "mS/m", "ppm"),
          "uS/cm",
          "unit of bare numbers, where the column's name does not end in it");

  private EcFlags() {}

  static Flag[] all() {
    return new Flag[] {
      AT, SCALE, COEFFICIENT, NATURAL_WATER,
      STANDARD, COMPENSATES, ION, WEIGHED,
      VOLUME, UNIT, COLUMN, ROWS,
      PREFIX, STRICT,
    };
  }
}
