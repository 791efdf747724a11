package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.check.Rule;
import leat.plan.PlanShow;

/** Rules told: their list, one of them in full, and one of them with a plan's numbers in it. */
final class RuleList {
  private static final Column ID = Column.plain("rule", "rule");
  private static final Column NEED = Column.plain("need", "need");
  private static final Column LIMIT = Column.plain("limit", "limit");
  private static final Column UNIT = Column.plain("unit", "unit");

  private RuleList() {}

  /** The list of rules. */
  static Answer of(Rule[] rules) {
    Answer answer =
        new Answer(ID, NEED, LIMIT, UNIT, CheckWords.MEANING, CheckWords.READS, CheckWords.SOURCE)
            .asList();
    for (int i = 0; i < rules.length; i++) {
      row(answer, rules[i]);
      answer.figure(rules[i].id(), wants(rules[i]), Phrase.of(rules[i].meaning()));
    }
    return answer.sentence(Phrase.of().count(rules.length).add(" rules."));
  }

  /** One rule in full. */
  static Answer of(Rule rule) {
    Answer answer =
        new Answer(ID, NEED, LIMIT, UNIT, CheckWords.MEANING, CheckWords.READS, CheckWords.SOURCE)
            .asList();
    row(answer, rule);
    answer.sentence(Phrase.of("Rule ").add(rule.id()).add("."));
    answer.figure("need", wants(rule));
    meaning(answer, rule);
    return answer;
  }

  /** A rule over a plan: why it matters, and the plan's values that it reads. */
  static void explain(Answer answer, JudgedPlan plan, Rule rule) {
    answer.block(Phrase.of(rule.id()).add(" needs ").add(wants(rule)).add("."));
    meaning(answer, rule);
    answer.block(Phrase.of("The plan's values that it reads:"));
    List<PlanShow.Entry> entries = values(plan, rule);
    for (int e = 0; e < entries.size(); e++) {
      String value = entries.get(e).value();
      answer.figure(entries.get(e).path(), Phrase.of(value == null ? "-" : value));
    }
    if (entries.isEmpty()) {
      answer.figure("none", Phrase.of("the plan says nothing of them"));
    }
  }

  /** The same in the row of a finding. */
  static void explain(Row row, JudgedPlan plan, Rule rule) {
    List<PlanShow.Entry> entries = values(plan, rule);
    StringBuilder reads = new StringBuilder();
    for (int e = 0; e < entries.size(); e++) {
      reads.append(e == 0 ? "" : "; ").append(entries.get(e).path()).append(": ");
      reads.append(entries.get(e).value());
    }
    row.set(CheckWords.MEANING, rule.meaning());
    row.set(CheckWords.READS, reads.toString());
    row.set(CheckWords.SOURCE, rule.source());
  }

  /** The values of the plan, and the defaults in them, under the keys that a rule reads. */
  private static List<PlanShow.Entry> values(JudgedPlan plan, Rule rule) {
    List<PlanShow.Entry> all = new ArrayList<>();
    String[] reads = rule.reads().split(" ");
    for (int k = 0; k < reads.length; k++) {
      List<String> asked = List.of(reads[k].replace("[]", "[*]"));
      all.addAll(PlanShow.of(plan.subject.plan(), asked).entries());
    }
    return all;
  }

  private static void meaning(Answer answer, Rule rule) {
    answer.figure("why", Phrase.of(rule.meaning()));
    answer.figure("reads", Phrase.of(rule.reads()));
    answer.figure("limit from", Phrase.of(rule.source()));
    answer.figure(
        rule.takesLimit() ? "your own limit" : "to switch it off",
        Phrase.of(
            "limits: {"
                + rule.id()
                + ": "
                + (rule.takesLimit() ? "...}" : "none}")
                + " in the plan"));
  }

  private static void row(Answer answer, Rule rule) {
    Show show = rule.show();
    boolean numbered = rule.usualLimit() != null && show != null;
    answer
        .row()
        .set(ID, rule.id())
        .set(NEED, rule.need())
        .setAny(LIMIT, numbered ? CheckWords.shown(rule.usualLimit(), show) : null)
        .set(UNIT, show == null ? null : show.metric().symbol())
        .set(CheckWords.MEANING, rule.meaning())
        .set(CheckWords.READS, rule.reads())
        .set(CheckWords.SOURCE, rule.source());
  }

  private static Phrase wants(Rule rule) {
    Phrase need = Phrase.of(rule.need());
    if (rule.usualLimit() != null && rule.show() != null) {
      return need.add(" ").add(rule.usualLimit(), rule.show());
    }
    return rule.show() != null && rule.need().startsWith("at ")
        ? need.add(" what follows from the plan")
        : need;
  }
}
