package leat.command.run;

import java.util.List;
import leat.cli.Call;
import leat.energy.Draw;
import leat.energy.Saving;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.system.DrawOf;
import leat.system.DutyOf;
import leat.system.PeriodOf;
import leat.system.TariffOf;
import leat.system.TimetableOf;

/** One timing, or one timetable, with its energy and money over the period asked for. */
final class DutyLine {
  final String name;
  final Timetable timetable;
  final double share;
  final double startsPerDay;
  final double runS;
  final double starts;
  final double pumpJ;
  final double jDay;
  final double costDay;
  final double j;
  final double cost;

  private DutyLine(String name, Timetable timetable, DutyOf duty) {
    this.name = name;
    this.timetable = timetable;
    this.share = duty.share();
    this.startsPerDay = duty.startsPerDay();
    this.runS = duty.runS();
    this.starts = duty.starts();
    this.pumpJ = duty.pumpJ();
    this.jDay = duty.jDay();
    this.costDay = duty.costDay();
    this.j = duty.j();
    this.cost = duty.cost();
  }

  /** The only timing, or null for a timetable. */
  Timing timing() {
    return timetable.size() == 1 ? timetable.timing(0) : null;
  }

  Saving saved(DutyLine other) {
    return Saving.of(j, cost, other.j, other.cost);
  }

  /** What all lines of one call share: draw, prices, period. */
  static final class Terms {
    final Draw draw;
    final TariffOf price;
    final PeriodOf period;

    Terms(Plan plan, TariffOf price, PeriodOf period, Taken taken) {
      this.draw = DrawOf.of(plan, taken);
      this.price = price;
      this.period = period;
    }

    DutyLine line(String name, Timetable timetable) {
      return new DutyLine(name, timetable, DutyOf.of(timetable, draw, price, period));
    }
  }

  /** The timetable asked for: --run and --rest, else the plan's. */
  static Timetable timetable(Call call) {
    Double run = call.above0("--run");
    Double rest = call.from0("--rest");
    if (run == null && rest == null) {
      if (!TimetableOf.isKnown(call.plan()) && !call.hasPlan()) {
        throw call.needs("--run");
      }
      return TimetableOf.of(call.plan());
    }
    if ((run == null || rest == null) && !TimetableOf.isKnown(call.plan())) {
      throw call.needs(run == null ? "--run" : "--rest");
    }
    Section first = first(call);
    return Timetable.of(
        new Timing(
            run == null ? first.need("run") : run, rest == null ? first.need("rest") : rest));
  }

  private static Section first(Call call) {
    List<Section> entries = call.plan().root().sections("timing");
    return entries.isEmpty() ? null : entries.get(0);
  }

  /** What that timetable is called: its run and rest as typed, or the plan's. */
  static String name(Call call, Timetable timetable) {
    if (timetable.size() > 1) {
      return "plan";
    }
    Section first = first(call);
    String run = call.text("--run");
    String rest = call.text("--rest");
    return (run == null ? first.typed("run") : run)
        + "/"
        + (rest == null ? first.typed("rest") : rest);
  }

  /** What each timing of a timetable is called. */
  static String[] names(Call call, Timetable timetable) {
    if (timetable.size() == 1) {
      return new String[] {name(call, timetable)};
    }
    List<Section> entries = call.plan().root().sections("timing");
    String[] names = new String[timetable.size()];
    for (int i = 0; i < names.length; i++) {
      names[i] = TimetableOf.words(entries.get(i));
    }
    return names;
  }
}
