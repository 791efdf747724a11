package leat.quantity;

/** A plain decimal such as {@code -12.5}, read without allocation, for long streams of rows. */
public final class PlainDecimal {
  private static final int MOST_DIGITS = 15;
  private static final double[] TENS = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
  };

  private PlainDecimal() {}

  /** Its value, exactly; NaN for every other text, which the slower reader takes. */
  public static double read(String text) {
    long digits = 0;
    int count = 0;
    int places = -1;
    int n = text.length();
    int i = n > 0 && text.charAt(0) == '-' ? 1 : 0;
    for (int k = i; k < n; k++) {
      char c = text.charAt(k);
      if (c == '.' && places < 0) {
        places = 0;
      } else if (c >= '0' && c <= '9' && count < MOST_DIGITS) {
        digits = digits * 10 + (c - '0');
        count++;
        places += places >= 0 ? 1 : 0;
      } else {
        return Double.NaN;
      }
    }
    if (count == 0 || places == 0) {
      return Double.NaN;
    }
    double value = places > 0 ? digits / TENS[places] : digits;
    return i == 1 ? -value : value;
  }
}
