package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import leat.numeric.Impossible;
import leat.solution.Concentrate;
import org.junit.jupiter.api.Test;

class ThinningTest {
  /** By hand: 45 x 0.8 / 1.3 and 45 x 0.8 / 2.1. */
  @Test
  void aWorkedExample() {
    Thinning thin = Thinning.of(45, 2.4, 1.6, 0.3);
    assertThat(thin.waterL()).isCloseTo(27.6923077, within(1e-7));
    assertThat(thin.finalVolumeL()).isCloseTo(72.6923077, within(1e-7));
    assertThat(thin.swapL()).isCloseTo(17.1428571, within(1e-7));
  }

  /** Second route: a full tank of the top-up, whose sheet linear programming agrees with. */
  @Test
  void swappingIsATopupOfAFullTank() {
    Random random = new Random(7);
    for (int i = 0; i < 500; i++) {
      double volume = 1 + 99 * random.nextDouble();
      double water = random.nextDouble();
      double to = water + 0.05 + 2 * random.nextDouble();
      double from = to + 2 * random.nextDouble();
      Thinning thin = Thinning.of(volume, from, to, water);
      Topup.Answer swap =
          Topup.solve(TopupAsk.dry(volume, from, volume, to, water, new Concentrate(5, 1.9)));
      assertThat(thin.swapL()).isCloseTo(swap.drainL(), within(1e-9 * volume));
      double mixed = (from * volume + water * thin.waterL()) / (volume + thin.waterL());
      assertThat(mixed).isCloseTo(to, within(1e-12));
    }
  }

  @Test
  void waterThatIsNoWeakerThinsNothing() {
    assertThat(Thinning.of(45, 2.4, 0.3, 0.3)).isNull();
    assertThat(Thinning.of(45, 2.4, 0.2, 0.3)).isNull();
    assertThat(Thinning.of(45, 0.3, 0.3, 0.3)).isNull();
    // 45 x 2.1/0.00001 litres: over a thousand cubic metres
    assertThat(Thinning.of(45, 2.4, 0.30001, 0.3)).isNull();
    assertThat(Thinning.of(45, 1.6, 1.6, 0.3).waterL()).isZero();
    assertThatThrownBy(() -> Thinning.of(45, 1.5, 1.6, 0.3)).isInstanceOf(Impossible.class);
  }
}
