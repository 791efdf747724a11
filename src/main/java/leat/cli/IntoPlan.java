package leat.cli;

import java.util.List;
import leat.answer.Answer;
import leat.plan.PlanEdit;
import leat.plan.PlanFile;
import leat.plan.PlanHint;

/** How values get into the plan of a call: told as next steps. */
final class IntoPlan {
  private final Call call;

  IntoPlan(Call call) {
    this.call = call;
  }

  /** The command that writes them, and the lines to change by hand. */
  Answer tell(Answer answer, PlanHint hint) {
    String name = call.planName();
    if (name == null || "-".equals(name)) {
      return nexts(answer, "in the plan write  ", hint.lines());
    }
    PlanEdit edit = PlanEdit.of(name, PlanFile.text(name, call.terminal.file(name), null));
    List<String> sets = hint.sets(edit);
    if (!sets.isEmpty()) {
      StringBuilder line = new StringBuilder("leat plan set ").append(ShellWord.quoted(name));
      for (int i = 0; i < sets.size(); i++) {
        line.append(' ').append(ShellWord.quoted(sets.get(i)));
      }
      answer.next(line.toString());
    }
    return nexts(answer, sets.isEmpty() ? "" : "or by hand: ", hint.byHand(edit, !sets.isEmpty()));
  }

  private static Answer nexts(Answer answer, String start, List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      answer.next(start + lines.get(i));
    }
    return answer;
  }
}
