package leat.quantity;

/**
 * Every message a quantity can be refused with, one method each. They say what is needed with an
 * example, what was found, and the mend where it is sure; the place is added by the caller.
 * Parameters: {@code got} the whole quantity as typed, {@code from} and {@code to} the part to
 * point at.
 */
public final class QuantityErrors {
  /** Longest part of a typed text that a message repeats. */
  private static final int LONGEST_QUOTE = 60;

  private QuantityErrors() {}

  static String quote(String text) {
    StringBuilder out = new StringBuilder("\"");
    int n = Math.min(text.length(), LONGEST_QUOTE);
    for (int i = 0; i < n; i++) {
      char c = text.charAt(i);
      out.append(c < ' ' || c == '\u007f' ? ' ' : c);
    }
    return out.append(n < text.length() ? "...\"" : "\"").toString();
  }

  private static String needed(Dimension wanted) {
    return wanted.word() + " is needed, such as " + quote(wanted.example());
  }

  /** Nothing but spaces. */
  public static Unreadable nothing(Dimension wanted, int at) {
    return new Unreadable("nothing", needed(wanted) + "; got nothing", at, at, null, true);
  }

  /** Longer than any quantity. */
  public static Unreadable tooLong(Dimension wanted, int from, int to) {
    String found = "; got " + (to - from) + " characters";
    return new Unreadable("too-long", needed(wanted) + found, from, to, null);
  }

  /** No number at the start. */
  public static Unreadable noNumber(Dimension wanted, String got, int from, int to) {
    return new Unreadable(
        "no-number", needed(wanted) + "; got " + quote(got), from, to, null, true);
  }

  /** NaN, Infinity and their kin. */
  public static Unreadable notFinite(Dimension wanted, String got, int from, int to) {
    String text = needed(wanted) + "; " + quote(got) + " is no number that can be measured";
    return new Unreadable("not-finite", text, from, to, null);
  }

  /** A number with two points or other odd marks. */
  public static Unreadable badNumber(Dimension wanted, String got, int from, int to) {
    String text = quote(got) + " is no number; " + needed(wanted);
    return new Unreadable("bad-number", text, from, to, null);
  }

  /** Over 1e15. */
  public static Unreadable tooLarge(String got, int from, int to) {
    return new Unreadable(
        "number-too-large",
        "the number is too large for anything here; got " + quote(got),
        from,
        to,
        null);
  }

  /** Under 1e-15 and not 0. */
  public static Unreadable tooSmall(String got, int from, int to) {
    return new Unreadable(
        "number-too-small",
        "the number is too small for anything here; got " + quote(got),
        from,
        to,
        null);
  }

  /** A fraction over 0. */
  public static Unreadable overZero(String got, int from, int to) {
    return new Unreadable(
        "over-zero", "a fraction cannot be over 0; got " + quote(got), from, to, null);
  }

  /** "5,5 L". */
  public static Unreadable decimalComma(String got, String mended, int from, int to) {
    String text = "decimals take a point: type " + quote(mended) + "; got " + quote(got);
    return new Unreadable("decimal-comma", text, from, to, mended);
  }

  /** "1,000 L/h". */
  public static Unreadable twoReadings(
      String got, String thousand, String point, int from, int to) {
    String text =
        quote(got) + " can be read two ways: type " + quote(thousand) + " or " + quote(point);
    return new Unreadable("two-readings", text, from, to, null);
  }

  /** "13'000 L", "1_000 L", "1,000,000 L". */
  public static Unreadable groupedDigits(String got, String mended, int from, int to) {
    String text =
        "digits take no marks between them: type " + quote(mended) + "; got " + quote(got);
    return new Unreadable("grouped-digits", text, from, to, mended);
  }

  /** A bare number. */
  public static Unreadable noUnit(Dimension wanted, String got, int from, int to) {
    String text = wanted.word() + " needs its unit, such as " + quote(wanted.example());
    return new Unreadable("no-unit", text + "; got " + quote(got), from, to, null, true);
  }

  /** A unit of another dimension. */
  public static Unreadable wrongDimension(
      Dimension wanted, Dimension found, String got, int from, int to) {
    String text = needed(wanted) + "; got " + quote(got) + ", which is " + found.word();
    return new Unreadable("wrong-dimension", text, from, to, null, true);
  }

  /** "15 m" for minutes. */
  public static Unreadable metresForMinutes(
      Dimension wanted, String got, String mended, int from, int to) {
    String text =
        needed(wanted) + "; m is metres: for minutes type " + quote(mended) + "; got " + quote(got);
    return new Unreadable("metres-for-minutes", text, from, to, mended);
  }

  /** "900 ppm" for an EC. */
  public static Unreadable ppmForEc(String got, int from, int to) {
    String text =
        needed(Dimension.EC)
            + "; ppm is the EC times 500, 640 or 700 by the meter's scale, and leat ec --scale turns it back; got "
            + quote(got);
    return new Unreadable("ppm-for-ec", text, from, to, null);
  }

  /** "16 oz" for a volume. */
  public static Unreadable ouncesForFluidOunces(String got, String mended, int from, int to) {
    String text =
        needed(Dimension.VOLUME)
            + "; oz is a mass: for fluid ounces type "
            + quote(mended)
            + "; got "
            + quote(got);
    return new Unreadable("ounces-for-fluid-ounces", text, from, to, mended);
  }

  /** A wire gauge where the area of its copper is wanted. */
  public static Unreadable wireGauge(String got, int from, int to) {
    String text =
        needed(Dimension.AREA).replace("0.03 m2", "0.82 mm2")
            + ", which is 18 AWG; other gauges: leat duty cable --gauge; got "
            + quote(got);
    return new Unreadable("wire-gauge", text, from, to, null);
  }

  /** Right but for the case of its letters. */
  public static Unreadable otherCase(String unit, String got, String mended, int from, int to) {
    String text = "case counts in units: type " + quote(mended) + "; got " + quote(got);
    return new Unreadable("other-case", text, from, to, mended);
  }

  /** A unit nobody knows; {@code mended} may be null. */
  public static Unreadable unknownUnit(
      Dimension wanted, String unit, String mended, int from, int to) {
    String text = "unknown unit " + quote(unit) + "; ";
    if (mended == null) {
      return new Unreadable("unknown-unit", text + needed(wanted), from, to, null);
    }
    return new Unreadable(
        "unknown-unit", text + "did you mean " + quote(mended) + "?", from, to, mended);
  }

  /** mmol/L or meq/L where nothing says of which ion. */
  public static Unreadable ofWhichIon(Dimension wanted, String unit, String got, int from, int to) {
    return new Unreadable(
        "of-which-ion",
        wanted.word()
            + " is needed, such as "
            + quote(wanted.example())
            + "; got "
            + quote(got)
            + ": leat ec --ion \"Ca=2 "
            + unit
            + "\" tells an ion's mg/L",
        from,
        to,
        null);
  }

  /** mmol/L of an alkalinity: of HCO3, as an acid capacity is told, or of CaCO3? */
  public static Unreadable millimolesOfWhat(
      String got, String hydrogencarbonate, String carbonate, int from, int to) {
    return new Unreadable(
        "millimoles-of-what",
        "mmol/L of what? An acid capacity is "
            + quote(hydrogencarbonate)
            + ", calcium carbonate "
            + quote(carbonate)
            + ", which is twice as much; got "
            + quote(got),
        from,
        to,
        null);
  }

  /** A total hardness where an alkalinity is wanted. */
  public static Unreadable hardness(String unit, String got, int from, int to) {
    return new Unreadable(
        "hardness",
        quote(unit)
            + " counts total hardness, which is no alkalinity: the carbonate hardness is needed, such as \"10 dKH\"; got "
            + quote(got),
        from,
        to,
        null);
  }

  /** "5 ft 30 in", "2 in 3 ft". */
  public static Unreadable badParts(Dimension wanted, String got, int from, int to) {
    String text =
        "after a larger unit comes a smaller one that does not fill it, as in \"5 ft 3 in\"";
    return new Unreadable("bad-parts", text + "; got " + quote(got), from, to, null);
  }

  /** A price or amount without a currency. */
  public static Unreadable noCurrency(Dimension wanted, String got, int from, int to) {
    String text = wanted.word() + " needs its currency, such as " + quote(wanted.example());
    return new Unreadable("no-currency", text + "; got " + quote(got), from, to, null);
  }

  /** "$": of which country? */
  public static Unreadable sharedSign(String sign, String got, int from, int to) {
    String codes = sign.equals("$") ? "USD, CAD or AUD" : "JPY or CNY";
    String text = "several currencies write " + quote(sign) + ": type the code, such as " + codes;
    return new Unreadable("shared-sign", text + "; got " + quote(got), from, to, null);
  }

  /** "28 cents/kWh"; {@code mended} in euros, or what the plan's currency is. */
  public static Unreadable hundredths(String word, String got, String mended, int from, int to) {
    String text =
        quote(word) + " names no currency: type " + quote(mended) + ", with the code of yours";
    return new Unreadable("hundredths", text + "; got " + quote(got), from, to, mended);
  }

  /** A currency nobody knows; {@code mended} may be null. */
  public static Unreadable unknownCurrency(
      Dimension wanted, String currency, String mended, int from, int to) {
    String text = "unknown currency " + quote(currency) + "; ";
    if (mended == null) {
      return new Unreadable("unknown-currency", text + needed(wanted), from, to, null);
    }
    return new Unreadable(
        "unknown-currency", text + "did you mean " + quote(mended) + "?", from, to, mended);
  }

  /** Another thing, or nothing, on one side of a mark: "600 L/h @ 1.7 L". */
  public static Unreadable expectedBeside(
      Dimension wanted, String place, String example, String got, int from, int to) {
    String text = "expected " + wanted.word() + " " + place + ", such as " + quote(example);
    return new Unreadable(
        "expected-beside",
        text + "; got " + (got.isEmpty() ? "nothing" : quote(got)),
        from,
        to,
        null);
  }

  /** No mark between two quantities: "600 L/h 1.7 m"; {@code mended} may be null. */
  public static Unreadable noMark(
      String mark,
      Dimension left,
      Dimension right,
      String example,
      String got,
      String mended,
      int from,
      int to) {
    String between =
        left == right ? "two values, each " + left.word() : left.word() + " and " + right.word();
    String text = "expected " + mark + " between " + between + ", such as " + quote(example);
    return new Unreadable("no-mark", text + "; got " + quote(got), from, to, mended);
  }

  /** "540 mm x 360 mm x 200 mm". */
  public static Unreadable secondMark(String mark, String example, String got, int from, int to) {
    String text = "expected " + mark + " once, such as " + quote(example);
    return new Unreadable("second-mark", text + "; got " + quote(got), from, to, null);
  }

  /** "34..28 L". */
  public static Unreadable rangeDown(String got, int from, int to) {
    String text = "a range goes from low to high, such as \"28..34 L\"; got " + quote(got);
    return new Unreadable("range-down", text, from, to, null);
  }

  /** A step of 0 or below. */
  public static Unreadable badStep(String got, int from, int to) {
    return new Unreadable("bad-step", "a step must be above 0; got " + quote(got), from, to, null);
  }

  /** A step between ends that are no range, or a range without a step. */
  public static Unreadable noStep(String got, int from, int to) {
    String text = "expected a list or a range with its step, such as \"0.8..1.4 m step 0.2 m\"";
    return new Unreadable("no-step", text + "; got " + quote(got), from, to, null);
  }

  /** A step so small that the values would never end. */
  public static Unreadable tooManyValues(int most, String got, int from, int to) {
    String text = "more than " + most + " values; take a larger step; got " + quote(got);
    return new Unreadable("too-many-steps", text, from, to, null);
  }

  /** "10 L in 0 s". */
  public static Unreadable noTime(String got, int from, int to) {
    String text = "the time of a bucket must be above 0, such as \"10 L in 65 s\"";
    return new Unreadable("no-time", text + "; got " + quote(got), from, to, null);
  }

  /** Not one of "at low", "daily", "every 3 d". */
  public static Unreadable notACadence(String got, int from, int to) {
    String text = "expected \"at low\", \"daily\" or a time such as \"every 3 d\"";
    return new Unreadable("not-a-cadence", text + "; got " + quote(got), from, to, null);
  }

  /** Nothing before the equals sign, or no equals sign: "N 150". */
  public static Unreadable noName(Dimension wanted, String got, int from, int to) {
    String text = "expected a name, '=' and " + wanted.word() + "; got " + quote(got);
    return new Unreadable("no-name", text, from, to, null);
  }
}
