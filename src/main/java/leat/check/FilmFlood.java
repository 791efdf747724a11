package leat.check;

import java.util.OptionalDouble;
import leat.answer.Phrase;
import leat.answer.Show;
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
    OptionalDouble wanted = subject.waterway().wanted(tower.number());
    double flow = wanted.isPresent() ? Math.min(wanted.getAsDouble(), tower.flow()) : tower.flow();
    return atMost(
        flow,
        most,
        Verdict.WARN,
        Phrase.of(key(tower, "wanted") + " of ")
            .add(most, Show.L_MIN)
            .add(", and close the valve to it"));
  }
}
