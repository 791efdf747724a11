package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Ends of an ADC's range, and what parts the steps best, by Ohm's law and by hand. */
class DividerBoundsTest {
  private static final Divider LOW = LevelFixtures.divider(Divider.Side.LOW, 3.3, 220, 12, 3.3);
  private static final Divider HIGH = LevelFixtures.divider(Divider.Side.HIGH, 3.3, 220, 12, 3.3);

  /** All exact: no tolerance, no error of the ADC. */
  private static Divider exact(Divider.Side side, double supply, double fixed, double reference) {
    return new Divider(side, supply, 0, fixed, 0, 12, reference, 0, supply == reference, 0);
  }

  @Test
  void anAdcHasNoOtherCodes() {
    for (int code : new int[] {-1, 4096}) {
      for (Divider d : new Divider[] {LOW, HIGH}) {
        assertThatThrownBy(() -> d.isOverRange(code)).isInstanceOf(Impossible.class);
        assertThatThrownBy(() -> d.isUnderRange(code)).isInstanceOf(Impossible.class);
        assertThatThrownBy(() -> d.band(code, 0)).isInstanceOf(Impossible.class);
        assertThatThrownBy(() -> d.ohm(code, 0)).isInstanceOf(Impossible.class);
      }
    }
  }

  /** A reference of 5 V over a supply of 3.3 V: the node is at the supply from 4096 x 0.66 on. */
  @Test
  void endCodes() {
    Divider five = exact(Divider.Side.LOW, 3.3, 220, 5);
    assertThat(five.isOverRange(2703)).isFalse();
    assertThat(five.isOverRange(2704)).isTrue();
    assertThat(LOW.isOverRange(4094)).isFalse();
    assertThat(LOW.isOverRange(4095)).isTrue();
    assertThat(HIGH.isOverRange(0)).isTrue();
    assertThat(HIGH.isOverRange(1)).isFalse();
    assertThat(HIGH.isUnderRange(4095)).as("nothing clips it").isFalse();
    Divider clipped = exact(Divider.Side.HIGH, 3.3, 220, 1.1);
    assertThat(clipped.isUnderRange(4095)).isTrue();
    assertThat(clipped.isUnderRange(4094)).isFalse();
    assertThat(clipped.lowerBound(4095, 5)).isEqualTo(-5);
  }

  /** Code 2048 of 4 V over 5 V is a share of 0.4: half a count up 2048.5/4096 x 0.8. */
  @Test
  void theBandOfACodeByHand() {
    Divider d = exact(Divider.Side.HIGH, 5, 100, 4);
    assertThat(d.ohm(2048, 5)).isCloseTo(100 * (1 / 0.4 - 1) - 5, within(1e-9));
    double up = 2048.5 / 4096 * 0.8;
    double down = 2047.5 / 4096 * 0.8;
    assertThat(d.band(2048, 5).low()).isCloseTo(100 * (1 / up - 1) - 5, within(1e-9));
    assertThat(d.band(2048, 5).high()).isCloseTo(100 * (1 / down - 1) - 5, within(1e-9));
    assertThat(d.lowerBound(2048, 5)).isEqualTo(d.band(2048, 5).low());
  }

  /** With nothing off, a step is taken for itself to half a count, its lead taken off again. */
  @Test
  void anExactDividerMistakesAStepByHalfACount() {
    for (Divider.Side side : Divider.Side.values()) {
      Divider.Step step = exact(side, 3.3, 220, 3.3).step(100, 5, 0, 0);
      assertThat(step.ohmLow()).isLessThan(100).isGreaterThan(99.8);
      assertThat(step.ohmHigh()).isGreaterThan(100).isLessThan(100.2);
      assertThat(step.misread()).isLessThan(0.2);
    }
    assertThatThrownBy(() -> LOW.step(100, 0, 1, 0)).isInstanceOf(Impossible.class);
    int lowest = LOW.step(10, 0, 0.02, 0).codeLow();
    assertThat(LOW.step(10, 0, 0.02, lowest).blind()).isFalse();
    assertThat(LOW.step(10, 0, 0.02, lowest + 1).blind()).isTrue();
  }

  private static DividerDesign design(double gap, boolean... apart) {
    return new DividerDesign(LOW, gap, 0, 10, new Divider.Step[0], 0, apart, 1, null);
  }

  @Test
  void aTwentiethMoreIsWorthASolderingIron() {
    assertThat(design(105, true).isWorthMoreThan(design(100, true))).isFalse();
    assertThat(design(106, true).isWorthMoreThan(design(100, true))).isTrue();
    assertThat(design(90, true).isWorthMoreThan(design(100, true, false))).isTrue();
    assertThat(design(90, true, false).isWorthMoreThan(design(100, true, false))).isFalse();
    assertThat(design(90, true).isWorthMoreThan(design(100, true))).isFalse();
  }

  /** 3.3 V over 330 ohm are 10 mA, over 300 ohm 11 mA: a pin feeds ten. */
  @Test
  void aPinFeedsTenMilliamperes() {
    double[] ohms = {0, 190};
    assertThat(DividerDesign.of(LOW.withFixed(330), ohms, 0, 0.02, 0).overloadsPin()).isFalse();
    assertThat(DividerDesign.of(LOW.withFixed(300), ohms, 0, 0.02, 0).overloadsPin()).isTrue();
    assertThat(DividerDesign.of(LOW, ohms, 0, 0.02, 0).isBlind()).isFalse();
    assertThat(DividerDesign.of(LOW, ohms, 0, 0.02, 100).isBlind()).isTrue();
  }

  /**
   * Gaps of 10 to 20 and of 100 to 400 ohm cross where 10 (x + 100)(x + 400) = 300 (x + 10)(x +
   * 20), that is 29 x2 + 400 x - 34 000 = 0: past the peak of the first, before that of the last.
   */
  @Test
  void theBestResistorMayLieAtACrossing() {
    double[] ohms = {400, 10, 100, 20};
    DividerDesign best = DividerDesign.best(LOW, ohms, 0, 0.02, null, null, 0);
    assertThat(best.divider().fixed()).isCloseTo((-400 + Math.sqrt(4_104_000)) / 58, within(1e-9));
    assertThat(best.greatestFixed()).isNull();
    // A peak alone: sqrt(a b); at most 0.1 A of 3.3 V leave 33 ohm less the 20 of the step.
    double[] pair = {20, 80};
    assertThat(DividerDesign.best(LOW, pair, 0, 0.02, null, null, 0).divider().fixed())
        .isCloseTo(40, within(1e-9));
    assertThat(DividerDesign.best(LOW, pair, 0, 0.02, 0.05, null, 0).divider().fixed())
        .isCloseTo(46, within(1e-9));
  }

  /**
   * On the high side the ADC's last transition limits it: no more than total x share/(1 - share).
   */
  @Test
  void theRangeMayLimitTheResistor() {
    Divider d = exact(Divider.Side.HIGH, 3.3, 100, 1.1);
    DividerDesign best = DividerDesign.best(d, new double[] {100, 900}, 0, 0.02, null, null, 0);
    double share = (4096 - 1.5) * 1.1 / (4096 * 3.3);
    assertThat(best.greatestFixed()).isCloseTo(100 * share / (1 - share), within(1e-9));
    assertThat(best.divider().fixed())
        .as("the peak, 300 ohm, is out of range")
        .isEqualTo(best.greatestFixed());
  }

  @Test
  void stepsMustDifferAndBeResistors() {
    for (double[] ohms : new double[][] {{10, 20, 10}, {10}, {10, 2e9}, {-1, 10}}) {
      assertThatThrownBy(() -> DividerDesign.of(LOW, ohms, 0, 0.02, 0))
          .isInstanceOf(Impossible.class);
    }
  }

  @Test
  void noResistanceIsNegativeOrAbsurd() {
    double[] ohms = {10, 160};
    for (double ohm : new double[] {-1, 2e9, Double.NaN}) {
      assertThatThrownBy(() -> LOW.ohm(2048, ohm)).isInstanceOf(Impossible.class);
      assertThatThrownBy(() -> DividerDesign.best(LOW, ohms, ohm, 0.02, null, null, 0))
          .isInstanceOf(Impossible.class);
      assertThatThrownBy(() -> Ladder.evenResistors(5, ohm, 190)).isInstanceOf(Impossible.class);
      assertThatThrownBy(() -> Ladder.evenResistors(5, 190, ohm)).isInstanceOf(Impossible.class);
      assertThatThrownBy(
              () ->
                  new Ladder(
                      new double[] {0.05, 0.08},
                      new double[] {0, ohm},
                      Ladder.ReturnAt.BOTTOM,
                      0.01,
                      0.015,
                      0.04,
                      0.09))
          .isInstanceOf(Impossible.class);
      assertThatThrownBy(
              () -> SenderFit.of(new double[] {0.001, 0.002}, ohms, Motion.RISING, false, ohm))
          .isInstanceOf(Impossible.class);
    }
  }

  /** Few bits: the end codes' own bounds no longer reach what is open, and get a row each. */
  @Test
  void everyCodeOfACoarseAdcHasOneRow() {
    for (Divider.Side side : Divider.Side.values()) {
      for (double reference : new double[] {3.3, 1.1}) {
        for (boolean falls : new boolean[] {false, true}) {
          Divider d = LevelFixtures.divider(side, 3.3, 220, 4, reference);
          Sender sender = LevelFixtures.sender(falls);
          int[] hits = new int[16];
          for (LookupTable.Row row : LookupTable.of(sender, d, Motion.UNKNOWN)) {
            for (int code = row.countsFrom(); code >= 0 && code <= row.countsTo(); code++) {
              hits[code]++;
              Reading r = sender.decodeCode(code, d, Motion.UNKNOWN, new Reading());
              assertThat(r.status()).as("%s code %d", side, code).isEqualTo(row.reading().status());
              assertThat(r.stepLow()).isEqualTo(row.reading().stepLow());
              assertThat(r.stepHigh()).isEqualTo(row.reading().stepHigh());
            }
          }
          assertThat(hits).containsOnly(1);
        }
      }
    }
  }
}
