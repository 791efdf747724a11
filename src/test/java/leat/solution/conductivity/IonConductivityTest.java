package leat.solution.conductivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import leat.solution.Elements;
import leat.solution.Ion;
import leat.solution.IonName;
import leat.solution.Ions;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

public class IonConductivityTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-ec-ions.csv").having("ec_uS_cm").atLeast(36);
  }

  static Stream<Row> published() {
    return Sheet.of("solution-ec-ions.csv").having("published_uS_cm").atLeast(32);
  }

  public static Ions ions(String list) {
    Ions ions = Ions.NONE;
    for (String one : list.split(";")) {
      String[] parts = one.split("=");
      ions = ions.and(IonName.of(parts[0]).ion(), Double.parseDouble(parts[1]));
    }
    return ions;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Ions ions = ions(r.text("ions_mmol_L"));
    IonEc ec = IonConductivity.of(ions);
    Percentage close = withinPercentage(100 * r.num("tol_rel"));
    String as = r.idAndProvenance();
    assertThat(ions.cations()).as(as).isCloseTo(r.num("cations_meq_L"), close);
    assertThat(ions.anions()).as(as).isCloseTo(r.num("anions_meq_L"), close);
    assertThat(ec.ionicStrength()).as(as).isCloseTo(r.num("ionic_strength_mol_L"), close);
    assertThat(1000 * ec.ecLimit()).as(as).isCloseTo(r.num("ec_limit_uS_cm"), close);
    assertThat(1000 * ec.ec25()).as(as).isCloseTo(r.num("ec_uS_cm"), close);
    assertThat(1000 * ec.ecWithoutPairs()).as(as).isCloseTo(r.num("ec_no_pairs_uS_cm"), close);
    assertThat(1000 * ec.ecSquareRule()).as(as).isCloseTo(r.num("ec_square_uS_cm"), close);
    if (r.has("free_SO4_mmol_L")) {
      assertThat(ec.freeSulfate()).as(as).isCloseTo(r.num("free_SO4_mmol_L"), close);
    }
    assertThat(ec.inRange()).as(as).isEqualTo(r.num("ionic_strength_mol_L") <= 0.1);
  }

  /** Published single salts: the stated error, and the sheet's own figure for each. */
  @ParameterizedTest
  @MethodSource("published")
  void theErrorIsTheStatedOne(Row r) {
    IonEc ec = IonConductivity.of(ions(r.text("ions_mmol_L")));
    double error = 100 * (1000 * ec.ec25() / r.num("published_uS_cm") - 1);
    assertThat(error).as(r.idAndProvenance()).isCloseTo(r.num("ec_error_pct"), within(0.01));
    if (ec.ionicStrength() <= 0.03) {
      assertThat(Math.abs(error)).as(r.idAndProvenance()).isLessThan(IonEc.ERROR_PCT);
    }
  }

  /**
   * A mixture: Hoagland and Arnon's solution 1 at full strength, reported at 2.0 to 2.3 mS/cm (from
   * memory).
   */
  @Test
  void aWholeNutrientSolution() {
    IonEc ec = IonConductivity.of(ions("K=6;H2PO4=1;NO3=15;Ca=5;Mg=2;SO4=2"));
    assertThat(ec.ec25()).isCloseTo(2.16, within(0.005));
    assertThat(ec.low(false)).isCloseTo(0.95 * ec.ec25(), within(1e-12));
    assertThat(ec.high(true)).isCloseTo(1.08 * ec.ec25(), within(1e-12));
    assertThat(ec.rawAt(18, Compensation.DEFAULT)).isCloseTo(ec.ec25() / 1.1543345, within(1e-6));
    // half the sum of c z^2: (6 + 1 + 15 + 4 x (5 + 2 + 2)) / 2 mmol/L
    assertThat(ec.strengthMmolL()).isCloseTo(29, within(1e-9));
  }

  /** The hard tap water of the sheet misses its charge balance by 7.5 per cent. */
  @Test
  void aDoubtfulAnalysis() {
    Ions tap = ions("Ca=2.5;Mg=0.6;Na=0.7;K=0.05;HCO3=3.7;SO4=0.7;Cl=1.2;NO3=0.15");
    assertThat(tap.balance()).isCloseTo(0.5, within(1e-9));
    assertThat(tap.balancePct()).isCloseTo(7.46, within(0.01));
    assertThat(tap.isDoubtful()).isTrue();
    assertThat(Ions.NONE.balancePct()).isZero();
    assertThat(Ions.NONE.isEmpty()).isTrue();
    assertThat(IonConductivity.of(Ions.NONE).ec25()).isZero();
  }

  @Property
  void pairsOnlyTakeAwayAndConserve(
      @ForAll @DoubleRange(min = 0, max = 20) double ca,
      @ForAll @DoubleRange(min = 0, max = 20) double mg,
      @ForAll @DoubleRange(min = 0, max = 20) double so4,
      @ForAll @DoubleRange(min = 0, max = 20) double k) {
    Ions ions =
        Ions.NONE.and(Ion.CA, ca).and(Ion.MG, mg).and(Ion.SO4, so4).and(Ion.K, k).and(Ion.NO3, k);
    IonEc ec = IonConductivity.of(ions);
    assertThat(ec.freeSulfate()).isBetween(0.0, so4);
    assertThat(ec.freeIonicStrength()).isLessThanOrEqualTo(ec.ionicStrength());
    // each bound sulfate takes one metal with it: eight halves of charge squared
    double bound = (ec.ionicStrength() - ec.freeIonicStrength()) / 4 * 1000;
    assertThat(ec.freeSulfate() + bound).isCloseTo(so4, within(1e-9));
    assertThat(ec.ec25()).isBetween(0.0, ec.ecLimit() + 1e-12);
  }

  @Property
  void strongerConductsBetterButLessThanInProportion(
      @ForAll @DoubleRange(min = 0.01, max = 2) double strength) {
    Ions hoagland = ions("K=6;H2PO4=1;NO3=15;Ca=5;Mg=2;SO4=2");
    double ec = IonConductivity.of(hoagland.times(strength)).ec25();
    double more = IonConductivity.of(hoagland.times(1.1 * strength)).ec25();
    assertThat(more).isGreaterThan(ec).isLessThan(1.1 * ec);
  }

  /**
   * Appelo's exponent has two branches, 0.6/sqrt z and sqrt I/z, which meet at I = 0.36 z: no
   * salt's EC leaps as it gets stronger, whatever its charges.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {"K=1;Cl=1", "Ca=1;Cl=2", "Mg=1;NO3=2", "K=2;SO4=1", "Na=2;CO3=1", "Mg=1;SO4=1"})
  void noLeapAsASaltGetsStronger(String salt) {
    Ions one = ions(salt);
    double perMmol = IonConductivity.ionicStrength(one);
    double before = Double.NaN;
    double grewBefore = Double.NaN;
    for (double strength = 0.1; strength < 0.5; strength += 0.001) {
      double ec = IonConductivity.of(one.times(strength / perMmol)).ec25();
      double grew = ec - before;
      if (!Double.isNaN(grewBefore)) {
        assertThat(grew).as(salt + " at " + strength).isCloseTo(grewBefore, withinPercentage(20));
      }
      grewBefore = grew;
      before = ec;
    }
  }

  /** The sum holds to an ionic strength of 0.5 mol/L, that of 500 mmol/L of potassium chloride. */
  @Test
  void halfAMoleIsTheLast() {
    IonEc last = IonConductivity.of(ions("K=500;Cl=500"));
    assertThat(last.ionicStrength()).isEqualTo(0.5);
    assertThat(last.inRange()).isFalse();
    assertThatThrownBy(() -> IonConductivity.of(ions("K=500.1;Cl=500.1")))
        .isInstanceOf(Impossible.class);
  }

  @Test
  void namesOfIons() {
    assertThat(IonName.of("NO3").millimoles(62.004)).isCloseTo(1, within(1e-6));
    assertThat(IonName.of("N-NO3").millimoles(14.007)).isCloseTo(1, within(1e-12));
    assertThat(IonName.of("N-NO3").asElement()).isTrue();
    assertThat(IonName.of("calcium").millimoles(40.078)).isCloseTo(1, within(1e-12));
    assertThat(IonName.of("S").millimoles(32.06)).isCloseTo(1, within(1e-12));
    assertThat(IonName.of("SO4").millimoles(96.056)).isCloseTo(1, within(1e-6));
    assertThatThrownBy(() -> IonName.of("N")).hasMessageContaining("N-NO3");
    assertThatThrownBy(() -> IonName.of("no3")).isInstanceOf(Impossible.class);
    for (String name : IonName.names()) {
      assertThat(IonName.of(name).milligramsPerMillimole()).isPositive();
    }
    for (int i = 0; i < Ion.count(); i++) {
      Ion ion = Ion.at(i);
      Elements of = Ions.NONE.and(ion, 1).elements();
      if (ion.element() != null) {
        assertThat(of.of(ion.element())).isEqualTo(ion.element().atom().weight());
        assertThat(of.sum()).isCloseTo(ion.element().atom().weight(), within(1e-12));
      } else {
        assertThat(of.sum()).isZero();
      }
    }
    Ions water = Ions.NONE.andMilligrams(IonName.of("Ca"), 62).andAlkalinity(3.6);
    assertThat(water.of(Ion.CA)).isCloseTo(62 / 40.078, within(1e-12));
    assertThat(water.of(Ion.HCO3)).isEqualTo(3.6);
  }

  @Test
  void refusesTheImpossible() {
    assertThatThrownBy(() -> Ions.NONE.and(Ion.K, -1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Ions.NONE.and(Ion.K, Double.NaN)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> IonConductivity.of(ions("K=600;Cl=600")))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("stock bottle");
  }
}
