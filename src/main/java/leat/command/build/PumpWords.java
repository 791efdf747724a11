package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.hydraulics.Balance;
import leat.hydraulics.Cap;
import leat.hydraulics.Derate;
import leat.hydraulics.Film;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.PumpCurve;
import leat.hydraulics.Throttle;
import leat.quantity.Units;
import leat.system.TowerAt;
import leat.system.Valves;
import leat.system.Waterway;

/** Sentence and figures of {@code leat pump}. */
final class PumpWords {
  private static final Column NAME = Column.plain("name", "name");
  private static final Column HIGH_FLOW = Column.of("full_flow_L_min", "flow, full", Show.L_MIN);
  private static final Column CLOSED_FILM =
      Column.of("closed_film_L_min", "closes the film", Show.L_MIN);
  private static final Column JUG = Column.of("jug_L", "jug", Show.L.digits(1));
  private static final Column JUG_TIME = Column.of("jug_s", "jug full in", Show.S);
  private static final Column STANDS = Column.of("stands_m", "water stands", Show.M);
  private static final Column OUTLET = Column.of("outlet_m", "outlet", Show.M);
  private static final Column WANTED = Column.of("wanted_L_min", "wanted", Show.L_MIN);

  private final Call call;
  private final Answer answer;
  private final Waterway way;
  private final List<List<TowerAt>> states;
  private final double[] levels;

  PumpWords(Call call, Answer answer, Waterway way, List<List<TowerAt>> states, double[] levels) {
    this.call = call;
    this.answer = answer;
    this.way = way;
    this.states = states;
    this.levels = levels;
  }

  void write() {
    answer.sentence(sentence());
    if (way.towers() > 1) {
      Phrase[] names = new Phrase[way.towers()];
      for (int t = 0; t < names.length; t++) {
        names[t] =
            Phrase.of(way.name(t) + (way.count(t) > 1 ? " (each of " + way.count(t) + ")" : ""));
      }
      answer.figure("", names);
    }
    figures();
    new PumpMinds(call, answer, way, states, levels, hasFilm()).write(dryTowers() != null);
  }

  private List<TowerAt> lowest() {
    return states.get(0);
  }

  private List<TowerAt> highest() {
    return states.get(states.size() - 1);
  }

  private Phrase sentence() {
    if (PumpCommand.nothingCame(way)) {
      return Answer.filled(answer.row(0), MeasuredAnswer.nothingCame());
    }
    Phrase dry = dryTowers();
    if (dry != null) {
      return PumpCommand.wateredByValves(call, way, levels[0])
          ? Answer.filled(
                  row(0, 0), "With the valves set every tower gets {wanted_L_min}. With all open: ")
              .add(dry)
          : dry;
    }
    boolean untold = way.believed().kind() == Derate.Kind.NOT_NAMED;
    return way.towers() == 1 ? oneTop(untold) : everyTop(untold);
  }

  private Phrase oneTop(boolean untold) {
    Phrase words = Phrase.of("The pump reaches the top: ");
    for (int l = 0; l < states.size(); l++) {
      words.add(l == 0 ? "" : ", ");
      flows(words, way, states.get(l), null);
      words.add(states.size() == 1 ? "" : l == 0 ? " at the refill mark" : " with the tank full");
    }
    if (!untold) {
      return words.add(".");
    }
    words.add(states.size() == 1 ? " by the printed head; " : ", by the printed head; ");
    for (int l = 0; l < states.size(); l++) {
      words.add(l == 0 ? "" : " and ");
      flows(words, way, states.get(l), worn(l));
    }
    return words.add(" at the 70 % that many pumps give.");
  }

  /** The level comes before the towers' names, or nobody sees what belongs together. */
  private Phrase everyTop(boolean untold) {
    Phrase words =
        Phrase.of(
            untold
                ? "The pump reaches every top by its printed head: "
                : "The pump reaches every top: ");
    levels(words, false);
    if (untold) {
      levels(words.add(". At the 70 % that many pumps give: "), true);
    }
    return words.add(".");
  }

  private void levels(Phrase words, boolean worn) {
    for (int l = 0; l < states.size(); l++) {
      words.add(states.size() == 1 ? "" : l == 0 ? "at the refill mark " : "; with the tank full ");
      flows(words, way, states.get(l), worn ? worn(l) : null);
    }
  }

  private ManifoldFlow worn(int level) {
    return way.flowsAt(PumpCurve.USUAL_DERATE_WORN, levels[level]);
  }

  /** Flows of all towers as they stand, or under other flows of the same manifold. */
  static void flows(Phrase words, Waterway way, List<TowerAt> towers, ManifoldFlow other) {
    boolean many = way.towers() > 1;
    for (int t = 0; t < towers.size(); t++) {
      double flow = other == null ? towers.get(t).flow() : other.flow(way.riserOf(t));
      Row row = Row.aside(NAME, HIGH_FLOW).set(NAME, way.name(t)).set(HIGH_FLOW, flow);
      words.add(t == 0 ? "" : ", ");
      if (other != null && flow == 0) {
        words.add(Answer.filled(row, many ? "{name} nothing" : "nothing"));
      } else {
        words.add(Answer.filled(row, many ? "{name} {full_flow_L_min}" : "{full_flow_L_min}"));
      }
    }
  }

  private Phrase dryTowers() {
    Phrase words = Phrase.of();
    for (int t = 0; t < way.towers(); t++) {
      TowerAt tower = lowest().get(t);
      if (!tower.reaches()) {
        Row row =
            Row.aside(NAME, STANDS, OUTLET)
                .set(NAME, way.name(t))
                .set(STANDS, tower.standsAt())
                .set(OUTLET, tower.riser().lift());
        words.add(words.isEmpty() ? "" : " ").add(Answer.filled(row, dry(tower)));
      }
    }
    return words.isEmpty() ? null : words;
  }

  private String dry(TowerAt tower) {
    boolean marks = states.size() == 2;
    if (way.towers() == 1) {
      return marks
          ? "The pump does not reach the top at the refill mark: water stands {stands_m} up, the outlet is {outlet_m} up."
          : "The pump does not reach the top: water stands {stands_m} up, the outlet is {outlet_m} up.";
    }
    if (tower.starved()) {
      return marks
          ? "Tower {name} gets nothing at the refill mark: water stands {stands_m} up, the outlet is {outlet_m} up; alone it would be reached, the others pull it down."
          : "Tower {name} gets nothing: water stands {stands_m} up, the outlet is {outlet_m} up; alone it would be reached, the others pull it down.";
    }
    return marks
        ? "Tower {name} gets nothing at the refill mark: water stands {stands_m} up, the outlet is {outlet_m} up."
        : "Tower {name} gets nothing: water stands {stands_m} up, the outlet is {outlet_m} up.";
  }

  /** The row of a tower at a level, with what the words alone want. */
  private Row row(int t, int level) {
    TowerAt low = lowest().get(t);
    Film film = low.film();
    return answer
        .row(level * way.towers() + t)
        .with(
            Row.aside(NAME, HIGH_FLOW, CLOSED_FILM, WANTED)
                .set(NAME, low.name())
                .set(HIGH_FLOW, highest().get(t).flow())
                .set(CLOSED_FILM, film == null ? null : Double.valueOf(film.flowForClosedFilm()))
                .set(
                    WANTED,
                    call.has("--throttle-to")
                        ? call.above0("--throttle-to")
                        : PumpCommand.orNull(way.wanted(t))));
  }

  private void figures() {
    boolean two = states.size() == 2;
    String flow = two ? "{flow_L_min!} / {full_flow_L_min}" : "{flow_L_min}";
    each(two ? "flow, low / full" : "flow", PumpCommand.FLOW, flow, flow);
    each("margin over the lift", PumpCommand.MARGIN_PCT, "{margin_m}, {margin_pct}", "{margin_m}");
    each("water to the top", PumpCommand.FILL, "after {fill_time_s}", "never");
    if (hasFilm()) {
      filmFigures();
    }
    each("drains back", PumpCommand.BACK, "{drain_back_L}", "{drain_back_L}");
    valves();
  }

  /** A figure of each tower, in other words where a value is unknown. */
  private void each(String label, Column known, String template, String otherwise) {
    Phrase[] cells = new Phrase[way.towers()];
    for (int t = 0; t < cells.length; t++) {
      boolean is = answer.row(t).get(known) != null;
      cells[t] = Answer.filled(row(t, 0), is ? template : otherwise);
    }
    answer.figure(label, cells);
  }

  /** The jug that a reader of this text has at hand. */
  static double usualJug(Call call) {
    return call.us() ? Units.GALLON.toBase(1) : Balance.USUAL_JUG;
  }

  private boolean hasFilm() {
    for (int t = 0; t < way.towers(); t++) {
      if (lowest().get(t).film() != null) {
        return true;
      }
    }
    return false;
  }

  private void filmFigures() {
    Phrase[] film = new Phrase[way.towers()];
    Phrase[] push = new Phrase[way.towers()];
    for (int t = 0; t < film.length; t++) {
      film[t] =
          lowest().get(t).film() == null
              ? Phrase.of("-")
              : Answer.filled(row(t, 0), "{film_mm}, {film_speed_m_s}, down in {transit_s}");
      push[t] = push(t, highest().get(t).cap());
    }
    answer.figure("film", film);
    answer.figure("push on the cap", push);
    WallWords.write(answer, way, lowest());
  }

  private Phrase push(int t, Cap cap) {
    if (cap == null) {
      return Phrase.of("-");
    }
    return Answer.filled(
        row(t, states.size() - 1),
        cap.liftsAgainstGrip()
            ? "{push_N}, held by {hold_down_N}: lifts"
            : "{push_N}, held by {hold_down_N}");
  }

  private void valves() {
    Double wanted = call.above0("--throttle-to");
    Valves valves = Valves.of(way, way.flows(levels[0]), wanted);
    if (!valves.areWanted() || dryTowers() != null && !valves.allReachable()) {
      return;
    }
    Phrase[] cells = new Phrase[way.towers()];
    for (int t = 0; t < cells.length; t++) {
      cells[t] = valve(row(t, 0), valves, t);
    }
    answer.figure(
        levels.length == 2 ? "close the valve, at the refill mark" : "close the valve to", cells);
    if (wanted != null && !valves.allReachable()) {
      answer.no();
      answer.mind(
          "wanted-flow-not-reachable",
          "the wanted flow is more than the tower gets with the valve open.");
    }
  }

  private Phrase valve(Row row, Valves valves, int t) {
    double jug = usualJug(call);
    Row filling = Row.aside(JUG, JUG_TIME).set(JUG, jug);
    filling.set(JUG_TIME, Throttle.secondsFor(jug, valves.of(t).wantedFlow()));
    return Answer.filled(
        row.with(filling),
        valves.of(t).reachable()
            ? "{jug_L} in {jug_s}, {valve_head_m} held back"
            : "leave it open: {wanted_L_min} is more than it gets");
  }
}
