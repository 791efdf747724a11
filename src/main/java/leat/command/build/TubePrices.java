package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.hydraulics.Bore;
import leat.hydraulics.Bores;
import leat.plan.Named;
import leat.plan.Plan;

/** What the tubes of a table over bores cost, as far as the plan's {@code prices.tubes} says. */
final class TubePrices {
  static final Column PRICE = Column.money("price", "price");
  private static final Column NAME = Column.plain("name", "name");
  private static final Column CURRENCY = Column.plain("currency", "currency");

  private final Plan plan;
  private final Named prices;

  TubePrices(Plan plan) {
    this.plan = plan;
    this.prices = plan.section("prices").named("tubes");
  }

  /** The price of a tube, or null. */
  Double of(Bore tube) {
    for (int i = 0; i < prices.size(); i++) {
      if (prices.name(i).equals(tube.name())) {
        return (Double) prices.value(i);
      }
    }
    return null;
  }

  /** Whether one of these has a price. */
  boolean know(List<Bore> tubes) {
    boolean known = false;
    for (int i = 0; i < tubes.size(); i++) {
      known |= of(tubes.get(i)) != null;
    }
    return known;
  }

  /** The columns of a table, with the price behind them where one is known. */
  void table(Answer answer, List<Bore> tubes, Column... shown) {
    if (!know(tubes)) {
      answer.table(shown);
      return;
    }
    Column[] all = java.util.Arrays.copyOf(shown, shown.length + 1);
    all[shown.length] = PRICE;
    answer.table(all);
    answer.taken(
        Row.aside(CURRENCY).set(CURRENCY, plan.currency()),
        "prices in {currency}, for one riser, as the plan has them");
  }

  /** Says which priced names are no tube that one can buy. */
  void mind(Answer answer) {
    for (int i = 0; i < prices.size(); i++) {
      if (!isTube(prices.name(i))) {
        answer.mind(
            "no-such-tube",
            Row.aside(NAME).set(NAME, prices.name(i)),
            "prices.tubes names \"{name}\", which is no tube of these tables: write it as the table does.");
      }
    }
  }

  private static boolean isTube(String name) {
    List<Bore> all = Bores.all();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).name().equals(name)) {
        return true;
      }
    }
    return false;
  }
}
