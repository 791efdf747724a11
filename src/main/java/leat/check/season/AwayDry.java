package leat.check.season;

import java.util.List;
import leat.check.Advice;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.quantity.Units;
import leat.season.AwayOutcome;
import leat.season.Goal;
import leat.season.Totals;

/** Times away do not dry the tower. */
final class AwayDry extends SeasonRule {
  AwayDry() {
    super(
        "away-dry",
        DAYS,
        0,
        Goal.AWAY_CARRIED,
        Verdict.WARN,
        PRACTICE,
        "Days on which the tank is dry because nobody is there (season.away). A neighbour, a larger tank or fewer plants carry it over.");
  }

  @Override
  double value(Totals shown) {
    return Units.D.toBase(shown.counts().awayDryDays());
  }

  @Override
  public List<Finding> measure(Subject subject) {
    return subject.section("season").sections("away").isEmpty()
        ? List.of()
        : super.measure(subject);
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    AwayOutcome[] all = subject.seasonLaid().away(subject.seasonRuns());
    boolean filling = true;
    for (int i = 0; i < all.length; i++) {
      filling &= all[i].carried() || all[i].fillBeforeCarries();
    }
    return super.advice(subject, finding)
        .say("a larger tank")
        .also(
            filling
                ? "filling up on the evening before you leave"
                : "a neighbour: `leat season` names the days");
  }
}
