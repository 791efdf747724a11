package leat.command.run;

import leat.answer.Row;
import leat.season.Interval;
import leat.season.Money;
import leat.season.YearRuns;

/** What a season costs and brings, in the plan's currency, with the ends over all runs. */
final class SeasonBill {
  private final YearRuns runs;
  private final Money money;

  SeasonBill(YearRuns runs, Money money) {
    this.runs = runs;
    this.money = money;
  }

  void fill(Row row) {
    row.set(SeasonSums.BOUGHT, SeasonRows.known(money.bought()));
    SeasonSums.ACID.set(row, runs, t -> money.prices().acidMl(t.flows().waterL()));
    SeasonSums.COST_WATER.set(row, runs, t -> money.prices().water(t.flows().waterL()));
    SeasonSums.COST_FEED.set(row, runs, t -> money.prices().feed(t.flows().concentrateMl()));
    SeasonSums.COST_ACID.set(row, runs, t -> money.prices().acid(t.flows().waterL()));
    SeasonSums.COST_ENERGY.set(row, money.energy());
    SeasonSums.COST_FIRST.set(row, money.first());
    SeasonSums.COST_SEED.set(row, money.seed());
    SeasonSums.VALUE.set(row, money.shop());
    SeasonSums.COST.set(row, runs, money::season);
    payback(row);
  }

  /** Years at the ends may never pay it back: an end that is not known stays empty. */
  private void payback(Row row) {
    double value = money.payback(runs.totals());
    if (Double.isNaN(value)) {
      return;
    }
    Interval cost = runs.interval(money::season);
    SeasonSums.PAYBACK.set(
        row, value, money.paybackLeast(cost.low()), money.paybackAt(cost.high()));
  }
}
