package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.stability.GuyLines;
import leat.stability.LineLoad;
import leat.system.StandingOf;

/** Guy lines bear what they see. */
final class WindLine extends StandingRule {
  private static final Show FORCE = Show.N.digits(3);

  WindLine() {
    super(
        "wind-line",
        AT_LEAST,
        FORCE,
        null,
        "common practice, no source: a fifth of the breaking load for line, knot and anchor",
        "Breaking load of a guy line against five times the pull that the worst one sees, with the factors of EN 1990, in the worst state.");
  }

  @Override
  Finding measure(Subject subject, StandingOf standing, int t) {
    LineLoad load = standing.load(t, subject.windPressure());
    if (load == null) {
      return null;
    }
    double breaking = towers(subject).get(t).section("guys").need("breaking");
    return atLeast(breaking, limitOr(subject, load.breakingNeeded()), Verdict.FAIL);
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    int t = finding.part();
    StandingOf standing = subject.standing();
    LineLoad load = standing.load(t, subject.windPressure());
    GuyLines lines = standing.lines(t);
    double bears = LineLoad.mayPull(finding.value());
    Advice advice =
        Advice.of("a stronger line")
            .cure(Cure.atLeast(key(t, "guys.breaking"), finding.limit(), FORCE));
    Double run = lines.leastRun(load.moment(), bears);
    if (run != null) {
      advice.cure(Cure.atLeast(key(t, "guys.run"), run, Show.M));
    }
    Double ring = standing.assembly().ringToPass(standing.column(t), load, bears);
    return ring == null ? advice : advice.cure(Cure.atLeast(key(t, "guys.ring"), ring, Show.M));
  }
}
