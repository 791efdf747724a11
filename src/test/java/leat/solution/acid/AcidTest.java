package leat.solution.acid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import leat.Sheet;
import leat.numeric.Impossible;
import leat.solution.Atom;
import leat.solution.Formula;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AcidTest {
  /**
   * What a molecule weighs and brings is in its formula. Bottles print 98.08 for sulfuric acid,
   * IUPAC's weights of 2021 give 98.072: 0.01 %.
   */
  @ParameterizedTest
  @CsvSource({
    "NITRIC, HNO3",
    "PHOSPHORIC, H3PO4",
    "SULFURIC, H2SO4",
    "HYDROCHLORIC, HCl",
    "CITRIC, C6H8O7",
    "CITRIC_HYDRATE, C6H8O7.H2O",
  })
  void bringsWhatItsFormulaHolds(Acid.Kind kind, String formula) {
    Formula molecule = Formula.of(formula);
    Acid acid = kind.isSolid() ? Acid.solid(kind) : Acid.liquid(kind, 30, 1.15);
    assertThat(kind.gPerMol).isCloseTo(molecule.molarMass(), withinPercentage(0.01));
    assertThat(acid.nitrogenMgPerMmol()).isCloseTo(weight(molecule, Atom.N), within(1e-3));
    assertThat(acid.phosphorusMgPerMmol()).isCloseTo(weight(molecule, Atom.P), within(1e-3));
    assertThat(acid.sulfurMgPerMmol()).isCloseTo(weight(molecule, Atom.S), within(1e-3));
    assertThat(acid.chlorideMgPerMmol()).isCloseTo(weight(molecule, Atom.CL), within(1e-3));
  }

  private static double weight(Formula molecule, Atom atom) {
    return molecule.count(atom) * atom.weight();
  }

  /**
   * Hydrochloric acid leaves one chloride for each proton: 2.8084 meq/L (row AC01 of the sheet, its
   * water and target) are 2.8084 x 35.45 = 99.56 mg/L, and no nitrogen, phosphorus or sulfur.
   */
  @Test
  void hydrochloricAcidLeavesItsChloride() {
    AcidNeed.Answer need = AcidNeed.of(45, 3.5971223, 7.6, 5.8, 20, Acids.named("hydrochloric-31"));
    assertThat(need.chlorideMgL()).isCloseTo(99.56, within(0.01));
    assertThat(need.nitrogenMgL() + need.phosphorusMgL() + need.sulfurMgL()).isZero();
    AcidNeed.Answer other = AcidNeed.of(45, 3.5971223, 7.6, 5.8, 20, Acids.named("nitric-60"));
    assertThat(other.chlorideMgL()).isZero();
  }

  /** Microbes eat citric acid, not the mineral acids (practice). */
  @Test
  void citricAcidDoesNotLast() {
    assertThat(Acids.named("citric").lasts()).isFalse();
    assertThat(Acids.named("citric-1h2o").lasts()).isFalse();
    assertThat(Acids.named("nitric-38").lasts()).isTrue();
    assertThat(Acids.named("phosphoric-75").lasts()).isTrue();
  }

  /**
   * Regulation (EU) 2019/1148, annex I: nitric acid over 3 % and sulfuric acid over 15 % by weight
   * are not for the public (from memory); a bottle of just that strength is. So with the
   * household's 40 % (practice).
   */
  @Test
  void theLimitItselfIsStillAllowed() {
    assertThat(Acids.named("nitric-3").isRestricted()).isFalse();
    assertThat(Acids.named("nitric-3.1").isRestricted()).isTrue();
    assertThat(Acids.named("sulfuric-15").isRestricted()).isFalse();
    assertThat(Acids.named("sulfuric-15.1").isRestricted()).isTrue();
    assertThat(Acids.named("phosphoric-40").isOverHousehold()).isFalse();
    assertThat(Acids.named("phosphoric-40.1").isOverHousehold()).isTrue();
  }

  /** However a label is typed, it is the same bottle. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "phosphoric-30",
        "phosphoric 30",
        "Phosphoric 30 %",
        "phosphoric30%",
        "phosphoric30",
        " phosphoric-30% ",
        "phosphoric acid 30 %"
      })
  void theSameBottleHoweverTyped(String typed) {
    Acid acid = Acids.named(typed);
    assertThat(acid.kind()).isEqualTo(Acid.Kind.PHOSPHORIC);
    assertThat(acid.percent()).isEqualTo(30);
    // 30 % phosphoric acid weighs 1.18 kg/L (handbook table, from memory)
    assertThat(acid.densityKgL()).isCloseTo(1.18, within(0.005));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "38", "38 %", "-38", "%", "vinegar5%", "vinegar 5 %", "acid"})
  void noAcidHasThatName(String typed) {
    assertThat(Acids.named(typed)).isNull();
  }

  @ParameterizedTest
  @ValueSource(strings = {"nitric", "nitric acid", " Sulphuric "})
  void aDissolvedAcidNeedsItsStrength(String typed) {
    assertThatThrownBy(() -> Acids.named(typed))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("strength");
  }

  /** The names that help shows are those whose rows the sheet has, and more of the same acids. */
  @Test
  void theUsualNamesHoldThoseOfTheSheet() {
    for (Sheet.Row r : Sheet.of("solution-acid.csv").rows()) {
      assertThat(Acids.names()).contains(r.text("acid"));
    }
  }
}
