package leat.energy;

import leat.numeric.Impossible;

/**
 * Timings that change by hour, weekday and month: the first is the default, the last that matches
 * is in force.
 *
 * <p>Source: sheet energy.md section 2, check values energy-tariff.csv.
 */
public final class Timetable {
  private final Windows windows;
  private final Timing[] timings;

  /**
   * Timings in their order.
   *
   * @param windows when each timing holds; the first always
   * @param timings as many
   * @throws Impossible if the numbers differ or the first window is not always
   */
  public Timetable(Window[] windows, Timing[] timings) {
    if (windows.length != timings.length) {
      throw new Impossible("timing", "every timing needs its window");
    }
    this.windows = new Windows("timing", windows);
    this.timings = timings.clone();
  }

  /** One timing, day and night. */
  public static Timetable of(Timing timing) {
    return new Timetable(new Window[] {Window.always()}, new Timing[] {timing});
  }

  /** A timing for the day and another in the night. */
  public static Timetable dayAndNight(Timing day, Timing night, Window nightWindow) {
    return new Timetable(new Window[] {Window.always(), nightWindow}, new Timing[] {day, night});
  }

  /**
   * The timetable with every run and every rest so many times as long.
   *
   * @param run factor on every run, -, above 0
   * @param rest factor on every rest, -, 0 or more
   * @return the timetable
   */
  public Timetable times(double run, double rest) {
    Window[] same = new Window[timings.length];
    Timing[] changed = new Timing[timings.length];
    for (int i = 0; i < changed.length; i++) {
      same[i] = windows.window(i);
      changed[i] = new Timing(run * timings[i].runS(), rest * timings[i].restS());
    }
    return new Timetable(same, changed);
  }

  /** The timing of the highest share of running: the cautious one for a battery. */
  public Timing busiest() {
    Timing busiest = timings[0];
    for (int i = 1; i < timings.length; i++) {
      if (timings[i].share() > busiest.share()) {
        busiest = timings[i];
      }
    }
    return busiest;
  }

  /** When each timing holds. */
  public Windows windows() {
    return windows;
  }

  /** Number of timings. */
  public int size() {
    return timings.length;
  }

  /** Timing {@code i}. */
  public Timing timing(int i) {
    return timings[i];
  }
}
