package leat.command.plans;

import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.plan.PlanSchema;

/** {@code leat plan schema}: the JSON Schema of a plan. */
public final class PlanSchemaCommand extends Command {
  @Override
  public String name() {
    return "plan schema";
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
    return Answer.verbatim(PlanSchema.text());
  }
}
