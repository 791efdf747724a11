package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The mean of a ramp: second route a run in ten thousand moments. */
class RunDipTest {
  private static double counted(double dip, double hysteresis, double ramp) {
    int n = 10_000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double t = (i + 0.5) / n;
      double kept = ramp > 0 ? dip * Math.min(1, t / ramp) : dip;
      sum += Math.max(0, kept - hysteresis);
    }
    return sum / n;
  }

  @Test
  void isTheMeanOfARun() {
    Random chance = new Random(11);
    for (int i = 0; i < 300; i++) {
      double dip = 0.2 + 3 * chance.nextDouble();
      double h = dip * 0.95 * chance.nextDouble();
      double ramp = chance.nextDouble();
      double seen = RunDip.seen(dip, h, ramp);
      assertThat(seen).isCloseTo(counted(dip, h, ramp), within(1e-3));
      assertThat(RunDip.dip(seen, h, ramp)).isCloseTo(dip, within(1e-9));
      assertThat(RunDip.hysteresis(seen, dip, ramp)).isCloseTo(h, within(1e-9));
      assertThat(RunDip.dip(seen, h, 0)).isLessThanOrEqualTo(dip + 1e-9);
      assertThat(RunDip.dip(seen, h, 1)).isGreaterThanOrEqualTo(dip - 1e-9);
    }
  }

  /** By hand: 1.6 L taken up in 60 s of a run of 120 s, hysteresis 0.66 L: 0.61 L are seen. */
  @Test
  void readsLowWithoutTheRamp() {
    assertThat(RunDip.seen(1.6, 0.66, 0.5)).isCloseTo(0.94 * 0.94 * 0.5 / 3.2 + 0.47, within(1e-9));
    assertThat(RunDip.dip(0.608, 0.66, 0)).isCloseTo(1.268, within(1e-9));
    assertThat(RunDip.dip(0.608, 0.66, 0.5)).isCloseTo(1.6, within(1e-3));
  }

  @Test
  void aHiddenDipIsNotSeen() {
    assertThat(RunDip.seen(0.5, 0.6, 0.5)).isZero();
    assertThat(RunDip.hysteresis(0, 0.5, 0.5)).isEqualTo(0.5);
  }
}
