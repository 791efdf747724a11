package leat.quantity;

/**
 * Reads amounts and prices: "16 EUR", "EUR 16", "€16", "0.31 EUR/kWh", "€0.31/kWh". The currency is
 * an ISO 4217 code, or a sign that only one currency uses.
 */
final class MoneyReader {
  private static final String[] HUNDREDTHS = {"cent", "cents", "ct", "cts", "c", "p", "pence"};

  private final String text;
  private final int from;
  private final int to;
  private final Dimension wanted;

  MoneyReader(String text, int from, int to, Dimension wanted) {
    this.text = text;
    this.from = from;
    this.to = to;
    this.wanted = wanted;
  }

  private String got() {
    return text.substring(from, to);
  }

  Quantity read() {
    int numberFrom = from;
    while (numberFrom < to && isCurrencyLetter(text.charAt(numberFrom))) {
      numberFrom++;
    }
    String before = text.substring(from, numberFrom);
    while (numberFrom < to && Spelling.isSpace(text.charAt(numberFrom))) {
      numberFrom++;
    }
    boolean leads = !before.isEmpty() && numberFrom < to && startsNumber(text.charAt(numberFrom));
    if (!before.isEmpty() && !leads) {
      throw new NumberScanner(text, from, to, wanted).refusal();
    }
    NumberScanner scanner = new NumberScanner(text, from, numberFrom, to, wanted);
    double number = scanner.scan();
    String after = text.substring(scanner.at(), to);
    int slash = slash(after);
    String word = leads ? before : Spelling.trim(after.substring(0, slash));
    int wordFrom = leads ? from : text.indexOf(word, scanner.at());
    if (leads && !Spelling.trim(after.substring(0, slash)).isEmpty()) {
      throw QuantityErrors.unknownUnit(wanted, Spelling.trim(after), null, scanner.at(), to);
    }
    return priced(number, word, wordFrom, Spelling.ascii(after.substring(slash)), scanner.at());
  }

  private Quantity priced(double number, String word, int wordFrom, String per, int unitFrom) {
    Dimension other = word.isEmpty() ? null : Spelling.elsewhere(Spelling.ascii(word + per));
    if (other != null) {
      throw QuantityErrors.wrongDimension(wanted, other, got(), wordFrom, to);
    }
    if (isHundredth(word)) {
      String mended = NumberText.shortest(number / 100) + " EUR" + per;
      throw QuantityErrors.hundredths(word, got(), mended, wordFrom, wordFrom + word.length());
    }
    String code = currency(word, wordFrom);
    Unit unit = Spelling.exactly(wanted, per);
    if (unit != null) {
      return new Quantity(number, unit, got(), code);
    }
    Dimension found = dimensionOf(code + per);
    if (found != null) {
      throw QuantityErrors.wrongDimension(wanted, found, got(), wordFrom, to);
    }
    String near = Spelling.inOtherCase(wanted, per);
    if (near != null) {
      String mended = text.substring(from, unitFrom) + " " + code + near;
      throw QuantityErrors.otherCase(per, got(), mended, wordFrom, to);
    }
    throw QuantityErrors.unknownUnit(wanted, word + per, null, wordFrom, to);
  }

  /** Whether a word is the hundredth part of many currencies, and so of none. */
  private static boolean isHundredth(String word) {
    for (int i = 0; i < HUNDREDTHS.length; i++) {
      if (HUNDREDTHS[i].equalsIgnoreCase(word)) {
        return true;
      }
    }
    return false;
  }

  private String currency(String word, int wordFrom) {
    int wordTo = wordFrom + word.length();
    if (word.isEmpty()) {
      throw QuantityErrors.noCurrency(wanted, got(), from, to);
    }
    if (Currencies.isCode(word)) {
      return word;
    }
    if (Currencies.ofSign(word) != null) {
      return Currencies.ofSign(word);
    }
    if (Currencies.isSharedSign(word)) {
      throw QuantityErrors.sharedSign(word, got(), wordFrom, wordTo);
    }
    String code = Nearest.of(word, Currencies.codes());
    String mended = code == null ? null : spliced(wordFrom, wordTo, code);
    throw QuantityErrors.unknownCurrency(wanted, word, mended, wordFrom, wordTo);
  }

  private String spliced(int wordFrom, int wordTo, String code) {
    return text.substring(from, wordFrom) + code + text.substring(wordTo, to);
  }

  private static boolean isCurrencyLetter(char c) {
    return (c >= 'A' && c <= 'Z')
        || (c >= 'a' && c <= 'z')
        || c == '$'
        || c == '\u20ac'
        || c == '\u00a3'
        || c == '\u00a5';
  }

  private static boolean startsNumber(char c) {
    return (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+' || c == '\u2212';
  }

  /** Where "per what" begins: at the slash or the word "per"; the end when there is none. */
  private static int slash(String after) {
    for (int i = 0; i < after.length(); i++) {
      char c = after.charAt(i);
      if (c == '/' || c == '\u2044' || c == '\u2215' || after.startsWith(" per ", i)) {
        return i;
      }
    }
    return after.length();
  }

  /** Whether a unit begins with a currency. */
  static boolean looksLikeMoney(String unit) {
    int slash = slash(unit);
    String word = Spelling.trim(unit.substring(0, slash));
    return Currencies.isCode(word)
        || Currencies.ofSign(word) != null
        || Currencies.isSharedSign(word);
  }

  /** The dimension of a currency and what it is for: money's own when nothing is; or null. */
  static Dimension dimensionOf(String unit) {
    String per = Spelling.ascii(unit.substring(slash(unit)));
    Dimension[] all = {
      Dimension.MONEY,
      Dimension.MONEY_PER_ENERGY,
      Dimension.MONEY_PER_MASS,
      Dimension.MONEY_PER_VOLUME,
      Dimension.MONEY_PER_TIME
    };
    for (int i = 0; i < all.length; i++) {
      if (Spelling.exactly(all[i], per) != null) {
        return all[i];
      }
    }
    return null;
  }
}
