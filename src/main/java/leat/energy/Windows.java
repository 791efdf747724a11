package leat.energy;

import java.util.Arrays;
import leat.numeric.Impossible;

/**
 * Windows in the order they were written: the first is the default and always matches, the last
 * that matches is in force.
 *
 * <p>Source: sheet energy.md section 2, check values energy-tariff.csv.
 */
public final class Windows {
  private static final int DAY_S = 86_400;

  private final Window[] windows;

  /**
   * Windows in their order.
   *
   * @param what the trade word of an entry, "timing" or "band", for a refusal
   * @param windows at least one; the first is {@link Window#always()}
   * @throws Impossible if there is none, or the first has hours, months or days of its own
   */
  public Windows(String what, Window... windows) {
    if (windows.length == 0) {
      throw new Impossible(what, "at least one entry is needed");
    }
    if (!windows[0].isAlways()) {
      throw new Impossible(
          what,
          "the first entry holds whenever no other does: it cannot have hours, months or days of its"
              + " own");
    }
    this.windows = windows.clone();
  }

  /** The night as a window over the day: entry 0 is day, entry 1 night. */
  public static Windows dayAndNight(Window night) {
    return new Windows("night", Window.always(), night);
  }

  /** Number of entries. */
  public int size() {
    return windows.length;
  }

  /** Window of entry {@code i}. */
  public Window window(int i) {
    return windows[i];
  }

  /**
   * The entry in force at a moment of the local wall clock.
   *
   * @param secondOfDay s since 00:00 on the clock's face, 0 to 86399
   * @param month 1 to 12
   * @param weekday 1 Monday to 7 Sunday
   */
  public int inForce(int secondOfDay, int month, int weekday) {
    int i = windows.length - 1;
    while (!windows[i].contains(secondOfDay, month, weekday)) {
      i--;
    }
    return i;
  }

  /** Whether every day of the year is alike: no entry has months or weekdays of its own. */
  public boolean everyDayAlike() {
    for (int i = 0; i < windows.length; i++) {
      if (!windows[i].isEveryDay()) {
        return false;
      }
    }
    return true;
  }

  /**
   * Which entries are in force at some second of some month and weekday. An entry that never is was
   * covered by later ones: it is most likely a mistake.
   */
  public boolean[] everInForce() {
    boolean[] ever = new boolean[windows.length];
    int[] borders = borders(this);
    for (int month = 1; month <= 12; month++) {
      for (int weekday = 1; weekday <= 7; weekday++) {
        for (int i = 0; i < borders.length; i++) {
          ever[inForce(borders[i], month, weekday)] = true;
        }
      }
    }
    return ever;
  }

  /** All seconds of the day at which an entry of any of these may begin or end, rising, from 0. */
  static int[] borders(Windows... all) {
    int n = 1;
    for (int i = 0; i < all.length; i++) {
      n += 2 * all[i].windows.length;
    }
    int[] borders = new int[n];
    int k = 1;
    for (int i = 0; i < all.length; i++) {
      for (int j = 0; j < all[i].windows.length; j++) {
        borders[k++] = all[i].windows[j].fromS();
        borders[k++] = all[i].windows[j].toS() % DAY_S;
      }
    }
    return rising(borders);
  }

  /** Sorted, each once. */
  static int[] rising(int[] borders) {
    Arrays.sort(borders);
    int n = 1;
    for (int i = 1; i < borders.length; i++) {
      if (borders[i] != borders[n - 1]) {
        borders[n++] = borders[i];
      }
    }
    return Arrays.copyOf(borders, n);
  }
}
