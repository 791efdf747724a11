package leat.level;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;

/**
 * The table a controller needs: every stretch of ohms, or of counts, with its status and band;
 * without gaps and in order of ohms, it gives for each reading what {@link Sender#decode} gives. An
 * end code that the ADC's reference clips has a row of its own at the end, without ohms.
 *
 * <p>Source: {@link Sender}, {@link Divider}.
 */
public final class LookupTable {
  /** In a cubic metre. */
  private static final double MILLILITRES = 1e6;

  /** Most rows of an interpolated table. */
  public static final int MOST_ROWS = 100_000;

  private LookupTable() {}

  /**
   * One stretch.
   *
   * @param reading what it says
   * @param ohmFrom it begins here, as the meter shows it (lead included), ohm; null for the first
   * @param ohmTo it ends before here, ohm; null for the last
   * @param countsFrom first code; -1 when no code falls into the stretch, or no divider was given
   * @param countsTo last code; -1 likewise
   */
  public record Row(Reading reading, Double ohmFrom, Double ohmTo, int countsFrom, int countsTo) {}

  /**
   * Least volume of a reading in whole millilitres, rounded outwards so that the band still holds.
   */
  public static long millilitresLow(Reading reading) {
    return (long) Math.floor(reading.volumeLow() * MILLILITRES);
  }

  /** Greatest volume of a reading in whole millilitres, rounded outwards. */
  public static long millilitresHigh(Reading reading) {
    return (long) Math.ceil(reading.volumeHigh() * MILLILITRES);
  }

  /**
   * The table.
   *
   * @param sender the sender
   * @param divider its divider, or null for ohms only
   * @param motion which way the level moves
   */
  public static List<Row> of(Sender sender, Divider divider, Motion motion) {
    List<Row> rows = new ArrayList<>();
    int n = sender.segments();
    for (int s = 0; s < n; ) {
      int end = s + 1;
      Reading first = sender.segment(s, motion, new Reading());
      while (end < n && same(first, sender.segment(end, motion, new Reading()))) {
        end++;
      }
      double lead = sender.limits().lead();
      Double from = s == 0 ? null : Double.valueOf(sender.segmentStart(s) + lead);
      Double to = end == n ? null : Double.valueOf(sender.segmentStart(end) + lead);
      int[] codes = divider == null ? new int[] {-1, -1} : codes(divider, from, to);
      rows.add(new Row(first, from, to, codes[0], codes[1]));
      s = end;
    }
    if (divider != null) {
      splitOff(rows, sender, divider, motion, 0);
      splitOff(rows, sender, divider, motion, divider.topCode());
    }
    return rows;
  }

  /** An end code that the reference clips means something else than the ohms beyond it. */
  private static void splitOff(List<Row> rows, Sender sender, Divider d, Motion motion, int code) {
    if (!d.isOverRange(code) && !d.isUnderRange(code)) {
      return;
    }
    Reading reading = sender.decodeCode(code, d, motion, new Reading());
    for (int i = 0; i < rows.size(); i++) {
      Row r = rows.get(i);
      if (r.countsFrom() >= 0 && r.countsFrom() <= code && code <= r.countsTo()) {
        if (r.reading().status() == reading.status()) {
          return;
        }
        int from = r.countsFrom() == code ? code + 1 : r.countsFrom();
        int to = r.countsTo() == code ? code - 1 : r.countsTo();
        boolean none = from > to;
        rows.set(i, new Row(r.reading(), r.ohmFrom(), r.ohmTo(), none ? -1 : from, none ? -1 : to));
      }
    }
    rows.add(new Row(reading, null, null, code, code));
  }

  private static boolean same(Reading a, Reading b) {
    return a.status() == b.status() && a.stepLow() == b.stepLow() && a.stepHigh() == b.stepHigh();
  }

  /** First and last code whose nominal ohms lie in [from, to). */
  private static int[] codes(Divider d, Double from, Double to) {
    int count = d.topCode() + 1;
    boolean low = d.side() == Divider.Side.LOW;
    int a = below(d, from);
    int b = to == null ? count : below(d, to);
    if (a >= b) {
      return new int[] {-1, -1};
    }
    return low ? new int[] {a, b - 1} : new int[] {count - b, count - 1 - a};
  }

  /** How many codes, in order of ohms, stand for less than this; the end code stands for open. */
  private static int below(Divider d, Double ohm) {
    if (ohm == null) {
      return 0;
    }
    int count = d.topCode() + 1;
    boolean low = d.side() == Divider.Side.LOW;
    int least = 0;
    int most = count;
    while (least < most) {
      int middle = (least + most) >>> 1;
      int code = low ? middle : count - 1 - middle;
      if (d.isUnderRange(code) || !d.isOverRange(code) && d.ohm(code, 0) < ohm) {
        least = middle + 1;
      } else {
        most = middle;
      }
    }
    return least;
  }

  /**
   * One point of an interpolated table.
   *
   * @param ohm reading as the meter shows it, lead included, ohm
   * @param counts its code; -1 when no divider was given
   * @param volume straight between the middles of the two steps' volumes, held to the band, m3:
   *     smooth for a display, no finer than the band
   * @param volumeLow least volume it may be, as {@link Sender#decode}, m3
   * @param volumeHigh greatest, m3
   */
  public record Point(double ohm, int counts, double volume, double volumeLow, double volumeHigh) {}

  /**
   * A table at even ohms from the lowest step to the highest, interpolated: it looks finer, it is
   * not.
   *
   * @param sender the sender
   * @param divider its divider, or null for ohms only
   * @param motion which way the level moves
   * @param every step of the table, ohm
   * @throws Impossible if the step is not above 0 or makes over 100,000 rows
   */
  public static List<Point> interpolated(
      Sender sender, Divider divider, Motion motion, double every) {
    Impossible.unlessPositive("every", every);
    Staircase s = sender.staircase();
    double lead = sender.limits().lead();
    double first = Math.min(s.ohm(0), s.ohm(s.size() - 1));
    double last = Math.max(s.ohm(0), s.ohm(s.size() - 1));
    if ((last - first) / every > MOST_ROWS) {
      throw new Impossible("every", "that makes over 100,000 rows");
    }
    List<Point> points = new ArrayList<>();
    Reading reading = new Reading();
    int n = (int) Math.ceil((last - first) / every * (1 - Tank.ROUNDING));
    for (int k = 0; k <= n; k++) {
      double ohm = Math.min(first + k * every, last);
      sender.decode(ohm + lead, motion, reading);
      points.add(
          new Point(
              ohm + lead,
              divider == null ? -1 : divider.code(ohm, lead),
              Math.min(
                  Math.max(interpolate(s, ohm, motion), reading.volumeLow()), reading.volumeHigh()),
              reading.volumeLow(),
              reading.volumeHigh()));
    }
    return points;
  }

  private static double middle(Staircase s, int i, Motion motion) {
    return (s.volumeLow(i, motion) + s.volumeHigh(i, motion)) / 2;
  }

  private static double interpolate(Staircase s, double ohm, Motion motion) {
    int i = 0;
    while (i < s.size() - 2 && (s.falls() ? s.ohm(i + 1) > ohm : s.ohm(i + 1) < ohm)) {
      i++;
    }
    double share = (ohm - s.ohm(i)) / (s.ohm(i + 1) - s.ohm(i));
    double low = middle(s, i, motion);
    return low + (middle(s, i + 1, motion) - low) * share;
  }
}
