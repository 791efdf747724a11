package leat.check.build;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Film;
import leat.hydraulics.ManifoldFlow;
import leat.system.TowerAt;

/** The film does not flood the pots. */
final class FilmFlood extends TowerRule {
  FilmFlood() {
    super(
        At.FULL,
        "film-flood",
        AT_MOST,
        Show.L_MIN,
        null,
        PRACTICE,
        "towers[].modules towers[].wanted pump tank.full",
        "Flow, throttled to what is wanted where that is told, against 20 L/min for each metre of wall around: more floods pots and splashes.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    Film film = tower.film();
    if (film == null) {
      return tower.reaches()
          ? Finding.unknown(
              this, Phrase.of("needs " + key(tower, "modules") + " with height and diameter"))
          : null;
    }
    double most = Film.LOADING_HIGH * film.perimeter();

    return atMost(
        tower.throttledFlow(),
        most,
        Verdict.WARN,
        Mends.atMost(Phrase.of(), key(tower, "wanted"), most, Show.L_MIN)
            .add(", and close the valve to it"));
  }
}
