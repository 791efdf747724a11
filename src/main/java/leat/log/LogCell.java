package leat.log;

import leat.level.Divider;

/**
 * The cells of a row, with what each can hold; the rest is bad and left blank.
 *
 * <p>Source: sheet log.md section 1, its table of columns. The lowest ohm is common practice, no
 * source.
 */
public enum LogCell {
  /** Reading of the sender. */
  READING,
  /** EC. */
  EC,
  /** Temperature of the solution. */
  CELSIUS,
  /** State of the pump. */
  PUMP,
  /** Moisture at the cap. */
  CAP,
  /** Rain. */
  RAIN;

  /** A meter's zero is never further off, ohm. */
  private static final double LEAST_OHM = -10;

  private static final double MOST_EC = 10;
  private static final double COLDEST = -5;
  private static final double WARMEST = 50;

  private static final LogCell[] ALL = values();

  /** All of them, in the order of the sheet's table. */
  public static LogCell[] all() {
    return ALL.clone();
  }

  /**
   * Puts a value into its place.
   *
   * @param row the row
   * @param value what was read; NaN for nothing
   * @param system says whether readings are counts, and how many there are
   * @return false when it is no value of this cell; the cell stays blank
   */
  public boolean put(LogRow row, double value, LogSystem system) {
    switch (this) {
      case READING:
        boolean good =
            system.divider() == null ? value >= LEAST_OHM : counts(value, system.divider());
        row.reading = good ? value : Double.NaN;
        return good;
      case EC:
        row.ec = value > 0 && value <= MOST_EC ? value : Double.NaN;
        return row.ec == row.ec;
      case CELSIUS:
        row.celsius = value >= COLDEST && value <= WARMEST ? value : Double.NaN;
        return row.celsius == row.celsius;
      case PUMP:
        row.pump = value == 0 || value == 1 ? value : Double.NaN;
        return row.pump == row.pump;
      case CAP:
        row.cap = CapJudge.isCounts(value, system) ? value : Double.NaN;
        return row.cap == row.cap;
      default:
        row.rain = value >= 0 && value < Double.POSITIVE_INFINITY ? value : Double.NaN;
        return row.rain == row.rain;
    }
  }

  private static boolean counts(double value, Divider divider) {
    return value >= 0 && value <= divider.topCode();
  }
}
