package leat.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import leat.solution.conductivity.IonConductivityTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IonsTest {
  /** A laboratory's 5 meq/L of calcium are 2.5 mmol/L and 100.2 mg/L: 2.5 x 40.078. */
  @Test
  void theSameWaterInThreeUnits() {
    Ions water = Ions.NONE.andMilliequivalents(Ion.CA, 5).andMilliequivalents(Ion.SO4, 3);
    assertThat(water.of(Ion.CA)).isEqualTo(2.5);
    assertThat(water.milligrams(Ion.CA)).isCloseTo(100.2, within(0.01));
    assertThat(water.milliequivalents(Ion.CA)).isEqualTo(5);
    assertThat(water.of(Ion.SO4)).isEqualTo(1.5);
    // sulfate: 32.06 + 4 x 15.999 = 96.056 g/mol
    assertThat(water.milligrams(Ion.SO4)).isCloseTo(1.5 * 96.056, within(1e-9));
    assertThat(water.milliequivalents(Ion.SO4)).isEqualTo(3);
    assertThatThrownBy(() -> Ions.NONE.andMilliequivalents(Ion.CA, -1))
        .isInstanceOf(Impossible.class);
  }

  /** By hand: 2 x 2.5 of calcium less 1.2 of chloride leave 3.8 meq/L for bicarbonate. */
  @Test
  void bicarbonateClosesTheCharges() {
    Ions hard = IonConductivityTest.ions("Ca=2.5;Cl=1.2").closedByBicarbonate();
    assertThat(hard.of(Ion.HCO3)).isCloseTo(3.8, within(1e-12));
    assertThat(hard.balance()).isCloseTo(0, within(1e-12));
    Ions over = IonConductivityTest.ions("Na=1;Cl=1.2").closedByBicarbonate();
    assertThat(over.of(Ion.HCO3)).isZero();
    assertThat(over.balance()).isCloseTo(-0.2, within(1e-12));
  }

  /**
   * Off by 5 % of the mean of both sides is the last that a water laboratory lets pass (practice):
   * 41 against 39 meq/L are 2 of 40.
   */
  @ParameterizedTest
  @CsvSource({
    "Na=41;Cl=39, 5, false",
    "Na=39;Cl=41, 5, false",
    "Na=41.1;Cl=38.9, 5.5, true",
    "Na=38.9;Cl=41.1, 5.5, true",
    "Ca=1;Cl=2, 0, false",
  })
  void fivePerCentIsTheLastThatPasses(String list, double offPct, boolean doubtful) {
    Ions ions = IonConductivityTest.ions(list);
    assertThat(ions.offPct()).isCloseTo(offPct, within(1e-9));
    assertThat(ions.isDoubtful()).isEqualTo(doubtful);
  }

  /** Nitrogen alone is refused for its own reason; what is no name at all is told what is. */
  @Test
  void nitrogenAloneMayBeEither() {
    assertThatThrownBy(() -> IonName.of("N")).hasMessageContaining("nitrate or ammonium");
    assertThatThrownBy(() -> IonName.of("Xy")).hasMessageContaining("an ion is needed");
  }

  /** An ion typed for its element is refused, with how many times its element it weighs. */
  @ParameterizedTest
  @CsvSource({
    "NO3, N, 4.43, N-NO3",
    "NH4, N, 1.29, N-NH4",
    "PO4, P, 3, say P",
    "H2PO4, P, 3, say P",
    "SO4, S, 3, say S"
  })
  void anIonIsNotItsElement(String ion, String element, String times, String say) {
    Formula formula = Formula.of(ion);
    double weighs = formula.molarMass() / ElementName.of(element).element().atom().weight();
    assertThat(weighs)
        .isCloseTo(Double.parseDouble(times), within(times.length() > 1 ? 0.005 : 0.2));
    assertThatThrownBy(() -> ElementName.of(ion))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining(times)
        .hasMessageContaining(say);
  }

  @ParameterizedTest
  @ValueSource(strings = {"NO4", "Q"})
  void whatIsNoIonEither(String name) {
    assertThatThrownBy(() -> ElementName.of(name))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("N-NO3");
  }

  /** A label that prints no nitrogen at all tells that there is no nitrate and no ammonium. */
  @Test
  void noNitrogenHasNoForms() {
    Elements none = Elements.UNKNOWN.with(Element.N, 0).unknownAsZero();
    assertThat(none.knows(Element.N_NO3)).isTrue();
    assertThat(none.knows(Element.N_NH4)).isTrue();
    Elements some = Elements.UNKNOWN.with(Element.N, 0.1).unknownAsZero();
    assertThat(some.knows(Element.N_NO3)).isFalse();
    assertThat(some.knows(Element.K)).isTrue();
  }
}
