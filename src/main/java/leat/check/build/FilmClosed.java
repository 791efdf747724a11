package leat.check.build;

import java.util.OptionalDouble;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Film;
import leat.hydraulics.Mend;
import leat.system.TowerAt;

/** The film closes around the tower. */
final class FilmClosed extends FilmRule {
  FilmClosed() {
    super(
        At.LOW,
        "film-closed",
        AT_LEAST,
        "force balance at a dry spot, Hartley and Murgatroyd 1964",
        "Flow at the refill mark against the flow from which a dry spot in the film closes on clean plastic. Less runs in rivulets and misses pots.");
  }

  @Override
  Finding measure(Subject subject, double flow, Film film) {
    return atLeast(flow, limitOr(subject, film.flowForClosedFilm()), Verdict.WARN);
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
