package leat.sweep;

import static leat.sweep.Measure.Better.LESS;
import static leat.sweep.Measure.Better.MORE;

import java.util.List;
import leat.answer.Show;
import leat.check.Subject;
import leat.quantity.Units;
import leat.stability.LineLoad;
import leat.stability.Situation;
import leat.system.StandingOf;

/** What {@code leat wind} answers, of the worst of its states and joints. */
final class WindMeasures {
  private static final String WIND = "wind";
  private static final Show SPEED = Show.of(Units.M_S, Units.MPH, 3);

  private WindMeasures() {}

  /** A number of a state; null for none. */
  private interface OfState {
    Double in(StandingOf standing, Situation state);
  }

  static List<Measure> all() {
    return List.of(
        speed(
            "tips_at_m_s",
            "tips at",
            s ->
                least(
                    s,
                    (standing, state) -> standing.assembly().worst(state).tipsAt(s.airDensity()))),
        speed(
            "slides_at_m_s",
            "slides at",
            s ->
                least(s, (standing, state) -> standing.assembly().slidesAt(state, s.airDensity()))),
        speed(
            "lid_tips_at_m_s",
            "off its lid at",
            s -> least(s, (standing, state) -> standing.lidTipsAt(state, s.airDensity()))),
        speed("opens_at_m_s", "first joint opens at", WindMeasures::firstJoint),
        Measure.number(
            "safety_factor",
            WIND,
            "safety_factor",
            MORE,
            "righting over overturning",
            s ->
                least(
                    s,
                    (standing, state) ->
                        standing.assembly().worst(state).safety(s.windPressure()))),
        Measure.of(
            "tension_N", WIND, "tension_N", LESS, "pull of a line", Show.N, WindMeasures::tension));
  }

  private static Measure speed(
      String name, String label, java.util.function.ToDoubleFunction<Subject> value) {
    return Measure.of(name, WIND, name, MORE, label, SPEED, value);
  }

  /** The least of all states; NaN when no state has it. */
  private static double least(Subject subject, OfState value) {
    StandingOf standing = subject.standing();
    double least = Double.NaN;
    for (Situation state : standing.states()) {
      Double own = value.in(standing, state);
      least = own != null && !(own >= least) ? own : least;
    }
    return least;
  }

  private static double firstJoint(Subject subject) {
    StandingOf standing = subject.standing();
    double least = Double.NaN;
    for (int t = 0; t < standing.towers(); t++) {
      Double own = standing.firstJointOpensAt(t, subject.airDensity());
      least = own != null && !(own >= least) ? own : least;
    }
    return least;
  }

  private static double tension(Subject subject) {
    double most = Double.NaN;
    for (int t = 0; t < subject.standing().towers(); t++) {
      LineLoad load = subject.standing().load(t, subject.windPressure());
      most = load != null && !(load.tension() <= most) ? load.tension() : most;
    }
    return most;
  }
}
