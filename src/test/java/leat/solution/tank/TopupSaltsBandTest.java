package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import leat.solution.Concentrate;
import org.junit.jupiter.api.Test;

/** Rain and bands where the feed is weighed. */
class TopupSaltsBandTest {
  /** By hand: 3 L of rain of 0.02 into 31 L of 1.4 are 34 L of 1.2782; 11 L of water of 0.3. */
  @Test
  void rainFallsInFirst() {
    TopupSaltsAsk ask = new TopupSaltsAsk(1.4, 45, 1.6, 0.3, 1.9, 3, 0.02);
    assertThat(ask.rained(31).volumeL()).isEqualTo(34);
    assertThat(ask.rained(31).ecMsCm()).isCloseTo((31 * 1.4 + 3 * 0.02) / 34, within(1e-12));
    TopupSalts.Answer one = ask.solve(31);
    assertThat(one.waterL()).isCloseTo(11, within(1e-12));
    assertThat(one.recipeL())
        .isCloseTo((45 * 1.6 - 31 * 1.4 - 3 * 0.02 - 11 * 0.3) / 1.9, within(1e-12));
  }

  /** By hand: 43 L of 1.4 and 5 L of rain are 48 L; 3 of them run over at the mixed EC. */
  @Test
  void rainRunsOverAtTheMark() {
    Rained rained = Rained.of(43, 1.4, 45, 5, 0.02);
    assertThat(rained.volumeL()).isEqualTo(45);
    assertThat(rained.overflowL()).isCloseTo(3, within(1e-12));
    assertThat(rained.ecMsCm()).isCloseTo((43 * 1.4 + 5 * 0.02) / 48, within(1e-12));
    assertThat(Rained.of(47, 1.4, 45, 0, 0.02)).isEqualTo(new Rained(47, 1.4, 0));
    assertThat(Rained.of(0, 1.4, 45, 0, 0.02).ecMsCm()).isZero();
  }

  /** Second route: the band of the sheet with a feed of 0.001 mL/L, whose volume is nothing. */
  @Test
  void aBandInTheRainIsThatOfAFeedWithoutVolume() {
    Random random = new Random(23);
    int reached = 0;
    for (int i = 0; i < 800; i++) {
      double full = 5 + 95 * random.nextDouble();
      double low = full * random.nextDouble();
      double high = low + 0.2 * full * random.nextDouble();
      double middle = (low + high) / 2;
      double ec = 3 * random.nextDouble();
      double target = 0.3 + 2 * random.nextDouble();
      double water = 2 * random.nextDouble();
      double gain = 0.5 + 2 * random.nextDouble();
      double rain = i % 4 == 0 ? 0 : 0.4 * full * random.nextDouble();
      TopupSaltsBand dry =
          TopupSaltsBand.solve(
              new TopupSaltsAsk(ec, full, target, water, gain, rain, 0.02), low, middle, high);
      TopupBand wet =
          TopupBand.solve(
              new TopupAsk(
                  middle, ec, full, target, water, new Concentrate(0.001, gain), rain, 0.02),
              low,
              high);
      assertThat(dry.doubtful()).isEqualTo(wet.doubtful());
      if (dry.middle().reached()) {
        reached++;
        double litre = 1e-5 * full;
        assertThat(dry.drainLowL()).isCloseTo(wet.drainLowL(), within(litre));
        assertThat(dry.drainHighL()).isCloseTo(wet.drainHighL(), within(litre));
        assertThat(dry.waterLowL()).isCloseTo(wet.waterLowL(), within(litre));
        assertThat(dry.waterHighL()).isCloseTo(wet.waterHighL(), within(litre));
        assertThat(dry.recipeLowL()).isCloseTo(wet.concentrateLowMl() / 0.001, within(litre));
        assertThat(dry.recipeHighL()).isCloseTo(wet.concentrateHighMl() / 0.001, within(litre));
      }
    }
    assertThat(reached).isBetween(400, 790);
  }

  /** Between the ends lies what no end shows: the fullest that is not drained takes least water. */
  @Test
  void theLeastWaterLiesBetween() {
    TopupSaltsBand band =
        TopupSaltsBand.solve(new TopupSaltsAsk(2.79, 71.8, 1.9, 0.715, 1.39, 5, 0.025), 30, 46, 62);
    double atLow = 71.8 - 35;
    assertThat(band.waterHighL()).isCloseTo(atLow, within(1e-9));
    // kept where F (t - w) = (V + R)(e1 - w): no drain and no salts, linear in V
    double most = (71.8 * (1.9 - 0.715) - 5 * (0.025 - 0.715)) / (2.79 - 0.715) + 5;
    assertThat(band.waterLowL()).isBetween(71.8 - most, 71.8 - most + 1);
    assertThat(band.recipeLowL()).isZero();
  }

  @Test
  void overFullIsWhatOneSees() {
    TopupSaltsAsk ask = new TopupSaltsAsk(1.4, 45, 1.6, 0.3, 1.9, 0, 0.02);
    assertThat(ask.isOverFull(45.004)).isFalse();
    assertThat(ask.isOverFull(45.006)).isTrue();
    assertThat(TopupSalts.solve(45.006, 1.4, 45, 1.6, 0.3, 1.9).drains()).isTrue();
    assertThat(TopupSalts.solve(45.004, 1.4, 45, 1.6, 0.3, 1.9).drains()).isFalse();
    assertThat(TopupSalts.solve(44.996, 1.4, 45, 1.6, 0.3, 1.9).pours()).isFalse();
    assertThat(TopupSalts.solve(44.994, 1.4, 45, 1.6, 0.3, 1.9).pours()).isTrue();
    assertThat(TopupSalts.solve(45.19, 1.4, 45, 1.6, 0.3, 1.9).drainsMore()).isFalse();
    assertThat(TopupSalts.solve(45.21, 1.4, 45, 1.6, 0.3, 1.9).drainsMore()).isTrue();
  }
}
