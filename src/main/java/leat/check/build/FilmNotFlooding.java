package leat.check.build;

import java.util.OptionalDouble;
import leat.check.Advice;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Film;
import leat.system.TowerAt;

/** The film does not flood the pots. */
final class FilmNotFlooding extends FilmRule {
  FilmNotFlooding() {
    super(
        At.FULL,
        "film-not-flooding",
        AT_MOST,
        PRACTICE,
        "Flow with the tank full against 20 L/min for each metre of wall around: more floods pots and splashes.");
  }

  @Override
  Finding measure(Subject subject, double flow, Film film) {
    return atMost(flow, limitOr(subject, Film.LOADING_HIGH * film.perimeter()), Verdict.WARN);
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    return heldBack(subject, tower, finding.limit() / finding.value());
  }

  /** A valve set so that the flow with the tank full is a share of today's. */
  static Advice heldBack(Subject subject, TowerAt tower, double share) {
    OptionalDouble wanted = subject.waterway().wanted(tower.number());
    double low = subject.low(tower.number()).flow();
    Advice advice = Advice.none();
    if (wanted.isPresent() && wanted.getAsDouble() <= share * low) {
      advice.cure(TowerCures.valveOnly(tower.number()));
    }
    for (int i = 0; i < SHARES.length && low > 0; i++) {
      advice.cure(TowerCures.valveSet(subject, tower.number(), SHARES[i] * share * low));
    }
    return advice;
  }

  /** A valve set at the refill mark lets more through when the tank is full. */
  private static final double[] SHARES = {1, 0.9, 0.75, 0.5};
}
