package leat.check.build;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.system.HeldWater;

/** The pump's intake stays covered at the refill mark while the towers run. */
final class IntakeCovered extends DeclaredRule {
  private static final double LIMIT = 0.020;

  IntakeCovered() {
    super(
        "intake-covered",
        AT_LEAST,
        Show.MM,
        LIMIT,
        PRACTICE,
        "tank.intake " + ReadKeys.WATER_WAY + ReadKeys.HELD + ReadKeys.TANK,
        "Water over the pump's intake at the refill mark, once risers and towers have taken theirs. Dry running kills a small pump.");
  }

  private static double held(Subject subject) {
    return HeldWater.of(subject.waterway(), subject.flowsLow()).held();
  }

  private static double running(Subject subject) {
    double low = subject.section("tank").need("low");
    return HeldWater.levelWithout(subject.tank(), low, held(subject));
  }

  @Override
  public List<Finding> measure(Subject subject) {
    double intake = subject.section("tank").need("intake");
    return List.of(atLeast(running(subject) - intake, limit(subject), Verdict.FAIL));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    double wanted = subject.section("tank").need("intake") + finding.limit();
    double low = HeldWater.levelBefore(subject.tank(), wanted, held(subject));
    return Advice.of("a higher refill mark")
        .cure(Cure.atLeast("tank.low", low, Show.MM))
        .cure(Cure.atMost("tank.intake", running(subject) - finding.limit(), Show.MM));
  }
}
