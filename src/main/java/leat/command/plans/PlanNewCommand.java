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
  public boolean takesPlan() {
    return false;
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of("--name", "NAME", Kind.TEXT, "balcony", "name of the plan"),
      Flag.of("--currency", "CODE", Kind.CURRENCY, "USD", "currency of the plan's prices"),
      Flag.on("--force", "writes over a file that is there already"),
    };
  }

  @Override
  public Answer answer(Call call) {
    String file = call.text("--output");
    if (file != null && !call.has("--force") && call.terminal.file(file).isFile()) {
      throw new Refused(List.of(PlanCommandErrors.alreadyThere(file)), 3);
    }
    return Answer.verbatim(
        Starter.text(call.text("--name"), (String) call.value("--currency"), call.format().us));
  }
}
