package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Ladders at the ends of what they may be, series at their ties; by hand. */
class LadderBoundsTest {
  private static void refused(Runnable wrong, String words) {
    assertThatThrownBy(wrong::run).isInstanceOf(Impossible.class).hasMessageContaining(words);
  }

  @Test
  void levelsAndStopsOfReeds() {
    assertThat(LadderDesign.evenLevels(0.05, 0.35, 4))
        .containsExactly(new double[] {0.05, 0.15, 0.25, 0.35}, within(1e-12));
    assertThat(LadderDesign.lastOf(0.05, 0.3)).isCloseTo(0.35, within(1e-12));
    double[] reeds = {0.02, 0.05, 0.11};
    // 6 mm beyond the end reeds, the floor being the lowest: our own choice, common practice.
    assertThat(LadderDesign.lowerStop(reeds)).isCloseTo(0.014, within(1e-12));
    assertThat(LadderDesign.lowerStop(new double[] {0.004, 0.05})).isZero();
    assertThat(LadderDesign.upperStop(reeds)).isCloseTo(0.116, within(1e-12));
    assertThat(LadderDesign.bridges(0.011, 0.014)).isCloseTo(0.025, within(1e-12));
    assertThat(Ladder.greatestPitch(reeds)).isCloseTo(0.06, within(1e-12));
    refused(() -> LadderDesign.evenLevels(0.05, 0.35, 1), "2 to 200");
    refused(() -> LadderDesign.evenLevels(0.05, 0.35, 201), "2 to 200");
    refused(() -> LadderDesign.evenLevels(0.35, 0.05, 4), "");
  }

  /** A tenth of an ohm a step at least: 1 ohm over ten steps is just enough. */
  @Test
  void equalOhmsNeedTheirLeastStep() {
    assertThat(LadderDesign.equalOhms(0, 1, 11)[1]).isCloseTo(0.1, within(1e-12));
    assertThat(LadderDesign.equalOhms(10, 9, 11)[5]).isCloseTo(9.5, within(1e-12));
    refused(() -> LadderDesign.equalOhms(0, 0.99, 11), "0.1 ohm");
    refused(() -> LadderDesign.equalOhms(50, 50.5, 11), "0.1 ohm");
    refused(() -> LadderDesign.equalOhms(50, 50, 11), "same resistance");
    refused(() -> LadderDesign.equalOhms(-1, 50, 11), "");
    refused(() -> LadderDesign.equalOhms(0, 190, 1), "2 to 200");
    refused(() -> LadderDesign.equalOhms(0, 1900, 201), "2 to 200");
    assertThat(LadderDesign.equalOhms(0, 1900, 200)).hasSize(200);
  }

  /** The ends are those that were asked for, to the last bit. */
  @Test
  void theEndsAreExact() {
    Random r = new Random(5);
    for (int i = 0; i < 200; i++) {
      double empty = 300 * r.nextDouble();
      double full = empty + 20 + 100 * r.nextDouble();
      double[] ohms = LadderDesign.equalOhms(empty, full, 2 + r.nextInt(30));
      assertThat(ohms[0]).isEqualTo(empty);
      assertThat(ohms[ohms.length - 1]).isEqualTo(full);
    }
  }

  /** In a cone to a point, 1 m and 1 m wide, volumes go with the cube: at half height an eighth. */
  @Test
  void ohmsByVolume() {
    Tank cone = Cone.of(0, 1, 1);
    assertThat(LadderDesign.ohmsByVolume(0, 190, cone, new double[] {0, 0.5, 1}))
        .containsExactly(new double[] {0, 190 / 8.0, 190}, within(1e-9));
    double half = Math.cbrt(0.5);
    assertThat(LadderDesign.equalVolumeReeds(cone, 0, 1, 3))
        .containsExactly(new double[] {0, half, 1}, within(1e-9));
    refused(() -> LadderDesign.ohmsByVolume(0, 190, cone, new double[] {0.5, 0.5}), "rise");
    refused(() -> LadderDesign.ohmsByVolume(0, 190, cone, new double[] {0.5}), "2 to 200");
    refused(() -> LadderDesign.ohmsByVolume(5, 5, cone, new double[] {0.2, 0.5}), "same");
    refused(() -> LadderDesign.equalVolumeReeds(cone, 0.5, 0.5, 3), "above the lowest");
    refused(() -> LadderDesign.equalVolumeReeds(cone, 0, 1, 1), "2 to 200");
  }

  /** 10 ohm, then 3.0 or 3.3 of E24: windows of 1.5 ohm each part only the second. */
  @Test
  void windowsStayApartWhenTheGapIsMore() {
    Limits windows = new Limits(1.5, 0, 0, 1000, 2);
    LadderDesign touching = LadderDesign.of(ESeries.E24, new double[] {10, 13});
    assertThat(touching.node()).containsExactly(10, 13);
    assertThat(touching.apart(0, windows)).isFalse();
    assertThat(touching.overlaps(windows)).isEqualTo(1);
    LadderDesign apart = LadderDesign.of(ESeries.E24, new double[] {10, 13.3, 16.3});
    assertThat(apart.apart(0, windows)).isTrue();
    assertThat(apart.overlaps(windows)).isEqualTo(1);
    LadderDesign falling = LadderDesign.of(ESeries.E24, new double[] {16.3, 13.3, 10});
    assertThat(falling.apart(0, windows)).isFalse();
    assertThat(falling.apart(1, windows)).isTrue();
  }

  @Test
  void theErrorOfANode() {
    LadderDesign design = LadderDesign.of(ESeries.E6, new double[] {10, 17});
    // 6.8 of E6 is the nearest to 7; 10 + 6.8 is 0.2 under.
    assertThat(design.error(0)).isZero();
    assertThat(design.error(1)).isCloseTo(-0.2, within(1e-12));
    assertThat(design.maxError()).isCloseTo(0.2, within(1e-12));
    refused(() -> LadderDesign.of(ESeries.E24, new double[] {10, 20, 20}), "only");
    refused(() -> LadderDesign.of(ESeries.E24, new double[] {10, 10, 20}), "only");
    refused(() -> LadderDesign.of(ESeries.E24, new double[] {10, 20, 15}), "only");
  }

  /** Short under 2 ohm, the meter off by 1: a least node of 3 ohm is just told apart. */
  @Test
  void aLeastNodeMayLookShort() {
    Limits limits = new Limits(1, 0.02, 0, 1000, 2);
    assertThat(LadderDesign.of(ESeries.E24, new double[] {3, 13}).looksShort(limits)).isFalse();
    assertThat(LadderDesign.of(ESeries.E24, new double[] {2.7, 13}).looksShort(limits)).isTrue();
    assertThat(LadderDesign.of(ESeries.E24, new double[] {13, 2.7}).looksShort(limits)).isTrue();
    assertThat(LadderDesign.of(ESeries.E24, new double[] {0, 13}).looksShort(limits)).isTrue();
  }

  private static Ladder ladder(double[] reeds, double[] ohms, double bottom, double top) {
    return new Ladder(reeds, ohms, Ladder.ReturnAt.BOTTOM, 0.01, 0.015, bottom, top);
  }

  @Test
  void aLadderOfTwoReedsIsTheLeast() {
    assertThat(ladder(Ladder.evenReeds(2, 0.05, 0.02), new double[] {0, 10}, 0.04, 0.08).size())
        .isEqualTo(2);
    assertThat(Ladder.evenResistors(2, 10, 20)).containsExactly(10, 10);
    assertThat(Ladder.evenReeds(1000, 0.05, 0.001)).hasSize(1000);
    assertThat(Ladder.evenResistors(1000, 0, 999)).hasSize(1000);
    refused(() -> Ladder.evenReeds(1, 0.05, 0.02), "2 to 1000");
    refused(() -> Ladder.evenReeds(1001, 0.05, 0.001), "2 to 1000");
    refused(() -> Ladder.evenResistors(1, 0, 10), "2 to 1000");
    refused(() -> Ladder.evenResistors(1001, 0, 10), "2 to 1000");
    refused(() -> ladder(new double[] {0.05}, new double[] {0}, 0.04, 0.08), "two reeds");
  }

  @Test
  void aLadderThatCannotBe() {
    double[] two = {0.05, 0.08};
    double[] ohms = {0, 10};
    refused(() -> ladder(new double[] {0.05, 0.05}, ohms, 0.04, 0.08), "must rise");
    refused(() -> ladder(new double[] {0.05, 0.04}, ohms, 0.04, 0.08), "must rise");
    refused(() -> ladder(two, ohms, 0.06, 0.06), "above the lower");
    refused(() -> ladder(two, ohms, 0.0601, 0.1), "keeps the float");
    refused(() -> ladder(two, ohms, 0.04, 0.0699), "keeps the float");
    refused(
        () -> new Ladder(two, ohms, Ladder.ReturnAt.BOTTOM, 0.01, 0.01, 0.04, 0.08), "further off");
  }

  private static double nearest(double ohm) {
    return ESeries.nearest(ESeries.E6.milliohms(), 1000 * ohm) / 1000.0;
  }

  /** IEC 60063: E6 is 1.0 1.5 2.2 3.3 4.7 6.8; half way the smaller is taken. */
  @Test
  void theNearestOfASeries() {
    assertThat(ESeries.E6.milliohms().length / 8).isEqualTo(6);
    assertThat(ESeries.E96.milliohms().length / 8).isEqualTo(96);
    assertThat(nearest(1.25)).isEqualTo(1);
    assertThat(nearest(1.2501)).isEqualTo(1.5);
    assertThat(nearest(1.5)).isEqualTo(1.5);
    assertThat(nearest(40)).isEqualTo(33);
    assertThat(nearest(40.01)).isEqualTo(47);
    assertThat(nearest(0.01)).isEqualTo(0.1);
    assertThat(nearest(1e9)).isEqualTo(6.8e6);
  }

  /** Both ends within 10 ohm; a sender between 0-190 and 10-180 is told as the first. */
  @Test
  void trade() {
    assertThat(TradeRange.of("240-30").full()).isEqualTo(30);
    assertThat(TradeRange.of("240-33")).isSameAs(TradeRange.AMERICA_240_33);
    assertThat(TradeRange.of("0-190")).isSameAs(TradeRange.EUROPE_0_190);
    assertThat(TradeRange.of("70-10")).isNull();
    for (TradeRange one : TradeRange.values()) {
      assertThat(TradeRange.of(one.word())).isSameAs(one);
      assertThat(TradeRange.like(one.empty(), one.full())).isSameAs(one);
    }
    assertThat(TradeRange.AMERICA_240_33.full()).isEqualTo(33);
    assertThat(TradeRange.like(5, 185)).isSameAs(TradeRange.EUROPE_0_190);
    assertThat(TradeRange.like(20, 180)).isSameAs(TradeRange.EUROPE_10_180);
    assertThat(TradeRange.like(20.1, 180)).isNull();
    assertThat(TradeRange.like(230, 33)).isSameAs(TradeRange.AMERICA_240_33);
  }
}
