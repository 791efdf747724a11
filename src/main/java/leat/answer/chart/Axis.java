package leat.answer.chart;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import leat.answer.Show;
import leat.quantity.NumberText;
import leat.quantity.Unit;

/** One axis: what it counts and in which units; values are held in the base unit. */
public final class Axis {
  private static final int SECONDS_A_DAY = 86_400;

  private final String label;
  private final Show show;
  private final int digits;
  private final boolean time;
  private final String[] names;

  private Axis(String label, Show show, int digits, boolean time, String[] names) {
    this.label = label;
    this.show = show;
    this.digits = digits;
    this.time = time;
    this.names = names;
  }

  /** Quantities. */
  public static Axis of(String label, Show show) {
    return new Axis(label, show, show.digits(), false, null);
  }

  /** Bare numbers with significant digits. */
  public static Axis number(String label, int digits) {
    return new Axis(label, null, digits, false, null);
  }

  /** Days and hours of the place: values are those of {@link #at} and {@link #days}. */
  public static Axis time(String label) {
    return new Axis(label, null, 1, true, null);
  }

  /** Things with names, one place each: values are 0, 1, 2 ... */
  public static Axis names(String label, String... names) {
    return new Axis(label, null, 1, false, names.clone());
  }

  /** A moment as a value of a time axis. */
  public static double at(LocalDateTime moment) {
    return moment.toEpochSecond(ZoneOffset.UTC);
  }

  /** The start of a day as a value of a time axis. */
  public static double at(LocalDate day) {
    return (double) day.toEpochDay() * SECONDS_A_DAY;
  }

  /** So many days one after the other as values of a time axis. */
  public static double[] days(LocalDate first, int n) {
    double[] values = new double[n];
    for (int i = 0; i < n; i++) {
      values[i] = at(first) + (double) i * SECONDS_A_DAY;
    }
    return values;
  }

  /** What it counts. */
  public String label() {
    return label;
  }

  /** Whether its values are moments. */
  public boolean isTime() {
    return time;
  }

  /** Whether its values are places of names. */
  public boolean isNames() {
    return names != null;
  }

  /** The names, where it has names. */
  public String[] names() {
    return names.clone();
  }

  /** Significant digits of a value. */
  public int digits() {
    return digits;
  }

  /** A value in the unit shown. */
  public double shown(double value, boolean us) {
    return show == null || Double.isNaN(value) ? value : unit(us).fromBase(value);
  }

  private Unit unit(boolean us) {
    return us ? show.us() : show.metric();
  }

  /** Sign of the unit; empty without one. */
  public String symbol(boolean us) {
    return show == null ? "" : unit(us).symbol();
  }

  /** What it counts, with the unit. */
  public String heading(boolean us) {
    String symbol = symbol(us);
    return symbol.isEmpty() ? label : label + ", " + symbol;
  }

  /** A value that is already in the unit shown, as a reader sees it, without the unit. */
  public String text(double shown) {
    if (Double.isNaN(shown)) {
      return "-";
    }
    if (time) {
      return moment(shown);
    }
    if (names != null) {
      int i = (int) shown;
      return i == shown && i >= 0 && i < names.length ? names[i] : "";
    }
    return NumberText.significant(shown, digits);
  }

  private static String moment(double shown) {
    LocalDateTime moment = LocalDateTime.ofEpochSecond((long) shown, 0, ZoneOffset.UTC);
    String day = moment.toLocalDate().toString();
    return shown % SECONDS_A_DAY == 0 ? day : day + " " + moment.toLocalTime().withNano(0);
  }
}
