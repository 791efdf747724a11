package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.hydraulics.Derate;
import leat.hydraulics.Film;
import leat.hydraulics.OperatingPoint;
import leat.hydraulics.PumpCurve;
import leat.system.TowerAt;
import leat.system.Waterway;

/** Doubts of {@code leat pump}, and what to do next. */
final class PumpMinds {
  private static final Column NAME = Column.plain("name", "name");
  private static final Column LEAST_MARGIN = Column.of("least_margin_pct", "margin", Show.PERCENT);
  private static final Column CLOSED_FILM =
      Column.of("closed_film_L_min", "closes the film", Show.L_MIN);
  private static final Column SHARE =
      Column.of("derate_pct", "share of the printed head", Show.PERCENT);
  private static final Column INTAKE = Column.of("intake_mm", "intake", Show.MM);

  /** What a call was about: the pump, the pipe and the place of the bucket. */
  private static final String[] KEPT = {
    "--shutoff-head",
    "--max-flow",
    "--point",
    "--speed",
    "--lift",
    "--level",
    "--bore",
    "--length",
    "--k",
    "--roughness",
    "--ridges",
    "--temperature"
  };

  private final Call call;
  private final Answer answer;
  private final Waterway way;
  private final List<List<TowerAt>> states;
  private final double[] levels;
  private final boolean hasFilm;

  PumpMinds(
      Call call,
      Answer answer,
      Waterway way,
      List<List<TowerAt>> states,
      double[] levels,
      boolean hasFilm) {
    this.call = call;
    this.answer = answer;
    this.way = way;
    this.states = states;
    this.levels = levels;
    this.hasFilm = hasFilm;
  }

  void write(boolean dry) {
    if (way.believed().measured() == null) {
      guess();
    }
    runOut();
    for (int t = 0; t < way.towers(); t++) {
      tower(states.get(0).get(t));
    }
    if (call.hasPlan() && !way.holdUp().isKnown() && hasFilm) {
      answer.mind(
          "hold-up",
          "what drains back is riser and computed film; roots and pots hold more. Pour in, stop, read and see: hold_up.");
    }
    whatIf();
    dryIntake();
    pipes();
    next(dry);
  }

  private void runOut() {
    if (way.flows(levels[0]).status() == OperatingPoint.Status.RUN_OUT
        || way.flows(levels[levels.length - 1]).status() == OperatingPoint.Status.RUN_OUT) {
      answer.mind(
          "run-out",
          "at or past the end of the printed curve; throttle it, or it runs there where nobody measured.");
    }
  }

  private void tower(TowerAt tower) {
    Film film = tower.film();
    Row row =
        Row.aside(NAME, LEAST_MARGIN, CLOSED_FILM)
            .set(NAME, tower.name())
            .set(LEAST_MARGIN, OperatingPoint.USUAL_MARGIN)
            .set(CLOSED_FILM, film == null ? null : Double.valueOf(film.flowForClosedFilm()));
    if (tower.reaches()
        && tower.marginShare().isPresent()
        && tower.marginShare().getAsDouble() < OperatingPoint.USUAL_MARGIN) {
      answer.mind(
          "thin-margin",
          row,
          "{name}: under {least_margin_pct} of margin the pump's wear and a little slime decide.");
    }
    film(row, film);
  }

  private void film(Row row, Film film) {
    if (film != null && film.indicationOnly()) {
      answer.mind(
          "film-range",
          "over a film Reynolds number of 1500 its thickness and speed are an indication only.");
    } else if (film != null && film.rivuletsLikely()) {
      answer.mind(
          "rivulets",
          row,
          "{name}: so little water runs in rivulets on clean plastic; about {closed_film_L_min:up} close the film.");
    }
  }

  /** The share that a bucket found stays with the pump. */
  private void whatIf() {
    boolean changed = call.has("--lift") || call.has("--bore") || call.has("--length");
    if (call.hasPlan()
        && way.believed().kind() == Derate.Kind.MEASURED
        && (changed || !call.texts("--set").isEmpty())) {
      answer.mind(
          "measured-what-if",
          Row.aside(SHARE).set(SHARE, way.derate()),
          "the {derate_pct} that pump.measured found on the tower as written is kept for this what-if; measure again once it is built.");
    }
  }

  private void dryIntake() {
    Double intake = call.plan().section("tank").maybe("intake");
    if (call.has("--level") && intake != null && levels[0] < intake) {
      answer.mind(
          "dry-intake",
          Row.aside(INTAKE).set(INTAKE, intake),
          "the intake lies at {intake_mm}: at this level the pump draws air and runs dry, whatever its curve says.");
    }
  }

  private void pipes() {
    for (int t = 0; t < way.towers(); t++) {
      if (states.get(0).get(t).riser().shorterThanLift()) {
        answer.mind(
            "short-pipe",
            Row.aside(NAME).set(NAME, way.name(t)),
            "{name}: the pipe is shorter than the height it must climb: measure again.");
      }
    }
    if (way.checkValve()) {
      answer.mind(
          "check-valve",
          "a check valve leaks in time: look whether the tank takes the riser without it, too.");
    }
  }

  private void guess() {
    boolean untold = way.believed().kind() == Derate.Kind.NOT_NAMED;
    boolean high = way.derate() > PumpCurve.USUAL_DERATE_NEW;
    Row row = Row.aside(SHARE).set(SHARE, way.derate());
    if (untold || way.derate() == PumpCurve.USUAL_DERATE_WORN) {
      answer.mind(
          "derate-guess", row, "{derate_pct} of the printed head is a guess; 70 to 85 % is usual.");
      return;
    }
    Phrase words =
        Answer.filled(
            row,
            high
                ? "{derate_pct} of the printed head is a guess; 70 to 85 % is usual. At 70 %: "
                : "{derate_pct} of the printed head is a guess; at 70 %: ");
    PumpWords.flows(words, way, states.get(0), way.flowsAt(PumpCurve.USUAL_DERATE_WORN, levels[0]));
    answer.mind("derate-guess", words.add("."));
  }

  private boolean flowsWhenFull() {
    return states.get(states.size() - 1).get(0).reaches();
  }

  private void next(boolean dry) {
    if (dry && way.towers() > 1 && call.hasPlan() && !call.has("--lift")) {
      answer.next(call.again("pump") + " --balance equal   to see whether valves help");
    }
    String again = call.again("pump", KEPT);
    if (dry && way.towers() == 1 && !flowsWhenFull()) {
      answer.next(
          again
              + (call.hasPlan() ? " --needed" : " --needed --throttle-to ...")
              + "   to see which pump would do");
      return;
    }
    String measured =
        again + (call.us() ? " --measured \"1 gal in 25 s\"" : " --measured \"10 L in 65 s\"");
    if (call.hasPlan() && way.believed().kind() == Derate.Kind.MEASURED) {
      answer.next(call.again("check"));
    } else if (way.towers() > 1) {
      answer.next("fill a bucket from all outlets, stop the watch, then:  " + measured);
    } else {
      answer.next("fill a bucket, stop the watch, then:  " + measured);
    }
  }
}
