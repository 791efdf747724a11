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
}
