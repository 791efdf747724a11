package leat.solution.pitzer;

import static leat.solution.pitzer.Species.COUNT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;

/** The Gibbs energy, differentiated, against activities. */
class SecondRouteTest {
  private static final int BOTTLES = 120;

  /** Activities are the slopes of the energy: central differences, good to 1e-6 or so. */
  @Test
  void activitiesAreSlopesOfTheEnergy() {
    for (long seed = 0; seed < BOTTLES; seed++) {
      double celsius = seed % 31;
      Contents contents = Contents.of(MixedBottle.poured(Bottles.random(seed, celsius)), 1, false);
      double[] n = contents.moles();
      double w = contents.waterKg();
      double[] m = contents.molality();
      Pitzer.Activities at = new Pitzer(celsius).at(m);
      GibbsEnergy energy = new GibbsEnergy(celsius);
      for (int i = 0; i < COUNT; i++) {
        if (m[i] > 0.01) {
          double step = 1e-4 * n[i];
          double[] more = n.clone();
          double[] less = n.clone();
          more[i] += step;
          less[i] -= step;
          double slope = (energy.solution(more, w) - energy.solution(less, w)) / (2 * step);
          assertThat(Math.log(m[i]) + at.lnGamma()[i])
              .as("seed " + seed + " " + Species.symbol(i))
              .isCloseTo(slope, offset(1e-6));
        }
      }
      double step = 1e-4;
      double slope = (energy.solution(n, w + step) - energy.solution(n, w - step)) / (2 * step);
      assertThat(at.lnWater()).isCloseTo(0.0180153 * slope, offset(1e-6));
    }
  }
}
