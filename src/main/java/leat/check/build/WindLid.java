package leat.check.build;

import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.stability.Equilibrium;
import leat.stability.Situation;
import leat.stability.Standing;
import leat.system.StandingOf;

/** A tower does not leave the lid it merely stands on. */
final class WindLid extends StandingRule {
  WindLid() {
    super(
        "wind-lid",
        AT_LEAST,
        WindTip.BARE,
        Equilibrium.LEAST_SAFETY,
        "EN 1990 table A1.2(A): 1.5 on wind, 0.9 on weight",
        "Safety of a tower that merely stands on the tank's lid, about its own foot. It goes in a moderate breeze: fasten it, or let it reach the tank's floor. Silent for towers that are fastened, held by lines, or reach into the tank.");
  }

  @Override
  Finding measure(Subject subject, StandingOf standing, int t) {
    Double least = null;
    for (int i = 0; i < standing.states().size(); i++) {
      Situation state = standing.states().get(i);
      Standing tower = standing.onLid(t, state);
      if (tower == null || standing.fastened(t) || standing.lines(t) != null) {
        return null;
      }
      Double safety = tower.safety(subject.windPressure());
      least = least == null || safety != null && safety < least ? safety : least;
    }
    return least == null ? null : atLeast(least, limit(subject), Verdict.FAIL);
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    return Advice.of("fasten it to the tank, or let it reach the tank's floor")
        .cure(Cure.typed(key(finding.part(), "fastened"), "true"));
  }
}
