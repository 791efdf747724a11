package leat.command.feed;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat oxygen}: the water and the place. */
final class OxygenFlags {
  private static final Kind TEMPERATURE = Kind.quantity(Dimension.TEMPERATURE);
  private static final Flag AT =
      Flag.of(
              "--at",
              "TEMPERATURE",
              TEMPERATURE,
              "29 C",
              "temperature of the water; tank.warmest of the plan otherwise")
          .repeatable();
  private static final Flag ALTITUDE =
      Flag.of(
              "--altitude",
              "HEIGHT",
              Kind.quantity(Dimension.LENGTH),
              "310 m",
              "height over the sea")
          .sets("site.altitude");
  private static final Flag PRESSURE =
      Flag.of(
          "--pressure",
          "PRESSURE",
          Kind.quantity(Dimension.PRESSURE),
          "976 hPa",
          "air pressure at the place itself, not the forecast's, instead of the altitude");

  private OxygenFlags() {}

  static Flag[] all() {
    return new Flag[] {
      AT, ALTITUDE, PRESSURE,
    };
  }
}
