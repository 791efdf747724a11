package leat.command.run;

import java.util.OptionalDouble;
import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.energy.Copper;
import leat.plan.Kind;
import leat.plan.KindReader;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;

/** {@code leat duty cable}: voltage lost on the way to a low-voltage pump. */
public final class DutyCableCommand extends Command {
  @Override
  public String name() {
    return "duty cable";
  }

  @Override
  public Flag[] flags() {
    return CableFlags.all();
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    if (!call.hasPlan()) {
      needed(call, plan);
    }
    CableAsked asked = new CableAsked(call);
    DutyCableAnswer answer = new DutyCableAnswer(asked);
    Double gauge = gauge(call);
    Double section = gauge == null ? section(plan) : Double.valueOf(Copper.gaugeArea(gauge));
    if (section != null) {
      return answer.named(section, gauge);
    }
    OptionalDouble least = asked.leastSize();
    return least.isEmpty() ? answer.none() : answer.least(least.getAsDouble());
  }

  private void needed(Call call, Plan plan) {
    Section supply = plan.section("pump").section("supply");
    if (!supply.has("dc")) {
      throw call.needs("--dc");
    }
    if (!plan.section("pump").has("power")) {
      throw call.needs("--power");
    }
    if (!supply.section("cable").has("length")) {
      throw call.needs("--length");
    }
  }

  private static Double section(Plan plan) {
    return plan.section("pump").section("supply").section("cable").maybe("section");
  }

  /** A wire gauge, with or without the word AWG before or behind it; null when none is given. */
  private Double gauge(Call call) {
    String typed = call.text("--gauge");
    if (typed == null) {
      return null;
    }
    if (call.has("--section")) {
      throw new Refused(CommandErrors.notBoth(this, "--gauge", "--section"));
    }
    String number = typed.strip();
    if (number.regionMatches(true, 0, "AWG", 0, 3)) {
      number = number.substring(3);
    } else if (number.regionMatches(true, number.length() - 3, "AWG", 0, 3)) {
      number = number.substring(0, number.length() - 3);
    }
    return (Double) KindReader.read(Kind.NUMBER, "--gauge", number.strip());
  }
}
