package leat.check.run;

import java.util.List;
import java.util.OptionalDouble;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.Bill;
import leat.energy.CostFactor;
import leat.energy.Draw;
import leat.energy.Overlap;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.plan.Named;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.QuantityReader;
import leat.quantity.Units;
import leat.system.DrawOf;
import leat.system.DutyErrors;
import leat.system.RunNeeds;
import leat.system.TariffOf;

/** Electricity for the season costs no more than the plan's own limit. */
final class CostSeason extends DeclaredRule {
  private static final Show MONEY = Show.of(Units.MONEY_UNIT, 3);

  CostSeason() {
    super(
        "cost-season",
        AT_MOST,
        MONEY,
        null,
        "your own limit; the rule is silent without one",
        "limits tariff controller.power controller.relay.coil pump.power" + ReadKeys.TIMING,
        "Cost of the electricity for pump, controller and relay over the season, in the plan's currency, against limits: {cost-season: 5 EUR}.");
  }

  @Override
  protected boolean allows(double limit) {
    return limit >= 0;
  }

  @Override
  protected String allowed() {
    return "of 0 or more";
  }

  @Override
  public String place(Finding finding) {
    return "timing";
  }

  private static Overlap overlap(Subject subject, TariffOf price) {
    return Overlap.of(subject.season(), subject.timetable().windows(), price.tariff().windows());
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Double limit = subject.ownLimit(this);
    if (limit == null) {
      return List.of();
    }
    Section season = subject.section("season");
    season.needRaw("from");
    season.needRaw("to");
    subject.section("tariff").need("price");
    TariffOf price = TariffOf.of(subject.plan(), 0);
    sameCurrency(subject, price);
    Timetable timetable = subject.timetable();
    Draw draw = DrawOf.of(subject.plan(), subject.taken());
    double cost = Bill.of(overlap(subject, price), timetable, price.tariff(), draw).cost();
    return List.of(atMost(cost, limit, Verdict.FAIL));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    TariffOf price = TariffOf.of(subject.plan(), 0);
    Overlap overlap = overlap(subject, price);
    Timetable timetable = subject.timetable();
    Draw draw = DrawOf.of(subject.plan(), subject.taken());
    double limit = finding.limit();
    OptionalDouble longer = new CostFactor(overlap, price.tariff(), draw).onRests(timetable, limit);
    if (longer.isEmpty()) {
      return Advice.of("no rest is long enough: the controller alone costs more");
    }
    Advice advice = Advice.of("a pump that draws less");
    OptionalDouble shorter = new CostFactor(overlap, price.tariff(), draw).onRuns(timetable, limit);
    if (shorter.isPresent()) {
      advice.cure(scaled(timetable, shorter.getAsDouble(), 1));
    }
    advice.cure(scaled(timetable, 1, longer.getAsDouble()));
    return leastRun(advice, subject, timetable, overlap, price, draw, limit);
  }

  /** Runs cut to the least that wets the lowest pot, and rests as long as is then needed. */
  private static Advice leastRun(
      Advice advice,
      Subject subject,
      Timetable timetable,
      Overlap overlap,
      TariffOf price,
      Draw draw,
      double limit) {
    if (!RunNeeds.isKnown(subject.plan())) {
      return advice;
    }
    RunNeeds needs =
        RunNeeds.of(subject.plan(), subject.waterway(), subject.flowsLow(), subject.taken());
    if (needs.least() == null) {
      return advice;
    }
    double cut = 0;
    for (int i = 0; i < timetable.size(); i++) {
      cut = Math.max(cut, needs.least().wholeSeconds() / timetable.timing(i).runS());
    }
    Timetable least = timetable.times(cut, 1);
    OptionalDouble longer = new CostFactor(overlap, price.tariff(), draw).onRests(least, limit);
    return longer.isPresent() ? advice.cure(scaled(least, 1, longer.getAsDouble())) : advice;
  }

  private static Cure scaled(Timetable timetable, double runs, double rests) {
    Cure cure = null;
    for (int i = 0; i < timetable.size(); i++) {
      Timing timing = timetable.timing(i);
      String run = (long) Math.floor(runs * timing.runS() + 1e-9) + " s";
      String key = TimingRule.key(i, "run");
      cure = cure == null ? Cure.typed(key, run) : cure.andTyped(key, run);
      if (rests != 1) {
        cure.andAtLeast(TimingRule.key(i, "rest"), rests * timing.restS(), Show.MIN);
      }
    }
    return cure;
  }

  private void sameCurrency(Subject subject, TariffOf price) {
    Named limits = subject.plan().root().named("limits");
    String own = QuantityReader.read((String) limits.get(id()), Dimension.MONEY).currency();
    if (own == null || price.currency() == null || own.equals(price.currency())) {
      return;
    }
    for (int i = 0; i < limits.size(); i++) {
      if (limits.name(i).equals(id())) {
        throw new Refused(DutyErrors.limitCurrency(limits, i, price.currency(), own));
      }
    }
  }
}
