package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.cli.ShellWord;
import leat.plan.Origin;
import leat.plan.PlanEdit;
import leat.plan.PlanErrors;
import leat.plan.PlanFile;
import leat.plan.Refused;

/** {@code leat plan set}: writes keys into a plan, in place. */
public final class PlanSetCommand extends Command {
  private static final Column KEY = Column.plain("key", "key");
  private static final Column LINE = Column.plain("line", "line");
  private static final Column BEFORE = Column.plain("before", "before");
  private static final Column AFTER = Column.plain("after", "after");
  private static final Column FILE = Column.plain("file", "file");
  private static final Column COUNT = Column.plain("count", "count");
  private static final Column ANCHOR = Column.plain("anchor", "anchor");

  @Override
  public String name() {
    return "plan set";
  }

  @Override
  public String operands() {
    return "PLAN KEY=VALUE...";
  }

  @Override
  public boolean takesPlan() {
    return false;
  }

  @Override
  public Flag[] flags() {
    return new Flag[0];
  }

  @Override
  public Answer answer(Call call) {
    List<String> sets = new ArrayList<>(call.operands());
    boolean named = !sets.isEmpty() && sets.get(0).indexOf('=') < 0;
    String name = named ? sets.remove(0) : call.fallbackPlan();
    if (name == null) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    if (sets.isEmpty()) {
      throw new Refused(PlanErrors.badSet(Origin.flag("leat plan set", "")));
    }
    if (call.has("--output") && !"-".equals(name)) {
      throw new Refused(PlanCommandErrors.setsInPlace(name, sets, call.text("--output")));
    }
    return write(call, name, sets);
  }

  private Answer write(Call call, String name, List<String> sets) {
    boolean piped = "-".equals(name);
    String text =
        PlanFile.text(name, call.terminal.file(name), piped ? call.terminal.takeInput() : null);
    PlanEdit edit = PlanEdit.of(name, text);
    List<String> paths = paths(sets);
    List<PlanEdit.Done> all = new ArrayList<>();
    for (int i = 0; i < sets.size(); i++) {
      String value = sets.get(i).substring(sets.get(i).indexOf('=') + 1);
      edit.refuseLone(paths, i, value);
      all.addAll(edit.set(paths.get(i), value));
    }
    edit.check();
    if (piped) {
      return Answer.verbatim(edit.text());
    }
    boolean marked = PlanFile.beginsWithMark(call.terminal.file(name));
    if (!edit.text().equals(text)) {
      call.rewrite(name, marked ? '\uFEFF' + edit.text() : edit.text());
    }
    for (int i = 0; i < all.size(); i++) {
      all.set(i, edit.now(all.get(i)));
    }
    return answer(name, all);
  }

  private static List<String> paths(List<String> sets) {
    List<String> paths = new ArrayList<>();
    for (int i = 0; i < sets.size(); i++) {
      int equals = sets.get(i).indexOf('=');
      if (equals < 0 && i > 0) {
        throw new Refused(PlanErrors.splitSet(sets.get(i), sets.get(i - 1) + " " + sets.get(i)));
      }
      if (equals <= 0) {
        throw new Refused(PlanErrors.badSet(Origin.flag(sets.get(i), sets.get(i))));
      }
      paths.add(sets.get(i).substring(0, equals).strip());
    }
    return paths;
  }

  private static Answer answer(String name, List<PlanEdit.Done> all) {
    Answer answer = new Answer(KEY, LINE, BEFORE, AFTER).asList();
    Row aside = Row.aside(FILE, COUNT).set(FILE, name).set(COUNT, all.size());
    for (int i = 0; i < all.size(); i++) {
      fill(answer, answer.row(), all.get(i));
    }
    if (all.size() == 1) {
      one(answer, answer.row(0).with(aside));
    } else {
      answer.sentence(aside, "{count} keys are changed in {file}.").table(KEY, LINE, BEFORE, AFTER);
    }
    return answer.next("leat check " + ShellWord.quoted(name));
  }

  private static void fill(Answer answer, Row row, PlanEdit.Done done) {
    row.set(KEY, done.path())
        .setAny(LINE, done.line() == 0 ? null : Integer.valueOf(done.line()))
        .set(BEFORE, done.before())
        .set(AFTER, done.after());
    if (done.anchor() != null) {
      answer.mind(
          "shared-anchor",
          Row.aside(ANCHOR, KEY).set(ANCHOR, done.anchor()).set(KEY, done.path()),
          "{key} carries the anchor &{anchor}: every place that says *{anchor} changes with it.");
    }
  }

  private static void one(Answer answer, Row row) {
    if (row.get(LINE) == null) {
      answer.sentence(row, "Nothing is changed in {file}: it has no {key}.");
    } else if (row.get(AFTER) == null) {
      answer.sentence(row, "{key} is removed from {file}; it was {before}, in line {line}.");
    } else if (row.get(BEFORE) == null && row.get(KEY).toString().endsWith("]")) {
      answer.sentence(row, "{key} is {after} now: a new item in {file}, line {line}.");
    } else if (row.get(BEFORE) == null) {
      answer.sentence(row, "{key} is {after} now: a new line in {file}, line {line}.");
    } else {
      answer.sentence(row, "{key} is {after} now; it was {before}. See {file}, line {line}.");
    }
  }
}
