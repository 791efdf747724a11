package leat.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.numeric.Impossible;

/**
 * What the days of a season bring: thirst, open water, rain, and who is there. Unchangeable.
 *
 * <p>Source: none; inputs.
 */
public final class SeasonDays {
  private final double[] plants;
  private final double[] open;
  private final double[] rain;
  private final Attendance[] attendance;

  private SeasonDays(double[] plants, double[] open, double[] rain, Attendance[] attendance) {
    this.plants = plants;
    this.open = open;
    this.rain = rain;
    this.attendance = attendance;
  }

  /**
   * A season with the owner at home; its last day closes it.
   *
   * @param plantsL what the plants would drink, L a day
   * @param openL what open water would lose, L a day
   * @param rainMm rain, mm a day
   * @return the days
   * @throws Impossible if there is no day, the lengths differ, or a number is negative or absurd
   */
  public static SeasonDays of(double[] plantsL, double[] openL, double[] rainMm) {
    int n = plantsL.length;
    if (n == 0) {
      throw new Impossible("season", "a season needs a day at least");
    }
    if (openL.length != n || rainMm.length != n) {
      throw new IllegalArgumentException("days of different length");
    }
    Attendance[] usual = new Attendance[n];
    for (int t = 0; t < n; t++) {
      Accepted.litres("plants", plantsL[t]);
      Accepted.litres("open", openL[t]);
      Accepted.rain(rainMm[t]);
      usual[t] = Attendance.USUAL;
    }
    usual[n - 1] = Attendance.CLOSING;
    return new SeasonDays(plantsL.clone(), openL.clone(), rainMm.clone(), usual);
  }

  public int length() {
    return plants.length;
  }

  public double plantsL(int t) {
    return plants[t];
  }

  public double openL(int t) {
    return open[t];
  }

  public double rainMm(int t) {
    return rain[t];
  }

  public Attendance attendance(int t) {
    return attendance[t];
  }

  /** The largest day's thirst, L. */
  public double mostThirstL() {
    double most = 0;
    for (int t = 0; t < plants.length; t++) {
      most = Math.max(most, plants[t] + open[t]);
    }
    return most;
  }

  /** The largest day's thirst times a factor, L. */
  public double mostThirstL(double thirst) {
    return thirst * mostThirstL();
  }

  /** Nobody serves from {@code first} to {@code last}, both included; days outside are left out. */
  public SeasonDays away(int first, int last) {
    Attendance[] changed = attendance.clone();
    for (int t = Math.max(0, first); t <= Math.min(last, changed.length - 1); t++) {
      changed[t] = Attendance.NOBODY;
    }
    return new SeasonDays(plants, open, rain, changed);
  }

  /** Nobody is ever away. */
  public SeasonDays home() {
    Attendance[] changed = new Attendance[plants.length];
    Arrays.fill(changed, Attendance.USUAL);
    changed[changed.length - 1] = Attendance.CLOSING;
    return new SeasonDays(plants, open, rain, changed);
  }

  /**
   * Somebody fills the tank on that evening: a neighbour when the owner is away. The closing
   * evening stays as it is.
   */
  public SeasonDays filledOn(int t) {
    Attendance[] changed = attendance.clone();
    if (changed[t] != Attendance.CLOSING) {
      changed[t] = changed[t].away() ? Attendance.NEIGHBOUR : Attendance.FILLS;
    }
    return new SeasonDays(plants, open, rain, changed);
  }

  /** The spans in which the owner is away, in order. */
  public List<AwaySpan> awaySpans() {
    List<AwaySpan> spans = new ArrayList<>();
    int first = -1;
    for (int t = 0; t <= attendance.length; t++) {
      boolean away = t < attendance.length && attendance[t].away();
      if (away && first < 0) {
        first = t;
      } else if (!away && first >= 0) {
        spans.add(new AwaySpan(first, t - 1));
        first = -1;
      }
    }
    return spans;
  }

  /** With only {@code share} of one crop's part of the thirst, L a day. */
  public SeasonDays withShareOf(double[] partL, double share) {
    double[] less = new double[plants.length];
    for (int t = 0; t < less.length; t++) {
      less[t] = Math.max(0, plants[t] - (1 - share) * partL[t]);
    }
    return new SeasonDays(less, open, rain, attendance);
  }
}
