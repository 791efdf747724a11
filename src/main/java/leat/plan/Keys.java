package leat.plan;

import static leat.plan.Key.list;
import static leat.plan.Key.named;
import static leat.plan.Key.one;
import static leat.plan.Key.section;
import static leat.plan.Key.sections;
import static leat.quantity.Dimension.ALKALINITY;
import static leat.quantity.Dimension.ANGLE;
import static leat.quantity.Dimension.AREA;
import static leat.quantity.Dimension.CURRENT;
import static leat.quantity.Dimension.EC;
import static leat.quantity.Dimension.FLOW;
import static leat.quantity.Dimension.FORCE;
import static leat.quantity.Dimension.HEAD;
import static leat.quantity.Dimension.LENGTH;
import static leat.quantity.Dimension.MASS;
import static leat.quantity.Dimension.MASS_CONCENTRATION;
import static leat.quantity.Dimension.MONEY;
import static leat.quantity.Dimension.MONEY_PER_ENERGY;
import static leat.quantity.Dimension.MONEY_PER_MASS;
import static leat.quantity.Dimension.MONEY_PER_TIME;
import static leat.quantity.Dimension.MONEY_PER_VOLUME;
import static leat.quantity.Dimension.POWER;
import static leat.quantity.Dimension.RATE;
import static leat.quantity.Dimension.RESISTANCE;
import static leat.quantity.Dimension.SHARE;
import static leat.quantity.Dimension.SPEED;
import static leat.quantity.Dimension.TEMPERATURE;
import static leat.quantity.Dimension.TIME;
import static leat.quantity.Dimension.TIME_PER_DAY;
import static leat.quantity.Dimension.VOLTAGE;
import static leat.quantity.Dimension.VOLUME;
import static leat.quantity.Dimension.VOLUME_RATIO;

import leat.climate.ThirstSpread;
import leat.hydraulics.Fitting;
import leat.hydraulics.Roughness;
import leat.parts.Material;
import leat.quantity.Dimension;
import leat.stability.Ground;
import leat.stability.Terrain;

/** Every key of a plan, section by section: the one list that fixes the words. */
public final class Keys {
  /**
   * Latest litres-to-metre limit of a length in a plan: nothing at home is longer than this, in m.
   */
  private static final double LONGEST = 1000;

  private static final String MEASURED = "pump.measured";
  private static final String BUCKET = "catch the flow in a bucket and write pump.measured";

  /** Bore of a hose against its print, -: common practice, no source. */
  private static final double HOSE = 0.03;

  /** Length of a tube that a tape measures along a bend, -: common practice, no source. */
  private static final double TAPE = 0.05;

  /** Loss factors of fittings from tables, -: sheet hydraulics.md, spread of K. */
  private static final double FITTINGS = 0.30;

  /** Roughness of clean drawn plastic, m: sheet hydraulics.md, table of roughness. */
  private static final double CLEAN = 1.5e-6;

  /** Roughness of any tube after a season, m: the same sheet, common practice. */
  private static final double SLIMED = 50e-6;

  private Keys() {}

  private static Key q(String name, Dimension dimension, String example, String meaning) {
    return one(name, Kind.quantity(dimension), example, meaning);
  }

  private static Key length(String name, String example, String meaning) {
    return q(name, LENGTH, example, meaning).within(0, LONGEST);
  }

  /** The whole plan. */
  public static final Key PLAN =
      section(
          "",
          "one tower system",
          one("name", Kind.TEXT, "my first tower", "name of the plan, for its reader"),
          one("about", Kind.TEXT, "two towers on a roof terrace", "what it is, for the reader"),
          one("currency", Kind.CURRENCY, "EUR", "currency of every price in the plan"),
          one("units", Kind.choice("metric", "us"), "us", "units of what leat prints as text"),
          site(),
          tank(),
          sender(),
          pump(),
          section(
              "cap_sensor",
              "a sensor that sees water at the cap",
              one("wet", Kind.COUNT, "1350", "counts under running water"),
              one("dry", Kind.COUNT, "2750", "counts when dried out")),
          q("hold_up", VOLUME, "2.4 L", "what the running towers keep above the tank, measured")
              .from0(),
          pipe("pipe", "pipe that all towers share, from the pump to the branch"),
          towers(),
          strainer(),
          timing(),
          q("wetting", TIME, "20 s", "how long the lowest pot must be wetted in each run")
              .from0()
              .byDefault("20 s", "wetting 20 s")
              .guessTimes(
                  0.5,
                  2,
                  "half to double, common practice, no source",
                  "watch the lowest pot until it drips and write wetting"),
          section(
              "dry_limit",
              "longest rest the roots bear",
              q("day", TIME, "30 min", "longest rest by day")
                  .above0()
                  .byDefault("30 min", "roots bear 30 min of rest by day"),
              q("night", TIME, "60 min", "longest rest by night")
                  .above0()
                  .byDefault("60 min", "60 min by night"),
              q(
                      "alarm",
                      TIME,
                      "45 min",
                      "rest after which an alarm is due; 45 min, and 1.5 times the longest rest at least, otherwise")
                  .above0()),
          controller(),
          backup(),
          tariff(),
          water(),
          section("rain", "rain that falls in", q("ec", EC, "0.03 mS/cm", "EC of rain").from0()),
          feed(),
          meters(),
          target(),
          q("thirst", SHARE, "124 %", "thirst found by `log`, against what the plan would say")
              .above0()
              .guessUntold(
                  ThirstSpread.LOW,
                  ThirstSpread.HIGH,
                  "80 % of all thirsts before a log, common practice",
                  "keep a level log for two weeks and write thirst from leat log")
              .thenTimes(
                  ThirstSpread.LOW_CALIBRATED,
                  ThirstSpread.HIGH_CALIBRATED,
                  "80 % after two weeks of a log, common practice"),
          q("drinks", FLOW, "8 L/d", "what the plants take a day, when known as one figure")
              .from0(),
          crops(),
          season(),
          section(
              "lamp",
              "a lamp over the plants",
              q("power", POWER, "60 W", "what it draws").above0(),
              one("efficacy", Kind.NUMBER, "2.5", "umol of light for a joule, as its sheet says")
                  .within(0, 4.1)
                  .above0()
                  .byDefault("2.5", "a lamp of 2.5 umol/J, a good LED"),
              one("lumens", Kind.NUMBER, "100", "or the lumens for a watt of a white lamp")
                  .within(0, 250)
                  .above0(),
              q("share", SHARE, "50 %", "share of its light that lands on the plants").above0(),
              q("hours", TIME, "16 h", "longest time it may burn a day").within(0, 86400).above0(),
              q("area", AREA, "0.5 m2", "area that it lights").above0()),
          prices(),
          section(
              "printer",
              "the printer that makes the parts",
              q("power", POWER, "120 W", "mean draw while printing").from0(),
              one("count", Kind.COUNT, "1", "how many printers").within(1, 1000),
              q("jobs", RATE, "2 /d", "print jobs a day and printer").above0(),
              q("changeover", TIME, "30 min", "time from one print to the next").from0(),
              q("waste", SHARE, "8 %", "filament lost to failed prints").from0()),
          section(
              "clean",
              "closing the season",
              one("with", Kind.choice("hypochlorite", "peroxide"), "hypochlorite", "sanitiser"),
              q("strength", SHARE, "2.5 %", "strength on the bottle's label").above0(),
              one("aim", ConcentrationKind.STRENGTH, "200 mg/L", "strength wanted in the loop")
                  .above0(),
              q("contact", TIME, "30 min", "how long it runs").above0()),
          named(
              "limits",
              Kind.TEXT,
              "{pump-margin: 20 %}",
              "own limit of a rule, by the rule's id as `check` prints it",
              null),
          LogKeys.log());

  private static Key site() {
    return section(
        "site",
        "where it stands",
        one("time_zone", Kind.TEXT, "Europe/Vienna", "time zone of clock times"),
        q("latitude", ANGLE, "47.9 deg", "north is positive").within(-Math.PI / 2, Math.PI / 2),
        q("altitude", LENGTH, "310 m", "height over the sea").within(-430, 9000),
        one("terrain", Kind.choice(Terrain.words()), "city", "ground around, for wind"),
        length("height_above_ground", "13 m", "height of the place above the street"),
        section(
            "wind",
            "wind to withstand",
            q("speed", SPEED, "18 m/s", "wind speed").from0(),
            one(
                "is",
                Kind.choice("mean", "gust"),
                "mean",
                "mean (10 min, 10 m, open country) or gust at the tower")),
        one("shelter", Kind.NUMBER, "1.0", "share of the wind that reaches the tower").from0(),
        one(
                "gust_factor",
                Kind.NUMBER,
                "1.6",
                "gust over mean wind, where it is known; from terrain and height otherwise")
            .within(1, 5),
        q("air_density", MASS_CONCENTRATION, "1.25 kg/m3", "density of the air")
            .within(300, 2000)
            .byDefault("1.25 kg/m3", "air 1.25 kg/m3"),
        one("weather", Kind.TEXT, "weather.csv", "file of daily weather, beside the plan"),
        named(
            "weather_columns",
            Kind.TEXT,
            "{date: DATE, tmin: TMIN}",
            "names of its columns, when they are other ones",
            WeatherColumns.keys()),
        sections(
            "months",
            "climate table of the twelve months, January first, where there is no weather file",
            q("tmin", TEMPERATURE, "-2 C", "mean of the lowest temperatures"),
            q("tmax", TEMPERATURE, "3 C", "mean of the highest temperatures"),
            length("rain", "38 mm", "rain of the month"),
            one("rain_days", Kind.COUNT, "8", "days with rain").within(0, 31)),
        one(
                "exposure",
                Kind.choiceOrNumber("open", "alone", "sheltered", "glass", "window"),
                "alone",
                "how sun and wind reach the tower, or the factor on its thirst; glass and window keep rain off")
            .from0()
            .byDefault(
                "alone",
                "a tower that stands alone in sun and wind: thirst 1.2 times that of an open bed"),
        one("coast", Kind.YES_NO, "true", "whether it lies at a coast, for light from temperature")
            .byDefault("false", "inland"),
        length("wind_height", "10 m", "height at which the wind of the weather file is measured")
            .above0()
            .byDefault("2 m", "wind measured 2 m above the ground"),
        section(
            "light",
            "what is between the sky and the plants",
            q("transmission", SHARE, "70 %", "light that glass or film lets through")
                .within(0, 1)
                .byDefault("100 %", "no cover over the plants"),
            q("shade", SHARE, "30 %", "light that houses, trees or cloth keep off")
                .within(0, 1)
                .byDefault("0 %", "no shade")),
        q("sun_on_tank", TIME_PER_DAY, "5 h/d", "sun that falls on the tank").from0());
  }

  private static Key tank() {
    return section(
        "tank",
        "the tub of solution; levels count from the inside of its floor",
        one(
            "shape",
            Kind.choice(
                "box",
                "tapered-box",
                "cylinder",
                "cone",
                "lying-cylinder",
                "sloping-floor",
                "sections",
                "table"),
            "tapered-box",
            "shape of the inside"),
        one(
            "bottom",
            Kind.SIZE,
            "480 mm x 300 mm",
            "inside at the floor: length x width, or the diameter of a cone"),
        one(
            "top",
            Kind.SIZE,
            "540 mm x 360 mm",
            "inside at the rim: length x width, or the diameter of a cone"),
        length("diameter", "450 mm", "inside diameter of a cylinder").above0(),
        length("length", "800 mm", "inside length of a lying cylinder").above0(),
        length("height", "330 mm", "inside height, floor to rim").above0(),
        length("corner", "40 mm", "radius of the upright corners, at the floor")
            .byDefault("0 mm", "square corners"),
        length("corner_top", "60 mm", "radius of the upright corners at the rim, when it differs"),
        length(
                "floor_rise",
                "40 mm",
                "how far a sloping floor rises from its deep end to the far one")
            .above0(),
        length("floor_flat", "150 mm", "length of the flat stretch at the deep end")
            .byDefault("0 mm", "floor slopes from its deep end on"),
        list(
                "sections",
                Kind.AREA_AT,
                "[0 mm = 1440 cm2, 300 mm = 1944 cm2]",
                "area of the water's surface at levels, the first on the floor, for shape sections")
            .atLeast(2),
        list(
                "table",
                Kind.STRAP,
                "[0 mm = 0 L, 100 mm = 12.4 L]",
                "litres poured in at levels, for shape table")
            .atLeast(2),
        one(
                "between",
                Kind.choice("straight", "smooth"),
                "straight",
                "how a table is read between its rows")
            .byDefault("straight", "straight between the rows"),
        sections(
            "bodies",
            "things that stand in the water and take up room",
            one("name", Kind.TEXT, "pump", "what it is"),
            q("area", AREA, "60 cm2", "its plan area").above0(),
            length("from", "0 mm", "level of its foot"),
            length("to", "80 mm", "level of its top")),
        q("holds", VOLUME, "60 L", "litres to the rim, poured in, when the shape is unknown")
            .above0(),
        q("holds_full", VOLUME, "52 L", "litres when full, when the shape is unknown").above0(),
        length("full", "280 mm", "level when full"),
        length("low", "80 mm", "lowest working level, the refill mark"),
        length("intake", "45 mm", "level of the pump's intake; air is drawn below"),
        length("rim_overflow", "310 mm", "level at which it spills"),
        section(
            "wall",
            "the tank's wall",
            length("thickness", "3 mm", "wall thickness"),
            one(
                "colour",
                Kind.choice("white", "light", "dark", "black"),
                "white",
                "outside colour"),
            one("insulation", Kind.TEXT, "none", "insulation, or none")),
        q("warmest", TEMPERATURE, "27 C", "warmest water of the season, measured on a hot day"),
        q("mass", MASS, "3.6 kg", "empty tank").from0(),
        one("foot", Kind.SIZE, "540 mm x 360 mm", "outside of the foot it stands on"),
        length("stand", "350 mm", "height of what it stands on, under its floor")
            .byDefault("0 mm", "no stand under the tank"),
        one("ground", Kind.choice(Ground.words()), "rubber-mat", "what it stands on, for sliding"),
        one(
                "friction",
                Kind.NUMBER,
                "0.3",
                "friction against the ground, where it is measured: pull that shifts it over its weight")
            .within(0.01, 2),
        q("rain_area", AREA, "0.03 m2", "area that catches rain into the tank").from0(),
        q("rain_share", SHARE, "80 %", "share of the rain on that area that arrives in the tank")
            .within(0, 1)
            .byDefault("80 %", "80 % of the rain on the lid arrives"),
        q(
                "open_area",
                AREA,
                "0.02 m2",
                "uncovered wet surface, of tank and towers together; 0.005 m2 for each tower otherwise")
            .from0(),
        q("heel", VOLUME, "1.5 L", "what stays in the tank when it is drained")
            .from0()
            .byDefault("0 L", "a drained tank is empty"),
        section(
            "drain",
            "the drain hole",
            length("bore", "19 mm", "inside diameter of the hole").above0(),
            length("height", "12 mm", "level of its centre"),
            length("length", "0.5 m", "length of a hose on it"),
            length("drop", "0.3 m", "how far the hose's end lies under the hole")));
  }

  private static Key sender() {
    return section(
        "sender",
        "the stepped float sender; a step belongs where its reading begins while the level rises",
        list(
                "steps",
                Kind.STEP,
                "[40 mm = 10 ohm, 60 mm = 27 ohm]",
                "levels and the reading that begins there")
            .atLeast(2),
        list(
            "edges",
            Kind.EDGE,
            "[7.2 L = 27 ohm, 11.0 L = 43 ohm]",
            "litres and the reading that begins there, from `level fit`"),
        section(
            "ladder",
            "the sender by its drawing",
            one("reeds", Kind.COUNT, "20", "number of reeds").within(2, 1000),
            length("first", "32 mm", "level of the lowest reed's centre"),
            length("pitch", "12 mm", "distance between reeds").above0(),
            list(
                "levels",
                Kind.quantity(LENGTH),
                "[45 mm, 62 mm, 78 mm]",
                "level of each reed's centre, where the pitch is not even"),
            list(
                "resistors",
                Kind.quantity(RESISTANCE),
                "[0 ohm, 10 ohm]",
                "resistor of each reed towards the return"),
            q("empty", RESISTANCE, "0 ohm", "reading of the lowest reed, for equal resistors")
                .from0(),
            q("full", RESISTANCE, "190 ohm", "reading of the highest reed, for equal resistors")
                .from0(),
            one(
                    "return_at",
                    Kind.choice("bottom", "top"),
                    "bottom",
                    "end of the string the return wire is on")
                .byDefault("bottom", "return at the bottom"),
            length("pull_in", "8 mm", "half width at which a reed closes").above0(),
            length("drop_out", "9.5 mm", "half width at which it opens again").above0(),
            one("stops", Kind.STOPS, "26 mm to 268 mm", "levels between which the float moves")),
        q(
                "below",
                RESISTANCE,
                "10 ohm",
                "reading under the first edge, or under the first step where it is another one")
            .from0(),
        length("hysteresis", "4 mm", "how much lower a reading lasts while the level falls")
            .byDefault("0 mm", "no hysteresis"),
        q("hysteresis_volume", VOLUME, "0.8 L", "the same in litres, for a tank of unknown shape")
            .from0()
            .byDefault("0 L", "no hysteresis"),
        q(
                "edge_error",
                VOLUME,
                "0.5 L",
                "how far an edge may lie from what is written: half a pour, from `level fit`")
            .from0()
            .byDefault("0 L", "edges exact"),
        q("tolerance", SHARE, "2 %", "tolerance of the sender's resistors")
            .from0()
            .byDefault("1 %", "resistors 1 %")
            .guessUntold(
                0.01,
                0.05,
                "grades of resistors, IEC 60063: 1 % (E96) to 5 % (E24)",
                "read the resistors' grade, or fit the sender with leat level fit"),
        q("reading", RESISTANCE, "1.5 ohm", "tolerance of the meter or ADC")
            .from0()
            .byDefault("1.5 ohm", "meter 1.5 ohm"),
        q("lead", RESISTANCE, "0.5 ohm", "resistance of the lead, there and back")
            .from0()
            .byDefault("0 ohm", "lead 0 ohm"),
        q("open_above", RESISTANCE, "1000 ohm", "at and above this the sender counts as open")
            .above0()
            .byDefault("1000 ohm", "open from 1000 ohm"),
        q("short_below", RESISTANCE, "2 ohm", "below this it counts as shorted")
            .from0()
            .byDefault("2 ohm", "short below 2 ohm"),
        section(
            "divider",
            "the voltage divider and the ADC that read it",
            q("supply", VOLTAGE, "3.3 V", "supply of the divider").above0(),
            q("resistor", RESISTANCE, "180 ohm", "the fixed resistor").above0(),
            one(
                    "sender_side",
                    Kind.choice("low", "high"),
                    "low",
                    "side of the divider the sender is on: low = to ground")
                .byDefault("low", "sender to ground"),
            one("bits", Kind.COUNT, "12", "bits of the ADC")
                .within(1, 24)
                .byDefault("12", "12 bits"),
            q("reference", VOLTAGE, "3.3 V", "reference of the ADC").above0(),
            q("resistor_tolerance", SHARE, "1 %", "tolerance of the fixed resistor")
                .from0()
                .byDefault("1 %", "fixed resistor 1 %")
                .guessUntold(
                    0.001,
                    0.05,
                    "0.1 % once measured, 5 % as the worst grade sold, IEC 60063",
                    "measure the fixed resistor and write resistor_tolerance"),
            q("supply_tolerance", SHARE, "2 %", "tolerance of the supply")
                .from0()
                .byDefault("0 %", "supply exact"),
            q("reference_tolerance", SHARE, "2 %", "tolerance of the reference")
                .from0()
                .byDefault("0 %", "reference exact"),
            one("adc_error", Kind.NUMBER, "3", "error of the ADC in counts")
                .from0()
                .byDefault("3", "ADC good to 3 counts")
                .guessUntold(
                    1,
                    8,
                    "converters of small controllers at 12 bits, common practice",
                    "read known resistors with it and write adc_error"),
            one("blind", Kind.COUNT, "100", "counts near 0 that the ADC cannot read")
                .byDefault("0", "no blind counts"),
            one(
                "ratiometric",
                Kind.YES_NO,
                "true",
                "whether the reference is the divider's supply")));
  }

  private static Key pump() {
    return section(
        "pump",
        "the pump",
        list(
                "curve",
                Kind.POINT,
                "[0 L/h @ 2.4 m, 600 L/h @ 1.7 m, 1000 L/h @ 0 m]",
                "points of its printed curve")
            .atLeast(2),
        q("shutoff_head", HEAD, "2.4 m", "printed greatest head, at no flow").above0(),
        q("max_flow", FLOW, "1000 L/h", "printed greatest flow, at no head").above0(),
        q("derate", SHARE, "70 %", "share of the printed head that is left")
            .within(0, 2)
            .above0()
            .byDefault("100 %", "the printed head, all of it")
            .guess(0.70, 0.85, "70 to 85 % of the printed head is usual, common practice", BUCKET)
            .settledOnce(MEASURED),
        q("speed", SHARE, "83 %", "speed against the printed one")
            .within(0, 2)
            .above0()
            .byDefault("100 %", "printed speed"),
        one(
            "measured",
            Kind.MEASURED,
            "9.2 L/min @ 330 mm",
            "flow caught in a bucket, all towers together; wins over derate"),
        q("power", POWER, "22 W", "electrical power").above0(),
        q("power_factor", SHARE, "60 %", "power factor of an alternating-current pump")
            .above0()
            .byDefault("60 %", "power factor 0.6"),
        section(
            "supply",
            "what it runs on",
            q("mains", VOLTAGE, "230 V", "mains voltage").above0(),
            q("dc", VOLTAGE, "12 V", "direct voltage").above0(),
            section(
                "cable",
                "the low-voltage cable",
                length("length", "14 m", "one way").above0(),
                q("section", AREA, "1.5 mm2", "copper section of one core").above0())),
        one("check_valve", Kind.YES_NO, "false", "whether a check valve keeps the riser full")
            .byDefault("false", "no check valve"),
        q("body", VOLUME, "0.4 L", "room the pump takes in the tank").from0());
  }

  private static Key[] pipeKeys() {
    return new Key[] {
      length("bore", "13 mm", "inside diameter")
          .above0()
          .guessTimes(
              1 - HOSE,
              1 + HOSE,
              "hoses vary by 3 %, common practice",
              "fill a metre of the tube, weigh the water, and write the bore")
          .settledOnce(MEASURED),
      length("length", "1.5 m", "length along the pipe")
          .guessTimes(
              1 - TAPE,
              1 + TAPE,
              "a tape along a bent tube, 5 %, common practice",
              "measure the cut tube, straight, and write the length")
          .settledOnce(MEASURED),
      one(
          "material",
          Kind.choice(Roughness.names()),
          "silicone",
          "what it is made of, for its roughness"),
      length("roughness", "0.0015 mm", "roughness of the wall, when known")
          .byDefault("0.0015 mm", "wall 0.0015 mm, smooth tube")
          .guess(
              CLEAN,
              SLIMED,
              "clean plastic to a season's slime, common practice",
              "catch the flow in a bucket when it is dirty and write pump.measured")
          .settledOnce(MEASURED),
      length("ridges", "4 mm", "distance from ridge to ridge of a corrugated hose").above0(),
      one("k", Kind.NUMBER, "2.5", "sum of the loss factors of its fittings")
          .from0()
          .guessTimes(
              1 - FITTINGS,
              1 + FITTINGS,
              "tables of fittings scatter by 30 %, common practice",
              BUCKET)
          .settledOnce(MEASURED),
      named(
              "fittings",
              Kind.FITTINGS,
              "{entrance: 1, elbow: 2, exit: 1}",
              "fittings by name, how many of each; behind @ a size, as a bend's radius",
              Fitting.allNames())
          .from0(),
      one("valve", Kind.choice(Fitting.valveNames()), "ball", "valve in it, taken open")
    };
  }

  private static Key pipe(String name, String meaning) {
    return section(name, meaning, pipeKeys());
  }

  private static Key towers() {
    return sections(
        "towers",
        "the towers on the pump",
        one("name", Kind.TEXT, "north", "its name"),
        one("count", Kind.COUNT, "1", "how many of this kind, all equal")
            .within(1, 50)
            .byDefault("1", "one of each tower"),
        pipe("riser", "the tube up the middle"),
        length("outlet", "1.30 m", "height of the riser's outlet over the tank's floor"),
        q("wanted", FLOW, "4 L/min", "flow it should get").above0(),
        section(
            "base",
            "what it stands on",
            length("height", "350 mm", "height of the base over the tank's floor")),
        sections(
            "modules",
            "stacked pot modules, from the bottom",
            one("name", Kind.TEXT, "leaf", "name of the part"),
            one("count", Kind.COUNT, "6", "how many").within(1, 200),
            length("height", "160 mm", "height of one").above0(),
            length("overlap", "20 mm", "how far it sits in the next"),
            length("diameter", "110 mm", "outside diameter").above0(),
            length("wall", "2.4 mm", "wall thickness").above0(),
            one("pots", Kind.COUNT, "4", "pots in one"),
            length(
                "pot_at",
                "110 mm",
                "height of the pots in their module; half its height otherwise"),
            length("pot", "50 mm", "diameter of a pot").above0(),
            q("turn", ANGLE, "45 deg", "turn of each against the one below"),
            q("mass", MASS, "260 g", "filament in one").above0(),
            q("print_time", TIME, "6 h", "time to print one").above0()),
        section(
            "cap",
            "the spreader cap",
            q("mass", MASS, "200 g", "its mass").from0(),
            length("height", "60 mm", "what it adds to the tower's height")
                .byDefault("0 mm", "the cap adds no height"),
            length("spreader", "96 mm", "diameter of the spreader").above0(),
            length("gap", "2.5 mm", "width of the slot between spreader and wall").above0(),
            length("plate", "3 mm", "thickness of the spreader's edge")
                .byDefault("3 mm", "spreader 3 mm thick"),
            length("clearance", "10 mm", "height of the cap over the outlet")
                .byDefault("0 mm", "cap right over the outlet"),
            q("grip", FORCE, "2 N", "force that lifts it off, besides its weight; 0 = lies loose")
                .from0()
                .byDefault("0 N", "cap lies loose"),
            q("print_time", TIME, "5 h", "time to print it").above0()),
        section(
            "guys",
            "guy lines",
            one("lines", Kind.COUNT, "3", "how many"),
            length("ring", "1.6 m", "height of the ring over the tower's foot").above0(),
            length("run", "1.0 m", "distance of the pegs from the axis").above0(),
            one("anchor", Kind.choice("ground", "tank"), "ground", "what they are tied to"),
            q("breaking", FORCE, "1200 N", "load at which a line breaks, as its label says")
                .above0()),
        section(
            "grown",
            "the full-size plants, for wind and mass",
            q("mass", MASS, "250 g", "a plant with its wet pot")
                .from0()
                .byDefault("250 g", "a grown plant with its wet pot 0.25 kg"),
            length("width", "400 mm", "width across the plants, from leaf tip to leaf tip")
                .byDefault("400 mm", "grown plants 400 mm across")),
        q("tie", FORCE, "400 N", "pull of a rod or cord that holds the modules together")
            .from0()
            .byDefault("0 N", "no rod or cord through the modules"),
        one("material", Kind.choice(Material.words()), "PETG", "filament that it is printed from"),
        length("foot_radius", "60 mm", "radius of the column's foot"),
        one(
                "fastened",
                Kind.YES_NO,
                "true",
                "whether the modules are fastened to each other and the tower to its tank")
            .byDefault("false", "modules merely stacked, the tower merely standing"));
  }

  private static Key strainer() {
    return section(
        "strainer",
        "the mesh in the way back",
        length("aperture", "0.8 mm", "opening of the mesh").above0(),
        length("wire", "0.25 mm", "wire of the mesh").above0(),
        length("diameter", "104 mm", "diameter of the round mesh").above0(),
        q("clogged", SHARE, "60 %", "share of it clogged before it is cleaned")
            .within(0, 0.99)
            .byDefault("60 %", "strainer 60 % clogged before cleaning"),
        length("freeboard", "20 mm", "height of water it may hold back").above0());
  }

  private static Key timing() {
    return sections(
        "timing",
        "pump runs; the last entry that matches wins",
        q("run", TIME, "90 s", "how long the pump runs").above0(),
        q("rest", TIME, "12 min", "how long it rests").from0(),
        one("from", Kind.CLOCK, "\"22:00\"", "start of the window, local clock"),
        one("to", Kind.CLOCK, "\"06:00\"", "end of the window, not included"),
        list("months", Kind.COUNT, "[6, 7, 8]", "months it holds in").within(1, 12).atLeast(1),
        list(
                "days",
                Kind.choice("mon", "tue", "wed", "thu", "fri", "sat", "sun"),
                "[sat, sun]",
                "weekdays it holds on")
            .atLeast(1));
  }

  private static Key controller() {
    return section(
        "controller",
        "what switches the pump",
        q("power", POWER, "1.2 W", "its own draw").from0(),
        section(
            "relay",
            "the relay",
            q("rated", CURRENT, "10 A", "rated current of its contact, resistive").above0(),
            q("coil", POWER, "0.4 W", "draw of its coil").from0(),
            one(
                    "coil_when",
                    Kind.choice("on", "off", "never"),
                    "\"on\"",
                    "when the coil draws: with the pump on, off or never")
                .byDefault("on", "coil draws while the pump runs"),
            one("cycles", Kind.COUNT, "100000", "operations it is rated for")
                .byDefault("100000", "relay good for 100 000 operations"),
            one("inrush", Kind.NUMBER, "6", "inrush of the motor, times the running current")
                .above0()
                .byDefault("6", "inrush 6 times")));
  }

  private static Key backup() {
    return section(
        "backup",
        "battery for a power cut",
        q("hours", TIME, "6 h", "how long it must last").above0(),
        q("battery", VOLTAGE, "12.8 V", "its voltage").above0(),
        q("capacity", Dimension.CHARGE, "20 Ah", "its capacity, when you have one").above0(),
        one(
                "chemistry",
                Kind.choice("lithium", "lead"),
                "lithium",
                "lithium (iron phosphate) or lead")
            .byDefault("lithium", "a lithium battery"),
        q("depth", SHARE, "80 %", "share of it that may be taken out")
            .within(0.01, 1)
            .byDefault("80 %", "80 % of the battery used"),
        q("reserve", SHARE, "25 %", "reserve for age and cold")
            .from0()
            .byDefault("25 %", "25 % reserve for age and cold"),
        q("inverter", SHARE, "85 %", "efficiency of the inverter").within(0.01, 1),
        q("idle", POWER, "4 W", "draw of the inverter with nothing on").from0());
  }

  private static Key tariff() {
    return section(
        "tariff",
        "price of electricity",
        q("price", MONEY_PER_ENERGY, "0.31 EUR/kWh", "price of energy").from0(),
        q("standing", MONEY_PER_TIME, "0.30 EUR/d", "standing charge").from0(),
        sections(
            "bands",
            "other prices at other hours; the last that matches wins",
            one("from", Kind.CLOCK, "\"22:00\"", "start, local clock"),
            one("to", Kind.CLOCK, "\"06:00\"", "end, not included"),
            list("months", Kind.COUNT, "[11, 12, 1]", "months it holds in")
                .within(1, 12)
                .atLeast(1),
            list(
                    "days",
                    Kind.choice("mon", "tue", "wed", "thu", "fri", "sat", "sun"),
                    "[sat, sun]",
                    "weekdays it holds on")
                .atLeast(1),
            q("price", MONEY_PER_ENERGY, "0.22 EUR/kWh", "price in it").from0()));
  }

  private static Key ion(String name, String ion, String example, String meaning) {
    return one(name, ConcentrationKind.ofIon(ion), example, meaning).from0();
  }

  private static Key water() {
    return section(
        "water",
        "the water it is filled with; its ions in mg/L, mmol/L or meq/L",
        q("ec", EC, "0.45 mS/cm", "EC at 25 C").from0(),
        q("alkalinity", ALKALINITY, "180 mg/L as CaCO3", "alkalinity, or carbonate hardness")
            .from0(),
        one("ph", Kind.NUMBER, "7.6", "pH").within(0, 14),
        ion("nitrate", "NO3", "12 mg/L", "nitrate as NO3"),
        ion("phosphorus", "P", "0.5 mg/L", "phosphorus as P"),
        ion("potassium", "K", "2 mg/L", "potassium"),
        ion("calcium", "Ca", "62 mg/L", "calcium"),
        ion("magnesium", "Mg", "11 mg/L", "magnesium"),
        ion("sulfate", "SO4", "20 mg/L", "sulfate as SO4"),
        ion("sodium", "Na", "9 mg/L", "sodium"),
        ion("chloride", "Cl", "14 mg/L", "chloride"),
        q("temperature", TEMPERATURE, "16 C", "its temperature").within(0, 60),
        q("price", MONEY_PER_VOLUME, "4.20 EUR/m3", "its price").from0());
  }

  private static Key feed() {
    return section(
        "feed",
        "what is fed",
        sections(
            "parts",
            "the bottles of concentrate",
            one("name", Kind.TEXT, "bottle 1", "its name"),
            q("rate", VOLUME_RATIO, "2.5 mL/L", "label rate of this part").above0(),
            named(
                    "label",
                    Kind.quantity(SHARE),
                    "{N: 4 %, P2O5: 2 %, K2O: 6 %}",
                    "what its label prints, elements or oxides",
                    null)
                .within(0, 1),
            q(
                    "density",
                    MASS_CONCENTRATION,
                    "1.18 g/mL",
                    "its density, when the label's per cent are by weight; g in 100 mL otherwise")
                .above0(),
            q("price", MONEY_PER_VOLUME, "13 EUR/L", "its price").from0()),
        q("rate_ec", EC, "1.9 mS/cm", "what all parts at label rate add to pure water").above0(),
        section(
            "acid",
            "acid against hard water",
            one("name", Kind.TEXT, "nitric-38", "acid and strength in per cent"),
            q("price", MONEY_PER_VOLUME, "9 EUR/L", "its price").from0()),
        section(
            "stock",
            "bottles of your own salts",
            q("bottle", VOLUME, "1 L", "size of each bottle").above0(),
            q("makes", VOLUME, "200 L", "tower water that one bottle of each makes").above0(),
            q("coldest", TEMPERATURE, "5 C", "coldest night where they stand"),
            named(
                "grams",
                Kind.quantity(MASS),
                "{calcium-nitrate-4h2o: 180 g, potassium-nitrate: 80 g}",
                "what is weighed into the bottles together, by salt",
                null)),
        sections(
            "salts",
            "your own salts",
            one("name", Kind.TEXT, "leaf-mix", "kebab-case name"),
            named(
                    "elements",
                    Kind.quantity(SHARE),
                    "{N: 12 %, K: 20 %}",
                    "elements or oxides by mass",
                    null)
                .within(0, 1),
            q("price", MONEY_PER_MASS, "6 EUR/kg", "its price").from0()));
  }

  private static Key meters() {
    return section(
        "meters",
        "last checks of the meters",
        section(
            "ec",
            "the EC meter",
            one("slope", Kind.NUMBER, "1.037", "true EC over shown EC").above0(),
            one("checked", Kind.DATE, "2027-04-02", "day of the check"),
            one("compensates", Kind.YES_NO, "true", "whether it shows EC at 25 C"),
            one("scale", Kind.COUNT, "500", "ppm scale it shows")),
        section(
            "ph",
            "the pH meter",
            one("offset", Kind.NUMBER, "-0.1", "true pH less shown pH").within(-14, 14),
            one("checked", Kind.DATE, "2027-04-02", "day of the check")));
  }

  private static Key target() {
    return section(
        "target",
        "what the solution should be",
        q("ec", EC, "1.6 mS/cm", "EC aimed at").above0(),
        q("ec_low", EC, "1.2 mS/cm", "lowest EC").from0(),
        q("ec_high", EC, "2.0 mS/cm", "highest EC").from0(),
        one("ph", Kind.NUMBER, "5.8", "pH aimed at").within(0, 14),
        one("ph_low", Kind.NUMBER, "5.5", "lowest pH").within(0, 14),
        one("ph_high", Kind.NUMBER, "6.5", "highest pH").within(0, 14));
  }

  private static Key crops() {
    return sections(
        "crops",
        "what grows; all per pot or plant, except pots",
        one("name", Kind.TEXT, "lettuce", "name as in `leat crops --list`"),
        one("tower", Kind.TEXT, "north", "tower it grows in"),
        one("pots", Kind.COUNT, "28", "how many pots").within(1, 100_000),
        one("sow", Kind.DATE, "2027-03-08", "first sowing"),
        one("until", Kind.DATE, "2027-09-06", "last sowing"),
        q("every", TIME, "7 d", "time between sowings").above0(),
        q("nursery", TIME, "21 d", "sowing to planting").from0(),
        q("growing", TIME, "35 d", "planting to harvest").above0(),
        q("germination", SHARE, "85 %", "seeds that come up").within(0.01, 1),
        q("loss", SHARE, "10 %", "plants lost after").within(0, 0.99),
        q("harvest", MASS, "0.18 kg", "harvest").from0(),
        q("water", FLOW, "0.12 L/d", "water when grown, on a day of 4 mm of reference evaporation")
            .from0(),
        q("area", AREA, "0.05 m2", "canopy of the full plant, instead of water").above0(),
        q("initial", TIME, "5 d", "days in the pot before it begins to spread").from0(),
        q("development", TIME, "19 d", "days over which it spreads to its full size").from0(),
        q("late", TIME, "20 d", "last days in the pot, in which it drinks less")
            .from0()
            .byDefault("0 d", "plants drink fully to the end"),
        q("start_share", SHARE, "10 %", "share of a full plant's thirst at planting")
            .within(0, 1)
            .above0()
            .byDefault("10 %", "plants start with 10 % of their full thirst"),
        q("end_share", SHARE, "80 %", "share of it at the end of late").within(0, 1),
        q("turnaround", TIME, "1 d", "days from harvest until the pot is planted again")
            .from0()
            .byDefault("0 d", "pots are planted again on the day of harvest"),
        one(
                "sizes",
                Kind.choice("spread", "equal"),
                "spread",
                "how pots are shared between batches: spread over all, or equal batches")
            .byDefault("spread", "batches spread over all pots"),
        one("earliest_transplant", Kind.DATE, "2027-04-10", "no batch is planted before this day"),
        one("latest_harvest", Kind.DATE, "2027-10-15", "no batch is harvested after this day"),
        q("base", TEMPERATURE, "4 C", "temperature under which it does not grow"),
        q("upper", TEMPERATURE, "24 C", "temperature over which it gains nothing"),
        one("warmth", Kind.NUMBER, "450", "degree days from planting to harvest").above0(),
        q("ec_low", EC, "1.2 mS/cm", "lowest EC it likes, instead of the table's").from0(),
        q("ec_high", EC, "1.8 mS/cm", "highest EC it likes").from0(),
        one("ph_low", Kind.NUMBER, "6.0", "lowest pH it likes").within(0, 14),
        one("ph_high", Kind.NUMBER, "7.0", "highest pH it likes").within(0, 14),
        q("seed_price", MONEY, "0.03 EUR", "a seed").from0(),
        q("shop_price", MONEY, "1.60 EUR", "what a shop asks for it").from0());
  }

  private static Key season() {
    return section(
        "season",
        "the season",
        one("from", Kind.DATE, "2027-04-10", "first day"),
        one("to", Kind.DATE, "2027-10-15", "last day"),
        one(
                "refill",
                Kind.REFILL,
                "at low",
                "when it is topped up: at low, daily, every 3 d or none")
            .byDefault("at low", "topped up at the low mark"),
        section(
            "start",
            "the tank on the evening before the first day; full and at the target otherwise",
            q("volume", VOLUME, "45 L", "what is in it").from0(),
            q("ec", EC, "1.6 mS/cm", "its EC").from0(),
            one("changed", Kind.DATE, "2027-05-20", "day of the last change, or of the first fill"),
            one("filled", Kind.DATE, "2027-06-02", "day of the last top-up since"),
            q("added", VOLUME, "24 L", "water topped up since the change").from0()),
        q(
                "uptake",
                EC,
                "1.2 mS/cm",
                "salt that the plants take with a litre, as EC; 0.75 of the target otherwise")
            .from0(),
        q("dose_below", EC, "1.2 mS/cm", "feed alone is poured in an evening under this EC")
            .from0(),
        q("dilute_above", EC, "2.0 mS/cm", "a top-up that would end over this EC drains first")
            .above0(),
        section(
            "change",
            "when the whole tank is changed, whichever comes first",
            q("every", TIME, "21 d", "days between changes").above0(),
            q("or_added", SHARE, "100 %", "litres topped up as a share of full").above0()),
        sections(
            "away",
            "when nobody is there",
            one("from", Kind.DATE, "2027-07-24", "first day"),
            one("to", Kind.DATE, "2027-08-02", "last day")),
        q("catch", VOLUME, "25 L", "biggest can or bucket").above0());
  }

  private static Key prices() {
    return section(
        "prices",
        "what things cost",
        q("filament", MONEY_PER_MASS, "22 EUR/kg", "filament").from0(),
        named(
                "filaments",
                Kind.quantity(MONEY_PER_MASS),
                "{ASA: 31 EUR/kg}",
                "filament by material, where its price differs",
                Material.words())
            .from0(),
        q("spool", MASS, "1 kg", "filament on a spool").above0(),
        named(
                "tubes",
                Kind.quantity(MONEY),
                "{16 mm hose: 4.20 EUR}",
                "a tube for one riser, by its name as `leat pump --bores` prints it",
                null)
            .from0(),
        q("pump", MONEY, "24 EUR", "the pump").from0(),
        q("tank", MONEY, "16 EUR", "the tank").from0(),
        q("sender", MONEY, "16 EUR", "the sender").from0(),
        q("controller", MONEY, "9 EUR", "the controller").from0(),
        q("other", MONEY, "48 EUR", "all the rest").from0(),
        one("life", Kind.COUNT, "5 seasons", "seasons it lasts").within(1, 100));
  }
}
