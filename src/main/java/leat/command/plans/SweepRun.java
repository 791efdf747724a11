package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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

  /** Designs that fail, by the first rule that does. */
  final Map<String, Integer> failing = new TreeMap<>();

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
    refuseRankedSlice();
    chooseMeasures();
    judge(plan, name);
    keys = new Column[grid.axes().size()];
    for (int i = 0; i < keys.length; i++) {
      keys[i] = Column.plain(grid.axes().get(i).path(), grid.axes().get(i).path());
    }
    columns = columns();
  }

  private void judge(Plan plan, String name) {
    List<Plan> plans = new ArrayList<>();
    plans.add(plan);
    int jobs = Line.threads(jobs(), slice.to(grid.size()) - slice.from(grid.size()));
    for (int i = 1; i < jobs && !"-".equals(name); i++) {
      plans.add(call.plan(name));
    }
    for (Plan own : plans) {
      judges.add(new Judge(() -> own, grid, rules, measures));
    }
  }

  private void refuseRankedSlice() {
    if (call.has("--slice") && wantsAll(call)) {
      throw new Refused(
          SweepErrors.sliceRanked(
              call.has("--rank") ? "--rank" : call.has("--pareto") ? "--pareto" : "--top"));
    }
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
    chooseWheres();
  }

  private void chooseWheres() {
    for (String typed : call.texts("--where")) {
      Where where = Where.of(typed);
      wheres.add(where);
      whereAt.add(measure(where.measure().name()));
    }
  }

  List<String> pareto() {
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
    if (one.fails() > 0) {
      failing.merge(one.worst().id(), 1, Integer::sum);
    }
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

  void run(Consumer<Judged> next) {
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
    row.set(REFUSED, one.refused());
    if (one.refused() == null) {
      row.set(PASSES, one.passes())
          .set(FAILS, one.fails())
          .set(WARNS, one.warns())
          .set(UNKNOWNS, one.unknowns())
          .set(WORST, one.worst() == null ? null : one.worst().id());
    }
    for (int m = 0; m < shownMeasures; m++) {
      Column column = measures.get(m).column();
      row.setAny(column, shown(column, one.measures()[m]));
    }
  }

  /** A measure's value as its column holds it: a whole number without a unit is a count. */
  private static Object shown(Column column, double value) {
    if (Double.isNaN(value)) {
      return null;
    }
    boolean whole = column.show() == null && NumberText.isWhole(value);
    return whole ? (Object) (int) NumberText.nearest(value) : Double.valueOf(value);
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
    return (written[0] == 0 || fine == 0) && slice == Slice.WHOLE ? 1 : 0;
  }

  /** A design by the values of its axes. */
  String named(Judged one) {
    StringBuilder name = new StringBuilder();
    for (int i = 0; i < keys.length; i++) {
      name.append(i == 0 ? "" : ", ").append(keys[i].key()).append(' ');
      name.append(grid.typed(one.design(), i));
    }
    return name.toString();
  }

  /** Why a measure of a design is not known; null when it is, or when it has none. */
  String why(Judged one, int measure) {
    return judges.get(0).why(one.design(), measures.get(measure));
  }
}
