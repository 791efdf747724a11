package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Pairs of litres and ohms as somebody may have noted them; by hand. */
class PoursTest {
  private static double[] litres(double... litres) {
    return SheetTanks.times(litres, 1e-3);
  }

  private static final double[] RISING = {10, 50, 90, 130, 170};

  @Test
  void theSameLitresOverTheWholeRangeWerePouredEachTime() {
    assertThat(Pours.looksLikeAdditions(litres(2, 2, 2, 2, 2), RISING)).isTrue();
    assertThat(Pours.looksLikeAdditions(litres(2, 4, 6, 8, 10), RISING)).isFalse();
    assertThat(Pours.looksLikeAdditions(litres(2, 2, 2), new double[] {10, 60, 110})).isTrue();
    // Over half of the range, and not half of it.
    assertThat(Pours.looksLikeAdditions(litres(2, 2, 2, 9), new double[] {10, 35, 61, 110}))
        .isTrue();
    assertThat(Pours.looksLikeAdditions(litres(2, 2, 2, 9), new double[] {10, 35, 60, 110}))
        .isFalse();
    // Three rows of one volume whose readings agree: poured once, read three times.
    assertThat(
            Pours.looksLikeAdditions(litres(5, 5, 5, 10, 20), new double[] {10, 12, 11, 99, 190}))
        .isFalse();
    assertThat(Pours.looksLikeAdditions(litres(2, 2, 5), new double[] {10, 110, 60}))
        .as("two rows say nothing")
        .isFalse();
  }

  /** By volume 50 130 10 90 170: 130 and 10 pool to 70, which leaves sqrt(2 x 60 x 60) = 85 ohm. */
  @Test
  void ohmsInOrderAsTheyCameButNotByTheirLitresWereAdditions() {
    assertThat(Pours.looksLikeAdditions(litres(3, 1, 4, 1.5, 9), RISING)).isTrue();
    // Out of order both ways: a poor contact, not additions.
    assertThat(Pours.looksLikeAdditions(litres(1, 2, 3, 4, 5), new double[] {50, 130, 10, 90, 170}))
        .isFalse();
    double[] falling = {170, 130, 90, 50, 10};
    assertThat(Pours.looksLikeAdditions(litres(3, 1, 4, 1.5, 9), falling)).isTrue();
  }

  @Test
  void tooLittleSaysNothing() {
    assertThat(Pours.looksLikeAdditions(litres(2, 2), new double[] {10, 110})).isFalse();
    assertThat(Pours.looksLikeAdditions(litres(2, 2, 2), new double[] {10, 10.5, 11})).isFalse();
    assertThat(Pours.looksLikeAdditions(litres(2, 2, 2), new double[] {10, 10.5, 11.1})).isTrue();
  }

  @Test
  void runningTotalsMayComeBackToNothing() {
    assertThat(Pours.runningTotals(0.002, litres(3, -5, 4)))
        .containsExactly(new double[] {0.005, 0, 0.004}, within(1e-12));
    assertThatThrownBy(() -> Pours.runningTotals(0.002, litres(3, -5.1)))
        .isInstanceOf(Impossible.class);
  }

  @Test
  void pairsMustBePairsOfNumbers() {
    for (double[] ohms : new double[][] {{10, Double.NaN}, {10, 2e9}, {10}, {10, 20, 30}}) {
      assertThatThrownBy(() -> Pours.direction(litres(1, 2), ohms)).isInstanceOf(Impossible.class);
    }
    assertThatThrownBy(() -> Pours.direction(litres(1), new double[] {10}))
        .isInstanceOf(Impossible.class);
    assertThat(Pours.direction(litres(2, 1), new double[] {20, 10}))
        .isEqualTo(Pours.Direction.RISES);
    assertThat(Pours.direction(litres(1, 2), new double[] {20, 10}))
        .isEqualTo(Pours.Direction.FALLS);
    assertThat(Pours.direction(litres(1, 2), new double[] {10, 10}))
        .isEqualTo(Pours.Direction.UNCLEAR);
  }

  /** Changes 50, 0.4, 49.6, 2, 48: the widest ratio is 48 over 2, so half of 48. */
  @Test
  void theSmallestJumpIsHalved() {
    double[] ohms = {10, 60, 60.4, 110, 112, 160};
    assertThat(Pours.suggestedSameWithin(litres(1, 2, 3, 4, 5, 6), ohms))
        .isCloseTo(24, within(1e-9));
    assertThat(Pours.suggestedSameWithin(litres(1, 2), new double[] {10, 11.5})).isEqualTo(1);
  }

  @Test
  void residuals() {
    double[] y = {1, 2, 7};
    double[] fit = {2, 2, 4};
    assertThat(Isotonic.residual(y, fit)).isEqualTo(1 + 9);
    assertThat(Isotonic.greatest(y, fit)).isEqualTo(3);
    assertThat(Isotonic.violations(new double[] {1, 3, 2, 2, 1}, false)).isEqualTo(2);
    assertThat(Isotonic.violations(new double[] {1, 3, 2, 2, 1}, true)).isEqualTo(1);
    assertThat(Isotonic.fit(new double[] {1, 5, 3, 6}, false)).containsExactly(1, 4, 4, 6);
    assertThat(Isotonic.fit(new double[] {6, 3, 5, 1}, true)).containsExactly(6, 4, 4, 1);
  }

  private static SenderFit rising(double sameWithin, double... ohms) {
    double[] volumes = new double[ohms.length];
    for (int i = 0; i < ohms.length; i++) {
      volumes[i] = 0.001 * (i + 1);
    }
    return SenderFit.of(volumes, ohms, Motion.RISING, false, sameWithin);
  }

  @Test
  void theReadingFurthestFromItsStepsMedian() {
    SenderFit f = rising(5, 10, 11, 13, 60, 110, 111, 112, 120);
    assertThat(f.steps()).hasSize(4);
    assertThat(f.furthest(0)).isEqualTo(2);
    assertThat(f.furthest(1)).isEqualTo(3);
    assertThat(f.furthest(2)).as("110 and 112 are as far: the first").isEqualTo(4);
    assertThat(rising(9, 10, 11, 12, 20).furthest(0)).as("median 11.5").isEqualTo(3);
    assertThat(rising(9, 10, 18, 19, 20).furthest(0)).as("median 18.5").isZero();
    assertThat(rising(15, 10, 20, 11).furthest(0)).as("median 11, by size").isEqualTo(1);
  }

  @Test
  void whatTheStepsLeaveOver() {
    SenderFit f = rising(5, 10, 14.06, 60, 110, 110.4);
    assertThat(f.soundMax()).isCloseTo(2.03, within(1e-9));
    assertThat(f.readingTolerance()).as("in tenths, upwards").isCloseTo(2.1, within(1e-12));
    assertThat(f.seenOnce()).isEqualTo(1);
    assertThat(f.edgeUncertainty()).isCloseTo(0.0005, within(1e-12));
    assertThat(f.edges().get(0).uncertainty()).isCloseTo(0.0005, within(1e-12));
    SenderFit small = rising(5, 10, 10.4, 60, 61);
    assertThat(small.readingTolerance()).as("a meter's usual tolerance").isEqualTo(1.5);
    assertThat(small.seenOnce()).isZero();
    assertThat(rising(5, 10, 60).seenOnce()).as("the ends do not count").isZero();
    // 10, 16, 22 creep within one step: spread over more than a step may, so it is no tolerance.
    SenderFit splash = rising(7, 10, 16, 22, 60, 61);
    assertThat(splash.steps().get(0).suspect()).isTrue();
    assertThat(splash.soundMax()).isCloseTo(0.5, within(1e-12));
    assertThat(rising(5, 10, 11).edgeUncertainty()).isZero();
  }

  /** Rising edges at 3.5 and 4.5 L, falling ones at 2 and 3 L: 1.5 L, 7.5 mm in the box. */
  @Test
  void theHysteresisOfTwoFits() {
    SenderFit up = rising(5, 10, 10, 10, 60, 110, 110);
    double[] drained = litres(5.5, 4.5, 3.5, 2.5, 1.5, 0.5);
    SenderFit down =
        SenderFit.of(drained, new double[] {110, 110, 110, 60, 10, 10}, Motion.FALLING, false, 5);
    assertThat(SenderFit.hysteresis(up, down, null)).isCloseTo(0.0015, within(1e-12));
    assertThat(SenderFit.hysteresis(up, down, LevelFixtures.BOX)).isCloseTo(0.0075, within(1e-12));
    assertThat(SenderFit.hysteresis(up, up, null)).isZero();
    assertThatThrownBy(() -> SenderFit.hysteresis(down, up, null))
        .hasMessageContaining("lie above");
    for (SenderFit other : List.of(rising(5, 10, 60), rising(5, 10, 11))) {
      assertThatThrownBy(() -> SenderFit.hysteresis(up, other, null))
          .hasMessageContaining("same edges");
    }
    SenderFit flat = rising(5, 10, 11);
    assertThatThrownBy(() -> SenderFit.hysteresis(flat, flat, null))
        .hasMessageContaining("same edges");
  }

  @Test
  void litresMayStandStillButNotGoBack() {
    double[] ohms = {10, 60, 60};
    assertThat(SenderFit.of(litres(1, 2, 2), ohms, Motion.RISING, false, 5).steps()).hasSize(2);
    assertThat(
            SenderFit.of(litres(2, 2, 1), new double[] {60, 60, 10}, Motion.FALLING, false, 5)
                .steps())
        .hasSize(2);
    assertThatThrownBy(() -> SenderFit.of(litres(1, 2, 1.9), ohms, Motion.RISING, false, 5))
        .hasMessageContaining("go back");
    assertThatThrownBy(() -> SenderFit.of(litres(2, 1, 1.1), ohms, Motion.FALLING, false, 5))
        .hasMessageContaining("they rise");
  }
}
