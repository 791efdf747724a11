package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

class EdgeErrorTest {
  private static final double L = 1e-3;

  /** Wherever each edge truly lies within its error, its band holds the litres that read so. */
  @Test
  void theBandHoldsWhereverTheEdgesLie() {
    Tank tank = TaperedBox.box(0.5, 0.4, 0.3, 0);
    double[] ohms = {30, 50, 70};
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      double[] written = {12 * L, 21 * L, 33 * L};
      double error = 2 * L * random.nextDouble();
      double[] truth = new double[3];
      for (int i = 0; i < 3; i++) {
        truth[i] = written[i] + (2 * random.nextDouble() - 1) * error;
      }
      Staircase claimed = Staircase.byEdges(tank, written, ohms, 10, 0.004).withEdgeError(error);
      Staircase real = Staircase.byEdges(tank, truth, ohms, 10, 0.004);
      for (Motion motion : Motion.values()) {
        for (int step = 0; step < 4; step++) {
          assertThat(claimed.volumeLow(step, motion))
              .isLessThanOrEqualTo(real.volumeLow(step, motion) + 1e-12);
          assertThat(claimed.volumeHigh(step, motion))
              .isGreaterThanOrEqualTo(real.volumeHigh(step, motion) - 1e-12);
          assertThat(claimed.levelLow(step, motion))
              .isLessThanOrEqualTo(real.levelLow(step, motion) + 1e-12);
        }
      }
    }
  }

  @Test
  void noErrorChangesNothingAndTheEndsStay() {
    Staircase plain =
        Staircase.byEdgesAlone(50 * L, new double[] {5 * L, 40 * L}, new double[] {30, 50}, 10, 0);
    assertThat(plain.withEdgeError(0)).isSameAs(plain);
    Staircase wide = plain.withEdgeError(20 * L);
    assertThat(wide.volumeLow(0, Motion.UNKNOWN)).isZero();
    assertThat(wide.volumeLow(1, Motion.UNKNOWN)).isZero();
    assertThat(wide.volumeHigh(1, Motion.UNKNOWN)).isCloseTo(50 * L, within(1e-15));
    assertThat(wide.volumeHigh(0, Motion.UNKNOWN)).isCloseTo(25 * L, within(1e-15));
    assertThatThrownBy(() -> plain.withEdgeError(-1)).isInstanceOf(Impossible.class);
  }
}
