package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.CheckErrors;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Rules;
import leat.check.Subject;
import leat.check.Verdict;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.cli.Run;
import leat.command.MeasuredWords;
import leat.hydraulics.Derate;
import leat.numeric.Impossible;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.system.DerateOf;

/** {@code leat check}: every design rule over one or many plans. */
public final class CheckCommand extends Command {
  static final Column PLAN = Column.plain("plan", "plan");
  static final Column RULE = Column.plain("rule", "rule");
  static final Column VERDICT = Column.plain("verdict", "verdict");
  static final Column VALUE = Column.plain("value", "value");
  static final Column NEED = Column.plain("need", "need");
  static final Column LIMIT = Column.plain("limit", "limit");
  static final Column UNIT = Column.plain("unit", "unit");
  static final Column ADVICE = Column.plain("advice", "advice");
  static final Column PLACE = Column.plain("place", "place");

  @Override
  public String name() {
    return "check";
  }

  @Override
  public String summary() {
    return "every design rule over one or many plans: pass, warn, fail, unknown";
  }

  @Override
  public String operands() {
    return "PLAN...";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.on("--all", "text shows the rules that pass, too"),
      Flag.on("--strict", "a warning counts as a no, too (exit code 1)"),
      Flag.on("--rules", "lists the rules with their limits and sources"),
      Flag.of("--rule", "ID", Kind.TEXT, "pump-margin", "judges this rule only").repeatable(),
    };
  }

  @Override
  public String[] manual() {
    return new String[] {
      "Judges plans by the design rules of this trade. A rule that fails names the key to change and a value that would pass, found by solving the model."
          + " A rule whose keys are missing is unknown, never a pass.",
      "Exit code 1 when a rule fails (with --strict also when one warns), 2 when a plan is wrong and 3 when it cannot be read; the other plans are judged all the same.",
      "Limits of your own stand in the plan under limits, by the rule's id."
    };
  }

  @Override
  public String[] examples() {
    return new String[] {
      "check first-tower.yaml",
      "check first-tower.yaml proud-tower.yaml terrace.yaml --format csv",
      "check --explain pump-margin",
      "check --rules"
    };
  }

  @Override
  public String[] seeAlso() {
    return new String[] {"leat-plan(5)"};
  }

  @Override
  public Answer answer(Call call) {
    if (call.has("--rules")) {
      return list(Rules.all());
    }
    if (call.has("--explain")
        && !call.operands().isEmpty()
        && Rules.find(call.operands().get(0)) != null) {
      return list(new Rule[] {Rules.find(call.operands().get(0))});
    }
    if (call.has("--explain")
        && call.operands().size() == 1
        && !call.terminal.file(call.operands().get(0)).exists()) {
      throw new Refused(CheckErrors.noSuchRule(call.operands().get(0)));
    }
    List<String> names = new ArrayList<>(call.operands());
    if (call.text("--plan") != null || names.isEmpty() && call.hasPlan()) {
      names.add(0, call.planName());
    }
    if (names.isEmpty()) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    List<String> wanted = call.texts("--rule");
    for (int i = 0; i < wanted.size(); i++) {
      if (Rules.find(wanted.get(i)) == null) {
        throw new Refused(CheckErrors.noSuchRule(wanted.get(i)));
      }
    }
    return judge(call, names, wanted);
  }

  private Answer judge(Call call, List<String> names, List<String> wanted) {
    Answer answer =
        new Answer(PLAN, RULE, VERDICT, VALUE, NEED, LIMIT, UNIT, ADVICE, PLACE).asList();
    int[] counts = new int[Verdict.values().length];
    int broken = 0;
    Phrase sentences = Phrase.of();
    for (int p = 0; p < names.size(); p++) {
      try {
        Plan plan = call.plan(names.get(p));
        Subject subject = new Subject(plan);
        List<Finding> found = only(wanted, Rules.judge(subject));
        int[] own = new int[counts.length];
        for (int i = 0; i < found.size(); i++) {
          own[found.get(i).verdict().ordinal()]++;
          counts[found.get(i).verdict().ordinal()]++;
          row(answer, names.get(p), found.get(i));
        }
        Derate believed = subject.believed();
        MeasuredWords.say(answer, believed, names.size() > 1 ? names.get(p) + ": " : "");
        if (believed != null && believed.kind() == Derate.Kind.NOT_NAMED) {
          answer.taken(Phrase.of(DerateOf.ASSUMED));
        }
        whatIf(answer, believed, found);
        sentence(sentences, names.size() > 1 ? names.get(p) + ": " : "", own, found.size());
        answer.block();
        figures(answer, found, call.has("--all"));
      } catch (Refused e) {
        broken = e.exitCode() > broken ? e.exitCode() : broken;
        Run.tell(call.terminal, e);
      } catch (Impossible e) {
        broken = broken == 0 ? 2 : broken;
        Run.tell(call.terminal, names.get(p) + ": " + e.quantity() + ": " + e.getMessage() + "\n");
      }
    }
    answer.sentence(sentences);
    if (counts[Verdict.FAIL.ordinal()] > 0) {
      answer.next(
          "leat check --explain RULE   tells what a rule is and where its limit comes from");
    }
    boolean no =
        counts[Verdict.FAIL.ordinal()] > 0
            || call.has("--strict") && counts[Verdict.WARN.ordinal()] > 0;
    return broken > 0 ? answer.exit(broken) : no ? answer.no() : answer;
  }

  /**
   * A measured flow belongs to the tower as it was: changing riser or outlet must keep the derate
   * it found.
   */
  private static void whatIf(Answer answer, Derate believed, List<Finding> found) {
    if (believed == null || believed.kind() != Derate.Kind.MEASURED) {
      return;
    }
    for (int i = 0; i < found.size(); i++) {
      Finding finding = found.get(i);
      boolean touchesPipes = finding.advice().render(false).contains("towers[");
      if (touchesPipes
          && finding.verdict() != Verdict.PASS
          && finding.verdict() != Verdict.UNKNOWN) {
        answer.mind(
            "measured-what-if",
            Phrase.of(
                    "pump.measured belongs to the tower as it was measured. Before you change riser or outlet write pump.derate: ")
                .add(believed.share(), Show.PERCENT.digits(3))
                .add(" in its place, and measure again after."));
        return;
      }
    }
  }

  private static List<Finding> only(List<String> wanted, List<Finding> found) {
    if (wanted.isEmpty()) {
      return found;
    }
    List<Finding> kept = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      if (wanted.contains(found.get(i).rule().id())) {
        kept.add(found.get(i));
      }
    }
    return kept;
  }

  private static void row(Answer answer, String plan, Finding finding) {
    Show show = finding.show();
    answer
        .row()
        .set(PLAN, plan)
        .set(RULE, finding.rule().id())
        .set(VERDICT, finding.verdict().word())
        .set(NEED, finding.rule().need())
        .set(UNIT, show == null ? null : show.metric().symbol())
        .set(PLACE, finding.place())
        .set(ADVICE, finding.advice().isEmpty() ? null : finding.advice().render(false))
        .setAny(
            VALUE,
            finding.value() == null
                ? finding.words()
                : Double.valueOf(show.metric().fromBase(finding.value())))
        .setAny(
            LIMIT,
            finding.limit() == null
                ? null
                : Double.valueOf(show.metric().fromBase(finding.limit())));
  }

  private static void sentence(Phrase words, String plan, int[] counts, int all) {
    int fails = counts[Verdict.FAIL.ordinal()];
    int warns = counts[Verdict.WARN.ordinal()];
    int unknown = counts[Verdict.UNKNOWN.ordinal()];
    words.add(words.isEmpty() ? "" : "\n").add(plan);
    if (fails == 0) {
      words.add(unknown == 0 ? "No rule fails" : "No rule that can be judged fails");
    } else {
      words
          .count(fails)
          .add(" of ")
          .count(all)
          .add(fails == 1 ? " findings fails" : " findings fail");
    }
    words
        .add("; ")
        .count(warns)
        .add(warns == 1 ? " warns, " : " warn, ")
        .count(unknown)
        .add(" cannot be judged.");
  }

  private static void figures(Answer answer, List<Finding> found, boolean all) {
    int passes = 0;
    Verdict[] order = Verdict.values();
    for (int v = 0; v < order.length; v++) {
      for (int i = 0; i < found.size(); i++) {
        Finding finding = found.get(i);
        if (finding.verdict() != order[v]) {
          continue;
        }
        if (finding.verdict() == Verdict.PASS && !all) {
          passes++;
          continue;
        }
        figure(answer, finding);
      }
    }
    if (passes > 0) {
      answer.figure("pass  " + passes + " more pass", Phrase.of("--all shows them"));
    }
  }

  private static void figure(Answer answer, Finding finding) {
    String mark =
        finding.verdict() == Verdict.FAIL
            ? "FAIL"
            : finding.verdict() == Verdict.UNKNOWN ? "?   " : finding.verdict().word();
    Phrase value =
        finding.value() != null
            ? Phrase.of(finding.value(), finding.show())
            : Phrase.of(finding.words() == null ? "-" : finding.words());
    Phrase need =
        finding.limit() == null
            ? Phrase.of(finding.verdict() == Verdict.UNKNOWN ? "-" : finding.rule().need())
            : Phrase.of(finding.rule().need() + " ").add(finding.limit(), finding.show());
    Phrase advice =
        Phrase.of(
                finding.place() == null
                    ? ""
                    : finding.place() + (finding.advice().isEmpty() ? "" : ": "))
            .add(finding.advice());
    answer.figure(mark + "  " + finding.rule().id(), value, need, advice);
  }

  private static Answer list(Rule[] rules) {
    Column id = Column.plain("rule", "rule");
    Column need = Column.plain("need", "need");
    Column limit = Column.plain("limit", "limit");
    Column unit = Column.plain("unit", "unit");
    Column meaning = Column.plain("meaning", "meaning");
    Column reads = Column.plain("reads", "reads");
    Column source = Column.plain("source", "source of the limit");
    Answer answer = new Answer(id, need, limit, unit, meaning, reads, source).asList();
    for (int i = 0; i < rules.length; i++) {
      Rule rule = rules[i];
      Show show = rule.show();
      answer
          .row()
          .set(id, rule.id())
          .set(need, rule.need())
          .setAny(
              limit,
              rule.usualLimit() == null || show == null
                  ? null
                  : Double.valueOf(show.metric().fromBase(rule.usualLimit())))
          .set(unit, show == null ? null : show.metric().symbol())
          .set(meaning, rule.meaning())
          .set(reads, rule.reads())
          .set(source, rule.source());
      Phrase wants =
          rule.usualLimit() == null || show == null
              ? Phrase.of(rule.need())
              : Phrase.of(rule.need() + " ").add(rule.usualLimit(), show);
      answer.figure(rule.id(), wants, Phrase.of(rule.meaning()));
      if (rules.length == 1) {
        answer.figure("reads", Phrase.of(rule.reads()));
        answer.figure("limit from", Phrase.of(rule.source()));
        answer.figure("your own limit", Phrase.of("limits: {" + rule.id() + ": ...} in the plan"));
      }
    }
    return answer.sentence(
        rules.length == 1
            ? Phrase.of("Rule ").add(rules[0].id()).add(".")
            : Phrase.of("").count(rules.length).add(" rules."));
  }
}
