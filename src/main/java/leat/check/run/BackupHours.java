package leat.check.run;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.Backup;
import leat.energy.Battery;
import leat.plan.Section;
import leat.system.BatteryOf;
import leat.system.DrawOf;

/** The battery lasts the power cut it is there for. */
final class BackupHours extends DeclaredRule {
  BackupHours() {
    super(
        "backup-hours",
        AT_LEAST,
        Show.H,
        null,
        "energy balance; Peukert's law; depth, reserve and idle draw: common practice, no source",
        "backup controller.power controller.relay.coil pump.power pump.supply timing[].run timing[].rest",
        "How long the battery feeds the busiest timing, against backup.hours.");
  }

  private static Backup need(Subject subject, double hours) {
    return Backup.of(
        subject.timetable().busiest(),
        DrawOf.of(subject.plan(), subject.taken()),
        BatteryOf.inverter(subject.plan(), subject.taken()),
        BatteryOf.of(subject.plan(), subject.taken()),
        hours);
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Section backup = subject.section("backup");
    if (!backup.isGiven()) {
      return List.of();
    }
    Battery battery = BatteryOf.of(subject.plan(), subject.taken());
    double limit = subject.limitOr(this, backup, "hours");
    double owned = backup.need("capacity");
    double lasts = battery.lastsS(need(subject, limit).meanW(), BatteryOf.coulombs(owned));
    return List.of(atLeast(lasts, limit, Verdict.FAIL));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    double coulombs = need(subject, finding.limit()).capacityPeukertC();
    return Advice.none()
        .cure(Cure.atLeast("backup.capacity", BatteryOf.ampereHours(coulombs), Show.AH));
  }
}
