package leat.answer;

import java.util.ArrayList;
import java.util.List;
import leat.quantity.NumberText;
import leat.quantity.Unit;
import leat.quantity.Visible;

/**
 * A piece of text with quantities in it, which are turned into words only when it is known in which
 * units.
 */
public final class Phrase {
  /** So near to a whole step a value is on it. */
  private static final double ROUNDING = 1e-9;

  private final List<Object> parts = new ArrayList<>();

  private static final class Amount {
    final double value;
    final Show show;
    final boolean bare;

    /** 1 rounds up in the unit shown, -1 down, 0 to the nearest. */
    final int towards;

    Amount(double value, Show show, boolean bare, int towards) {
      this.value = value;
      this.show = show;
      this.bare = bare;
      this.towards = towards;
    }
  }

  private static final class Range {
    final double low;
    final double high;
    final Show show;

    Range(double low, double high, Show show) {
      this.low = low;
      this.high = high;
      this.show = show;
    }

    String render(boolean us) {
      Unit shown = show.unit(us, high);
      String from = NumberText.significant(shown.fromBase(low), show.digits());
      String to = NumberText.significant(shown.fromBase(high), show.digits());
      String unit = unit(shown);
      return from.equals(to) ? to + unit : from + " to " + to + unit;
    }
  }

  private static final class Words {
    final String said;

    Words(String said) {
      this.said = said;
    }
  }

  /** An empty phrase. */
  public static Phrase of() {
    return new Phrase();
  }

  /** A phrase that begins with these words. */
  public static Phrase of(String words) {
    return new Phrase().add(words);
  }

  /** A phrase of one quantity. */
  public static Phrase of(double value, Show show) {
    return new Phrase().add(value, show);
  }

  /** Words in which metric quantities are written: shown in US units where these are asked for. */
  public static Phrase said(String words) {
    Phrase phrase = new Phrase();
    phrase.parts.add(new Words(words));
    return phrase;
  }

  /** Words. */
  public Phrase add(String words) {
    parts.add(java.util.Objects.requireNonNull(words, "words"));
    return this;
  }

  /** Another phrase. */
  public Phrase add(Phrase other) {
    parts.addAll(other.parts);
    return this;
  }

  /** A quantity in its base unit, with its unit. */
  public Phrase add(double value, Show show) {
    parts.add(new Amount(value, show, false, 0));
    return this;
  }

  /** A quantity without its unit, as the first of "6.5 / 5.4 L/min". */
  public Phrase addBare(double value, Show show) {
    parts.add(new Amount(value, show, true, 0));
    return this;
  }

  /** A quantity that must be reached: rounded up in whichever unit is shown. */
  public Phrase addAtLeast(double value, Show show) {
    parts.add(new Amount(value, show, false, 1));
    return this;
  }

  /** A quantity that must not be passed: rounded down in whichever unit is shown. */
  public Phrase addAtMost(double value, Show show) {
    parts.add(new Amount(value, show, false, -1));
    return this;
  }

  /** "6.5 to 7.4 L"; one number where the two read the same. */
  public Phrase range(double low, double high, Show show) {
    parts.add(new Range(low, high, show));
    return this;
  }

  /** Whether two values, each in its base unit, read alike with the digits of a show. */
  public static boolean readAlike(double a, double b, Show show, boolean us) {
    return of(a, show).render(us).equals(of(b, show).render(us));
  }

  /** A bare number with significant digits. */
  public Phrase number(double value, int digits) {
    parts.add(NumberText.significant(value, digits));
    return this;
  }

  /** A whole number. */
  public Phrase count(long value) {
    parts.add(String.valueOf(value));
    return this;
  }

  /** A time in s, shown in the unit that reads best. */
  public Phrase duration(double seconds) {
    double s = Math.abs(seconds);
    if (s < 120) {
      return add(seconds, Show.S);
    }
    if (s < 7200) {
      return add(seconds, Show.MIN.digits(2));
    }
    if (s < 48 * 3600) {
      return add(seconds, Show.H.digits(2));
    }
    return add(seconds, Show.of(leat.quantity.Units.D, 2));
  }

  /**
   * An amount of money, as a till prints it: two decimals, more below a tenth, none from 10 000.
   */
  static String till(double amount) {
    double size = Math.abs(amount);
    return size >= 10_000
        ? NumberText.decimals(amount, 0)
        : size >= 0.1 || size == 0
            ? NumberText.decimals(amount, 2)
            : NumberText.significant(amount, 2);
  }

  /** An amount of money, as a till prints it, with its currency where that is named. */
  public Phrase money(double amount, String currency) {
    parts.add(till(amount));
    return currency == null ? this : add(" ").add(currency);
  }

  /** Whether nothing was added. */
  public boolean isEmpty() {
    return parts.isEmpty();
  }

  /** The words, with quantities in metric or US customary units. */
  public String render(boolean us) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < parts.size(); i++) {
      Object part = parts.get(i);
      if (part instanceof Amount amount) {
        double rounded = rounded(amount.value, amount.show, us, amount.towards);
        out.append(text(rounded, amount.show, us));
        if (!amount.bare) {
          out.append(unit(amount.show.unit(us, rounded)));
        }
      } else if (part instanceof Range range) {
        out.append(range.render(us));
      } else if (part instanceof Words words) {
        out.append(Visible.of(us ? Said.inUs(words.said) : words.said, "\n"));
      } else {
        out.append(Visible.of((String) part, "\n"));
      }
    }
    return out.toString();
  }

  /**
   * A value rounded to the digits shown, towards the side that is asked for.
   *
   * @param towards 1 rounds up in the unit shown, -1 down, 0 leaves the value
   */
  public static double rounded(double value, Show show, boolean us, int towards) {
    Unit unit = show.unit(us, value);
    double shown = unit.fromBase(value);
    if (towards == 0 || shown == 0) {
      return value;
    }
    int exponent = (int) Math.floor(Math.log10(Math.abs(shown))) + 1 - show.digits();
    double step = Math.pow(10, Math.abs(exponent));
    double steps = exponent < 0 ? shown * step : shown / step;
    double near = Math.rint(steps);
    double whole =
        Math.abs(steps - near) < ROUNDING
            ? near
            : towards > 0 ? Math.ceil(steps) : Math.floor(steps);
    return unit.toBase(exponent < 0 ? whole / step : whole * step);
  }

  /** What stands behind a number: nothing behind a pH. */
  private static String unit(Unit shown) {
    return shown.symbol().isEmpty() ? "" : ' ' + shown.symbol();
  }

  static String text(double value, Show show, boolean us) {
    Unit unit = show.unit(us, value);
    return NumberText.significant(unit.fromBase(value), show.digits());
  }
}
