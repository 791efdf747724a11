package leat.solution.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leat.numeric.Impossible;
import leat.solution.Ions;
import leat.solution.Salts;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.Weighed;
import org.junit.jupiter.api.Test;

class MadeWaterTest {
  /** A bottle of 1 L makes 200 L: 1000/200 = 5 mL a litre, thinned 200 times. */
  @Test
  void byHand() {
    assertThat(MadeWater.rateMlPerL(1, 200)).isEqualTo(5);
    assertThat(MadeWater.rateMlPerL(2, 200)).isEqualTo(10);
    assertThat(MadeWater.dilution(1, 200)).isEqualTo(200);
    assertThat(MadeWater.dilution(2, 200)).isEqualTo(100);
    assertThat(MadeWater.labelEc(1.4, 0.3)).isCloseTo(1.7, within(1e-12));
    assertThatThrownBy(() -> MadeWater.rateMlPerL(1, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> MadeWater.dilution(0, 200)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> MadeWater.labelEc(-1, 0.3)).isInstanceOf(Impossible.class);
  }

  /** The bottles' grams weighed into the made water at once give the same water. */
  @Test
  void isTheWaterOfTheSameGrams() {
    Recipe recipe =
        MadeWater.of(
            List.of(
                new Stock.Weighed(StockSalts.find("calcium-nitrate-4h2o"), 180),
                new Stock.Weighed(StockSalts.find("gypsum"), 20)),
            200,
            Ions.NONE);
    Recipe same =
        Recipe.mix(
            List.of(
                new Weighed(Salts.of("calcium-nitrate-4h2o"), 180),
                new Weighed(Salts.of("calcium-sulfate-2h2o"), 20)),
            200,
            Ions.NONE);
    assertThat(recipe.totalGrams()).isEqualTo(200);
    assertThat(recipe.ec().ec25()).isCloseTo(same.ec().ec25(), within(1e-12));
    for (int i = 0; i < 2; i++) {
      assertThat(recipe.salts().get(i).salt().name()).isEqualTo(same.salts().get(i).salt().name());
    }
    assertThat(recipe.litres()).isEqualTo(same.litres());
  }
}
