package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.cli.RowErrors;
import leat.level.Motion;
import leat.level.Pours;
import leat.level.SenderFit;
import leat.level.Tank;
import leat.numeric.Impossible;
import leat.plan.Kind;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.system.TankOf;

/** {@code leat level fit}: what a sender really does, from litres poured in and ohms read. */
public final class LevelFitCommand extends Command {
  static final Column EDGE = Column.of("edge_L", "from", Show.L);
  static final Column EDGE_LOW = Column.of("edge_low_L", "not before", Show.L);
  static final Column EDGE_HIGH = Column.of("edge_high_L", "at latest", Show.L);
  static final Column LEVEL = Column.of("level_mm", "level", Show.MM);
  static final Column OHM = Column.of("ohm", "reads", LevelColumns.OHM);
  static final Column READINGS = Column.plain("readings", "readings");
  static final Column SPREAD = Column.of("spread_ohm", "spread", Show.OHM.digits(2));
  static final Column SUSPECT = Column.plain("suspect", "suspect");

  private static final Flag[] FLAGS = {
    Flag.on("--cumulative", "the column is what was poured in each time, to be summed up"),
    Flag.on("--totals", "the column is what the tank holds, however it looks (default)"),
    Flag.of(
            "--start",
            "VOLUME",
            Kind.quantity(Dimension.VOLUME),
            "2 L",
            "litres in the tank before the first pour, with --cumulative")
        .belongsTo("--cumulative"),
    Flag.of(
        "--litres-column",
        "NAME",
        Kind.TEXT,
        "poured",
        "column of the litres; one that ends in gal, qt or mL is read in that"),
    Flag.of("--ohm-column", "NAME", Kind.TEXT, "meter", "column of the ohms"),
    Flag.of(
        "--motion",
        "WAY",
        Kind.choice("rising", "falling"),
        "falling",
        "rising when poured in (unless said), falling when drained"),
    Flag.of(
        "--drained", "FILE", Kind.TEXT, "drained.csv", "pairs while draining, for the hysteresis"),
    Flag.of(
        "--same-within",
        "OHM",
        Kind.quantity(Dimension.RESISTANCE),
        "5 ohm",
        "readings nearer than this are one step; half the smallest gap"),
    Flag.of("--leave-out", "ROW", Kind.COUNT, "24", "leaves a row out, as a slip").repeatable(),
    Flag.on("--paste", "prints the sender section alone, to paste or redirect into the plan"),
  };

  @Override
  public String name() {
    return "level fit";
  }

  @Override
  public String operands() {
    return "PAIRS.csv";
  }

  @Override
  public Flag[] flags() {
    return FLAGS;
  }

  @Override
  public Answer answer(Call call) {
    check(call);
    boolean falling = "falling".equals(call.value("--motion"));
    PouredPairs pairs = new PouredPairs(call, call.operands().get(0), falling);
    SenderFit fit = fit(call, pairs, falling ? Motion.FALLING : Motion.RISING);
    Section section = call.plan().section("tank");
    Tank tank = TankOf.isKnown(section) ? TankOf.of(section, call.taken()) : null;
    SenderFit drained = null;
    if (call.has("--drained")) {
      drained = fit(call, new PouredPairs(call, call.text("--drained"), true), Motion.FALLING);
    }
    Double hysteresis = drained == null ? null : hysteresis(pairs, fit, drained, tank);
    FittedSender fitted = new FittedSender(call, fit, tank, hysteresis);
    if (call.has("--paste")) {
      return Answer.verbatim(fitted.paste());
    }
    LevelFitWords words = new LevelFitWords(call, pairs, fit, tank, hysteresis);
    return fitted.intoPlan(answer(words, fit, tank));
  }

  private void check(Call call) {
    if (call.operands().size() != 1) {
      throw new Refused(LevelErrors.noPours(this));
    }
    if (call.has("--cumulative") && call.has("--totals")) {
      throw new Refused(CommandErrors.notBoth(this, "--cumulative", "--totals"));
    }
  }

  private static Double hysteresis(PouredPairs pairs, SenderFit fit, SenderFit drained, Tank tank) {
    try {
      return SenderFit.hysteresis(fit, drained, tank);
    } catch (Impossible e) {
      throw new Refused(RowErrors.rowsRefused(pairs.name, e.quantity(), e.getMessage()));
    }
  }

  private static SenderFit fit(Call call, PouredPairs pairs, Motion motion) {
    try {
      Pours.Direction way = Pours.direction(pairs.litres, pairs.ohms);
      if (way == Pours.Direction.UNCLEAR) {
        throw new Refused(LevelErrors.noDirection(pairs.name));
      }
      Double within = call.above0("--same-within");
      double same = within != null ? within : Pours.suggestedSameWithin(pairs.litres, pairs.ohms);
      SenderFit fit =
          SenderFit.of(pairs.litres, pairs.ohms, motion, way == Pours.Direction.FALLS, same);
      if (fit.edges().isEmpty()) {
        throw new Refused(LevelErrors.noStep(pairs.name));
      }
      return fit;
    } catch (Impossible e) {
      throw new Refused(RowErrors.rowsRefused(pairs.name, e.quantity(), e.getMessage()));
    }
  }

  private static Answer answer(LevelFitWords words, SenderFit fit, Tank tank) {
    Answer answer =
        new Answer(EDGE, EDGE_LOW, EDGE_HIGH, LEVEL, OHM, READINGS, SPREAD, SUSPECT).asList();
    for (int i = 0; i < fit.steps().size(); i++) {
      fill(answer.row(), fit, i, tank);
    }
    words.say(answer);
    if (tank == null) {
      answer.table(EDGE, EDGE_LOW, EDGE_HIGH, OHM, READINGS, SPREAD);
    } else {
      answer.table(EDGE, EDGE_LOW, EDGE_HIGH, LEVEL, OHM, READINGS, SPREAD);
    }
    String again = words.again();
    if (again != null) {
      answer.next(again);
    }
    return answer;
  }

  private static void fill(Row row, SenderFit fit, int i, Tank tank) {
    SenderFit.Step step = fit.steps().get(i);
    row.set(OHM, step.ohm())
        .set(READINGS, step.readings())
        .set(SPREAD, step.spread())
        .set(SUSPECT, step.suspect());
    if (i > 0) {
      SenderFit.Edge edge = fit.edges().get(i - 1);
      row.set(EDGE, edge.middle()).set(EDGE_LOW, edge.low()).set(EDGE_HIGH, edge.high());
      if (tank != null && edge.middle() <= tank.capacity()) {
        row.set(LEVEL, tank.level(edge.middle()));
      }
    }
  }
}
