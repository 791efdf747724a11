package leat.energy;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import leat.Sheet.Row;

/** Reads the cells of the energy sheets: draws, timings and tariffs in the sheets' own syntax. */
final class Cells {
  static final double J_PER_KWH = 3.6e6;
  private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

  private Cells() {}

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
        window =
            window.monthRange(Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1]));
      } else if (word.startsWith("days=")) {
        String[] ends = word.substring(5).split("-");
        window =
            window.weekdayRange(1 + DAYS.indexOf(ends[0]), 1 + DAYS.indexOf(ends[ends.length - 1]));
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
