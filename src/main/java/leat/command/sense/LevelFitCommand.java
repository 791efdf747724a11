package leat.command.sense;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.cli.RowErrors;
import leat.cli.RowTable;
import leat.level.Motion;
import leat.level.Pours;
import leat.level.SenderFit;
import leat.level.Tank;
import leat.level.TradeRange;
import leat.numeric.Impossible;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.system.SenderOf;
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
    return new Flag[] {
      Flag.on("--cumulative", "the litres are additions, to be summed up"),
      Flag.of(
          "--start",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "2 L",
          "litres in the tank before the first pour, with --cumulative"),
      Flag.of("--litres-column", "NAME", Kind.TEXT, "poured", "column of the litres"),
      Flag.of("--ohm-column", "NAME", Kind.TEXT, "meter", "column of the ohms"),
      Flag.of(
          "--motion",
          "WAY",
          Kind.choice("rising", "falling"),
          "falling",
          "rising when poured in (unless said), falling when drained"),
      Flag.of(
          "--drained",
          "FILE",
          Kind.TEXT,
          "drained.csv",
          "pairs while draining, for the hysteresis"),
      Flag.of(
          "--same-within",
          "OHM",
          Kind.quantity(Dimension.RESISTANCE),
          "5 ohm",
          "readings nearer than this are one step; half the smallest gap"),
      Flag.of("--leave-out", "ROW", Kind.COUNT, "24", "leaves a row out, as a slip").repeatable(),
      Flag.on("--paste", "prints the sender section alone, to paste or redirect into the plan"),
    };
  }

  /** Pairs of a file, in the order of the motion. */
  private static final class Pairs {
    final String name;
    double[] litres;
    double[] ohms;
    int[] rows;
    int left;

    Pairs(Call call, String file, boolean falling) {
      RowTable table = new RowTable(call, file);
      name = table.name();
      int litresAt =
          call.has("--litres-column")
              ? table.column(call.text("--litres-column"))
              : table.column("litres", "liters", "volume_L", "L", "poured_L", "added_L");
      int ohmAt =
          call.has("--ohm-column")
              ? table.column(call.text("--ohm-column"))
              : table.column("ohm", "ohms", "reading_ohm", "reading");
      double[] poured = new double[table.size()];
      double[] read = new double[table.size()];
      for (int i = 0; i < table.size(); i++) {
        String cell = table.cell(i, litresAt);
        if (cell.isEmpty() && !call.has("--cumulative")) {
          read[i] = Double.NaN;
          continue;
        }
        poured[i] = cell.isEmpty() ? 0 : table.quantity(i, litresAt, Units.L);
        if (poured[i] < 0 && !call.has("--cumulative")) {
          throw table.bad(i, litresAt, "litres in the tank cannot be negative");
        }
        try {
          read[i] = SenderReading.ohms(table.cell(i, ohmAt));
        } catch (leat.quantity.Unreadable e) {
          throw table.bad(i, ohmAt, e.message());
        }
      }
      if (call.has("--cumulative")) {
        Double start = call.from0("--start");
        poured = totals(table, start == null ? 0 : start, poured);
      }
      leaveOut(call, table, read);
      keep(poured, read, falling);
    }

    private static void leaveOut(Call call, RowTable table, double[] read) {
      List<Object> rows = call.values("--leave-out");
      for (int i = 0; i < rows.size(); i++) {
        int row = (Integer) rows.get(i);
        if (row < 1 || row > read.length) {
          throw new Refused(LevelErrors.noRow(table.name(), row, read.length));
        }
        read[row - 1] = Double.NaN;
      }
    }

    private static double[] totals(RowTable table, double start, double[] poured) {
      try {
        return Pours.runningTotals(start, poured);
      } catch (Impossible e) {
        throw table.bad(e);
      }
    }

    private void keep(double[] poured, double[] read, boolean falling) {
      int n = 0;
      for (int i = 0; i < read.length; i++) {
        n += Math.abs(read[i]) < Double.POSITIVE_INFINITY ? 1 : 0;
      }
      left = read.length - n;
      double[] volumes = new double[n];
      double[] values = new double[n];
      int[] at = new int[n];
      int k = 0;
      for (int i = 0; i < read.length; i++) {
        if (Math.abs(read[i]) < Double.POSITIVE_INFINITY) {
          volumes[k] = poured[i];
          values[k] = read[i];
          at[k++] = i + 1;
        }
      }
      int[] order = Pours.order(volumes);
      litres = new double[n];
      ohms = new double[n];
      rows = new int[n];
      for (int i = 0; i < n; i++) {
        int to = falling ? n - 1 - i : i;
        litres[to] = volumes[order[i]];
        ohms[to] = values[order[i]];
        rows[to] = at[order[i]];
      }
    }
  }

  @Override
  public Answer answer(Call call) {
    if (call.operands().size() != 1) {
      throw new Refused(LevelErrors.noPours(this));
    }
    boolean falling = "falling".equals(call.value("--motion"));
    Pairs pairs = new Pairs(call, call.operands().get(0), falling);
    SenderFit fit = fit(call, pairs, falling ? Motion.FALLING : Motion.RISING);
    Section section = call.plan().section("tank");
    Tank tank = TankOf.isKnown(section) ? TankOf.of(section) : null;
    SenderFit drained = null;
    if (call.has("--drained")) {
      drained = fit(call, new Pairs(call, call.text("--drained"), true), Motion.FALLING);
    }
    Double hysteresis = drained == null ? null : hysteresis(pairs, fit, drained, tank);
    String paste = paste(fit, tank, hysteresis);
    if (call.has("--paste")) {
      return Answer.verbatim(paste);
    }
    return answer(call, pairs, fit, tank, hysteresis, paste);
  }

  private static Double hysteresis(Pairs pairs, SenderFit fit, SenderFit drained, Tank tank) {
    try {
      return SenderFit.hysteresis(fit, drained, tank);
    } catch (Impossible e) {
      throw new Refused(RowErrors.rowsRefused(pairs.name, e.quantity(), e.getMessage()));
    }
  }

  private static SenderFit fit(Call call, Pairs pairs, Motion motion) {
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

  private Answer answer(
      Call call, Pairs pairs, SenderFit fit, Tank tank, Double hysteresis, String paste) {
    Answer answer =
        new Answer(EDGE, EDGE_LOW, EDGE_HIGH, LEVEL, OHM, READINGS, SPREAD, SUSPECT).asList();
    for (int i = 0; i < fit.steps().size(); i++) {
      SenderFit.Step step = fit.steps().get(i);
      Row row =
          answer
              .row()
              .set(OHM, step.ohm())
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
    sentence(answer, fit);
    figures(answer, fit, hysteresis, tank);
    if (tank == null) {
      answer.table(EDGE, EDGE_LOW, EDGE_HIGH, OHM, READINGS, SPREAD);
    } else {
      answer.table(EDGE, EDGE_LOW, EDGE_HIGH, LEVEL, OHM, READINGS, SPREAD);
    }
    if (!call.has("--same-within")) {
      answer.taken(Phrase.of("one step within ").add(fit.sameWithin(), Show.OHM));
    }
    minds(call, answer, pairs, fit, tank);
    working(answer, fit);
    StringBuilder again = new StringBuilder();
    for (int s = 0; s < fit.steps().size(); s++) {
      if (fit.steps().get(s).suspect()) {
        int row = pairs.rows[Pours.order(pairs.litres)[fit.furthest(s)]];
        again.append(" --leave-out ").append(row);
      }
    }
    if (again.length() > 0) {
      answer.next(
          "leat level fit " + call.operands().get(0) + again + "   without what looks wrong");
    }
    return answer.next("paste into the plan:\n" + paste.stripTrailing());
  }

  private static void sentence(Answer answer, SenderFit fit) {
    double below = fit.below();
    answer.sentence(
        Phrase.of("The sender has ")
            .count(fit.steps().size())
            .add(" steps and ")
            .add(fit.falls() ? "falls" : "rises")
            .add(" as the tank fills, from ")
            .addBare(below, LevelColumns.OHM)
            .add(" to ")
            .add(fit.steps().get(fit.steps().size() - 1).ohm(), LevelColumns.OHM)
            .add("; each edge is known to ")
            .add(fit.edgeUncertainty(), Show.L.digits(2))
            .add(" or better."));
  }

  private static void figures(Answer answer, SenderFit fit, Double hysteresis, Tank tank) {
    answer.figure(
        "readings",
        Phrase.of().count(fit.raw().length),
        Phrase.of()
            .count(fit.orderViolations())
            .add(" lie a little the wrong way from the one before: scatter"));
    answer.figure(
        "off their step by",
        Phrase.of(fit.stepRms(), Show.OHM.digits(2)),
        Phrase.of("at most ").add(fit.stepMax(), Show.OHM.digits(2)));
    if (hysteresis != null) {
      answer.figure("hysteresis", Phrase.of(hysteresis, tank == null ? Show.L : Show.MM.digits(2)));
    }
  }

  private static void minds(Call call, Answer answer, Pairs pairs, SenderFit fit, Tank tank) {
    if (pairs.left > 0) {
      answer.mind(
          "left-out",
          Phrase.of()
              .count(pairs.left)
              .add(pairs.left == 1 ? " row is" : " rows are")
              .add(" left out: open, empty, or named by --leave-out."));
    }
    suspects(answer, pairs, fit);
    if (fit.seenOnce() > 0) {
      answer.mind(
          "coarse",
          Phrase.of()
              .count(fit.seenOnce())
              .add(fit.seenOnce() == 1 ? " step was" : " steps were")
              .add(
                  " seen by one reading only: smaller pours may find more; the sender is at least this fine."));
    }
    TradeRange backwards = TradeRange.reversed(fit.below(), last(fit));
    if (backwards != null && TradeRange.like(fit.below(), last(fit)) == null) {
      answer.mind(
          "backwards",
          "the range is one of the trade turned round ("
              + backwards.word()
              + "): a gauge made for it reads backwards.");
    }
    if (fit.motion() == Motion.FALLING) {
      answer.mind(
          "falling-edges",
          "the plan wants edges while the level rises; these are the falling ones. Pour in, and give this file as --drained.");
    }
    if (tank != null && fit.volume()[fit.volume().length - 1] > tank.capacity()) {
      answer.mind(
          "over-the-rim",
          Phrase.of("more was poured in than the plan's tank holds, ")
              .add(tank.capacity(), Show.L)
              .add(": measure the tank again."));
    }
    planAgrees(call, answer, fit);
  }

  private static double last(SenderFit fit) {
    return fit.steps().get(fit.steps().size() - 1).ohm();
  }

  private static void planAgrees(Call call, Answer answer, SenderFit fit) {
    Plan plan = call.plan();
    if (SenderOf.isKnown(plan.section("sender"))
        && SenderOf.staircase(plan).falls() != fit.falls()) {
      answer.mind(
          "other-way",
          "the plan's sender goes the other way: another sender, or litres and ohms of another tank.");
    }
  }

  /** Names the steps that spread too far, with the row that lies furthest off. */
  private static void suspects(Answer answer, Pairs pairs, SenderFit fit) {
    int[] order = Pours.order(pairs.litres);
    for (int s = 0; s < fit.steps().size(); s++) {
      SenderFit.Step step = fit.steps().get(s);
      if (!step.suspect()) {
        continue;
      }
      int worst = fit.furthest(s);
      answer.mind(
          "suspect",
          Phrase.of("the step of ")
              .add(step.ohm(), LevelColumns.OHM)
              .add(" spreads over ")
              .add(step.spread(), Show.OHM)
              .add("; row ")
              .count(pairs.rows[order[worst]])
              .add(", ")
              .add(fit.raw()[worst], LevelColumns.OHM)
              .add(" at ")
              .add(fit.volume()[worst], Show.L)
              .add(
                  ", lies furthest off: a splash or a slip. Pour those litres again, or leave it out."));
    }
  }

  private static void working(Answer answer, SenderFit fit) {
    answer.working(
        Working.of(
            "scatter about the monotone curve",
            "least squares of ohms that only "
                + (fit.falls() ? "fall" : "rise")
                + ", neighbours out of order pooled",
            Phrase.of().count(fit.raw().length).add(" readings"),
            fit.isotonicRms(),
            Show.OHM.digits(3),
            "one motion, waves settled",
            "pool adjacent violators, Barlow and others 1972"));
  }

  private static String paste(SenderFit fit, Tank tank, Double hysteresis) {
    StringBuilder out = new StringBuilder("sender:\n  edges: [");
    double[] at = fit.edgeVolumes();
    double[] ohms = fit.edgeOhms();
    for (int i = 0; i < at.length; i++) {
      out.append(i == 0 ? "" : i % 5 == 0 ? ",\n          " : ", ");
      out.append(NumberText.atMost(Units.L.fromBase(at[i]), 2)).append(" L = ");
      out.append(NumberText.atMost(ohms[i], 1)).append(" ohm");
    }
    out.append("]\n  below: ").append(NumberText.atMost(fit.below(), 1)).append(" ohm\n");
    if (hysteresis != null && tank != null) {
      out.append("  hysteresis: ")
          .append(NumberText.atMost(Units.MM.fromBase(hysteresis), 1))
          .append(" mm\n");
    } else if (hysteresis != null) {
      out.append("  hysteresis_volume: ")
          .append(NumberText.atMost(Units.L.fromBase(hysteresis), 2))
          .append(" L\n");
    }
    out.append("  edge_error: ")
        .append(NumberText.atMost(Units.L.fromBase(fit.edgeUncertainty()), 2));
    out.append(" L                 # half a pour\n");
    out.append("  tolerance: 0 %                     # fitted: each step as it is\n");
    out.append("  reading: ").append(NumberText.atMost(fit.readingTolerance(), 1));
    out.append(" ohm\n");
    out.append("  lead: 0 ohm                        # it is in the fitted readings\n");
    return out.toString();
  }
}
