package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

class DriftTest {
  /** By hand: 45 L at 1.6 are 72 mS/cm L; 15 L drunk take 15 x 1.2 = 18; 54 in 30 L are 1.8. */
  @Test
  void byHand() {
    assertThat(Drift.ecMsCm(30, 45, 1.6, 1.2)).isCloseTo(1.8, within(1e-12));
    assertThat(Drift.ecMsCm(45, 45, 1.6, 1.2)).isEqualTo(1.6);
    assertThat(Drift.ecMsCm(10, 45, 1.6, 1.6)).isCloseTo(1.6, within(1e-12));
    assertThat(Drift.ecMsCm(10, 45, 1.6, 2.4)).isZero();
  }

  /** Second route: drop by drop. */
  @Test
  void dropByDrop() {
    double salt = 45 * 1.6;
    double volume = 45;
    for (int i = 0; i < 25_000; i++) {
      salt -= 0.001 * 1.2;
      volume -= 0.001;
    }
    assertThat(Drift.ecMsCm(20, 45, 1.6, 1.2)).isCloseTo(salt / volume, within(1e-9));
  }

  @Test
  void refusals() {
    assertThatThrownBy(() -> Drift.ecMsCm(46, 45, 1.6, 1.2)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Drift.ecMsCm(0, 45, 1.6, 1.2)).isInstanceOf(Impossible.class);
  }
}
