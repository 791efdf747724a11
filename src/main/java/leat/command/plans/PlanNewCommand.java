package leat.command.plans;

import java.util.List;
import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.plan.Kind;
import leat.plan.Refused;
import leat.plan.Starter;

/** {@code leat plan new}: a commented plan to start from. */
public final class PlanNewCommand extends Command {
  @Override
  public String name() {
    return "plan new";
  }

  @Override
  public String summary() {
    return "a commented plan to start from; what is marked <- wants measuring";
  }

  @Override
  public boolean takesPlan() {
    return false;
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of("--name", "NAME", Kind.TEXT, "balcony", "name of the plan"),
      Flag.on("--force", "writes over a file that is there already"),
    };
  }

  @Override
  public String[] manual() {
    return new String[] {
      "Writes a plan of one small tower with every key that most towers need. It is a whole plan: `leat check` accepts it as it stands. Change what is marked <-, one"
          + " line after the other, and check again.",
      "With -o it goes to a file. A file that is there already is left alone, unless --force is given."
    };
  }

  @Override
  public String[] examples() {
    return new String[] {"plan new", "plan new --name balcony"};
  }

  @Override
  public String[] seeAlso() {
    return new String[] {"leat-plan(5)", "leat-check(1)"};
  }

  @Override
  public Answer answer(Call call) {
    String file = call.text("--output");
    if (file != null && !call.has("--force") && call.terminal.file(file).isFile()) {
      throw new Refused(List.of(PlanCommandErrors.alreadyThere(file)), 3);
    }
    return Answer.verbatim(Starter.text(call.text("--name")));
  }
}
