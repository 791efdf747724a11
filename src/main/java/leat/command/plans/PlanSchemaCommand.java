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
  public String summary() {
    return "JSON Schema of a plan, for an editor that checks while you type";
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
  public String[] manual() {
    return new String[] {
      "Prints the JSON Schema (draft 2020-12) of a plan: keys, units, words, with meanings and examples. Save it beside your plans and name it in their first line:"
          + " # yaml-language-server: $schema=plan.schema.json",
      "A schema sees one value at a time. What two values mean together, such as a level above the rim, only leat itself tells."
    };
  }

  @Override
  public String[] examples() {
    return new String[] {"plan schema"};
  }

  @Override
  public String[] seeAlso() {
    return new String[] {"leat-plan(5)"};
  }

  @Override
  public Answer answer(Call call) {
    return Answer.verbatim(PlanSchema.text());
  }
}
