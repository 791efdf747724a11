package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import leat.solution.stock.StockBottles;
import org.junit.jupiter.api.Test;

class BallastTest {
  /** Second route: topped up in small cans, the salt counted. */
  @Test
  void saltCountedCanByCan() {
    double salt = 44 * 14.0;
    double added = 0;
    while (salt / 44 < Ballast.SODIUM_MG_L) {
      salt += 0.01 * 14.0;
      added += 0.01;
    }
    assertThat(Ballast.days(14, Ballast.SODIUM_MG_L, 4, 44)).isCloseTo(added / 4, within(0.003));
  }

  @Test
  void theDaysAreWhenTheLimitIsMet() {
    double days = Ballast.days(14, Ballast.SODIUM_MG_L, 4, 44);
    // what came with the water stays: in the first filling, and in 4 L a day
    assertThat(14 + 14 * 4 * days / 44).isCloseTo(Ballast.SODIUM_MG_L, within(1e-9));
  }

  @Test
  void edges() {
    assertThat(Ballast.days(0, 69, 4, 44)).isNull();
    assertThat(Ballast.days(14, 69, 0, 44)).isNull();
    assertThat(Ballast.days(70, 69, 4, 44)).isZero();
    assertThat(Ballast.days(69, 69, 0, 44)).as("at the limit already, though none drinks").isZero();
    assertThatThrownBy(() -> Ballast.days(-1, 69, 4, 44)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Ballast.days(1, 69, 4, 0)).isInstanceOf(Impossible.class);
  }

  @Test
  void rainInTheGauge() {
    assertThat(Topup.rainfallL(0.03, 0.012, 1)).isCloseTo(0.36, within(1e-12));
    assertThatThrownBy(() -> Topup.rainfallL(0.03, 2.1, 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Topup.rainfallL(-0.03, 0.1, 1)).isInstanceOf(Impossible.class);
  }

  @Test
  void solutionOfASeason() {
    assertThat(StockBottles.seasonL(40, 21, 21.0, 0)).isEqualTo(40);
    assertThat(StockBottles.seasonL(40, 22, 21.0, 0)).isEqualTo(80);
    assertThat(StockBottles.seasonL(40, 100, null, 3)).isEqualTo(340);
    assertThatThrownBy(() -> StockBottles.seasonL(40, 0, null, 3)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> StockBottles.seasonL(40, 10, 0.5, 3)).isInstanceOf(Impossible.class);
  }
}
