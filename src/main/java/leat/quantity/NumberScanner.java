package leat.quantity;

/**
 * Reads one number at the start of a stretch of text: "5", "-3.2", "1e-3", "1/2", "1 1/2", "1-1/2",
 * "½", "1½", "13 000". A comma is never guessed at.
 */
final class NumberScanner {
  private static final double LARGEST = 1e15;
  private static final double SMALLEST = 1e-15;

  private final String text;
  private final int gotFrom;
  private final int from;
  private final int to;
  private final Dimension wanted;
  private int at;

  NumberScanner(String text, int from, int to, Dimension wanted) {
    this(text, from, from, to, wanted);
  }

  /** A number that a currency stands before; messages quote from {@code gotFrom}. */
  NumberScanner(String text, int gotFrom, int from, int to, Dimension wanted) {
    this.gotFrom = gotFrom;
    this.text = text;
    this.from = from;
    this.to = to;
    this.wanted = wanted;
    this.at = from;
  }

  /** Where the number ended. */
  int at() {
    return at;
  }

  private char peek(int index) {
    return index < to ? text.charAt(index) : '\0';
  }

  private boolean digit(int index) {
    char c = peek(index);
    return c >= '0' && c <= '9';
  }

  private String got() {
    return text.substring(gotFrom, to);
  }

  private String got(int replaceFrom, int replaceTo, String by) {
    return text.substring(gotFrom, replaceFrom) + by + text.substring(replaceTo, to);
  }

  /** The number; its end is then {@link #at}. */
  double scan() {
    char sign = peek(at);
    if (sign == '+' || sign == '-' || sign == '\u2212') {
      at++;
    }
    double size = unsigned();
    double value = sign == '-' || sign == '\u2212' ? -size : size;
    if (size > LARGEST) {
      throw QuantityErrors.tooLarge(text.substring(from, at), from, at);
    }
    if (size != 0 && size < SMALLEST) {
      throw QuantityErrors.tooSmall(text.substring(from, at), from, at);
    }
    return value + 0.0;
  }

  private double unsigned() {
    double part = vulgar(peek(at));
    if (part > 0) {
      at++;
      return part;
    }
    if (!digit(at) && !(peek(at) == '.' && digit(at + 1))) {
      throw noNumber();
    }
    int begin = at;
    StringBuilder digits = new StringBuilder();
    boolean whole = decimal(begin, digits);
    double value = Double.parseDouble(digits.toString());
    if (whole && value == 0 && isZeroText(digits)) {
      return fraction(0);
    }
    if (value == 0 && !isZeroText(digits)) {
      throw QuantityErrors.tooSmall(text.substring(from, at), from, at);
    }
    return whole ? fraction(value) : value;
  }

  private static boolean isZeroText(StringBuilder digits) {
    for (int i = 0; i < digits.length(); i++) {
      char c = digits.charAt(i);
      if (c == 'E') {
        return true;
      }
      if (c >= '1' && c <= '9') {
        return false;
      }
    }
    return true;
  }

  /** Why no number stands here. */
  Unreadable refusal() {
    return noNumber();
  }

  private Unreadable noNumber() {
    String word = got().toLowerCase(java.util.Locale.ROOT);
    String bare = word.startsWith("-") || word.startsWith("+") ? word.substring(1) : word;
    if (bare.startsWith("nan") || bare.startsWith("inf") || bare.startsWith("\u221e")) {
      return QuantityErrors.notFinite(wanted, got(), from, to);
    }
    return QuantityErrors.noNumber(wanted, got(), from, to);
  }

  /** Reads digits, point and exponent; says whether it was a whole number without either. */
  private boolean decimal(int begin, StringBuilder digits) {
    digits(digits);
    int groups = groups(begin, digits);
    refuseMarks(begin);
    boolean whole = true;
    if (peek(at) == '.' && peek(at + 1) != '.') {
      whole = false;
      at++;
      digits.append('.');
      digits(digits);
      refuseSecondPoint(begin);
      digits.append('0');
    }
    if ((peek(at) == 'e' || peek(at) == 'E') && exponentFollows()) {
      whole = false;
      digits.append('E');
      at++;
      if (peek(at) == '+' || peek(at) == '-') {
        digits.append(peek(at));
        at++;
      }
      digits(digits);
    }
    return whole && groups == 0;
  }

  private boolean exponentFollows() {
    int next = at + 1;
    if (peek(next) == '+' || peek(next) == '-') {
      next++;
    }
    return digit(next);
  }

  private void digits(StringBuilder digits) {
    while (digit(at)) {
      digits.append(peek(at));
      at++;
    }
  }

  /** Takes " 000" after up to three digits, as standards write large numbers; counts the groups. */
  private int groups(int begin, StringBuilder digits) {
    int count = 0;
    if (at - begin > 3 || at == begin || peek(begin) == '0') {
      return 0;
    }
    while (Spelling.isSpace(peek(at)) && isGroup(at + 1) && !isFractionAfter(at + 4)) {
      digits.append(text, at + 1, at + 4);
      at += 4;
      count++;
    }
    return count;
  }

  private boolean isGroup(int index) {
    return digit(index) && digit(index + 1) && digit(index + 2) && !digit(index + 3);
  }

  private boolean isFractionAfter(int index) {
    return isSlash(peek(index)) && digit(index + 1);
  }

  private static boolean isSlash(char c) {
    return c == '/' || c == '\u2044';
  }

  /** Refuses a comma, an apostrophe or an underscore between digits, with the mend. */
  private void refuseMarks(int begin) {
    char mark = peek(at);
    if (mark == ',' && digit(at + 1)) {
      refuseComma(begin);
    }
    boolean grouping = mark == '_' || mark == '\'' || mark == '\u2019';
    if (grouping && isGroup(at + 1) && at > begin) {
      int end = grouped(at);
      throw marks(begin, end);
    }
  }

  private void refuseComma(int begin) {
    int end = grouped(at);
    boolean several = end > at + 4;
    boolean pointed = peek(end) == '.' && digit(end + 1);
    boolean maybeThousand = isGroup(at + 1) && at - begin <= 3 && peek(begin) != '0';
    if (maybeThousand && (several || pointed)) {
      throw marks(begin, end);
    }
    String thousand = got(at, at + 1, "");
    String point = got(at, at + 1, ".");
    int last = at + 1;
    while (digit(last)) {
      last++;
    }
    if (maybeThousand) {
      throw QuantityErrors.twoReadings(got(), thousand, point, begin, last);
    }
    if (peek(last) == ',' || peek(last) == '.') {
      throw QuantityErrors.badNumber(wanted, got(), begin, last);
    }
    throw QuantityErrors.decimalComma(got(), point, begin, last);
  }

  /** Where the groups of three that are set apart by the mark at {@code index} end. */
  private int grouped(int index) {
    char mark = peek(index);
    int end = index;
    while (peek(end) == mark && isGroup(end + 1)) {
      end += 4;
    }
    return end;
  }

  private Unreadable marks(int begin, int end) {
    StringBuilder plain = new StringBuilder();
    for (int i = begin; i < end; i++) {
      if (digit(i)) {
        plain.append(peek(i));
      }
    }
    return QuantityErrors.groupedDigits(got(), got(begin, end, plain.toString()), begin, end);
  }

  /** Refuses "1.2.3", and reads "1.000,5" and "1.000.000" as far as an error needs. */
  private void refuseSecondPoint(int begin) {
    char c = peek(at);
    if (c != ',' && !(c == '.' && digit(at + 1))) {
      return;
    }
    if (c == ',' && !digit(at + 1)) {
      return;
    }
    int last = at;
    while (digit(last) || ((peek(last) == '.' || peek(last) == ',') && digit(last + 1))) {
      last++;
    }
    String typed = text.substring(begin, last);
    int comma = typed.indexOf(',');
    if (comma > 0 && typed.indexOf(',', comma + 1) < 0 && typed.lastIndexOf('.') < comma) {
      String mended = typed.replace(".", "").replace(',', '.');
      throw QuantityErrors.decimalComma(got(), got(begin, last, mended), begin, last);
    }
    throw QuantityErrors.badNumber(wanted, got(), begin, last);
  }

  /** What follows a whole number: nothing, "/2", " 1/2", "-1/2", "½" or " ½". */
  private double fraction(double whole) {
    if (isFractionAfter(at)) {
      at++;
      return over(whole);
    }
    int next = at;
    while (Spelling.isSpace(peek(next))) {
      next++;
    }
    if (vulgar(peek(next)) > 0) {
      at = next + 1;
      return whole + vulgar(peek(next));
    }
    int start = next == at && peek(at) == '-' ? at + 1 : next;
    int end = start;
    while (digit(end)) {
      end++;
    }
    if (start > at && end > start && isFractionAfter(end)) {
      double top = Double.parseDouble(text.substring(start, end));
      at = end + 1;
      return whole + over(top);
    }
    return whole;
  }

  private double over(double top) {
    int start = at;
    while (digit(at)) {
      at++;
    }
    double bottom = Double.parseDouble(text.substring(start, at));
    if (bottom == 0) {
      throw QuantityErrors.overZero(got(), from, at);
    }
    return top / bottom;
  }

  /** The value of a one-sign fraction, or 0. */
  private static double vulgar(char c) {
    switch (c) {
      case '\u00bd':
        return 0.5;
      case '\u00bc':
        return 0.25;
      case '\u00be':
        return 0.75;
      case '\u2153':
        return 1 / 3.0;
      case '\u2154':
        return 2 / 3.0;
      case '\u215b':
        return 0.125;
      case '\u215c':
        return 0.375;
      case '\u215d':
        return 0.625;
      case '\u215e':
        return 0.875;
      default:
        return 0;
    }
  }
}
