package leat.check.run;

import java.util.List;
import java.util.OptionalDouble;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.Bill;
import leat.energy.Draw;
import leat.energy.Overlap;
import leat.energy.RestFactor;
import leat.energy.Timetable;
import leat.plan.Named;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.QuantityReader;
import leat.quantity.Units;
import leat.system.DrawOf;
import leat.system.DutyErrors;
import leat.system.TariffOf;
import leat.system.TimetableOf;
import leat.system.ZoneOf;

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
        "limits tariff timing season site.time_zone pump.power controller",
        "Cost of the electricity for pump, controller and relay over the season, in the plan's currency, against limits: {cost-season: 5 EUR}.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
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
    Timetable timetable = TimetableOf.of(subject.plan());
    Draw draw = DrawOf.of(subject.plan());
    Overlap overlap =
        Overlap.of(ZoneOf.season(subject.plan()), timetable.windows(), price.tariff().windows());
    double cost = Bill.of(overlap, timetable, price.tariff(), draw).cost();
    return List.of(
        atMost(
            cost,
            limit,
            Verdict.FAIL,
            advice(overlap, timetable, price, draw, Math.max(0, limit))));
  }

  private static Phrase advice(
      Overlap overlap, Timetable timetable, TariffOf price, Draw draw, double limit) {
    OptionalDouble factor = RestFactor.forCost(overlap, timetable, price.tariff(), draw, limit);
    if (factor.isEmpty()) {
      return Phrase.of("no rest is long enough: the controller alone costs more");
    }
    if (timetable.size() == 1) {
      double rest = factor.getAsDouble() * timetable.timing(0).restS();
      return Mends.of(Phrase.of(), "timing[0].rest", rest, Show.MIN)
          .add(", as far as dry_limit lets it");
    }
    return Phrase.of("every rest of timing ")
        .number(factor.getAsDouble(), 3)
        .add(" times as long, as far as dry_limit lets it");
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
