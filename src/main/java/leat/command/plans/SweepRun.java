package leat.command.plans;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import leat.answer.Column;
import leat.answer.Row;
import leat.check.Rule;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Output;
import leat.cli.Progress;
import leat.cli.RowsOut;
import leat.cli.Signals;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.quantity.NumberText;
import leat.sweep.Front;
import leat.sweep.Grid;
import leat.sweep.Judge;
import leat.sweep.Judged;
import leat.sweep.Line;
import leat.sweep.Measure;
import leat.sweep.Measures;
import leat.sweep.Slice;
import leat.sweep.SweepErrors;
import leat.sweep.Where;

/** One call of sweep: its designs judged in order, kept as far as they are shown. */
final class SweepRun {
  static final Column PASSES = Column.plain("passes", "pass");
  static final Column FAILS = Column.plain("fails", "fail");
  static final Column WARNS = Column.plain("warns", "warn");
  private static final Column UNKNOWNS = Column.plain("unknowns", "unknown");
  static final Column WORST = Column.plain("worst_rule", "worst rule");
  static final Column REFUSED = Column.plain("refused", "cannot be, because");

  final Call call;
  final List<Measure> measures = new ArrayList<>();
  private final List<Where> wheres = new ArrayList<>();
  private final List<Integer> whereAt = new ArrayList<>();
  final Rule[] rules;
  private final Grid grid;
  private final Slice slice;
  private final List<Judge> judges = new ArrayList<>();
  final Column[] keys;
  final Column[] columns;
  int shownMeasures;
  long seen;
  long fine;
  long refused;

  /** Whether the designs must be kept before the first can be written. */
  static boolean wantsAll(Call call) {
    return call.has("--rank") || call.has("--pareto") || call.has("--top");
  }

  SweepRun(Call call, Command command) {
    this.call = call;
    String name = SweepCommand.planName(call, command);
    Plan plan = call.plan(name);
    this.rules = SweepCommand.rules(call);
    this.grid = SweepGrid.of(call, plan);
    this.slice = call.has("--slice") ? Slice.of(call.text("--slice")) : Slice.WHOLE;
    if (call.has("--slice") && wantsAll(call)) {
      throw new Refused(
          SweepErrors.sliceRanked(
              call.has("--rank") ? "--rank" : call.has("--pareto") ? "--pareto" : "--top"));
    }
    chooseMeasures();
    List<Plan> plans = new ArrayList<>();
    plans.add(plan);
    int jobs = jobs();
    for (int i = 1; i < jobs && !"-".equals(name); i++) {
      plans.add(call.plan(name));
    }
    for (Plan own : plans) {
      judges.add(new Judge(() -> own, grid, rules, measures));
    }
    keys = new Column[grid.axes().size()];
    for (int i = 0; i < keys.length; i++) {
      keys[i] = Column.plain(grid.axes().get(i).path(), grid.axes().get(i).path());
    }
    columns = columns();
  }

  private int jobs() {
    Object typed = call.value("--jobs");
    return typed == null
        ? Runtime.getRuntime().availableProcessors()
        : SweepCommand.atLeast1(call, "--jobs");
  }

  private void chooseMeasures() {
    for (String name : call.texts("--measure")) {
      measure(name);
    }
    if (measures.isEmpty()) {
      measure("flow_low_L_min");
      measure("margin_pct");
    }
    if (call.has("--rank")) {
      measure(bare(call.text("--rank")));
    }
    for (String name : pareto()) {
      measure(bare(name));
    }
    shownMeasures = measures.size();
    for (String typed : call.texts("--where")) {
      Where where = Where.of(typed);
      wheres.add(where);
      whereAt.add(measure(where.measure().name()));
    }
  }

  private List<String> pareto() {
    return call.has("--pareto") ? List.of(call.text("--pareto").split(",")) : List.of();
  }

  static String bare(String name) {
    String stripped = name.strip();
    return stripped.startsWith("-") ? stripped.substring(1) : stripped;
  }

  int measure(String name) {
    for (int i = 0; i < measures.size(); i++) {
      if (measures.get(i).name().equals(name)) {
        return i;
      }
    }
    measures.add(Measures.find(name));
    return measures.size() - 1;
  }

  private Column[] columns() {
    List<Column> all = new ArrayList<>(List.of(keys));
    all.addAll(List.of(PASSES, FAILS, WARNS, UNKNOWNS, WORST));
    for (int m = 0; m < shownMeasures; m++) {
      all.add(measures.get(m).column());
    }
    all.add(REFUSED);
    return all.toArray(new Column[0]);
  }

  private boolean isShown(Judged one) {
    seen++;
    fine += one.isFine() ? 1 : 0;
    refused += one.refused() != null ? 1 : 0;
    if (!one.isFine() && !call.has("--all")) {
      return false;
    }
    for (int w = 0; w < wheres.size(); w++) {
      if (!wheres.get(w).holds(one.measures()[whereAt.get(w)])) {
        return false;
      }
    }
    return true;
  }

  private void run(Consumer<Judged> next) {
    run(new Line(grid, judges), false, next);
  }

  private void run(Line line, boolean rows, Consumer<Judged> next) {
    long from = slice.from(grid.size());
    long to = slice.to(grid.size());
    Progress progress = call.progress(rows, to - from);
    try {
      line.run(
          from,
          to,
          one -> {
            progress.step();
            if (isShown(one)) {
              next.accept(one);
            }
          });
    } finally {
      progress.end();
    }
  }

  void fill(Row row, Judged one) {
    for (int i = 0; i < keys.length; i++) {
      row.set(keys[i], grid.typed(one.design(), i));
    }
    row.set(PASSES, one.passes())
        .set(FAILS, one.fails())
        .set(WARNS, one.warns())
        .set(UNKNOWNS, one.unknowns())
        .set(WORST, one.worst() == null ? null : one.worst().id())
        .set(REFUSED, one.refused());
    for (int m = 0; m < shownMeasures; m++) {
      double value = one.measures()[m];
      Column column = measures.get(m).column();
      boolean whole = column.show() == null && NumberText.isWhole(value);
      row.setAny(
          column,
          Double.isNaN(value)
              ? null
              : whole ? (Object) (int) NumberText.nearest(value) : Double.valueOf(value));
    }
  }

  /** Csv as the designs come. */
  int stream(Output output) {
    RowsOut out = new RowsOut(call, output, slice.isFirst(), columns);
    long[] written = {0};
    boolean done = false;
    Line line = new Line(grid, judges);
    Signals signals = new Signals(line::stop);
    try {
      run(
          line,
          true,
          one -> {
            Row row = out.next();
            fill(row, one);
            out.write(row);
            written[0]++;
          });
      done = !line.isStopped();
    } finally {
      if (line.isStopped()) {
        out.flush();
      }
      out.finish(done);
      signals.end();
    }
    return written[0] == 0 && slice == Slice.WHOLE ? 1 : 0;
  }

  /** The designs that are kept, in the order asked for. */
  List<Judged> kept() {
    int top = call.has("--top") ? SweepCommand.atLeast1(call, "--top") : Integer.MAX_VALUE;
    List<Judged> kept = new ArrayList<>();
    Comparator<Judged> order = order();
    if (call.has("--pareto")) {
      int[] at = new int[pareto().size()];
      boolean[] most = new boolean[at.length];
      for (int i = 0; i < at.length; i++) {
        at[i] = measure(bare(pareto().get(i)));
        most[i] = pareto().get(i).strip().startsWith("-");
      }
      run(
          one -> {
            if (Front.isKnown(one, at)) {
              Front.add(kept, one, at, most);
            }
          });
    } else if (top < Integer.MAX_VALUE && call.has("--rank")) {
      PriorityQueue<Judged> best = new PriorityQueue<>(order.reversed());
      run(
          one -> {
            best.add(one);
            if (best.size() > top) {
              best.remove();
            }
          });
      kept.addAll(best);
    } else {
      run(
          one -> {
            if (call.has("--rank") || kept.size() < top) {
              kept.add(one);
            }
          });
    }
    kept.sort(order);
    return kept.size() > top ? kept.subList(0, top) : kept;
  }

  private Comparator<Judged> order() {
    if (!call.has("--rank")) {
      return Comparator.comparingLong(one -> one.design().index());
    }
    String rank = call.text("--rank").strip();
    return Front.by(measure(bare(rank)), rank.startsWith("-"));
  }
}
