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
import leat.plan.Refused;
import leat.sweep.Measure;
import leat.sweep.Measures;
import leat.sweep.SweepErrors;

/** {@code leat sweep}: one plan with keys varied, every design judged and ranked. */
public final class SweepCommand extends Command {
  static final Column MEASURE = Column.plain("measure", "measure");
  static final Column COMMAND = Column.plain("command", "command");
  static final Column UNIT = Column.plain("unit", "unit");
  static final Column READS = Column.plain("reads", "reads");
  static final Column BETTER = Column.plain("better", "better");
  static final Column MEANING = Column.plain("label", "which is");
  static final Column DRAWS = Column.plain("draws", "draws");

  private static final Flag[] FLAGS = {
    Flag.of(
            "--vary",
            "KEY=VALUES",
            Kind.TEXT,
            "towers[*].riser.bore=10mm,12mm,16mm",
            "a key and the values it takes: a list, from..to step s, from..to with --sample, or files of a section")
        .repeatable(),
    Flag.of("--rows", "FILE", Kind.TEXT, "designs.csv", "a table of designs, headers are keys"),
    Flag.of("--sample", "N", Kind.COUNT, "500", "so many designs between the ends"),
    DoubtFlags.seed().belongsTo("--sample", "--doubt"),
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
    Flag.of("--rule", "ID", Kind.TEXT, "pump-margin", CheckCommand.RULE_MEANING).repeatable(),
    Flag.of("--slice", "I/N", Kind.TEXT, "2/4", "the i-th of n parts"),
    Flag.of("--jobs", "N", Kind.COUNT, "2", "threads; as many as the machine has otherwise"),
    Flag.on("--nudge", "moves each guess to its ends: which answer moves most"),
    DoubtFlags.doubt(),
    Flag.on("--yes", "also for more than 100 million designs"),
  };

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
    return FLAGS;
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
    guessesAlone(call);
    if (call.has("--nudge")) {
      return NudgeAnswer.of(call, planName(call, this), asked(call));
    }
    if (call.has("--doubt")) {
      return DoubtAnswer.of(call, planName(call, this), rules(call));
    }
    return new SweepText(call, new SweepRun(call, this)).answer();
  }

  /** Refuses what varies beside a question about guesses. */
  private static void guessesAlone(Call call) {
    String question = call.has("--nudge") ? "--nudge" : call.has("--doubt") ? "--doubt" : null;
    String[] others = {
      "--vary", "--rows", "--sample", "--rank", "--pareto", "--top", "--where", "--slice"
    };
    for (String other : others) {
      if (question != null && call.has(other)) {
        throw new Refused(SweepErrors.guessesAlone(question, other));
      }
    }
    if (call.has("--nudge") && call.has("--doubt")) {
      throw new Refused(CommandErrors.notBoth(call.command, "--nudge", "--doubt"));
    }
  }

  /** A count that must not be 0. */
  static int atLeast1(Call call, String flag) {
    int count = ((Number) call.value(flag)).intValue();
    if (count < 1) {
      throw new Refused(SweepErrors.noneAsked(flag));
    }
    return count;
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
    Answer answer = new Answer(MEASURE, UNIT, BETTER, MEANING, COMMAND, READS).asList();
    for (Measure measure : Measures.all()) {
      answer
          .row()
          .set(MEASURE, measure.name())
          .set(UNIT, measure.unit())
          .set(BETTER, measure.upIsBetter() ? "up" : "down")
          .set(MEANING, measure.column().label())
          .set(COMMAND, measure.command())
          .set(READS, measure.reads());
    }
    answer.sentence(
        Row.aside(DRAWS).set(DRAWS, Measures.all().size()),
        "Designs can be compared by {draws} numbers; --measure shows one, --rank orders by one.");
    return answer.table(MEASURE, BETTER, MEANING, COMMAND, READS);
  }

  /** The measures asked for, else margin and flow. */
  static List<Measure> asked(Call call) {
    List<String> names = call.texts("--measure");
    List<Measure> measures = new ArrayList<>();
    for (String name : names.isEmpty() ? List.of("margin_pct", "flow_low_L_min") : names) {
      measures.add(Measures.find(name));
    }
    return measures;
  }
}
