package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import leat.numeric.Impossible;
import leat.solution.Concentrate;
import org.junit.jupiter.api.Test;

class TopupSaltsTest {
  /** By hand: (45 x 1.6 - 31 x 1.4 - 14 x 0.3) / 1.9 litres of the recipe. */
  @Test
  void aWorkedExample() {
    TopupSalts.Answer one = TopupSalts.solve(31, 1.4, 45, 1.6, 0.3, 1.9);
    assertThat(one.drainL()).isZero();
    assertThat(one.waterL()).isEqualTo(14);
    assertThat(one.recipeL()).isCloseTo(24.4 / 1.9, within(1e-12));
    assertThat(one.finalEcMsCm()).isCloseTo(1.6, within(1e-12));
  }

  /** Second route: the top-up of the sheet with a feed of 0.001 mL/L, whose volume is nothing. */
  @Test
  void aFeedSoStrongThatItsVolumeIsNothing() {
    Random random = new Random(11);
    int reached = 0;
    for (int i = 0; i < 2000; i++) {
      double full = 5 + 95 * random.nextDouble();
      double volume = 1.1 * full * random.nextDouble();
      double ec = 3 * random.nextDouble();
      double target = 0.3 + 2 * random.nextDouble();
      double water = 2 * random.nextDouble();
      double gain = 0.5 + 2 * random.nextDouble();
      TopupSalts.Answer dry = TopupSalts.solve(volume, ec, full, target, water, gain);
      Topup.Answer wet =
          Topup.solve(TopupAsk.dry(volume, ec, full, target, water, new Concentrate(0.001, gain)));
      assertThat(dry.reached()).isEqualTo(wet.reached());
      if (dry.reached()) {
        reached++;
        assertThat(dry.drainL()).isCloseTo(wet.drainL(), within(1e-5 * full));
        assertThat(dry.waterL()).isCloseTo(wet.waterL(), within(1e-5 * full));
        // a thousandth of a millilitre for each litre of the recipe
        assertThat(dry.recipeL()).isCloseTo(wet.concentrateMl() / 0.001, within(1e-5 * full));
      }
    }
    assertThat(reached).isBetween(1000, 1990);
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> TopupSalts.solve(31, 1.4, 45, 1.6, 0.3, 0))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> TopupSalts.solve(-1, 1.4, 45, 1.6, 0.3, 1))
        .isInstanceOf(Impossible.class);
  }
}
