package leat.energy;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leat.Sheet.Row;

/** Reads the cells of the energy sheets: draws, timings and tariffs in the sheets' own syntax. */
final class Cells {
  static final double J_PER_KWH = 3.6e6;
  private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

  private Cells() {}

  /** A quarter of an hour on, a quarter off: a mechanical timer's segments. */
  static final Timing QUARTER_HOURS = new Timing(900, 900);

  static Draw pumpOnly(double watts) {
    return new Draw(watts, 0, 0, Coil.NEVER);
  }

  static Motor mains(double watts, double volts) {
    return new Motor(watts, volts, Motor.USUAL_POWER_FACTOR, Motor.USUAL_INRUSH_MULTIPLE);
  }

  /** A flooded lead battery of 12 V. */
  static Battery lead() {
    return new Battery(
        12,
        Battery.LEAD_DEPTH,
        Battery.USUAL_RESERVE,
        Battery.FLOODED_PEUKERT,
        Battery.LEAD_RATED_S);
  }

  /** A window in months from one to another, both in; 11 to 2 wraps. */
  static Window months(Window window, int first, int last) {
    return window.monthList(range(first, last, 12));
  }

  /** A window on weekdays from one to another, both in; 6 to 1 wraps. */
  static Window weekdays(Window window, int first, int last) {
    return window.weekdayList(range(first, last, 7));
  }

  private static int[] range(int first, int last, int most) {
    return IntStream.rangeClosed(0, Math.floorMod(last - first, most))
        .map(i -> (first - 1 + i) % most + 1)
        .toArray();
  }

  static Coil coil(String when) {
    return switch (when) {
      case "on" -> Coil.WHILE_RUNNING;
      case "off" -> Coil.WHILE_RESTING;
      case "never" -> Coil.NEVER;
      default -> throw new IllegalArgumentException(when);
    };
  }

  static Draw draw(Row r) {
    return new Draw(
        r.num("pump_W"), r.num("controller_W"), r.num("coil_W"), coil(r.text("coil_when")));
  }

  static Timing timing(Row r) {
    return new Timing(r.num("on_s"), r.num("off_s"));
  }

  static Timetable timetable(Row r) {
    List<Window> windows = new ArrayList<>();
    List<Timing> timings = new ArrayList<>();
    for (String entry : r.text("timing").split(";")) {
      String[] words = entry.strip().split(" +");
      String[] onOff = words[0].split("/");
      timings.add(new Timing(Double.parseDouble(onOff[0]), Double.parseDouble(onOff[1])));
      windows.add(window(words));
    }
    return new Timetable(windows.toArray(new Window[0]), timings.toArray(new Timing[0]));
  }

  static Tariff tariff(Row r) {
    List<Window> windows = new ArrayList<>();
    List<Double> prices = new ArrayList<>();
    for (String entry : r.text("tariff").split(";")) {
      String[] words = entry.strip().split(" +");
      prices.add(Double.parseDouble(words[0]) / J_PER_KWH);
      windows.add(window(words));
    }
    return new Tariff(
        windows.toArray(new Window[0]),
        prices.stream().mapToDouble(Double::doubleValue).toArray(),
        r.num("standing_per_day"),
        r.num("standing_share"));
  }

  static Dates dates(Row r) {
    return Dates.of(
        java.time.LocalDate.parse(r.text("from_date")),
        Integer.parseInt(r.text("days")),
        ZoneId.of(r.text("zone")));
  }

  private static Window window(String[] words) {
    Window window = Window.always();
    for (int i = 1; i < words.length; i++) {
      String word = words[i];
      if (word.startsWith("months=")) {
        String[] ends = word.substring(7).split("-");
        window = months(window, Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1]));
      } else if (word.startsWith("days=")) {
        String[] ends = word.substring(5).split("-");
        window =
            weekdays(window, 1 + DAYS.indexOf(ends[0]), 1 + DAYS.indexOf(ends[ends.length - 1]));
      } else {
        String[] ends = word.split("-");
        window = Window.between(clock(ends[0]), clock(ends[1]));
      }
    }
    return window;
  }

  private static int clock(String text) {
    return Integer.parseInt(text.substring(0, 2)) * 3600 + Integer.parseInt(text.substring(3)) * 60;
  }
}
