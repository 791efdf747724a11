package leat.check.run;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.Backup;
import leat.energy.Battery;
import leat.plan.Section;
import leat.system.BatteryOf;
import leat.system.DrawOf;
import leat.system.TimetableOf;

/** The battery lasts the power cut it is there for. */
final class BackupHours extends DeclaredRule {
  BackupHours() {
    super(
        "backup-hours",
        AT_LEAST,
        Show.H,
        null,
        "energy balance; Peukert's law; depth, reserve and idle draw: common practice, no source",
        "backup timing pump.power pump.supply controller",
        "How long the battery feeds the busiest timing, against backup.hours.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Section backup = subject.section("backup");
    if (!backup.isGiven()) {
      return List.of();
    }
    Battery battery = BatteryOf.of(subject.plan());
    double limit = subject.limitOr(this, backup, "hours");
    double owned = backup.need("capacity");
    Backup need =
        Backup.of(
            TimetableOf.of(subject.plan()).busiest(),
            DrawOf.of(subject.plan()),
            BatteryOf.inverter(subject.plan()),
            battery,
            limit);
    return List.of(
        atLeast(
            battery.lastsS(need.meanW(), BatteryOf.coulombs(owned)),
            limit,
            Verdict.FAIL,
            Mends.of(
                Phrase.of(),
                "backup.capacity",
                BatteryOf.ampereHours(need.capacityPeukertC()),
                Show.AH)));
  }
}
