package leat.command.plans;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.plan.Refused;

/** {@code leat plan}: what can be done with a plan; the work is in its four sub-commands. */
public final class PlanCommand extends Command {
  private static final Column COMMAND = Column.plain("command", "command");
  private static final Column ANSWERS = Column.plain("answers", "answers");

  @Override
  public String name() {
    return "plan";
  }

  @Override
  public String operands() {
    return "[COMMAND]";
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
    Command[] all = {
      new PlanNewCommand(), new PlanKeysCommand(), new PlanShowCommand(), new PlanSchemaCommand()
    };
    if (!call.operands().isEmpty()) {
      throw new Refused(PlanCommandErrors.unknownPlanCommand(call.operands().get(0)));
    }
    Answer answer = new Answer(COMMAND, ANSWERS).asList();
    answer.sentence(
        Phrase.of("A plan says what the tower is; every command reads the same one. Four ways:"));
    for (int i = 0; i < all.length; i++) {
      answer.row().set(COMMAND, "leat " + all[i].name()).set(ANSWERS, all[i].summary());
      answer.figure("leat " + all[i].name(), Phrase.of(all[i].summary()));
    }
    return answer.next("leat plan new -o my.yaml   then measure what is marked <-");
  }
}
