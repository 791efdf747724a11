package leat.quantity;

/**
 * Numbers as text, the same in every locale. Rounding is half up on the decimal digits that {@link
 * Double#toString} gives, after a rounding to 15 digits that removes the noise of binary fractions
 * (2.675 typed is 2.675, not 2.67499999999999982).
 */
public final class NumberText {
  private static final int NOISE_FREE = 15;
  private static final int SHORTEST = 12;
  private static final int PLAIN_FROM = -6;
  private static final int PLAIN_UNTIL = 15;
  private static final int GROUP_FROM = 5;

  private NumberText() {}

  /**
   * The shortest decimal after rounding to 12 significant digits, for CSV and JSON: "0.1", "13000",
   * "1.5E-7". Plain between 1e-6 and 1e15.
   *
   * @param value a finite number
   * @throws IllegalArgumentException if it is not finite
   */
  public static String shortest(double value) {
    Digits d = Digits.of(value);
    d.round(NOISE_FREE);
    d.round(SHORTEST);
    d.dropZeros();
    if (d.isZero()) {
      return "0";
    }
    int exponent = d.point - 1;
    if (exponent < PLAIN_FROM || exponent >= PLAIN_UNTIL) {
      return d.sign() + scientific(d, exponent);
    }
    return d.sign() + plain(d, false);
  }

  /**
   * A number for people, with {@code digits} significant digits: "2.30", "0.0015", "13 000". Zeros
   * that carry meaning stay; whole digits before the point are rounded too; from five of them on,
   * groups of three are set apart by a space.
   *
   * @param value a finite number
   * @param digits significant digits, 1 to 15
   * @throws IllegalArgumentException if the value is not finite or the digits are out of range
   */
  public static String significant(double value, int digits) {
    if (digits < 1 || digits > NOISE_FREE) {
      throw new IllegalArgumentException("1 to 15 digits");
    }
    Digits d = Digits.of(value);
    if (d.isZero()) {
      return "0";
    }
    d.round(NOISE_FREE);
    d.round(digits);
    d.pad(digits);
    return d.sign() + plain(d, true);
  }

  /**
   * A number for people, with {@code decimals} digits after the point: "16.00" for money, "0.4".
   *
   * @param value a finite number
   * @param decimals digits after the point, 0 to 15
   * @throws IllegalArgumentException if the value is not finite or the decimals are out of range
   */
  public static String decimals(double value, int decimals) {
    if (decimals < 0 || decimals > NOISE_FREE) {
      throw new IllegalArgumentException("0 to 15 decimals");
    }
    Digits d = Digits.of(value);
    d.round(NOISE_FREE);
    d.round(d.point + decimals);
    if (d.isZero()) {
      return plain(Digits.zero(decimals), true);
    }
    d.pad(d.point + decimals);
    return d.sign() + plain(d, true);
  }

  /** Whether a number is whole and small enough to be written without an exponent. */
  public static boolean isWhole(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9;
  }

  /** The nearest whole number. */
  public static long nearest(double value) {
    return Math.round(value);
  }

  /**
   * A number rounded to at most {@code decimals} digits after the point, without groups and without
   * zeros at the end, for what is pasted into a plan: "6.5", "12", "12345.7".
   *
   * @param value a finite number
   * @param decimals digits after the point, 0 to 15
   * @throws IllegalArgumentException if the value is not finite or the decimals are out of range
   */
  public static String atMost(double value, int decimals) {
    if (decimals < 0 || decimals > NOISE_FREE) {
      throw new IllegalArgumentException("0 to 15 decimals");
    }
    Digits d = Digits.of(value);
    d.round(NOISE_FREE);
    d.round(d.point + decimals);
    d.dropZeros();
    return d.isZero() ? "0" : d.sign() + plain(d, false);
  }

  private static String scientific(Digits d, int exponent) {
    StringBuilder out = new StringBuilder(d.text);
    if (d.text.length() > 1) {
      out.insert(1, '.');
    }
    return out.append('E').append(exponent).toString();
  }

  private static String plain(Digits d, boolean grouped) {
    StringBuilder out = new StringBuilder();
    int n = d.text.length();
    if (d.point <= 0) {
      out.append("0.");
      zeros(out, -d.point);
      return out.append(d.text).toString();
    }
    if (n <= d.point) {
      out.append(d.text);
      zeros(out, d.point - n);
    } else {
      out.append(d.text, 0, d.point).append('.').append(d.text, d.point, n);
    }
    if (grouped && d.point >= GROUP_FROM) {
      for (int i = d.point - 3; i > 0; i -= 3) {
        out.insert(i, ' ');
      }
    }
    return out.toString();
  }

  private static void zeros(StringBuilder out, int count) {
    for (int i = 0; i < count; i++) {
      out.append('0');
    }
  }

  /** Sign, decimal digits without leading zeros, and the place of the point before the first. */
  private static final class Digits {
    private boolean negative;
    private String text;
    private int point;

    static Digits of(double value) {
      if (Double.isNaN(value) || Double.isInfinite(value)) {
        throw new IllegalArgumentException("not a finite number");
      }
      Digits d = new Digits();
      String s = Double.toString(Math.abs(value));
      d.negative = value < 0;
      int e = s.indexOf('E');
      String mantissa = e < 0 ? s : s.substring(0, e);
      int exponent = e < 0 ? 0 : Integer.parseInt(s.substring(e + 1));
      int dot = mantissa.indexOf('.');
      String digits = mantissa.substring(0, dot) + mantissa.substring(dot + 1);
      int lead = 0;
      while (lead < digits.length() && digits.charAt(lead) == '0') {
        lead++;
      }
      d.text = digits.substring(lead);
      d.point = dot + exponent - lead;
      d.dropZeros();
      return d;
    }

    static Digits zero(int decimals) {
      Digits d = new Digits();
      StringBuilder out = new StringBuilder("0");
      zeros(out, decimals);
      d.text = out.toString();
      d.point = 1;
      return d;
    }

    boolean isZero() {
      return text.isEmpty();
    }

    String sign() {
      return negative ? "-" : "";
    }

    void dropZeros() {
      int n = text.length();
      while (n > 0 && text.charAt(n - 1) == '0') {
        n--;
      }
      text = text.substring(0, n);
    }

    void pad(int digits) {
      if (text.length() < digits) {
        StringBuilder out = new StringBuilder(text);
        zeros(out, digits - text.length());
        text = out.toString();
      }
    }

    /**
     * Keeps the first {@code digits}, half up; none or fewer than none leaves 0 or carries to 1.
     */
    void round(int digits) {
      if (digits >= text.length()) {
        return;
      }
      if (digits < 0) {
        text = "";
        return;
      }
      boolean up = text.charAt(digits) >= '5';
      char[] kept = text.substring(0, digits).toCharArray();
      int i = digits - 1;
      while (up && i >= 0) {
        up = kept[i] == '9';
        kept[i] = up ? '0' : (char) (kept[i] + 1);
        i--;
      }
      text = new String(kept);
      if (up) {
        text = "1" + text;
        point++;
      }
      dropZeros();
    }
  }
}
