package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.plan.PlanShow;
import leat.plan.Refused;

/** {@code leat plan show}: the values of a plan as leat reads them. */
public final class PlanShowCommand extends Command {
  private static final Column KEY = Column.plain("key", "key");
  private static final Column VALUE = Column.plain("value", "value");
  private static final Column FROM = Column.plain("from", "from");
  private static final Column LINE = Column.plain("line", "line");

  @Override
  public String name() {
    return "plan show";
  }

  @Override
  public String operands() {
    return "[PLAN] [KEY...]";
  }

  @Override
  public Flag[] flags() {
    return new Flag[0];
  }

  @Override
  public Answer answer(Call call) {
    List<String> keys = new ArrayList<>(call.operands());
    String name = call.text("--plan");
    if (name == null && !keys.isEmpty() && (!call.hasPlan() || isPlan(call, keys.get(0)))) {
      name = keys.remove(0);
    }
    if (name == null) {
      name = call.planName();
    }
    if (name == null) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    PlanShow show = PlanShow.of(call.plan(name), keys);
    return "text".equals(call.format().name) ? Answer.verbatim(show.yaml()) : rows(show);
  }

  private static Answer rows(PlanShow show) {
    Answer answer = new Answer(KEY, VALUE, FROM, LINE).asList();
    List<PlanShow.Entry> entries = show.entries();
    for (int i = 0; i < entries.size(); i++) {
      PlanShow.Entry entry = entries.get(i);
      answer
          .row()
          .set(KEY, entry.path())
          .set(VALUE, entry.value())
          .set(FROM, entry.from())
          .setAny(LINE, entry.line() == 0 ? null : Integer.valueOf(entry.line()));
    }
    return answer;
  }

  /** With LEAT_PLAN set, a first operand that is a file is still the plan. */
  private static boolean isPlan(Call call, String operand) {
    return "-".equals(operand)
        || call.terminal.file(operand).exists()
        || operand.endsWith(".yaml")
        || operand.endsWith(".yml");
  }
}
