package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.hydraulics.Cap;
import leat.hydraulics.Derate;
import leat.hydraulics.Film;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.OperatingPoint;
import leat.hydraulics.PumpCurve;
import leat.system.TowerAt;
import leat.system.Valves;
import leat.system.Waterway;

/** Sentence, figures and notes of {@code leat pump}. */
final class PumpWords {
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
      return dry;
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

  private Phrase[] cells(Cell cell) {
    Phrase[] cells = new Phrase[way.towers()];
    for (int t = 0; t < cells.length; t++) {
      cells[t] = cell.of(lowest().get(t), highest().get(t));
    }
    return cells;
  }

  /** One cell of the figures: of a tower at the lowest and the highest level. */
  private interface Cell {
    Phrase of(TowerAt low, TowerAt high);
  }

  private void figures() {
    final boolean two = states.size() == 2;
    answer.figure(
        two ? "flow, low / full" : "flow",
        cells(
            new Cell() {
              @Override
              public Phrase of(TowerAt low, TowerAt high) {
                return two
                    ? Phrase.of()
                        .addBare(low.flow(), Show.L_MIN)
                        .add(" / ")
                        .add(high.flow(), Show.L_MIN)
                    : Phrase.of(low.flow(), Show.L_MIN);
              }
            }));
    answer.figure(
        "margin over the lift",
        cells(
            new Cell() {
              @Override
              public Phrase of(TowerAt low, TowerAt high) {
                Phrase words = Phrase.of(low.margin(), Show.M);
                return low.marginShare().isPresent()
                    ? words.add(", ").add(low.marginShare().getAsDouble(), Show.PERCENT)
                    : words;
              }
            }));
    answer.figure(
        "water to the top",
        cells(
            new Cell() {
              @Override
              public Phrase of(TowerAt low, TowerAt high) {
                return low.fillTime().isPresent()
                    ? Phrase.of("after ").add(low.fillTime().getAsDouble(), Show.S)
                    : Phrase.of("never");
              }
            }));
    if (hasFilm()) {
      filmFigures();
    }
    answer.figure(
        "drains back",
        cells(
            new Cell() {
              @Override
              public Phrase of(TowerAt low, TowerAt high) {
                return Phrase.of(low.drainBack(), Show.L);
              }
            }));
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
    answer.figure(
        "film",
        cells(
            new Cell() {
              @Override
              public Phrase of(TowerAt low, TowerAt high) {
                Film film = low.film();
                return film == null
                    ? Phrase.of("-")
                    : Phrase.of(film.thickness(), Show.MM.digits(2))
                        .add(", ")
                        .add(film.meanSpeed(), Show.M_S.digits(2))
                        .add(", down in ")
                        .add(film.transitTime(), Show.S);
              }
            }));
    answer.figure(
        "push on the cap",
        cells(
            new Cell() {
              @Override
              public Phrase of(TowerAt low, TowerAt high) {
                Cap cap = high.cap();
                return cap == null
                    ? Phrase.of("-")
                    : Phrase.of(cap.jetForce(), Show.N)
                        .add(", held by ")
                        .add(cap.holdDown(), Show.N)
                        .add(cap.liftsAgainstGrip() ? ": lifts" : "");
              }
            }));
  }

  private void valves() {
    if (dryTowers() != null) {
      return;
    }
    Double wanted = call.above0("--throttle-to");
    ManifoldFlow full = way.flows(levels[levels.length - 1]);
    Valves valves = Valves.of(way, full, wanted);
    if (!valves.areWanted()) {
      return;
    }
    Phrase[] cells = new Phrase[way.towers()];
    for (int t = 0; t < cells.length; t++) {
      cells[t] =
          valves.of(t).reachable()
              ? Phrase.of("1 L in ")
                  .add(valves.litreIn(t), Show.S)
                  .add(", ")
                  .add(valves.of(t).valveHead(), Show.M)
                  .add(" held back")
              : Phrase.of("leave it open: ")
                  .add(valves.of(t).wantedFlow(), Show.L_MIN)
                  .add(" is more than it gets");
    }
    answer.figure(levels.length == 2 ? "close the valve, full" : "close the valve to", cells);
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
            Phrase.of(
                way.name(t) + ": under 20 % of margin the pump's wear and a little slime decide."));
      }
      Film film = tower.film();
      if (film != null && film.indicationOnly()) {
        answer.mind(
            "film-range",
            "over a film Reynolds number of 1500 its thickness and speed are an indication only.");
      } else if (film != null && film.rivuletsLikely()) {
        answer.mind(
            "rivulets",
            Phrase.of(way.name(t) + ": so little water runs in rivulets on clean plastic; about ")
                .add(film.flowForClosedFilm(), Show.L_MIN)
                .add(" close the film."));
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
