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
}
