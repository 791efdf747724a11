package leat.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SmallPourTest {
  /** By hand: 20 drops a millilitre (standard dropper of the pharmacopoeias, from memory). */
  @ParameterizedTest
  @CsvSource({
    "0.69, 14, 10, 6.9",
    "0.05, 1, 10, 0.5",
    "0.049, 1, 100, 4.9",
    "0.02, 0, 100, 2",
    "0.999, 20, 10, 9.99",
  })
  void dropsAndThinnedStock(double ml, int drops, int parts, double thinned) {
    SmallPour small = SmallPour.of(ml);
    assertThat(small.drops()).isEqualTo(drops);
    assertThat(small.parts()).isEqualTo(parts);
    assertThat(small.thinnedMl()).isCloseTo(thinned, within(1e-12));
    assertThat(SmallPour.isSmall(ml)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"0", "1", "7.1"})
  void nothingAndACupfulAreNotSmall(double ml) {
    assertThat(SmallPour.isSmall(ml)).isFalse();
  }

  @org.junit.jupiter.api.Test
  void negativeIsRefused() {
    assertThatThrownBy(() -> SmallPour.of(-1)).isInstanceOf(Impossible.class);
  }

  /** A kitchen scale shows whole grams (practice): less is small, nothing is not. */
  @ParameterizedTest
  @CsvSource({"0, false", "0.01, true", "0.99, true", "1, false", "3, false"})
  void whatAKitchenScaleDoesNotShow(double g, boolean small) {
    assertThat(SmallPour.isSmallWeight(g)).isEqualTo(small);
  }

  /** By hand: 10 g in 100 mL, so that a tenth of a gram is in each millilitre. */
  @org.junit.jupiter.api.Test
  void outOfAStockOfTenGrams() {
    assertThat(SmallPour.STOCK_G).isEqualTo(10);
    assertThat(SmallPour.STOCK_ML).isEqualTo(100);
    assertThat(SmallPour.ofStockMl(0.35)).isCloseTo(3.5, within(1e-12));
    assertThat(SmallPour.ofStockMl(SmallPour.STOCK_G)).isEqualTo(SmallPour.STOCK_ML);
  }
}
