package leat.command.plans;

import java.util.List;
import leat.check.Advisor;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Rules;
import leat.check.Subject;
import leat.check.Verdict;
import leat.cli.Call;
import leat.cli.Run;
import leat.plan.Plan;
import leat.plan.Refused;

/** One plan of a call of check, judged; or not to be read. */
final class JudgedPlan {
  final String name;
  final Subject subject;
  final List<Finding> found;
  final Advisor advisor;

  /** Exit code of a plan that cannot be read, 0 for one that is judged. */
  final int broken;

  private final int[] counts = new int[Verdict.size()];
  private int lacking;

  private JudgedPlan(String name, Plan plan, List<Finding> found, Subject subject, int broken) {
    this.name = name;
    this.subject = subject;
    this.found = found;
    this.advisor = plan == null ? null : new Advisor(subject);
    this.broken = broken;
    for (int i = 0; i < found.size(); i++) {
      counts[found.get(i).verdict().ordinal()]++;
      lacking += found.get(i).lacksKeys() ? 1 : 0;
    }
  }

  /** Reads and judges a plan; what is wrong with it is told at once. */
  static JudgedPlan of(Call call, String name, Rule[] rules) {
    try {
      Plan plan = call.plan(name);
      Subject subject = new Subject(plan);
      return new JudgedPlan(name, plan, Rules.judge(subject, rules), subject, 0);
    } catch (Refused e) {
      Run.tell(call.terminal, e);
      return new JudgedPlan(name, null, List.of(), null, e.exitCode());
    }
  }

  boolean isBroken() {
    return broken > 0;
  }

  int count(Verdict verdict) {
    return counts[verdict.ordinal()];
  }

  /** Whether it takes a default, in these words. */
  boolean takes(String words) {
    return subject != null && subject.taken().words().contains(words);
  }

  /** Findings that are unknown because the plan lacks values. */
  int lacking() {
    return lacking;
  }

  /** Whether the answer is no. */
  boolean isNo(boolean strict, boolean known) {
    return count(Verdict.FAIL) > 0
        || strict && count(Verdict.WARN) > 0
        || strict && !known && count(Verdict.UNKNOWN) > 0;
  }
}
