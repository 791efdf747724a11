package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.hydraulics.Cap;
import leat.hydraulics.Derate;
import leat.hydraulics.Film;
import leat.hydraulics.JugRounds;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.OperatingPoint;
import leat.hydraulics.PumpCurve;
import leat.system.TowerAt;
import leat.system.Valves;
import leat.system.Waterway;

/** Sentence, figures and notes of {@code leat pump}. */
final class PumpWords {
  private static final Column NAME = Column.plain("name", "tower");
  private static final Column HIGH_FLOW = Column.of("full_flow_L_min", "flow, full", Show.L_MIN);
  private static final Column CLOSED_FILM =
      Column.of("closed_film_L_min", "closes the film", Show.L_MIN);
  private static final Column LITRE = Column.of("jug_L", "jug", Show.L.digits(2));
  private static final Column WANTED = Column.of("wanted_L_min", "wanted", Show.L_MIN);
  private static final Column LEAST_MARGIN = Column.of("least_margin_pct", "margin", Show.PERCENT);

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

  static void film(Row row, TowerAt tower) {
    Film film = tower.film();
    if (film != null) {
      row.set(PumpCommand.FILM, film.thickness())
          .set(PumpCommand.FILM_SPEED, film.meanSpeed())
          .set(PumpCommand.TRANSIT, film.transitTime());
    }
    Cap cap = tower.cap();
    if (cap != null) {
      row.set(PumpCommand.PUSH, cap.jetForce()).set(PumpCommand.HOLD, cap.holdDown());
    }
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
    minds();
    next();
  }

  private List<TowerAt> lowest() {
    return states.get(0);
  }

  private List<TowerAt> highest() {
    return states.get(states.size() - 1);
  }

  private Phrase sentence() {
    if (PumpCommand.nothingCame(way)) {
      return MeasuredAnswer.nothingCame(way.believed().measured());
    }
    Phrase dry = dryTowers();
    if (dry != null) {
      return PumpCommand.wateredByValves(call, way, levels[0])
          ? Answer.filled(
                  row(0, 0), "With the valves set every tower gets {wanted_L_min}. With all open: ")
              .add(dry)
          : dry;
    }
    Phrase words =
        Phrase.of(
            way.towers() == 1 ? "The pump reaches the top: " : "The pump reaches every top: ");
    boolean untold = way.believed().kind() == Derate.Kind.NOT_NAMED;
    for (int l = 0; l < states.size(); l++) {
      words.add(l == 0 ? "" : ", ");
      flows(words, states.get(l), null);
      words.add(states.size() == 1 ? "" : l == 0 ? " at the refill mark" : " with the tank full");
    }
    if (!untold) {
      return words.add(".");
    }
    words.add(states.size() == 1 ? " by the printed head; " : ", by the printed head; ");
    for (int l = 0; l < states.size(); l++) {
      words.add(l == 0 ? "" : " and ");
      flows(words, states.get(l), way.flowsAt(PumpCurve.USUAL_DERATE_WORN, levels[l]));
    }
    return words.add(" at the 70 % that many pumps give.");
  }

  /** Flows of all towers as they stand, or under other flows of the same manifold. */
  private void flows(Phrase words, List<TowerAt> towers, ManifoldFlow other) {
    for (int t = 0; t < towers.size(); t++) {
      double flow = other == null ? towers.get(t).flow() : other.flow(way.riserOf(t));
      words.add(t == 0 ? "" : ", ").add(way.towers() > 1 ? way.name(t) + " " : "");
      if (other != null && flow == 0) {
        words.add("nothing");
      } else {
        words.add(flow, Show.L_MIN);
      }
    }
  }

  private Phrase dryTowers() {
    Phrase words = Phrase.of();
    for (int t = 0; t < way.towers(); t++) {
      TowerAt tower = lowest().get(t);
      if (tower.reaches()) {
        continue;
      }
      words
          .add(words.isEmpty() ? "" : " ")
          .add(
              way.towers() > 1
                  ? "Tower " + way.name(t) + " gets nothing"
                  : "The pump does not reach the top");
      words
          .add(states.size() == 2 ? " at the refill mark" : "")
          .add(": water stands ")
          .add(tower.standsAt(), Show.M);
      words.add(" up, the outlet is ").add(tower.riser().lift(), Show.M).add(" up");
      words.add(tower.starved() ? "; alone it would be reached, the others pull it down." : ".");
    }
    return words.isEmpty() ? null : words;
  }

  /** The row of a tower at a level, with what the words alone want. */
  private Row row(int t, int level) {
    TowerAt low = lowest().get(t);
    Film film = low.film();
    return answer
        .row(level * way.towers() + t)
        .with(
            Row.aside(NAME, HIGH_FLOW, CLOSED_FILM, LITRE, WANTED)
                .set(NAME, low.name())
                .set(HIGH_FLOW, highest().get(t).flow())
                .set(CLOSED_FILM, film == null ? null : Double.valueOf(film.flowForClosedFilm()))
                .set(LITRE, JugRounds.USUAL_JUG)
                .set(
                    WANTED,
                    call.has("--throttle-to")
                        ? call.above0("--throttle-to")
                        : PumpCommand.orNull(way.wanted(t))));
  }

  private void figures() {
    int n = way.towers();
    Phrase[] flow = new Phrase[n];
    Phrase[] margin = new Phrase[n];
    Phrase[] fill = new Phrase[n];
    Phrase[] back = new Phrase[n];
    boolean two = states.size() == 2;
    for (int t = 0; t < n; t++) {
      Row low = row(t, 0);
      boolean share = lowest().get(t).marginShare().isPresent();
      flow[t] = Answer.filled(low, two ? "{flow_L_min!} / {full_flow_L_min}" : "{flow_L_min}");
      margin[t] = Answer.filled(low, share ? "{margin_m}, {margin_pct}" : "{margin_m}");
      fill[t] =
          Answer.filled(
              low, lowest().get(t).fillTime().isPresent() ? "after {fill_time_s}" : "never");
      back[t] = Answer.filled(low, "{drain_back_L}");
    }
    answer.figure(two ? "flow, low / full" : "flow", flow);
    answer.figure("margin over the lift", margin);
    answer.figure("water to the top", fill);
    if (hasFilm()) {
      filmFigures();
    }
    answer.figure("drains back", back);
    valves();
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
      Row low = row(t, 0);
      Cap cap = highest().get(t).cap();
      film[t] =
          lowest().get(t).film() == null
              ? Phrase.of("-")
              : Answer.filled(low, "{film_mm}, {film_speed_m_s}, down in {transit_s}");
      push[t] =
          cap == null
              ? Phrase.of("-")
              : Answer.filled(
                  row(t, states.size() - 1),
                  cap.liftsAgainstGrip()
                      ? "{push_N}, held by {hold_down_N}: lifts"
                      : "{push_N}, held by {hold_down_N}");
    }
    answer.figure("film", film);
    answer.figure("push on the cap", push);
    WallWords.write(answer, way, lowest());
  }

  private void valves() {
    Double wanted = call.above0("--throttle-to");
    Valves valves = Valves.of(way, way.flows(levels[0]), wanted);
    if (!valves.areWanted() || dryTowers() != null && !valves.allReachable()) {
      return;
    }
    Phrase[] cells = new Phrase[way.towers()];
    for (int t = 0; t < cells.length; t++) {
      cells[t] =
          Answer.filled(
              row(t, 0),
              valves.of(t).reachable()
                  ? "{jug_L} in {litre_in_s}, {valve_head_m} held back"
                  : "leave it open: {wanted_L_min} is more than it gets");
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

  private void minds() {
    ManifoldFlow low = way.flows(levels[0]);
    if (way.believed().measured() == null) {
      guess();
    }
    if (low.status() == OperatingPoint.Status.RUN_OUT
        || way.flows(levels[levels.length - 1]).status() == OperatingPoint.Status.RUN_OUT) {
      answer.mind(
          "run-out",
          "at or past the end of the printed curve; throttle it, or it runs there where nobody measured.");
    }
    for (int t = 0; t < way.towers(); t++) {
      TowerAt tower = lowest().get(t);
      if (tower.reaches()
          && tower.marginShare().isPresent()
          && tower.marginShare().getAsDouble() < OperatingPoint.USUAL_MARGIN) {
        answer.mind(
            "thin-margin",
            row(t, 0).with(Row.aside(LEAST_MARGIN).set(LEAST_MARGIN, OperatingPoint.USUAL_MARGIN)),
            "{name}: under {least_margin_pct} of margin the pump's wear and a little slime decide.");
      }
      Film film = tower.film();
      if (film != null && film.indicationOnly()) {
        answer.mind(
            "film-range",
            "over a film Reynolds number of 1500 its thickness and speed are an indication only.");
      } else if (film != null && film.rivuletsLikely()) {
        answer.mind(
            "rivulets",
            row(t, 0),
            "{name}: so little water runs in rivulets on clean plastic; about {closed_film_L_min:up} close the film.");
      }
    }
    if (call.hasPlan() && !way.holdUp().isKnown() && hasFilm()) {
      answer.mind(
          "hold-up",
          "what drains back is riser and computed film; roots and pots hold more. Pour in, stop, read and see: hold_up.");
    }
    whatIf();
    for (int t = 0; t < way.towers(); t++) {
      if (lowest().get(t).riser().shorterThanLift()) {
        answer.mind(
            "short-pipe",
            way.name(t) + ": the pipe is shorter than the height it must climb: measure again.");
      }
    }
    if (way.checkValve()) {
      answer.mind(
          "check-valve",
          "a check valve leaks in time: look whether the tank takes the riser without it, too.");
    }
  }

  /** The share that a bucket found stays with the pump, and a dry intake pumps nothing. */
  private void whatIf() {
    boolean changed = call.has("--lift") || call.has("--bore") || call.has("--length");
    if (call.hasPlan()
        && way.believed().kind() == Derate.Kind.MEASURED
        && (changed || !call.texts("--set").isEmpty())) {
      answer.mind(
          "measured-what-if",
          Phrase.of("the ")
              .add(way.derate(), Show.PERCENT.digits(3))
              .add(
                  " that pump.measured found on the tower as written is kept for this what-if; measure again once it is built."));
    }
    Double intake = call.plan().section("tank").maybe("intake");
    if (call.has("--level") && intake != null && levels[0] < intake) {
      answer.mind(
          "dry-intake",
          Phrase.of("the intake lies at ")
              .add(intake, Show.MM)
              .add(": at this level the pump draws air and runs dry, whatever its curve says."));
    }
  }

  private void guess() {
    Phrase words =
        Phrase.of().add(way.derate(), Show.PERCENT).add(" of the printed head is a guess; ");
    if (way.derate() > PumpCurve.USUAL_DERATE_NEW) {
      words.add("70 to 85 % is usual.");
    }
    if (way.believed().kind() != Derate.Kind.NOT_NAMED) {
      words.add(way.derate() > PumpCurve.USUAL_DERATE_NEW ? " At 70 %: " : "at 70 %: ");
      flows(words, lowest(), way.flowsAt(PumpCurve.USUAL_DERATE_WORN, levels[0]));
      words.add(".");
    }
    answer.mind("derate-guess", words);
  }

  private void next() {
    if (dryTowers() != null && way.towers() > 1 && call.hasPlan() && !call.has("--lift")) {
      answer.next(call.again("pump") + " --balance equal   to see whether valves help");
    }
    if (call.hasPlan()) {
      answer.next(
          way.believed().kind() == Derate.Kind.MEASURED
              ? "leat check " + call.planName()
              : "fill a bucket from all outlets, stop the watch, then:  leat pump --plan "
                  + call.planName()
                  + " --measured \"10 L in 65 s\"");
    } else {
      answer.next(
          "fill a bucket, stop the watch, then the same line with  --measured \"10 L in 65 s\"");
    }
  }
}
