package leat.check.build;

import leat.answer.Show;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.hydraulics.Film;
import leat.system.TowerAt;

/** A rule on the flow that runs down a tower's wall as a film. */
abstract class FilmRule extends TowerRule {
  FilmRule(At at, String id, String need, String source, String meaning) {
    super(
        at,
        id,
        need,
        Show.L_MIN,
        null,
        source,
        ReadKeys.WATER_WAY + ReadKeys.FILM + " towers[].modules[].height",
        meaning);
  }

  @Override
  final String[] needs() {
    return new String[] {"modules", "modules.height", "modules.diameter"};
  }

  @Override
  final Finding measure(Subject subject, TowerAt tower) {
    if (!tower.reaches()) {
      return null;
    }
    Film film = tower.film();
    return film == null ? Finding.unknown(this) : measure(subject, tower.flow(), film);
  }

  /** Measures a flow, m3/s, against what suits a film. */
  abstract Finding measure(Subject subject, double flow, Film film);
}
