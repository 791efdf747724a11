package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RainSeenTest {
  private static final double TARGET = 1.6;
  private static final double UPTAKE = 1.2;
  private static final double RAIN_EC = 0.02;

  /** Second route: the tank forward in a hundred steps, drinking and rain in turn. */
  @Property(tries = 300)
  void whatRainedInIsFoundAgain(
      @ForAll @IntRange(min = 10, max = 90) int beforeL,
      @ForAll @IntRange(min = 0, max = 60) int drunkDl,
      @ForAll @IntRange(min = 0, max = 200) int rainDl) {
    double drunk = drunkDl / 10.0;
    double rain = rainDl / 10.0;
    double volume = beforeL;
    double salt = beforeL * TARGET;
    for (int i = 0; i < 100; i++) {
      volume -= drunk / 100;
      salt -= drunk / 100 * UPTAKE;
      volume += rain / 100;
      salt += rain / 100 * RAIN_EC;
    }
    RainSeen seen = RainSeen.since(beforeL, TARGET, volume, salt / volume, UPTAKE, TARGET, RAIN_EC);
    assertThat(seen.rainL()).isCloseTo(rain, within(1e-6));
    assertThat(seen.drunkL()).isCloseTo(drunk, within(1e-6));
    assertThat(seen.lowL()).isLessThanOrEqualTo(seen.rainL() + 1e-9);
    assertThat(seen.highL()).isGreaterThanOrEqualTo(seen.rainL() - 1e-9);
  }

  @Test
  void waterAndSaltInIsNoRain() {
    RainSeen seen = RainSeen.since(38, 1.6, 43, 1.7, UPTAKE, TARGET, RAIN_EC);
    assertThat(seen.rainL()).isZero();
    assertThat(seen.shows()).isFalse();
    assertThat(seen.isPoured()).isTrue();
  }

  @Test
  void rainAsSaltAsTheDrinkTellsNothing() {
    assertThatThrownBy(() -> RainSeen.since(40, 1.6, 40, 1.5, 0.4, 1, 0.4))
        .isInstanceOf(Impossible.class);
  }

  /**
   * 40 L of 1.6 are 42 L of 1.4: the salt fell by 5.2, the volume rose by 2 L. By R = (-5.2 - 2
   * u)/(0.02 - u): 7.6/1.18 L with u = 1.2; 6.48/0.62 with 0.4 x 1.6; 8.72/1.74 with 1.1 x 1.6.
   */
  @Test
  void theBandIsThatOfTheUptake() {
    RainSeen seen = RainSeen.since(40, 1.6, 42, 1.4, UPTAKE, TARGET, RAIN_EC);
    assertThat(seen.rainL()).isCloseTo(7.6 / 1.18, within(1e-9));
    assertThat(seen.drunkL()).isCloseTo(7.6 / 1.18 - 2, within(1e-9));
    assertThat(seen.lowL()).isCloseTo(8.72 / 1.74, within(1e-9));
    assertThat(seen.highL()).isCloseTo(6.48 / 0.62, within(1e-9));
    assertThat(seen.shows()).isTrue();
    assertThat(seen.isPoured()).isFalse();
  }

  @Test
  void halfALitreDoesNotShow() {
    assertThat(new RainSeen(0.4, 0.3, 0.5, 1).shows()).isFalse();
    assertThat(new RainSeen(0.4, 0.3, 0.51, 1).shows()).isTrue();
    assertThat(new RainSeen(0, 0, 0, -0.5).isPoured()).isFalse();
    assertThat(new RainSeen(0, 0, 0, -0.51).isPoured()).isTrue();
  }
}
