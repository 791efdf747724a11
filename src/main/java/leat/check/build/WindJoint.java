package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.quantity.Units;
import leat.system.StandingOf;

/** The joints of a stacked tower stay shut in the site's wind. */
final class WindJoint extends StandingRule {
  private static final Show WIND = Show.of(Units.M_S, Units.MPH, 3);

  WindJoint() {
    super(
        "wind-joint",
        AT_LEAST,
        WIND,
        null,
        "statics: the core of a ring",
        "Gust that opens the first joint of a tower whose modules are not fastened, against the site's gust: an open joint leaks. Where a gust that strong rolls the modules off, it fails, unless lines hold the tower. A rod or cord through the stack keeps it shut; plastic creeps, so with a spring.");
  }

  @Override
  Finding measure(Subject subject, StandingOf standing, int t) {
    if (standing.fastened(t)) {
      return null;
    }
    Double least = standing.firstJointOpensAt(t, subject.airDensity());
    if (least == null) {
      return null;
    }
    double gust = limitOr(subject, subject.wind().gust());
    Double rolls = standing.firstJointRollsAt(t, subject.airDensity());
    boolean off = standing.merelyStacked(t) && rolls != null && rolls < gust;
    return atLeast(least, gust, off ? Verdict.FAIL : Verdict.WARN);
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    StandingOf standing = subject.standing();
    double tie = standing.tieToStayShut(finding.part(), subject.windPressure());
    return Advice.of("a rod or cord through the stack, screws or glue")
        .cure(Cure.typed(key(finding.part(), "fastened"), "true"))
        .cure(Cure.atLeast(key(finding.part(), "tie"), tie, Show.N));
  }
}
