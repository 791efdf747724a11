package leat.log;

/**
 * One row of a log, filled anew by the reader for each line; a blank or bad cell is NaN.
 *
 * <p>Source: columns of sheet log.md section 1.
 */
public final class LogRow {
  /** The moment, ms of Unix time. */
  public long time;

  /** What the sender shows, ohm or counts of the plan's ADC. */
  public double reading;

  /** EC at 25 C, mS/cm. */
  public double ec;

  /** Temperature of the solution, Celsius. */
  public double celsius;

  /** 1 while the pump runs, 0 while it rests. */
  public double pump;

  /** Counts of the moisture sensor at the cap. */
  public double cap;

  /** Rain since the row before, mm. */
  public double rain;

  /** Step read, from the bottom, or one of {@link StepReader}'s words below 0. */
  int step;

  /** Highest step of the hour that follows; below 0 when there is none. */
  int rest;

  /** Highest step of the hour before. */
  int behind;

  /** Highest step of the last rows, a cycle of the pump long. */
  int base;

  /** Step read, from the bottom; below 0 when the reading is none. */
  public int step() {
    return step;
  }

  /** Step at rest, from the bottom; below 0 when unknown. */
  public int rest() {
    return rest;
  }

  /** Whether the wire is broken. */
  public boolean isOpen() {
    return step == StepReader.OPEN;
  }

  /** Whether the wire is shorted. */
  public boolean isShort() {
    return step == StepReader.SHORT;
  }

  /** Whether the reading belongs to no step. */
  public boolean isOdd() {
    return step == StepReader.BAD;
  }

  /** An empty one. */
  public LogRow() {
    clear();
  }

  /** Blanks every cell. */
  public void clear() {
    reading = Double.NaN;
    ec = Double.NaN;
    celsius = Double.NaN;
    pump = Double.NaN;
    cap = Double.NaN;
    rain = Double.NaN;
  }

  void copy(LogRow from) {
    time = from.time;
    reading = from.reading;
    ec = from.ec;
    celsius = from.celsius;
    pump = from.pump;
    cap = from.cap;
    rain = from.rain;
    step = from.step;
    rest = from.rest;
    base = from.base;
    behind = from.behind;
  }

  /** Whether every cell is the same; blank is like blank. */
  boolean same(LogRow o) {
    return alike(reading, o.reading)
        && alike(ec, o.ec)
        && alike(celsius, o.celsius)
        && alike(pump, o.pump)
        && alike(cap, o.cap)
        && alike(rain, o.rain);
  }

  private static boolean alike(double a, double b) {
    return a == b || a != a && b != b;
  }

  boolean pumpOn() {
    return pump > 0.5;
  }
}
