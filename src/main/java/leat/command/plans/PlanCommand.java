package leat.command.plans;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;

/** {@code leat plan}: what can be done with a plan; the work is in its sub-commands. */
public final class PlanCommand extends Command {
  private static final Column COMMAND = Column.plain("command", "command");
  private static final Column ANSWERS = Column.plain("answers", "answers");

  @Override
  public String name() {
    return "plan";
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
      new PlanNewCommand(),
      new PlanSetCommand(),
      new PlanShowCommand(),
      new PlanCardCommand(),
      new PlanHeaderCommand(),
      new PlanKeysCommand(),
      new PlanSchemaCommand()
    };
    Answer answer = new Answer(COMMAND, ANSWERS).asList();
    answer.sentence(
        Phrase.of(
            "A plan says what the tower is; every command reads the same one. These commands make, change and show it:"));
    for (int i = 0; i < all.length; i++) {
      answer.row().set(COMMAND, "leat " + all[i].name()).set(ANSWERS, all[i].summary());
      answer.figure("leat " + all[i].name(), Phrase.of(all[i].summary()));
    }
    return answer.next("leat plan new -o my.yaml   then measure what is marked <-");
  }
}
