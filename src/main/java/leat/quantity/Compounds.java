package leat.quantity;

/**
 * Readers of the texts that hold several quantities. All throw {@link Unreadable} with offsets into
 * the whole text; the same rules for numbers and units hold as for one quantity.
 */
public final class Compounds {
  private Compounds() {}

  /** "540 mm x 360 mm", "540 x 360 mm"; the mark may be x, X, * or the multiplication sign. */
  public static Size size(String typed) {
    Pair pair = pair(typed, "'x'", Dimension.LENGTH, Dimension.LENGTH, "540 mm x 360 mm");
    int mark = cross(typed, 0);
    if (mark < 0) {
      throw pair.unmarked(null);
    }
    once(typed, cross(typed, mark + 1), "'x'", "540 mm x 360 mm");
    pair.split(0, mark, mark + 1, typed.length(), true);
    return new Size(pair.first(), pair.second());
  }

  private static int cross(String typed, int from) {
    for (int i = from; i < typed.length(); i++) {
      char c = typed.charAt(i);
      if (c == 'x' || c == 'X' || c == '*' || c == '\u00d7') {
        return i;
      }
    }
    return -1;
  }

  /** "400 L/h @ 2.1 m", "600 L/h@1.7 m". */
  public static PumpPoint point(String typed) {
    Pair pair = at(typed, '@', "'@'", Dimension.FLOW, Dimension.HEAD, "600 L/h @ 1.7 m");
    return new PumpPoint(pair.first(), pair.second());
  }

  /** "30 L @ 60 %". */
  public static TankState state(String typed) {
    Pair pair = at(typed, '@', "'@'", Dimension.VOLUME, Dimension.SHARE, "30 L @ 60 %");
    return new TankState(pair.first(), pair.second());
  }

  /** "0.255 m2 @ 1.2 m x 1.2". */
  public static Outline outline(String typed) {
    String example = "0.255 m2 @ 1.2 m x 1.2";
    Pair area = pair(typed, "'@'", Dimension.AREA, Dimension.LENGTH, example);
    int at = typed.indexOf('@');
    if (at < 0) {
      throw area.unmarked(null);
    }
    once(typed, typed.indexOf('@', at + 1), "'@'", example);
    Pair rest = pair(typed, "'x'", Dimension.LENGTH, Dimension.NUMBER, example);
    int mark = cross(typed, at + 1);
    if (mark < 0) {
      throw rest.unmarked(null);
    }
    once(typed, cross(typed, mark + 1), "'x'", example);
    rest.split(at + 1, mark, mark + 1, typed.length(), false);
    Quantity wide = area.side(0, at, Dimension.AREA, null, "before '@'");
    return new Outline(wide, rest.first(), rest.second());
  }

  /** "40 mm = 10 ohm". */
  public static SenderStep step(String typed) {
    Pair pair = at(typed, '=', "'='", Dimension.LENGTH, Dimension.RESISTANCE, "40 mm = 10 ohm");
    return new SenderStep(pair.first(), pair.second());
  }

  /** "20.1 L = 21.5 ohm". */
  public static SenderStep edge(String typed) {
    Pair pair = at(typed, '=', "'='", Dimension.VOLUME, Dimension.RESISTANCE, "20.1 L = 21.5 ohm");
    return new SenderStep(pair.first(), pair.second());
  }

  /** "40 mm = 4.1 L". */
  public static Strap strap(String typed) {
    Pair pair = at(typed, '=', "'='", Dimension.LENGTH, Dimension.VOLUME, "40 mm = 4.1 L");
    return new Strap(pair.first(), pair.second());
  }

  /** "40 mm = 1440 cm2". */
  public static AreaAt areaAt(String typed) {
    Pair pair = at(typed, '=', "'='", Dimension.LENGTH, Dimension.AREA, "40 mm = 1440 cm2");
    return new AreaAt(pair.first(), pair.second());
  }

  private static Pair at(
      String typed, char mark, String name, Dimension left, Dimension right, String example) {
    Pair pair = pair(typed, name, left, right, example);
    int at = typed.indexOf(mark);
    if (at < 0) {
      throw pair.unmarked(null);
    }
    once(typed, typed.indexOf(mark, at + 1), name, example);
    return pair.split(0, at, at + 1, typed.length(), false);
  }

  private static Bucket bucket(String typed, int to) {
    Pair pair = pair(typed, "'in'", Dimension.VOLUME, Dimension.TIME, "10 L in 65 s");
    int in = word(typed, "in", to);
    if (in < 0) {
      throw pair.unmarked(null);
    }
    pair.split(0, in, in + 2, to, false);
    if (!(pair.second().value() > 0)) {
      String got = pair.second().typed();
      int start = typed.indexOf(got, in + 2);
      throw QuantityErrors.noTime(got, start, start + got.length());
    }
    return new Bucket(pair.first(), pair.second());
  }

  /** "9.2 L/min @ 330 mm", "9.2 L/min", "10 L in 65 s", "10 L in 65 s @ 330 mm". */
  public static MeasuredFlow measured(String typed) {
    String example = "9.2 L/min @ 330 mm";
    int at = typed.indexOf('@');
    int to = at < 0 ? typed.length() : at;
    Quantity level = null;
    if (at >= 0) {
      once(typed, typed.indexOf('@', at + 1), "'@'", example);
      Pair pair = pair(typed, "'@'", Dimension.FLOW, Dimension.LENGTH, example);
      level = pair.side(at + 1, typed.length(), Dimension.LENGTH, null, "after '@'");
    }
    if (word(typed, "in", to) >= 0) {
      Bucket bucket = bucket(typed, to);
      return new MeasuredFlow(ofBucket(bucket), bucket, level);
    }
    Pair pair = pair(typed, "'@'", Dimension.FLOW, Dimension.LENGTH, example);
    Quantity flow =
        at < 0
            ? QuantityReader.read(typed, Dimension.FLOW)
            : pair.side(0, to, Dimension.FLOW, null, "before '@'");
    return new MeasuredFlow(flow, null, level);
  }

  private static Quantity ofBucket(Bucket bucket) {
    return Quantity.of(Units.L_MIN.fromBase(bucket.flow()), Units.L_MIN);
  }

  /** "28..34 L", "26 mm to 268 mm": the unit on both or on the last; low first. */
  public static Span range(String typed, Dimension wanted) {
    int[] mark = rangeMark(typed, 0, typed.length());
    if (mark == null) {
      String example = rangeExample(wanted);
      throw pair(typed, "'..'", wanted, wanted, example).unmarked(hyphenMended(typed));
    }
    return range(typed, 0, mark, typed.length(), wanted);
  }

  /** A range as above, or one quantity, which is then both ends. */
  public static Span rangeOrOne(String typed, Dimension wanted) {
    int[] mark = rangeMark(typed, 0, typed.length());
    if (mark != null) {
      return range(typed, 0, mark, typed.length(), wanted);
    }
    try {
      Quantity one = QuantityReader.read(typed, wanted);
      return new Span(one, one);
    } catch (Unreadable e) {
      String mended = hyphenMended(typed);
      if (mended == null) {
        throw e;
      }
      throw pair(typed, "'..'", wanted, wanted, rangeExample(wanted)).unmarked(mended);
    }
  }

  static Span range(String typed, int from, int[] mark, int to, Dimension wanted) {
    String name = "'" + Spelling.trim(typed.substring(mark[0], mark[1])) + "'";
    Pair pair = pair(typed, name, wanted, wanted, rangeExample(wanted));
    pair.split(from, mark[0], mark[1], to, true);
    if (pair.first().value() > pair.second().value()) {
      throw QuantityErrors.rangeDown(Spelling.trim(typed.substring(from, to)), from, to);
    }
    return new Span(pair.first(), pair.second());
  }

  private static String rangeExample(Dimension wanted) {
    switch (wanted) {
      case LENGTH:
        return "26 mm to 268 mm";
      case VOLUME:
        return "28..34 L";
      case TIME:
        return "60..90 s";
      case SHARE:
        return "70..85 %";
      case FLOW:
        return "4..6 L/min";
      case HEAD:
        return "1.8..2.4 m";
      default:
        return wanted.example() + " to " + wanted.example();
    }
  }

  /** Where "..", "to", a dash or a lone hyphen stands between two ends, or null. */
  static int[] rangeMark(String typed, int from, int to) {
    for (int i = from; i < to; i++) {
      char c = typed.charAt(i);
      if (typed.startsWith("..", i)) {
        return new int[] {i, i + 2};
      }
      if (c == '\u2026' || c == '\u2013') {
        return new int[] {i, i + 1};
      }
      boolean alone = i > from && i + 1 < to && Spelling.isSpace(typed.charAt(i - 1));
      if (alone && c == '-' && Spelling.isSpace(typed.charAt(i + 1))) {
        return new int[] {i, i + 1};
      }
    }
    int word = word(typed, "to", to);
    return word < from ? null : new int[] {word, word + 2};
  }

  /** "28-34 L" with dots for the hyphen, or null. */
  private static String hyphenMended(String typed) {
    int hyphen = typed.indexOf('-', 1);
    boolean between = hyphen > 0 && hyphen + 1 < typed.length();
    if (!between || !isDigit(typed.charAt(hyphen - 1)) || !isDigit(typed.charAt(hyphen + 1))) {
      return null;
    }
    return typed.substring(0, hyphen) + ".." + typed.substring(hyphen + 1);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** "15 min/15 min", "90 s / 12 min", "15/15 min": run, then rest. */
  public static RunAndRest timing(String typed) {
    Pair pair = pair(typed, "'/'", Dimension.TIME, Dimension.TIME, "15 min/15 min");
    int slash = timingSlash(typed);
    if (slash < 0) {
      throw pair.unmarked(null);
    }
    pair.split(0, slash, slash + 1, typed.length(), true);
    return new RunAndRest(pair.first(), pair.second());
  }

  /** The first slash after a letter, so that "1/2 h/12 min" is understood; else the first. */
  private static int timingSlash(String typed) {
    int i = typed.indexOf('/');
    int first = i;
    while (i >= 0) {
      String before = Spelling.trim(typed.substring(0, i));
      if (!before.isEmpty() && Character.isLetter(before.charAt(before.length() - 1))) {
        return i;
      }
      i = typed.indexOf('/', i + 1);
    }
    return first;
  }

  /** "at low", "daily", "every 3 d". */
  public static Cadence cadence(String typed) {
    String words = Spelling.trim(typed);
    if (words.equals("at low")) {
      return new Cadence(true, null);
    }
    if (words.equals("none")) {
      return new Cadence(false, null);
    }
    if (words.equals("daily")) {
      return new Cadence(false, Quantity.of(1, Units.D));
    }
    if (!words.startsWith("every ")) {
      throw QuantityErrors.notACadence(words, 0, typed.length());
    }
    int from = typed.indexOf("every") + 5;
    Quantity every = QuantityReader.read(typed, from, typed.length(), Dimension.TIME, null);
    if (!(every.value() > 0)) {
      throw QuantityErrors.notACadence(words, 0, typed.length());
    }
    return new Cadence(false, every);
  }

  /**
   * "N=150", "calcium-nitrate-4h2o=42 g".
   *
   * @param bare the unit of a bare number
   */
  public static NamedQuantity named(String typed, Unit bare) {
    String name = nameBefore(typed, bare.dimension());
    int from = typed.indexOf('=') + 1;
    Quantity quantity = QuantityReader.read(typed, from, typed.length(), bare.dimension(), bare);
    return new NamedQuantity(name, quantity);
  }

  /**
   * The name before the equals sign.
   *
   * @param needed what stands behind it
   */
  public static String nameBefore(String typed, Dimension needed) {
    int at = typed.indexOf('=');
    String name = at < 0 ? "" : Spelling.trim(typed.substring(0, at));
    if (name.isEmpty()) {
      throw QuantityErrors.noName(needed, Spelling.trim(typed), 0, typed.length());
    }
    return name;
  }

  /** "2", "2 @ 60 mm", "1 @ 50 %", "1 @ 20 deg", from {@code from} on. */
  public static CountAt countAt(String typed, int from) {
    int at = typed.indexOf('@', from);
    int end = at < 0 ? typed.length() : at;
    Quantity count = QuantityReader.read(typed, from, end, Dimension.NUMBER, Units.NUMBER_UNIT);
    if (at < 0) {
      return new CountAt(count, null);
    }
    once(typed, typed.indexOf('@', at + 1), "'@'", "2 @ 60 mm");
    Dimension size = sizeIn(typed, at + 1);
    return new CountAt(count, QuantityReader.read(typed, at + 1, typed.length(), size, null));
  }

  /** A size is a length unless its unit says that it is a share or an angle. */
  private static Dimension sizeIn(String typed, int from) {
    if (typed.indexOf('%', from) >= 0) {
      return Dimension.SHARE;
    }
    boolean angle = typed.indexOf("deg", from) >= 0 || typed.indexOf('\u00b0', from) >= 0;
    return angle ? Dimension.ANGLE : Dimension.LENGTH;
  }

  private static Pair pair(
      String typed, String mark, Dimension left, Dimension right, String example) {
    if (typed.length() > 200) {
      throw QuantityErrors.tooLong(left, 0, typed.length());
    }
    return new Pair(typed, mark, left, right, example);
  }

  private static void once(String typed, int second, String mark, String example) {
    if (second >= 0) {
      throw QuantityErrors.secondMark(mark, example, Spelling.trim(typed), second, second + 1);
    }
  }

  /** Where a word stands between spaces before {@code to}, or -1. */
  static int word(String typed, String word, int to) {
    int n = word.length();
    for (int i = 1; i + n < to; i++) {
      boolean apart =
          Spelling.isSpace(typed.charAt(i - 1)) && Spelling.isSpace(typed.charAt(i + n));
      if (apart && typed.startsWith(word, i)) {
        return i;
      }
    }
    return -1;
  }
}
