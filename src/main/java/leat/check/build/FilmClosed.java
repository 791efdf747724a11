package leat.check.build;

import java.util.OptionalDouble;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Film;
import leat.hydraulics.Mend;
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
        ReadKeys.WATER_WAY + ReadKeys.FILM + " towers[].modules[].height",
        "Flow at the refill mark against the flow from which a dry spot in the film closes on clean plastic. Less runs in rivulets and misses pots.");
  }

  @Override
  String[] needs() {
    return new String[] {"modules", "modules.height", "modules.diameter"};
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    if (!tower.reaches()) {
      return null;
    }
    Film film = tower.film();
    return film == null
        ? Finding.unknown(this)
        : atLeast(tower.flow(), limitOr(subject, film.flowForClosedFilm()), Verdict.WARN);
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    int t = tower.number();
    int riser = subject.waterway().riserOf(t);
    double flow = finding.limit();
    Advice advice = Advice.none().also("a rougher wall (sanded, slimed)");
    if (subject.waterway().tower(t).valved() && subject.waterway().wanted(t).isPresent()) {
      advice.cure(Cure.atLeast(key(t, "wanted"), flow, Show.L_MIN));
    }
    OptionalDouble bore =
        Mend.boreForFlow(
            subject.waterway().curve(),
            subject.flowsLow().manifold(),
            riser,
            tower.riser().line().size() - 1,
            flow);
    if (bore.isPresent()) {
      TowerCures.wider(advice, t, bore.getAsDouble());
    }
    return FlowWanted.strongerPump(advice, subject, riser, flow);
  }
}
