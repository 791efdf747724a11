package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.check.CheckErrors;
import leat.check.Rule;
import leat.check.Rules;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.cli.Output;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.sweep.Doubt;
import leat.sweep.Measure;
import leat.sweep.Measures;
import leat.sweep.Nudge;

/** {@code leat sweep}: one plan with keys varied, every design judged and ranked. */
public final class SweepCommand extends Command {
  private static final long SEED = 20_270_301L;

  static final Column MEASURE = Column.plain("measure", "measure");
  static final Column COMMAND = Column.plain("command", "answered by");
  static final Column BETTER = Column.plain("better", "better");
  static final Column MEANING = Column.plain("label", "which is");
  static final Column KEY = Column.plain("key", "guess");
  static final Column LOW = Column.number("low", "low", 3);
  static final Column HIGH = Column.number("high", "high", 3);
  static final Column AT_LOW = Column.number("at_low", "at low", 3);
  static final Column AT_HIGH = Column.number("at_high", "at high", 3);
  static final Column AS_IS = Column.number("as_is", "as it is", 3);
  static final Column RULE = Column.plain("rule", "rule");
  static final Column SHARE = Column.number("share_pass", "passes in", 3);
  static final Column HANGS = Column.plain("hangs_on", "hangs on");
  static final Column RULES = Column.plain("rules", "rules");
  static final Column SURE = Column.plain("sure", "sure");
  static final Column DRAWS = Column.plain("draws", "draws");

  @Override
  public String name() {
    return "sweep";
  }

  @Override
  public String operands() {
    return "PLAN";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of(
              "--vary",
              "KEY=VALUES",
              Kind.TEXT,
              "towers[*].riser.bore=10mm,12mm,16mm",
              "a key and the values it takes: a list, from..to step s, from..to with --sample, or files of a section")
          .repeatable(),
      Flag.of("--rows", "FILE", Kind.TEXT, "designs.csv", "a table of designs, headers are keys"),
      Flag.of("--sample", "N", Kind.COUNT, "500", "so many designs between the ends"),
      Flag.of("--seed", "N", Kind.COUNT, "7", "seed of --sample and --doubt"),
      Flag.of("--measure", "NAME", Kind.TEXT, "margin_pct", "a number to show of each design")
          .repeatable(),
      Flag.on("--measures", "lists the numbers that designs can be compared by"),
      Flag.of("--rank", "NAME", Kind.TEXT, "margin_pct", "least first; -NAME for most first"),
      Flag.of(
          "--pareto",
          "A,B",
          Kind.TEXT,
          "-flow_low_L_min,kwh_day",
          "designs no other beats in all of these"),
      Flag.of("--top", "N", Kind.COUNT, "5", "the first N only"),
      Flag.of("--where", "CONDITION", Kind.TEXT, "margin_pct>20", "designs that meet it only")
          .repeatable(),
      Flag.on("--all", "designs that fail a rule, too"),
      Flag.of("--rule", "ID", Kind.TEXT, "pump-margin", "judges this rule only; none for no rule")
          .repeatable(),
      Flag.of("--slice", "I/N", Kind.TEXT, "2/4", "the i-th of n parts"),
      Flag.of("--jobs", "N", Kind.COUNT, "2", "threads; as many as the machine has otherwise"),
      Flag.on("--nudge", "moves each guess to its ends: which answer moves most"),
      Flag.of(
          "--doubt", "N", Kind.COUNT, "200", "draws all guesses N times: how sure each rule is"),
      Flag.on("--yes", "also for more than 100 million designs"),
    };
  }

  @Override
  public int stream(Call call, Output output) {
    if (!"csv".equals(call.format().name)
        || call.has("--measures")
        || call.has("--nudge")
        || call.has("--doubt")
        || SweepRun.wantsAll(call)) {
      return -1;
    }
    return new SweepRun(call, this).stream(output);
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    if (call.has("--measures")) {
      return measures();
    }
    if (call.has("--nudge")) {
      return nudge(call);
    }
    if (call.has("--doubt")) {
      return doubt(call);
    }
    return new SweepRun(call, this).answer();
  }

  static long seed(Call call) {
    Object seed = call.value("--seed");
    return seed == null ? SEED : ((Number) seed).longValue();
  }

  /** The plan that is varied. */
  static String planName(Call call, Command command) {
    String name = call.operands().isEmpty() ? call.planName() : call.operands().get(0);
    if (name == null || call.operands().size() > 1) {
      throw new Refused(CommandErrors.neededPlan(command));
    }
    return name;
  }

  static Rule[] rules(Call call) {
    List<String> ids = call.texts("--rule");
    if (ids.isEmpty()) {
      return Rules.all();
    }
    List<Rule> rules = new ArrayList<>();
    for (String id : ids) {
      if ("none".equals(id)) {
        continue;
      }
      Rule rule = Rules.find(id);
      if (rule == null) {
        throw new Refused(CheckErrors.noSuchRule(id));
      }
      rules.add(rule);
    }
    return rules.toArray(new Rule[0]);
  }

  private static Answer measures() {
    Answer answer = new Answer(MEASURE, COMMAND, BETTER, MEANING).asList();
    for (Measure measure : Measures.all()) {
      answer
          .row()
          .set(MEASURE, measure.name())
          .set(COMMAND, measure.command())
          .set(BETTER, measure.upIsBetter() ? "more" : "less")
          .set(MEANING, measure.column().label());
    }
    answer.sentence(
        Row.aside(DRAWS).set(DRAWS, Measures.all().size()),
        "Designs can be compared by {draws} numbers; --measure shows one, --rank orders by one.");
    return answer.table(MEASURE, COMMAND, BETTER, MEANING);
  }

  private Answer nudge(Call call) {
    Plan plan = call.plan(planName(call, this));
    List<Nudge> all = Nudge.of(plan, asked(call));
    Answer answer = new Answer(KEY, LOW, HIGH, MEASURE, AT_LOW, AT_HIGH, AS_IS).asList();
    for (Nudge nudge : all) {
      answer
          .row()
          .set(KEY, nudge.guess().path())
          .set(LOW, nudge.guess().low())
          .set(HIGH, nudge.guess().high())
          .set(MEASURE, nudge.measure().name())
          .set(AT_LOW, shown(nudge.column(), nudge.atLow()))
          .set(AT_HIGH, shown(nudge.column(), nudge.atHigh()))
          .set(AS_IS, shown(nudge.column(), nudge.asIs()));
    }
    if (all.isEmpty()) {
      answer.sentence(Row.aside(), "The plan states no number that is a guess.");
    } else {
      int most = Nudge.mostMoved(all);
      answer.sentence(
          answer.row(Math.max(0, most)),
          most < 0
              ? "No guess of the plan moves {measure}."
              : "{key} matters most: {measure} goes from {at_low} to {at_high} over the range that this guess may have.");
      answer.table(KEY, MEASURE, AT_LOW, AS_IS, AT_HIGH);
    }
    for (Measure measure : call.wantsChart() ? asked(call) : List.<Measure>of()) {
      answer.chart(SweepChart.of(all, measure));
    }
    return answer.next(
        call.again("sweep " + Call.quoted(planName(call, this)))
            + " --doubt 200   tells how sure each rule is");
  }

  /** The measures asked for, else margin and flow. */
  private static List<Measure> asked(Call call) {
    List<String> names = call.texts("--measure");
    List<Measure> measures = new ArrayList<>();
    for (String name : names.isEmpty() ? List.of("margin_pct", "flow_low_L_min") : names) {
      measures.add(Measures.find(name));
    }
    return measures;
  }

  /** A value in the unit of its column; null for unknown. */
  static Double shown(Column column, double base) {
    if (Double.isNaN(base)) {
      return null;
    }
    return column.show() == null ? base : column.show().metric().fromBase(base);
  }

  private Answer doubt(Call call) {
    int draws = ((Number) call.value("--doubt")).intValue();
    Plan plan = call.plan(planName(call, this));
    List<Doubt> all = Doubt.of(plan, rules(call), draws, seed(call));
    Answer answer = new Answer(RULE, SHARE, HANGS).asList();
    int sure = 0;
    for (Doubt doubt : all) {
      sure += doubt.hangsOn() == null ? 1 : 0;
      answer
          .row()
          .set(RULE, doubt.rule().id())
          .set(SHARE, doubt.share())
          .set(HANGS, doubt.hangsOn() == null ? null : doubt.hangsOn().path());
    }
    Row counts = Row.aside(DRAWS, RULES, SURE);
    counts.set(DRAWS, draws).set(RULES, all.size()).set(SURE, sure);
    answer.sentence(
        counts,
        "In {draws} draws of all guesses {sure} of {rules} rules always say the same; the others hang on a guess.");
    return answer.table(RULE, SHARE, HANGS);
  }
}
