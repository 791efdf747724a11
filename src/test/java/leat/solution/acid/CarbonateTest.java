package leat.solution.acid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sums by hand with the published constants at 25 C: Plummer and Busenberg 1982. */
class CarbonateTest {
  private static final double PK1 = 6.352;
  private static final double PK2 = 10.329;
  private static final double KH_MMOL = 1000 * Math.pow(10, -1.468); // 34.04 mmol/L at 1 atm
  private static final Carbonate WATER = Carbonate.at(25);

  /**
   * One atmosphere of carbon dioxide holds 34.04 mmol/L. At pH = pK1 that is half of all carbonate,
   * a unit above a eleventh, and at pH = pK2, where hydrogencarbonate and carbonate are as many,
   * one part beside twice 10^(10.329 - 6.352) = 9484.
   */
  @ParameterizedTest
  @CsvSource({"6.352, 2", "7.352, 11.01", "5.352, 1.1", "10.329, 18969"})
  void whatFizzesIsTheDissolvedGas(double ph, double allOverGas) {
    assertThat(WATER.fizz(KH_MMOL * allOverGas, ph)).isCloseTo(1, within(0.005));
    assertThat(WATER.fizz(10 * KH_MMOL * allOverGas, ph)).isCloseTo(10, within(0.05));
  }

  /**
   * In the open at pH = pK2 carbonate stands equal to hydrogencarbonate, 9484 times the gas: three
   * charges of it. The gas is 34.04 x 420e-6 = 0.014297 mmol/L, so that 3 x 135.6 = 406.8 meq/L and
   * 10^(10.329 - 14) = 0.213 meq/L of hydroxide.
   */
  @Test
  void carbonateCountsTwiceInTheOpen() {
    double gas = KH_MMOL * 420e-6;
    double bicarbonate = gas * Math.pow(10, PK2 - PK1);
    assertThat(WATER.openMeqL(420, PK2)).isCloseTo(3 * bicarbonate + 0.213, withinPercentage(0.5));
  }

  /** Without the gas a lye is what it is: 0.1 mmol/L of hydroxide at pH 10 and 25 C. */
  @Test
  void aLyeWithoutGasHasItsHydroxideOnly() {
    assertThat(WATER.openMeqL(0, 10)).isCloseTo(0.1, within(0.001));
    assertThat(WATER.openMeqL(0, 4)).isCloseTo(-0.1, within(0.001));
    assertThat(WATER.closedMeqL(0, 10)).isCloseTo(0.1, within(0.001));
  }

  /**
   * Clean rain, pH 5.6: no alkalinity, yet carbonate. What its 10^-5.6 mol/L of hydrogen ions stand
   * against is hydrogencarbonate, 0.0025119 mmol/L, over it 10^(6.352 - 5.6) = 5.649 times as much
   * gas: 0.01670 mmol/L in all.
   */
  @Test
  void rainHoldsCarbonateWithoutAlkalinity() {
    assertThat(WATER.canBe(0, 5.6)).isTrue();
    double bicarbonate = 1000 * (Math.pow(10, -5.6) - Math.pow(10, 5.6 - 14));
    double want = bicarbonate * (1 + Math.pow(10, PK1 - 5.6));
    assertThat(WATER.totalMmolL(0, 5.6)).isCloseTo(want, withinPercentage(0.2));
    assertThat(want).isCloseTo(0.0167, within(5e-5));
    assertThat(WATER.canBe(0, 8)).as("a base without alkalinity").isFalse();
    assertThatThrownBy(() -> WATER.totalMmolL(0, 8)).isInstanceOf(Impossible.class);
  }
}
