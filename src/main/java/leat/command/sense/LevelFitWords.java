package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.ShellWord;
import leat.level.Motion;
import leat.level.Pours;
import leat.level.SenderFit;
import leat.level.Tank;
import leat.level.TradeRange;
import leat.plan.Plan;
import leat.system.SenderOf;

/** What poured litres tell of a sender, in words. */
final class LevelFitWords {
  private static final Show OHM_2 = Show.OHM.digits(2);
  private static final Column STEPS = Column.plain("steps", "steps");
  private static final Column FIRST = Column.of("first_ohm", "lowest", LevelColumns.OHM);
  private static final Column LAST = Column.of("last_ohm", "highest", LevelColumns.OHM);
  private static final Column EDGE = Column.of("edge_within_L", "edges", Show.L.digits(2));
  private static final Column READINGS = Column.plain("readings", "readings");
  private static final Column DISORDER = Column.plain("out_of_order", "the wrong way");
  private static final Column RMS = Column.of("off_step_ohm", "off their step by", OHM_2);
  private static final Column MOST = Column.of("off_step_most_ohm", "at most", OHM_2);
  private static final Column SAME = Column.of("same_within_ohm", "one step within", Show.OHM);
  private static final Column LEFT = Column.plain("left_out", "left out");
  private static final Column ONCE = Column.plain("seen_once", "seen once");
  private static final Column RANGE = Column.plain("range", "range");
  private static final Column HOLDS = Column.of("tank_holds_L", "tank holds", Show.L);
  private static final Column HYSTERESIS =
      Column.of("hysteresis_mm", "hysteresis", Show.MM.digits(2));
  private static final Column HYSTERESIS_L = Column.of("hysteresis_L", "hysteresis", Show.L);
  private static final Column STEP = Column.of("step_ohm", "step", LevelColumns.OHM);
  private static final Column SPREAD = Column.of("spread_ohm", "spread", Show.OHM);
  private static final Column ROW = Column.plain("row", "row");
  private static final Column READ = Column.of("read_ohm", "read", LevelColumns.OHM);
  private static final Column AT = Column.of("at_L", "at", Show.L);

  private static final Column[] COLUMNS = {
    STEPS,
    FIRST,
    LAST,
    EDGE,
    READINGS,
    DISORDER,
    RMS,
    MOST,
    SAME,
    LEFT,
    ONCE,
    RANGE,
    HOLDS,
    HYSTERESIS,
    HYSTERESIS_L
  };

  private static final String[] KEPT = {
    "--cumulative",
    "--totals",
    "--start",
    "--litres-column",
    "--ohm-column",
    "--motion",
    "--drained",
    "--same-within",
    "--leave-out"
  };

  private final Call call;
  private final PouredPairs pairs;
  private final SenderFit fit;
  private final Tank tank;
  private final Double hysteresis;
  private final TradeRange backwards;
  private final Row row;

  LevelFitWords(Call call, PouredPairs pairs, SenderFit fit, Tank tank, Double hysteresis) {
    this.call = call;
    this.pairs = pairs;
    this.fit = fit;
    this.tank = tank;
    this.hysteresis = hysteresis;
    this.backwards =
        TradeRange.like(fit.below(), last()) == null
            ? TradeRange.reversed(fit.below(), last())
            : null;
    this.row = row();
  }

  private double last() {
    return fit.steps().get(fit.steps().size() - 1).ohm();
  }

  private Row row() {
    return Row.aside(COLUMNS)
        .set(STEPS, fit.steps().size())
        .set(FIRST, fit.below())
        .set(LAST, last())
        .set(EDGE, fit.edgeUncertainty())
        .set(READINGS, fit.raw().length)
        .set(DISORDER, fit.orderViolations())
        .set(RMS, fit.stepRms())
        .set(MOST, fit.stepMax())
        .set(SAME, fit.sameWithin())
        .set(LEFT, pairs.left)
        .set(ONCE, fit.seenOnce())
        .set(RANGE, backwards == null ? null : backwards.word())
        .set(HOLDS, tank == null ? null : Double.valueOf(tank.capacity()))
        .set(HYSTERESIS, tank == null ? null : hysteresis)
        .set(HYSTERESIS_L, tank == null ? hysteresis : null);
  }

  void say(Answer answer) {
    answer.sentence(row, sentence() + taken());
    answer.figure(
        "readings",
        row,
        "{readings}",
        "{out_of_order} lie a little the wrong way from the one before: scatter");
    answer.figure("off their step by", row, "{off_step_ohm}", "at most {off_step_most_ohm}");
    if (hysteresis != null) {
      answer.figure("hysteresis", row, tank == null ? "{hysteresis_L}" : "{hysteresis_mm}");
    }
    if (!call.has("--same-within")) {
      answer.taken(row, "one step within {same_within_ohm}");
    }
    minds(answer);
    working(answer);
  }

  private String sentence() {
    return fit.falls()
        ? "The sender has {steps} steps and falls as the tank fills, from {first_ohm!} to {last_ohm}; each edge is known to {edge_within_L} or better."
        : "The sender has {steps} steps and rises as the tank fills, from {first_ohm!} to {last_ohm}; each edge is known to {edge_within_L} or better.";
  }

  private String taken() {
    return call.has("--cumulative")
        ? " The column was summed up: what was poured in each time."
        : " The column was taken as what the tank holds.";
  }

  private void minds(Answer answer) {
    leftOut(answer);
    suspects(answer);
    if (fit.seenOnce() > 0) {
      answer.mind(
          "coarse",
          row,
          fit.seenOnce() == 1
              ? "1 step was seen by one reading only: smaller pours may find more; the sender is at least this fine."
              : "{seen_once} steps were seen by one reading only: smaller pours may find more; the sender is at least this fine.");
    }
    otherTank(answer);
    planAgrees(answer);
  }

  private void leftOut(Answer answer) {
    if (pairs.left > 0) {
      answer.mind(
          "left-out",
          row,
          pairs.left == 1
              ? "1 row is left out: open, empty, or named by --leave-out."
              : "{left_out} rows are left out: open, empty, or named by --leave-out.");
    }
  }

  private void otherTank(Answer answer) {
    if (backwards != null) {
      answer.mind(
          "backwards",
          row,
          "this sender reads the usual {range} ohm the other way round: a gauge made for that range shows full as empty.");
    }
    if (fit.motion() == Motion.FALLING) {
      answer.mind(
          "falling-edges",
          "the plan wants edges while the level rises; these are the falling ones. Pour in, and give this file as --drained.");
    }
    if (tank != null && fit.volume()[fit.volume().length - 1] > tank.capacity()) {
      answer.mind(
          "over-the-rim",
          row,
          "more was poured in than the plan's tank holds, {tank_holds_L}: measure the tank again.");
    }
  }

  private void planAgrees(Answer answer) {
    Plan plan = call.plan();
    if (SenderOf.isKnown(plan.section("sender"))
        && SenderOf.staircase(plan, call.taken()).falls() != fit.falls()) {
      answer.mind(
          "other-way",
          "the plan's sender goes the other way: another sender, or pours of another tank.");
    }
  }

  /** Names the steps that spread too far, with the row that lies furthest off. */
  private void suspects(Answer answer) {
    for (int s = 0; s < fit.steps().size(); s++) {
      SenderFit.Step step = fit.steps().get(s);
      if (step.suspect()) {
        int worst = fit.furthest(s);
        answer.mind(
            "suspect",
            Row.aside(STEP, SPREAD, ROW, READ, AT)
                .set(STEP, step.ohm())
                .set(SPREAD, step.spread())
                .set(ROW, furthestRow(s))
                .set(READ, fit.raw()[worst])
                .set(AT, fit.volume()[worst]),
            "the step of {step_ohm} spreads over {spread_ohm}; row {row}, {read_ohm} at {at_L}, lies furthest off: a splash or a slip. Pour again there, or leave it out.");
      }
    }
  }

  private int furthestRow(int step) {
    return pairs.rows[Pours.order(pairs.litres)[fit.furthest(step)]];
  }

  /** The same call without the rows that look wrong; null when none does. */
  String again() {
    StringBuilder out = new StringBuilder();
    for (int s = 0; s < fit.steps().size(); s++) {
      if (fit.steps().get(s).suspect()) {
        out.append(" --leave-out ").append(furthestRow(s));
      }
    }
    if (out.length() == 0) {
      return null;
    }
    String[] words = call.again("level fit", KEPT).split("leat level fit", 2);
    return "leat level fit "
        + ShellWord.quoted(call.operands().get(0))
        + words[1]
        + out
        + "   without what looks wrong";
  }

  private void working(Answer answer) {
    answer.working(
        Working.of(
            "scatter about the monotone curve",
            "least squares of ohms that only "
                + (fit.falls() ? "fall" : "rise")
                + ", neighbours out of order pooled",
            Answer.filled(row, "{readings} readings"),
            fit.isotonicRms(),
            Show.OHM.digits(3),
            "one motion, waves settled",
            "pool adjacent violators, Barlow and others 1972"));
  }
}
