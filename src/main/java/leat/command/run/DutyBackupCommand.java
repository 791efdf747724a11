package leat.command.run;

import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.energy.Backup;
import leat.energy.Battery;
import leat.energy.Draw;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Units;
import leat.system.BatteryOf;
import leat.system.DrawOf;

/** {@code leat duty backup}: a battery for a power cut. */
public final class DutyBackupCommand extends Command {
  @Override
  public String name() {
    return "duty backup";
  }

  @Override
  public Flag[] flags() {
    return BackupFlags.all();
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    if (!call.hasPlan()) {
      needed(call, plan);
    }
    Timetable timetable = DutyLine.timetable(call);
    Timing timing = timetable.busiest();
    if (timetable.size() > 1) {
      call.taken().note("the busiest timing of the plan");
    }
    Section backup = plan.section("backup");
    Double hours = backup.maybe("hours");
    if (hours == null && !backup.has("capacity")) {
      throw backup.missing("hours");
    }
    return answer(call, timing, hours, backup.maybe("capacity"));
  }

  private static Answer answer(Call call, Timing timing, Double hours, Double owned) {
    Plan plan = call.plan();
    Battery battery = BatteryOf.of(plan, call.taken());
    Draw draw = DrawOf.of(plan, call.taken());
    double cut = hours == null ? Units.H.toBase(1) : hours;
    Backup need = Backup.of(timing, draw, BatteryOf.inverter(plan, call.taken()), battery, cut);
    Double lasts =
        owned == null
            ? null
            : Double.valueOf(battery.lastsS(need.meanW(), BatteryOf.coulombs(owned)));
    if (hours == null) {
      need = Backup.of(timing, draw, BatteryOf.inverter(plan, call.taken()), battery, lasts);
    }
    return new DutyBackupAnswer(call, battery, need, hours, lasts).answer(timing);
  }

  private static void needed(Call call, Plan plan) {
    if (!plan.section("pump").has("power")) {
      throw call.needs("--power");
    }
    if (!plan.section("backup").has("battery")) {
      throw call.needs("--battery");
    }
    if (!plan.section("backup").has("hours") && !plan.section("backup").has("capacity")) {
      throw call.needs("--hours");
    }
  }
}
