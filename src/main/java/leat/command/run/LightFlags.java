package leat.command.run;

import leat.cli.Flag;
import leat.climate.Cover;
import leat.climate.LightMeter;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat season light}: the month or a meter, the crop, the pane, the lamp. */
final class LightFlags {
  private static final Kind TEMPERATURE = Kind.quantity(Dimension.TEMPERATURE);
  private static final Kind SHARE = Kind.quantity(Dimension.SHARE);
  static final Flag MONTH =
      Flag.of("--month", "MONTH", Kind.MONTH, "3", "one month, 1 for January, or its name");
  static final Flag TMIN =
      Flag.of("--tmin", "TEMPERATURE", TEMPERATURE, "2 C", SeasonDayCommand.TMIN_MEANING);
  static final Flag TMAX =
      Flag.of("--tmax", "TEMPERATURE", TEMPERATURE, "10 C", SeasonDayCommand.TMAX_MEANING);
  static final Flag LIGHT =
      Flag.of(
          "--light",
          "MOL",
          Kind.NUMBER,
          "12",
          "light of the day in the open as a sensor summed it, mol/m2; no month is asked then");
  static final Flag LUX =
      Flag.of(
          "--lux",
          "LX",
          Kind.NUMBER,
          "9000",
          "reading of a lux meter at the plants, mean of the hours of light");
  static final Flag LUX_OF =
      Flag.of("--lux-of", "LIGHT", Kind.choice(LightMeter.words()), "white-led", "light it reads")
          .byDefault(LightMeter.words()[0])
          .belongsTo("--lux");
  static final Flag LUX_HOURS =
      Flag.of(
              "--lux-hours",
              "TIME",
              Kind.quantity(Dimension.TIME),
              "16 h",
              "hours of light of that reading")
          .belongsTo("--lux");
  static final Flag CROP =
      Flag.of("--crop", "NAME", Kind.TEXT, "lettuce", "crop whose need is meant");
  static final Flag NEED =
      Flag.of("--need", "MOL", Kind.NUMBER, "17", "light that the plants want a day, mol/m2");
  static final Flag WINDOW =
      Flag.of(
          "--window",
          "SIZE",
          Kind.SIZE,
          "1.2 m x 1.2 m",
          "pane before the plants: width x height over them");
  static final Flag DISTANCE =
      Flag.of(
          "--distance",
          "LENGTH",
          Kind.quantity(Dimension.LENGTH),
          "0.15 m",
          "distance of the plants from the pane");
  static final Flag COVER =
      Flag.of("--cover", "COVER", Kind.choice(covers()), "glass", "glass or film over the plants");
  static final Flag TRANSMISSION =
      Flag.of("--transmission", "SHARE", SHARE, "70 %", "light that glass or film lets through")
          .sets("site.light.transmission");
  static final Flag SHADE =
      Flag.of("--shade", "SHARE", SHARE, "30 %", "light that houses, trees or cloth keep off")
          .sets("site.light.shade");
  static final Flag LAMP_POWER =
      Flag.of("--lamp-power", "POWER", Kind.quantity(Dimension.POWER), "60 W", "what a lamp draws")
          .sets("lamp.power");
  static final Flag LAMP_EFFICACY =
      Flag.of("--lamp-efficacy", "N", Kind.NUMBER, "2.5", "umol of light for a joule")
          .sets("lamp.efficacy");
  static final Flag LAMP_LUMENS =
      Flag.of("--lamp-lumens", "N", Kind.NUMBER, "100", "or lumens for a watt, a white lamp's")
          .sets("lamp.lumens");
  static final Flag LAMP_SHARE =
      Flag.of("--lamp-share", "SHARE", SHARE, "60 %", "share of its light on the plants")
          .sets("lamp.share");
  static final Flag LAMP_HOURS =
      Flag.of("--lamp-hours", "TIME", Kind.quantity(Dimension.TIME), "16 h", "longest lamp day")
          .sets("lamp.hours");
  static final Flag LAMP_AREA =
      Flag.of("--lamp-area", "AREA", Kind.quantity(Dimension.AREA), "0.5 m2", "area that it lights")
          .sets("lamp.area");
  static final Flag LATITUDE =
      Flag.of(
              "--latitude",
              "ANGLE",
              Kind.quantity(Dimension.ANGLE),
              "52 deg",
              "latitude, north positive")
          .sets("site.latitude");
  static final Flag ALTITUDE =
      Flag.of(
              "--altitude",
              "LENGTH",
              Kind.quantity(Dimension.LENGTH),
              "310 m",
              "height over the sea")
          .sets("site.altitude");

  private LightFlags() {}

  static Flag[] all() {
    return new Flag[] {
      MONTH, TMIN, TMAX, LIGHT,
      LUX, LUX_OF, LUX_HOURS, CROP,
      NEED, WINDOW, DISTANCE, COVER,
      TRANSMISSION, SHADE, LAMP_POWER, LAMP_EFFICACY,
      LAMP_LUMENS, LAMP_SHARE, LAMP_HOURS, LAMP_AREA,
      LATITUDE, ALTITUDE,
    };
  }

  private static String[] covers() {
    Cover[] all = Cover.values();
    String[] words = new String[all.length];
    for (int i = 0; i < words.length; i++) {
      words[i] = all[i].word();
    }
    return words;
  }
}
