package leat.command.run;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.quantity.RunAndRest;
import leat.system.PeriodOf;
import leat.system.TariffOf;
import leat.system.ZoneOf;

/** {@code leat duty}: pump timing, its energy and money, against other timings. */
public final class DutyCommand extends Command {
  @Override
  public String name() {
    return "duty";
  }

  @Override
  public boolean eachPlan() {
    return true;
  }

  @Override
  public Flag[] flags() {
    return TimingFlags.all();
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    if (call.has("--suggest")) {
      return suggest(call);
    }
    Timetable timetable = DutyLine.timetable(call);
    List<Object> against = call.values("--against");
    DutyLine.Terms terms = terms(call, timetable);
    List<DutyLine> lines = new ArrayList<>();
    lines.add(terms.line(DutyLine.name(call, timetable), timetable));
    for (int i = 0; i < against.size(); i++) {
      RunAndRest other = (RunAndRest) against.get(i);
      lines.add(
          terms.line(
              call.texts("--against").get(i),
              Timetable.of(new Timing(other.run().value(), other.rest().value()))));
    }
    return new DutyCompared(call, terms, lines).answer();
  }

  private Answer suggest(Call call) {
    if (!call.hasPlan()) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    String[] others = {"--against", "--run", "--rest"};
    for (int i = 0; i < others.length; i++) {
      if (call.has(others[i])) {
        throw new Refused(CommandErrors.notBoth(this, "--suggest", others[i]));
      }
    }
    return DutySuggestion.of(call, price(call));
  }

  private DutyLine.Terms terms(Call call, Timetable timetable) {
    Plan plan = call.plan();
    if (!plan.section("pump").has("power") && !call.hasPlan()) {
      throw call.needs("--power");
    }
    TariffOf price = price(call);
    PeriodOf period =
        PeriodOf.of(
            plan,
            timetable,
            price.tariff(),
            call.above0("--days"),
            call.text("--days"),
            call.taken());
    return new DutyLine.Terms(plan, price, period, call.taken());
  }

  private TariffOf price(Call call) {
    if (call.has("--days") && call.has("--to")) {
      throw new Refused(CommandErrors.notBoth(this, "--days", "--to"));
    }
    if (call.has("--time-zone")) {
      ZoneOf.check(call.plan(), call.taken());
    }
    if (call.has("--from") && !call.has("--days") && !call.plan().section("season").has("to")) {
      throw call.needs("--to");
    }
    Double share = call.from0("--standing-share");
    TariffOf price = TariffOf.of(call.plan(), share == null ? 0 : share);
    if (price.hasStanding() && share == null) {
      call.taken().note("standing charge not counted, it is paid anyway");
    }
    return price;
  }
}
