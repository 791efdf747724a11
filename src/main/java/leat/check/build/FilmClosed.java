package leat.check.build;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Film;
import leat.hydraulics.ManifoldFlow;
import leat.system.TowerAt;

/** The film closes around the tower. */
final class FilmClosed extends TowerRule {
  FilmClosed() {
    super(
        At.LOW,
        "film-closed",
        AT_LEAST,
        Show.L_MIN,
        null,
        "force balance at a dry spot, Hartley and Murgatroyd 1964",
        "towers[].modules pump tank.low",
        "Flow at the refill mark against the flow from which a dry spot in the film closes on clean plastic. Less runs in rivulets and misses pots.");
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
    return atLeast(
        tower.flow(),
        film.flowForClosedFilm(),
        Verdict.WARN,
        Phrase.of("a rougher wall (sanded, slimed), more flow, or open the valve: ")
            .add(film.flowForClosedFilm(), Show.L_MIN));
  }
}
