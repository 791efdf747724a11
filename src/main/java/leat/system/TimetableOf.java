package leat.system;

import java.util.List;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.energy.Window;
import leat.plan.Plan;
import leat.plan.Section;

/** The timings of a plan. */
public final class TimetableOf {
  private TimetableOf() {}

  /** Whether the plan has a timing. */
  public static boolean isKnown(Plan plan) {
    return plan.root().has("timing") && !plan.root().sections("timing").isEmpty();
  }

  /** The timetable; refused when there is none, or when an entry can never hold. */
  public static Timetable of(Plan plan) {
    if (!isKnown(plan)) {
      throw plan.root().missing("timing");
    }
    List<Section> entries = plan.root().sections("timing");
    Window[] windows = new Window[entries.size()];
    Timing[] timings = new Timing[entries.size()];
    for (int i = 0; i < windows.length; i++) {
      Section entry = entries.get(i);
      windows[i] = i == 0 ? Window.always() : WindowOf.of(entry);
      timings[i] = new Timing(entry.need("run"), entry.need("rest"));
    }
    Timetable timetable = new Timetable(windows, timings);
    if (windows.length > 1) {
      WindowOf.refuseNever(timetable.windows(), entries, 1, "run");
    }
    return timetable;
  }

  /** An entry as typed: "90 s/12 min". */
  public static String words(Section entry) {
    return entry.typed("run") + "/" + entry.typed("rest");
  }
}
