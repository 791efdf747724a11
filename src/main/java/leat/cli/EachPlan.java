package leat.cli;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Format;
import leat.answer.Joined;
import leat.plan.Refused;

/**
 * One question put to several plans, one after the other; one that cannot be read stops no other.
 */
final class EachPlan {
  private final Terminal terminal;
  private final List<String> names = new ArrayList<>();
  private final List<Answer> answers = new ArrayList<>();
  private final List<String> refusals = new ArrayList<>();
  private int exitCode;

  EachPlan(Terminal terminal) {
    this.terminal = terminal;
  }

  /** Answers for each plan of a call; the exit code. */
  int run(Call call, Output output) {
    List<String> plans = call.planNames();
    Format format = call.format();
    for (int i = 0; i < plans.size(); i++) {
      Call one = call.of(plans.get(i));
      ask(plans.get(i), one);
      format = i == 0 ? one.format() : format;
      Run.tell(terminal, one.asked());
    }
    if (!answers.isEmpty()) {
      Joined joined = new Joined(names, answers);
      output.write(joined.write(format));
      Run.tell(terminal, joined.aside(format));
    }
    return exitCode;
  }

  private void ask(String name, Call one) {
    try {
      Answer answer = Run.answerOf(one);
      names.add(name);
      answers.add(answer);
      exitCode = Math.max(exitCode, answer.exitCode());
    } catch (Refused e) {
      Refused all = Asking.all(e, one, terminal);
      if (!refusals.contains(all.getMessage())) {
        // what the command line lacks is the same for every plan
        refusals.add(all.getMessage());
        Run.tell(terminal, all);
      }
      exitCode = Math.max(exitCode, all.exitCode());
    }
  }
}
