package leat.solution.pitzer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leat.solution.stock.Stock;
import leat.solution.stock.StockBottles;
import leat.solution.stock.StockSalts;
import org.junit.jupiter.api.Test;

class StockBottleTest {
  private static Stock.Weighed weighed(String salt, double grams) {
    return new Stock.Weighed(StockSalts.find(salt), grams);
  }

  /** Each salt of it is under 80 % of its own limit; together 55 g of K2SO4 fall out. */
  private static final List<Stock.Weighed> POTASSIUM =
      List.of(
          weighed("potassium-nitrate", 134),
          weighed("potassium-sulfate", 66.8),
          weighed("magnesium-sulfate-7h2o", 156),
          weighed("monopotassium-phosphate", 44.5));

  @Test
  void theIonsSayWhatTheSharesDoNot() {
    StockBottle bottle = StockBottle.of(POTASSIUM, 1, 5);
    assertThat(bottle.shares().verdict()).isNotEqualTo(Stock.Verdict.CRYSTALS);
    assertThat(bottle.verdict()).isEqualTo(Stock.Verdict.CRYSTALS);
    assertThat(bottle.ionsCrystallise()).isTrue();
    assertThat(bottle.overfull()).isFalse();
  }

  /** The advised bottle is clear, a tenth of a litre less is not. */
  @Test
  void theLargerBottleIsClear() {
    for (double celsius : new double[] {0, 5, 10, 20}) {
      double litres = StockBottle.clearLitres(POTASSIUM, 1, celsius);
      assertThat(StockBottle.of(POTASSIUM, litres, celsius).verdict())
          .isEqualTo(Stock.Verdict.CLEAR);
      assertThat(StockBottle.of(POTASSIUM, litres - 0.1, celsius).verdict())
          .isNotEqualTo(Stock.Verdict.CLEAR);
      assertThat(StockBottles.strongest(POTASSIUM, 1, celsius)).isGreaterThan(1 / litres);
    }
  }

  @Test
  void noBottleHelpsCalciumWithSulfate() {
    List<Stock.Weighed> both =
        List.of(weighed("calcium-nitrate-4h2o", 180), weighed("magnesium-sulfate-7h2o", 95));
    assertThat(StockBottle.of(both, 1, 5).calciumMeets()).isTrue();
    assertThat(StockBottle.clearLitres(both, 1, 5)).isNull();
  }

  /** Both bottles are clear at the strongest that both may stand, and at 2 % more one is not. */
  @Test
  void theStrongestOfBothIsThatOfTheWeaker() {
    List<Stock.Weighed> all = new java.util.ArrayList<>(POTASSIUM);
    all.add(weighed("calcium-nitrate-4h2o", 180));
    double times = Strength.ofBottles(all, 1, 5, false);
    assertThat(clear(all, times)).isTrue();
    assertThat(clear(all, 1.02 * times)).isFalse();
    // calcium takes no part: the other bottle alone decides
    assertThat(Strength.ofBottles(POTASSIUM, 1, 5, true)).isEqualTo(times);
    assertThat(Strength.ofBottles(POTASSIUM, 1, 5, false)).isEqualTo(times);
    assertThat(Strength.ofBottles(List.of(), 1, 5, false)).isNull();
    assertThat(Strength.makesL(200, 1.5)).isEqualTo(300);
  }

  private static boolean clear(List<Stock.Weighed> all, double times) {
    for (int b = 1; b <= 2; b++) {
      List<Stock.Weighed> there = new java.util.ArrayList<>();
      for (Stock.Weighed one : StockBottles.of(all, b)) {
        there.add(new Stock.Weighed(one.salt(), one.grams() * times));
      }
      if (StockBottle.of(there, 1, 5).verdict() != Stock.Verdict.CLEAR) {
        return false;
      }
    }
    return true;
  }

  @Test
  void aWeakBottleHasNothingToTell() {
    StockBottle weak = StockBottle.of(List.of(weighed("potassium-nitrate", 20)), 1, 5);
    assertThat(weak.verdict()).isEqualTo(Stock.Verdict.CLEAR);
    assertThat(weak.ionsCrystallise()).isFalse();
    assertThat(weak.overfull()).isFalse();
    assertThat(weak.calciumMeets()).isFalse();
    assertThat(weak.hinderEachOther()).isFalse();
  }
}
