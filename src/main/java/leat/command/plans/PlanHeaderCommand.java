package leat.command.plans;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.controller.TowerHeader;
import leat.plan.Checksum;
import leat.plan.Plan;
import leat.plan.Refused;

/** {@code leat plan header}: what the controller's program needs of a plan, as C. */
public final class PlanHeaderCommand extends Command {
  private static final Column PLAN = Column.plain("plan", "plan");
  private static final Column HELD = Column.plain("held", "it holds");
  private static final Column CHECKSUM = Column.plain("plan_sha256", "checksum of the plan");

  @Override
  public String name() {
    return "plan header";
  }

  @Override
  public String operands() {
    return "[PLAN]";
  }

  @Override
  public Flag[] flags() {
    return new Flag[0];
  }

  @Override
  public Answer answer(Call call) {
    if (!call.hasPlan()) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    Plan plan = call.plan();
    String checksum = Checksum.of(plan);
    TowerHeader header = new TowerHeader(checksum);
    HeaderParts parts = new HeaderParts(plan, header, call.taken());
    parts.add();
    boolean text = "text".equals(call.format().name);
    Answer answer = text ? written(call, plan, header, parts) : lists(plan, checksum, parts);
    answer.sentence(
        Row.aside(PLAN, HELD).set(PLAN, plan.title()).set(HELD, parts.left.made()),
        "A header for the controller of {plan}: {held}.");
    parts.left.minds(answer);
    return call.withTaken(answer);
  }

  private static Answer written(Call call, Plan plan, TowerHeader header, HeaderParts parts) {
    about(call, plan, header, parts.left);
    return Answer.verbatim(header.text());
  }

  private static Answer lists(Plan plan, String checksum, HeaderParts parts) {
    Answer answer = new Answer(LeftOut.PART, LeftOut.GIVEN, LeftOut.NEEDS).asList();
    parts.left.rows(answer);
    Answer figures = new Answer(PLAN, CHECKSUM);
    figures.row().set(PLAN, plan.title()).set(CHECKSUM, checksum);
    return answer.jsonObject(figures).array("parts", answer);
  }

  private static void about(Call call, Plan plan, TowerHeader header, LeftOut left) {
    header.about("What the controller of " + plan.title() + " needs, made by leat plan header.");
    List<String> sets = call.texts("--set");
    for (String set : sets) {
      header.about("Over the plan's file: --set " + set);
    }
    for (String words : left.words()) {
      header.about("Left out: " + words + ".");
    }
    List<String> taken = call.taken().words();
    if (!taken.isEmpty()) {
      header.about("Taken: " + String.join("; ", taken) + ".");
    }
  }
}
