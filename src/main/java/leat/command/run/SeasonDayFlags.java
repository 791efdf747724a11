package leat.command.run;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat season day}: the weather of a day, the plants, the tank. */
final class SeasonDayFlags {
  private static final Kind TEMPERATURE = Kind.quantity(Dimension.TEMPERATURE);
  private static final Kind SHARE = Kind.quantity(Dimension.SHARE);
  private static final Flag DATE = Flag.of("--date", "DATE", Kind.DATE, "2027-07-10", "the day");
  private static final Flag TMIN =
      Flag.of("--tmin", "TEMPERATURE", TEMPERATURE, "14 C", SeasonDayCommand.TMIN_MEANING);
  private static final Flag TMAX =
      Flag.of("--tmax", "TEMPERATURE", TEMPERATURE, "31 C", SeasonDayCommand.TMAX_MEANING);
  private static final Flag RH_MIN =
      Flag.of("--rh-min", "SHARE", SHARE, "40 %", "lowest relative humidity");
  private static final Flag RH_MAX =
      Flag.of("--rh-max", "SHARE", SHARE, "90 %", "highest relative humidity");
  private static final Flag RH_MEAN =
      Flag.of("--rh-mean", "SHARE", SHARE, "65 %", "mean relative humidity");
  private static final Flag DEW_POINT =
      Flag.of("--dew-point", "TEMPERATURE", TEMPERATURE, "12 C", "dew point");
  private static final Flag WIND =
      Flag.of("--wind", "SPEED", Kind.quantity(Dimension.SPEED), "2.5 m/s", "mean wind");
  private static final Flag WIND_HEIGHT =
      Flag.of(
              "--wind-height",
              "LENGTH",
              Kind.quantity(Dimension.LENGTH),
              "10 m",
              "height at which the wind is measured")
          .sets("site.wind_height");
  private static final Flag RADIATION =
      Flag.of(
          "--radiation",
          "RADIATION",
          Kind.quantity(Dimension.RADIATION),
          "22 MJ/m2",
          "sun on the level ground in the day");
  private static final Flag SUN =
      Flag.of("--sun", "TIME", Kind.quantity(Dimension.TIME), "9 h", "hours of sunshine");

  private SeasonDayFlags() {}

  static Flag[] all() {
    return new Flag[] {
      DATE,
      TMIN,
      TMAX,
      RH_MIN,
      RH_MAX,
      RH_MEAN,
      DEW_POINT,
      WIND,
      WIND_HEIGHT,
      RADIATION,
      SUN,
      LightFlags.LATITUDE,
      LightFlags.ALTITUDE,
    };
  }
}
