package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.check.CheckErrors;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Rules;
import leat.check.Verdict;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.command.MeasuredWords;
import leat.hydraulics.Derate;
import leat.plan.Kind;
import leat.plan.Refused;
import leat.system.DerateOf;

/** {@code leat check}: every design rule over one or many plans. */
public final class CheckCommand extends Command {
  static final String RULE_MEANING = "judges this rule only";

  @Override
  public String name() {
    return "check";
  }

  @Override
  public String operands() {
    return "PLAN...";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.on("--all", "text shows the rules that pass, too"),
      Flag.on(
          "--strict", "what warns, and what cannot be judged, counts as a no, too (exit code 1)"),
      Flag.on("--known", "with --strict: what cannot be judged does not count")
          .belongsTo("--strict"),
      Flag.on("--compare", "plans side by side: where they differ, with the values in columns"),
      Flag.on("--rules", "lists the rules with their limits and sources"),
      Flag.of("--rule", "ID", Kind.TEXT, "pump-margin", RULE_MEANING).repeatable(),
      DoubtFlags.doubt(),
      DoubtFlags.seed(),
    };
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    if (call.has("--rules")) {
      return RuleList.of(Rules.all());
    }
    List<String> names = new ArrayList<>(call.operands());
    Rule explained = call.has("--explain") ? explained(call, names) : null;
    if (call.text("--plan") != null || names.isEmpty() && call.hasPlan()) {
      names.add(0, call.planName());
    }
    if (names.isEmpty() && explained != null) {
      return RuleList.of(explained);
    }
    if (names.isEmpty()) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    if (call.has("--doubt")) {
      return DoubtAnswer.of(call, onePlan(call, names), rules(call.texts("--rule")));
    }
    Rule[] rules = explained != null ? new Rule[] {explained} : rules(call.texts("--rule"));
    List<JudgedPlan> plans = judged(call, names, rules);
    return exit(call, plans, told(call, plans, explained));
  }

  private static List<JudgedPlan> judged(Call call, List<String> names, Rule[] rules) {
    List<JudgedPlan> plans = new ArrayList<>();
    for (int p = 0; p < names.size(); p++) {
      plans.add(JudgedPlan.of(call, names.get(p), rules));
    }
    return plans;
  }

  /** The plan that is doubted; what belongs to verdicts does not go with it. */
  private String onePlan(Call call, List<String> names) {
    String[] others = {"--compare", "--strict", "--explain", "--all"};
    for (int i = 0; i < others.length; i++) {
      if (call.has(others[i])) {
        throw new Refused(CommandErrors.notBoth(this, "--doubt", others[i]));
      }
    }
    if (names.size() > 1) {
      throw new Refused(CheckErrors.doubtsOnePlan());
    }
    return names.get(0);
  }

  /** The rule that is to be explained, taken off the operands; null when none is named. */
  private static Rule explained(Call call, List<String> names) {
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      Rule rule = Rules.find(name);
      if (rule != null) {
        names.remove(i);
        return rule;
      }
      boolean mayBePlan = i > 0 && name.indexOf('.') >= 0;
      if (!"-".equals(name) && !mayBePlan && !call.terminal.file(name).exists()) {
        throw new Refused(CheckErrors.noSuchRule(name));
      }
    }
    return null;
  }

  private static Rule[] rules(List<String> ids) {
    if (ids.isEmpty()) {
      return Rules.all();
    }
    Rule[] rules = new Rule[ids.size()];
    for (int i = 0; i < rules.length; i++) {
      rules[i] = Rules.find(ids.get(i));
      if (rules[i] == null) {
        throw new Refused(CheckErrors.noSuchRule(ids.get(i)));
      }
    }
    return rules;
  }

  private static Answer told(Call call, List<JudgedPlan> plans, Rule explained) {
    if (call.has("--compare")) {
      return PlansCompared.of(plans);
    }
    Answer answer = CheckWords.answer(call.has("--explain"));
    boolean named = plans.size() > 1;
    for (int p = 0; p < plans.size(); p++) {
      JudgedPlan plan = plans.get(p);
      boolean no = plan.isNo(call.has("--strict"), call.has("--known"));
      answer.block(CheckWords.sentence(plan, named, no));
      if (plan.isBroken()) {
        CheckWords.unreadable(answer, plan);
      } else {
        told(call, answer, plan, explained, named);
      }
    }
    return answer;
  }

  private static void told(
      Call call, Answer answer, JudgedPlan plan, Rule explained, boolean named) {
    boolean explain = call.has("--explain");
    for (int i = 0; i < plan.found.size(); i++) {
      Row row = CheckWords.row(answer, plan, plan.found.get(i));
      if (explain) {
        RuleList.explain(row, plan, plan.found.get(i).rule());
      }
    }
    if (call.wantsChart()) {
      answer.chart(CheckChart.of(plan, named));
    }
    CheckWords.lines(answer, plan, call.has("--all") || explained != null);
    explain(answer, plan, explain, explained);
    pump(answer, plan, named);
  }

  /** The rule that is asked for; without one, those that fail or warn. */
  private static void explain(Answer answer, JudgedPlan plan, boolean explain, Rule explained) {
    Rule last = null;
    for (int i = 0; explain && i < plan.found.size(); i++) {
      Rule rule = plan.found.get(i).rule();
      if (rule != last && (explained != null || plan.found.get(i).isBreach())) {
        RuleList.explain(answer, plan, rule);
        last = rule;
      }
    }
    if (explained != null && plan.found.isEmpty()) {
      RuleList.explain(answer, plan, explained);
    }
  }

  private static Answer exit(Call call, List<JudgedPlan> plans, Answer answer) {
    int broken = 0;
    boolean no = false;
    JudgedPlan failing = null;
    for (int p = 0; p < plans.size(); p++) {
      JudgedPlan plan = plans.get(p);
      broken = Math.max(broken, plan.broken);
      if (plan.isBroken()) {
        continue;
      }
      taken(answer, plan, plans);
      MeasuredWords.say(answer, plan.subject.believed(), plans.size() > 1 ? plan.name + ": " : "");
      no |= plan.isNo(call.has("--strict"), call.has("--known"));
      failing = failing == null && plan.count(Verdict.FAIL) > 0 ? plan : failing;
    }
    if (failing != null && !call.has("--explain")) {
      answer.next("leat check --explain " + firstFail(failing) + " " + failing.name);
    }
    return broken > 0 ? answer.exit(broken) : no ? answer.no() : answer;
  }

  private static String firstFail(JudgedPlan plan) {
    int i = 0;
    while (plan.found.get(i).verdict() != Verdict.FAIL) {
      i++;
    }
    return plan.found.get(i).rule().id();
  }

  /** What all plans take is told once, the rest under the plan's name. */
  private static void taken(Answer answer, JudgedPlan plan, List<JudgedPlan> plans) {
    List<String> words = plan.subject.taken().words();
    for (int i = 0; i < words.size(); i++) {
      int takers = 0;
      int before = 0;
      int judged = 0;
      for (int p = 0; p < plans.size(); p++) {
        boolean one = plans.get(p).takes(words.get(i));
        judged += plans.get(p).isBroken() ? 0 : 1;
        takers += one ? 1 : 0;
        before += one && p < plans.indexOf(plan) ? 1 : 0;
      }
      if (takers < judged) {
        answer.taken(Phrase.said(plan.name + ": " + words.get(i)));
      } else if (before == 0) {
        answer.taken(Phrase.said(words.get(i)));
      }
    }
  }

  /** What is to be minded of the share of the printed head that verdicts rest on. */
  private static void pump(Answer answer, JudgedPlan plan, boolean named) {
    Derate believed = plan.subject.believedSoFar();
    MeasuredWords.say(answer, believed, named ? plan.name + ": " : "");
    if (believed == null) {
      return;
    }
    if (believed.kind() == Derate.Kind.NOT_NAMED) {
      plan.subject.taken().note(DerateOf.ASSUMED);
    }
    if (believed.kind() == Derate.Kind.MEASURED) {
      whatIf(answer, plan, believed);
    }
  }

  /** Changing riser or outlet in the file would change what its measured flow explains. */
  private static void whatIf(Answer answer, JudgedPlan plan, Derate believed) {
    for (int i = 0; i < plan.found.size(); i++) {
      Finding finding = plan.found.get(i);
      if (finding.isBreach() && plan.advisor.advice(finding).render(false).contains("towers[")) {
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
}
