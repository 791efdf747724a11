package leat.system;

import java.util.List;
import leat.energy.Window;
import leat.energy.Windows;
import leat.plan.Refused;
import leat.plan.Section;

/** The hours, months and weekdays of an entry of {@code timing} or {@code tariff.bands}. */
final class WindowOf {
  private static final int MINUTE_S = 60;
  private static final int DAY_MIN = 1440;

  private WindowOf() {}

  /** The key that gives an entry a window of its own, or null for none. */
  static String key(Section entry) {
    String[] keys = {"from", "to", "months", "days"};
    for (int i = 0; i < keys.length; i++) {
      if (entry.has(keys[i])) {
        return keys[i];
      }
    }
    return null;
  }

  static Window of(Section entry) {
    Window window = hours(entry);
    if (entry.has("months")) {
      window = window.monthList(numbers(entry.list("months")));
    }
    if (entry.has("days")) {
      window = window.weekdayList(weekdays(entry.list("days")));
    }
    return window;
  }

  private static Window hours(Section entry) {
    if (!entry.has("from") && !entry.has("to")) {
      return Window.always();
    }
    int from = (Integer) entry.needRaw("from") % DAY_MIN;
    int to = (Integer) entry.needRaw("to");
    return Window.between(MINUTE_S * from, MINUTE_S * to);
  }

  private static int[] numbers(List<?> list) {
    int[] numbers = new int[list.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = (Integer) list.get(i);
    }
    return numbers;
  }

  private static int[] weekdays(List<?> list) {
    String order = "mon tue wed thu fri sat sun";
    int[] numbers = new int[list.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = order.indexOf((String) list.get(i)) / 4 + 1;
    }
    return numbers;
  }

  /** Refuses a later entry that never holds. */
  static void refuseNever(Windows windows, List<Section> entries, int first, String otherwise) {
    boolean[] ever = windows.everInForce();
    for (int i = first; i < entries.size(); i++) {
      if (!ever[i - first + 1]) {
        String key = key(entries.get(i));
        throw new Refused(DutyErrors.neverInForce(entries.get(i), key == null ? otherwise : key));
      }
    }
  }
}
