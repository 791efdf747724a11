package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Verdict;

/** Plans side by side: the findings in which they differ, a column a plan. */
final class PlansCompared {
  private final List<JudgedPlan> plans;
  private final Column[] verdicts;
  private final Column[] values;
  private final Column[] words;

  private PlansCompared(List<JudgedPlan> plans) {
    this.plans = plans;
    this.verdicts = new Column[plans.size()];
    this.values = new Column[plans.size()];
    this.words = new Column[plans.size()];
    for (int p = 0; p < verdicts.length; p++) {
      String key = key(p);
      verdicts[p] = Column.plain(key + "_verdict", plans.get(p).name);
      values[p] = Column.plain(key + "_value", plans.get(p).name);
      words[p] = Column.plain(key + "_words", plans.get(p).name);
    }
  }

  /** The answer: one row for each finding that differs. */
  static Answer of(List<JudgedPlan> plans) {
    return new PlansCompared(plans).answer();
  }

  /** Name of a plan's columns: its file's, in letters and digits; numbered when it comes again. */
  private String key(int p) {
    String key = base(plans.get(p).name);
    int again = 1;
    for (int q = 0; q < p; q++) {
      again += base(plans.get(q).name).equals(key) ? 1 : 0;
    }
    return again == 1 ? key : key + "_" + again;
  }

  private static String base(String name) {
    int from = Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1;
    int dot = name.lastIndexOf('.');
    StringBuilder out = new StringBuilder();
    for (int i = from; i < (dot > from ? dot : name.length()); i++) {
      char c = name.charAt(i);
      boolean plain = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
      out.append(plain ? c : '_');
    }
    return out.toString();
  }

  private Answer answer() {
    Answer answer = new Answer(columns()).asList();
    Phrase[] head = new Phrase[plans.size()];
    for (int p = 0; p < head.length; p++) {
      head[p] = Phrase.of(plans.get(p).name);
    }
    if (readable() < 2) {
      answer.sentence(Phrase.of("Nothing is compared: fewer than two plans could be read."));
      return answer;
    }
    answer.figure("", head);
    int alike = rows(answer);
    sentence(answer, alike);
    return answer;
  }

  private Column[] columns() {
    Column[] all = new Column[5 + 3 * verdicts.length];
    all[0] = CheckWords.RULE;
    all[1] = CheckWords.PLACE;
    all[2] = CheckWords.TOWER;
    all[3] = CheckWords.NEED;
    all[4] = CheckWords.UNIT;
    for (int p = 0; p < verdicts.length; p++) {
      all[5 + 3 * p] = verdicts[p];
      all[6 + 3 * p] = values[p];
      all[7 + 3 * p] = words[p];
    }
    return all;
  }

  private void sentence(Answer answer, int alike) {
    Phrase words =
        answer.size() == 0
            ? Phrase.of("The plans do not differ: ")
            : Phrase.of().count(answer.size()).add(answer.size() == 1 ? " differs, " : " differ, ");
    answer.sentence(words.count(alike).add(alike == 1 ? " is alike." : " are alike."));
  }

  private int readable() {
    int readable = 0;
    for (int p = 0; p < plans.size(); p++) {
      readable += plans.get(p).isBroken() ? 0 : 1;
    }
    return readable;
  }

  private int rows(Answer answer) {
    int alike = 0;
    List<Finding> done = new ArrayList<>();
    for (int p = 0; p < plans.size(); p++) {
      for (int i = 0; i < plans.get(p).found.size(); i++) {
        Finding finding = plans.get(p).found.get(i);
        if (find(done, finding) != null || isToldByPart(finding)) {
          continue;
        }
        done.add(finding);
        if (differs(finding)) {
          row(answer, plans.get(p), finding);
        } else {
          alike++;
        }
      }
    }
    return alike;
  }

  private static Finding find(List<Finding> found, Finding like) {
    for (int i = 0; i < found.size(); i++) {
      Finding finding = found.get(i);
      if (finding.rule() == like.rule() && finding.part() == like.part()) {
        return finding;
      }
    }
    return null;
  }

  /** Whether a verdict on a whole plan stands in the rows of another plan's parts. */
  private boolean isToldByPart(Finding whole) {
    if (whole.part() != Finding.WHOLE) {
      return false;
    }
    for (int p = 0; p < plans.size(); p++) {
      List<Finding> found = plans.get(p).found;
      for (int i = 0; i < found.size(); i++) {
        if (found.get(i).rule() == whole.rule() && found.get(i).part() != Finding.WHOLE) {
          return true;
        }
      }
    }
    return false;
  }

  /** The finding of a plan at the same part; else its verdict on the whole plan. */
  private Finding found(int p, Finding like) {
    Finding whole = null;
    List<Finding> found = plans.get(p).found;
    for (int i = 0; i < found.size(); i++) {
      if (found.get(i).rule() == like.rule() && found.get(i).part() == Finding.WHOLE) {
        whole = found.get(i);
      }
    }
    Finding same = find(found, like);
    return same == null ? whole : same;
  }

  private boolean differs(Finding like) {
    for (int p = 0; p < plans.size(); p++) {
      Finding other = found(p, like);
      if (!plans.get(p).isBroken() && (other == null || !other.isLike(like))) {
        return true;
      }
    }
    return false;
  }

  private void row(Answer answer, JudgedPlan owner, Finding finding) {
    Rule rule = finding.rule();
    String part = rule.part(owner.subject, finding);
    Row row =
        answer
            .row()
            .set(CheckWords.RULE, rule.id())
            .set(CheckWords.PLACE, rule.place(finding))
            .set(CheckWords.TOWER, rule.tower(owner.subject, finding))
            .set(CheckWords.NEED, rule.need())
            .set(CheckWords.UNIT, rule.show() == null ? null : rule.show().metric().symbol());
    Phrase[] cells = new Phrase[plans.size()];
    for (int p = 0; p < cells.length; p++) {
      cells[p] = cell(row, p, found(p, finding));
    }
    answer.figure(rule.id() + (part == null ? "" : ", " + part), cells);
  }

  private Phrase cell(Row row, int p, Finding finding) {
    JudgedPlan plan = plans.get(p);
    if (finding == null) {
      row.set(verdicts[p], plan.isBroken() ? CheckWords.unreadable() : null);
      return Phrase.of("-");
    }
    row.set(verdicts[p], finding.verdict().word());
    if (finding.hasValue()) {
      row.setAny(values[p], CheckWords.shown(finding.value(), finding.rule().show()));
    }
    row.set(words[p], CheckWords.words(plan, finding));
    String verdict = finding.verdict() == Verdict.FAIL ? "FAIL" : finding.verdict().word();
    Phrase value = CheckWords.value(plan, finding);
    return "-".equals(value.render(false))
        ? Phrase.of(verdict)
        : Phrase.of(verdict + " ").add(value);
  }
}
