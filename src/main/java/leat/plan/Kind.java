package leat.plan;

import leat.quantity.AreaAt;
import leat.quantity.Compounds;
import leat.quantity.CountAt;
import leat.quantity.Currencies;
import leat.quantity.DateWords;
import leat.quantity.Dimension;
import leat.quantity.JsonText;
import leat.quantity.MeasuredFlow;
import leat.quantity.Nearest;
import leat.quantity.Outline;
import leat.quantity.PumpPoint;
import leat.quantity.Quantity;
import leat.quantity.QuantityReader;
import leat.quantity.SchemaPattern;
import leat.quantity.SenderStep;
import leat.quantity.Size;
import leat.quantity.Span;
import leat.quantity.Strap;
import leat.quantity.TankState;
import leat.quantity.Units;
import leat.quantity.Unreadable;

/**
 * What a key's value is: a quantity of a dimension, one of some words, a date, a pump point and so
 * on. It reads the typed text, describes itself for errors and manuals, and gives the pattern for
 * the JSON Schema.
 */
public abstract class Kind {
  private final String word;

  Kind(String word) {
    this.word = word;
  }

  /** What it is in words, with its article: "a length", "a date". */
  public final String word() {
    return word;
  }

  /**
   * Reads a scalar.
   *
   * @param typed its text
   * @param quoted whether it stood in quotes
   * @throws Unreadable with the reason and the offsets in the text
   */
  abstract Object read(String typed, boolean quoted);

  /** JSON Schema of the value, as the text of a JSON object without its braces. */
  abstract String schema();

  /** The dimension of a quantity, or null. */
  public Dimension dimension() {
    return null;
  }

  /** Whether its values are plain numbers: quantities, numbers and counts. */
  final boolean isNumber() {
    return dimension() != null || this == NUMBER || this == COUNT;
  }

  /** A number as a value of this kind. */
  final Object ofNumber(double number) {
    if (this == COUNT) {
      return Integer.valueOf((int) number);
    }
    return Double.valueOf(number);
  }

  /** The allowed words of a choice, or null. */
  public String[] words() {
    return null;
  }

  /** A quantity; read as its value in the dimension's base unit, a Double. */
  public static Kind quantity(Dimension dimension) {
    return new QuantityKind(dimension);
  }

  private static final class QuantityKind extends Kind {
    private final Dimension dimension;

    QuantityKind(Dimension dimension) {
      super(dimension.word());
      this.dimension = dimension;
    }

    @Override
    Object read(String typed, boolean quoted) {
      return QuantityReader.read(typed, dimension).value();
    }

    @Override
    String schema() {
      return patterned(SchemaPattern.of(dimension));
    }

    @Override
    public Dimension dimension() {
      return dimension;
    }
  }

  /** No part of several may be negative. */
  private static final String NO_MINUS =
      ",\"not\":{\"pattern\":" + JsonText.string("(?:^|[@=])[ ]*[-\\u2212]") + "}";

  static String patterned(String pattern) {
    return "\"type\":\"string\",\"pattern\":" + JsonText.string(pattern);
  }

  /** A bare number; a Double. */
  public static final Kind NUMBER =
      new Kind("a number") {
        @Override
        Object read(String typed, boolean quoted) {
          refuseOctal(typed, quoted);
          return QuantityReader.number(typed);
        }

        @Override
        String schema() {
          return "\"type\":[\"number\",\"string\"],\"pattern\":"
              + JsonText.string(SchemaPattern.of(Dimension.NUMBER));
        }
      };

  /** A whole number from 0, with or without its word such as "5 seasons"; an Integer. */
  public static final Kind COUNT =
      new Kind("a whole number") {
        @Override
        Object read(String typed, boolean quoted) {
          refuseOctal(typed, quoted);
          double number;
          try {
            number = QuantityReader.read(typed, Dimension.COUNT).value();
          } catch (Unreadable e) {
            throw "no-number".equals(e.code()) ? PlanErrors.notACount(typed) : e;
          }
          if (number != Math.rint(number) || number < 0 || number > 1e9) {
            throw PlanErrors.notACount(typed);
          }
          return (int) number;
        }

        @Override
        String schema() {
          return "\"type\":[\"integer\",\"string\"],\"minimum\":0,\"pattern\":"
              + JsonText.string(SchemaPattern.of(Dimension.COUNT));
        }
      };

  /** A month by its number or its English name; an Integer, 1 to 12. */
  public static final Kind MONTH =
      new Kind("a month") {
        @Override
        Object read(String typed, boolean quoted) {
          int named = DateWords.monthOf(typed);
          if (named > 0) {
            return named;
          }
          for (int i = 1; i <= 12; i++) {
            if (typed.equals(String.valueOf(i)) || typed.equals("0" + i)) {
              return i;
            }
          }
          throw PlanErrors.notAMonth(typed);
        }

        @Override
        String schema() {
          return "\"type\":[\"integer\",\"string\"]";
        }
      };

  /** Older YAML readers take 017 for 15. */
  private static void refuseOctal(String typed, boolean quoted) {
    if (!quoted && Yaml11.octal(typed)) {
      throw PlanErrors.leadingZero(typed);
    }
  }

  /** Free text; a String. */
  public static final Kind TEXT =
      new Kind("a text") {
        @Override
        Object read(String typed, boolean quoted) {
          if (!quoted && Yaml11.takesForOther(typed)) {
            throw PlanErrors.quoteIt(typed);
          }
          return typed;
        }

        @Override
        String schema() {
          return "\"type\":[\"string\",\"number\"]";
        }
      };

  /** The code of a currency such as EUR; a String. */
  public static final Kind CURRENCY =
      new Kind("the code of a currency") {
        @Override
        Object read(String typed, boolean quoted) {
          if (!Currencies.isCode(typed)) {
            throw PlanErrors.notACurrency(typed, Nearest.of(typed, Currencies.codes()));
          }
          return typed;
        }

        @Override
        String schema() {
          return patterned("^[A-Z]{3}$");
        }
      };

  /** true or false; a Boolean. */
  public static final Kind YES_NO =
      new Kind("true or false") {
        @Override
        Object read(String typed, boolean quoted) {
          if ("true".equals(typed)) {
            return Boolean.TRUE;
          }
          if ("false".equals(typed)) {
            return Boolean.FALSE;
          }
          throw PlanErrors.notTrueOrFalse(typed);
        }

        @Override
        String schema() {
          return "\"enum\":[true,false,\"true\",\"false\"]";
        }
      };

  /** One of some words; a String. */
  public static Kind choice(String... words) {
    return new ChoiceKind("one of " + String.join(", ", words), words, false);
  }

  /** One of some words, a String, or a number, a Double. */
  public static Kind choiceOrNumber(String... words) {
    return new ChoiceKind("one of " + String.join(", ", words) + ", or a number", words, true);
  }

  private static final class ChoiceKind extends Kind {
    private final String[] words;
    private final boolean orNumber;

    ChoiceKind(String word, String[] words, boolean orNumber) {
      super(word);
      this.words = words;
      this.orNumber = orNumber;
    }

    @Override
    Object read(String typed, boolean quoted) {
      for (int i = 0; i < words.length; i++) {
        if (words[i].equals(typed)) {
          if (!orNumber && !quoted && Yaml11.takesForOther(typed)) {
            throw PlanErrors.quoteIt(typed);
          }
          return typed;
        }
      }
      char first = typed.isEmpty() ? ' ' : typed.charAt(0);
      if (orNumber && (Character.isDigit(first) || ".+-".indexOf(first) >= 0)) {
        return NUMBER.read(typed, quoted);
      }
      throw PlanErrors.notOneOf(typed, words);
    }

    @Override
    String schema() {
      return orNumber
          ? "\"anyOf\":[{" + enumOf(words) + "},{" + NUMBER.schema() + "}]"
          : enumOf(words);
    }

    @Override
    public String[] words() {
      return orNumber ? null : words;
    }
  }

  static String enumOf(String[] words) {
    StringBuilder out = new StringBuilder("\"enum\":[");
    for (int i = 0; i < words.length; i++) {
      out.append(i == 0 ? "" : ",").append(JsonText.string(words[i]));
    }
    return out.append(']').toString();
  }

  /** A day such as 2027-04-10; a java.time.LocalDate. */
  public static final Kind DATE = new FormKind("date", "a date");

  /** A time of day such as "22:00"; minutes since midnight, an Integer. */
  public static final Kind CLOCK = new FormKind("clock", "a time of day");

  /**
   * A width or a length by width such as "540 mm x 360 mm"; a {@link Size}, whose width is null for
   * one length.
   */
  public static final Kind SIZE =
      new Kind("a size") {
        @Override
        Object read(String typed, boolean quoted) {
          boolean pair =
              typed.indexOf('x') >= 0
                  || typed.indexOf('X') >= 0
                  || typed.indexOf('*') >= 0
                  || typed.indexOf('\u00d7') >= 0;
          Size size =
              pair
                  ? Compounds.size(typed)
                  : new Size(QuantityReader.read(typed, Dimension.LENGTH), null);
          if (pair) {
            above0(typed, size.length());
            above0(typed, size.width());
          } else {
            from0(typed, size.length());
          }
          return size;
        }

        @Override
        String schema() {
          String one = patterned(SchemaPattern.of(Dimension.LENGTH));
          String pair = patterned(SchemaPattern.size()) + ",\"not\":{\"pattern\":";
          return "\"anyOf\":[{"
              + one
              + ",\"not\":{\"pattern\":\"^[ ]*[-\\u2212]\"}},{"
              + pair
              + JsonText.string("(?:^|[xX*\\u00d7])[ ]*(?:[-\\u2212]|[0.]+[ ]*[^0-9. /])")
              + "}}]";
        }
      };

  /** A point of a pump curve such as "600 L/h @ 1.7 m"; a {@link leat.quantity.PumpPoint}. */
  public static final Kind POINT = new PartsKind("point", "a flow at a head");

  /** A step of a sender by height such as "40 mm = 10 ohm"; a {@link leat.quantity.SenderStep}. */
  public static final Kind STEP = new PartsKind("step", "a level = a resistance");

  /**
   * An edge of a sender in litres such as "20.1 L = 21.5 ohm"; a {@link leat.quantity.SenderStep}.
   */
  public static final Kind EDGE = new PartsKind("edge", "a volume = a resistance");

  /** A row of a strapping table such as "40 mm = 4.1 L"; a {@link leat.quantity.Strap}. */
  public static final Kind STRAP = new PartsKind("strap", "a level = a volume");

  /** A section of a tank such as "40 mm = 1440 cm2"; a {@link leat.quantity.AreaAt}. */
  public static final Kind AREA_AT = new PartsKind("area", "a level = an area");

  /**
   * A measured flow, with the tank's level if known: "9.2 L/min @ 330 mm"; a {@link
   * leat.quantity.MeasuredFlow}.
   */
  public static final Kind MEASURED =
      new PartsKind("measured", "a flow, with the tank's level if known");

  /** From one length to another: "26 mm to 268 mm"; a {@link leat.quantity.Span}. */
  public static final Kind STOPS = new FormKind("stops", "a length to a length");

  /**
   * A salt and its grams such as "potassium-nitrate=80 g"; a {@link leat.quantity.NamedQuantity}.
   */
  public static final Kind GRAMS = new FormKind("grams", "a salt = a mass");

  /** A volume or from one to another: "31 L", "28..34 L"; a {@link leat.quantity.Span}. */
  public static final Kind VOLUMES = new FormKind("volumes", "a volume, or a volume to a volume");

  /**
   * When the tank is topped up: "at low", "daily", "every 3 d" or "none"; a {@link
   * leat.quantity.Cadence}.
   */
  public static final Kind REFILL =
      new FormKind("refill", "at low, daily, every so many days, or none");

  /** Solution in the tank and growth of the plants: "30 L @ 60 %"; a {@link TankState}. */
  public static final Kind STATE = new PartsKind("state", "a volume @ a share");

  /** What the wind meets: "0.255 m2 @ 1.2 m x 1.2"; an {@link Outline}. */
  public static final Kind FACE = new PartsKind("face", "an area @ a height x a drag coefficient");

  /** Values of several quantities, none of which may be negative. */
  private static final class PartsKind extends Kind {
    private final String form;

    PartsKind(String form, String word) {
      super(word);
      this.form = form;
    }

    @Override
    Object read(String typed, boolean quoted) {
      switch (form) {
        case "point":
          PumpPoint point = Compounds.point(typed);
          return from0(typed, point, point.flow(), point.head());
        case "step":
          return step(typed, Compounds.step(typed));
        case "edge":
          return step(typed, Compounds.edge(typed));
        case "strap":
          Strap strap = Compounds.strap(typed);
          return from0(typed, strap, strap.level(), strap.volume());
        case "area":
          AreaAt area = Compounds.areaAt(typed);
          return from0(typed, area, area.level(), area.area());
        case "state":
          TankState state = Compounds.state(typed);
          return from0(typed, state, state.volume(), state.grown());
        case "face":
          Outline face = Compounds.outline(typed);
          return from0(typed, face, face.area(), face.height(), face.coefficient());
        default:
          return measured(typed, Compounds.measured(typed));
      }
    }

    private static Object step(String typed, SenderStep step) {
      return from0(typed, step, step.at(), step.reading());
    }

    private static Object measured(String typed, MeasuredFlow value) {
      if (value.bucket() == null) {
        from0(typed, value.flow());
      } else {
        above0(typed, value.bucket().volume());
      }
      return value.level() == null ? value : from0(typed, value, value.level());
    }

    @Override
    String schema() {
      switch (form) {
        case "point":
          return patterned(SchemaPattern.point()) + NO_MINUS;
        case "step":
          return patterned(SchemaPattern.step()) + NO_MINUS;
        case "edge":
          return patterned(SchemaPattern.edge()) + NO_MINUS;
        case "strap":
          return patterned(SchemaPattern.strap()) + NO_MINUS;
        case "area":
          return patterned(SchemaPattern.areaAt()) + NO_MINUS;
        case "state":
          return patterned("^[^@]+@[^@]+$");
        case "face":
          return patterned("^[^@]+@[^@]+[xX*][^@]+$");
        default:
          return patterned(SchemaPattern.measured()) + NO_MINUS;
      }
    }
  }

  /** Values with a form of their own. */
  private static final class FormKind extends Kind {
    private final String form;

    FormKind(String form, String word) {
      super(word);
      this.form = form;
    }

    @Override
    Object read(String typed, boolean quoted) {
      switch (form) {
        case "date":
          return Calendar.date(typed);
        case "clock":
          return Calendar.clock(typed, quoted);
        case "stops":
          Span stops = Compounds.range(typed, Dimension.LENGTH);
          return from0(typed, stops, stops.low());
        case "grams":
          return Compounds.named(typed, Units.G);
        case "volumes":
          return Compounds.rangeOrOne(typed, Dimension.VOLUME);
        case "refill":
          return Compounds.cadence(typed);
        default:
          return Compounds.timing(typed);
      }
    }

    @Override
    String schema() {
      switch (form) {
        case "date":
          return patterned("^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
        case "clock":
          return patterned("^([01]?[0-9]|2[0-4]):[0-5][0-9]$");
        case "stops":
          return patterned(SchemaPattern.range(Dimension.LENGTH));
        case "grams":
          return patterned("^[^=]+=[^=]+$");
        case "volumes":
          return "\"type\":\"string\"";
        case "refill":
          return patterned(SchemaPattern.cadence());
        default:
          return patterned("^[^/]+/[^/]+$");
      }
    }
  }

  /** The value, when no part of it is negative. */
  private static Object from0(String typed, Object value, Quantity... parts) {
    for (int i = 0; i < parts.length; i++) {
      from0(typed, parts[i]);
    }
    return value;
  }

  private static void from0(String typed, Quantity part) {
    if (part.value() < 0) {
      throw PlanErrors.partNegative(typed, part.typed());
    }
  }

  private static void above0(String typed, Quantity part) {
    if (!(part.value() > 0)) {
      throw PlanErrors.partNotAbove0(typed, part.typed());
    }
  }

  /** A number of days: "180" or "180 d"; a Double, days. */
  public static final Kind DAYS =
      new Kind("a number of days") {
        @Override
        Object read(String typed, boolean quoted) {
          return QuantityReader.read(typed, Units.D).in(Units.D);
        }

        @Override
        String schema() {
          return "\"type\":[\"number\",\"string\"]";
        }
      };

  /** How many fittings, and their size: "2", "1 @ 60 mm"; a {@link CountAt}. */
  public static final Kind FITTINGS =
      new Kind("a number, or a number @ a size") {
        @Override
        Object read(String typed, boolean quoted) {
          refuseOctal(typed, quoted);
          return counted(typed, Compounds.countAt(typed, 0));
        }

        @Override
        String schema() {
          return "\"type\":[\"number\",\"string\"],\"minimum\":0,\"pattern\":"
              + JsonText.string(SchemaPattern.countAt());
        }
      };

  /** A fitting by name, how many and its size: "elbow=2", "bend=1 @ 60 mm". */
  public static final Kind FITTING =
      new Kind("a fitting and how many") {
        @Override
        Object read(String typed, boolean quoted) {
          String name = Compounds.nameBefore(typed, Dimension.NUMBER);
          String[] known = leat.hydraulics.Fitting.allNames();
          if (!java.util.Arrays.asList(known).contains(name)) {
            throw PlanErrors.notOneOf(name, known);
          }
          int from = typed.indexOf('=') + 1;
          Fitted fitted = new Fitted(name, counted(typed, Compounds.countAt(typed, from)));
          if (fitted.misfit() != null) {
            throw PlanErrors.fitting(typed, fitted.misfit());
          }
          return fitted;
        }

        @Override
        String schema() {
          return patterned("^[a-z0-9-]+=.+$");
        }
      };

  private static CountAt counted(String typed, CountAt value) {
    from0(typed, value.count());
    if (value.size() != null) {
      from0(typed, value.size());
    }
    return value;
  }

  /** Run and rest of a pump: "15 min/15 min"; a {@link leat.quantity.RunAndRest}. */
  public static final Kind TIMING = new FormKind("timing", "a run and a rest");
}
