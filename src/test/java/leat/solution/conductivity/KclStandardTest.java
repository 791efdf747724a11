package leat.solution.conductivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class KclStandardTest {
  private static final double PRINTED = 1e-7; // the sheet prints eight digits

  static Stream<Row> rows() {
    return Sheet.of("solution-ec-standards.csv").having("true_ec_mS_cm").atLeast(46);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    KclStandard standard = KclStandard.ofLabel(r.num("true_ec25_mS_cm"));
    double celsius = r.num("temperature_C");
    double pct = r.num("published_tol_pct");
    assertThat(standard.name()).isEqualTo(r.text("standard"));
    assertThat(standard.isTabulated()).isTrue();
    assertThat(standard.tolerancePct()).isEqualTo(pct);
    assertThat(standard.ecAt(celsius))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("true_ec_mS_cm"), withinPercentage(pct));
    assertThat(f25(standard, celsius))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("f25_of_standard"), withinPercentage(pct));
    assertThat(KclMeter.shows(standard, celsius, Compensation.DEFAULT))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("linear_1_91_shows_mS_cm"), withinPercentage(pct));
    assertThat(KclMeter.errorPct(standard, celsius, Compensation.DEFAULT))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("linear_error_pct"), within(1.3 * pct));
  }

  /** The functions alone, on the sheet's own true value, to the digits it prints. */
  @ParameterizedTest
  @MethodSource("rows")
  void whatACompensatedMeterShows(Row r) {
    double trueEc = r.num("true_ec_mS_cm");
    double celsius = r.num("temperature_C");
    assertThat(Compensation.DEFAULT.to25(trueEc, celsius))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("linear_1_91_shows_mS_cm"), withinPercentage(100 * PRINTED));
    if (r.has("natural_water_shows_mS_cm")) {
      KclStandard standard = KclStandard.ofLabel(r.num("true_ec25_mS_cm"));
      assertThat(Compensation.NATURAL_WATER.to25(trueEc, celsius))
          .as(r.idAndProvenance())
          .isCloseTo(r.num("natural_water_shows_mS_cm"), withinPercentage(100 * PRINTED));
      assertThat(KclMeter.errorPct(standard, celsius, Compensation.NATURAL_WATER))
          .as(r.idAndProvenance())
          .isCloseTo(r.num("natural_water_error_pct"), within(1.3 * r.num("published_tol_pct")));
    } else {
      assertThatThrownBy(() -> Compensation.NATURAL_WATER.to25(trueEc, celsius))
          .isInstanceOf(Impossible.class);
    }
  }

  /** The sheet's own computation: bottle 1413 by the primary table's course. */
  @Test
  void theBottleAt30And35() {
    KclStandard bottle = KclStandard.ofLabel(1.413);
    assertThat(bottle.ecAt(30)).isCloseTo(1.552, within(5e-4));
    assertThat(bottle.ecAt(35)).isCloseTo(1.694, within(1e-3));
  }

  /**
   * Second route: every table follows the primary one of its strength, whose values from memory
   * were checked by leaving each out of a polynomial. 0.3 per cent is the bottles' tolerance.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 2.5, 5, 7, 10, 13, 15, 18, 19, 20, 22, 25, 27.5, 30, 33, 35, 38, 40})
  void theTablesAgreeAmongThemselves(double celsius) {
    double[][] kin = {{1.40823, 1.4083, 1.413}, {12.8246, 12.852, 12.88}, {108.62, 111.31, 111.8}};
    for (double[] labels : kin) {
      double primary = f25(KclStandard.ofLabel(labels[0]), celsius);
      assertThat(f25(KclStandard.ofLabel(labels[1]), celsius))
          .isCloseTo(primary, withinPercentage(0.1));
      assertThat(f25(KclStandard.ofLabel(labels[2]), celsius))
          .isCloseTo(primary, withinPercentage(0.3));
    }
  }

  /** Between the tables: 0.02 mol/L, 2.765 mS/cm at 25 C, lies between its neighbours. */
  @Test
  void aBottleWithoutATable() {
    KclStandard other = KclStandard.ofLabel(2.765);
    assertThat(other.isTabulated()).isFalse();
    assertThat(other.name()).isEqualTo("KCl");
    assertThat(other.ecAt(25)).isCloseTo(2.765, within(1e-12));
    assertThat(f25(other, 10))
        .isBetween(f25(KclStandard.ofLabel(12.8246), 10), f25(KclStandard.ofLabel(1.40823), 10));
    assertThatThrownBy(() -> KclStandard.ofLabel(1413)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> KclStandard.ofLabel(1.413).ecAt(41)).isInstanceOf(Impossible.class);
  }

  @Property
  void warmerConductsBetter(
      @ForAll @DoubleRange(min = 0, max = 39) double celsius,
      @ForAll @DoubleRange(min = 0.08, max = 115) double label) {
    KclStandard standard = KclStandard.ofLabel(label);
    assertThat(standard.ecAt(celsius + 1)).isGreaterThan(standard.ecAt(celsius));
  }

  @Property
  void aMeterOffByAFactorIsPutRight(
      @ForAll @DoubleRange(min = 0.5, max = 1.5) double gain,
      @ForAll @DoubleRange(min = 0, max = 40) double celsius) {
    KclStandard bottle = KclStandard.ofLabel(1.413);
    double shown = gain * bottle.ecAt(celsius);
    MeterCheck raw = MeterCheck.raw(shown, bottle, celsius, Compensation.DEFAULT);
    assertThat(raw.slope()).isCloseTo(1 / gain, within(1e-12));
    assertThat(raw.errorPct()).isCloseTo(100 * (gain - 1), within(1e-9));
    assertThat(MeterCheck.corrected(shown, raw.slope()))
        .isCloseTo(bottle.ecAt(celsius), within(1e-12));
    double after = gain * KclMeter.shows(bottle, celsius, Compensation.DEFAULT);
    MeterCheck with = MeterCheck.compensated(after, bottle, celsius, Compensation.DEFAULT);
    assertThat(with.slope()).isCloseTo(1 / gain, within(1e-12));
    assertThat(with.faulty()).isEqualTo(Math.abs(1 / gain - 1) > 0.1);
  }

  @Test
  void findsOutWhetherItCompensates() {
    KclStandard bottle = KclStandard.ofLabel(1.413);
    MeterCheck raw = MeterCheck.unknown(1.21, bottle, 18, Compensation.DEFAULT);
    assertThat(raw.compensates()).isFalse();
    assertThat(raw.certain()).isTrue();
    assertThat(raw.trueEc()).isCloseTo(1.225, within(1e-3));
    assertThat(raw.slope()).isCloseTo(1.225 / 1.21, within(1e-3));
    MeterCheck with = MeterCheck.unknown(1.39, bottle, 18, Compensation.DEFAULT);
    assertThat(with.compensates()).isTrue();
    assertThat(with.certain()).isTrue();
    assertThat(with.expected()).isCloseTo(1.4141, within(1e-3));
    assertThat(MeterCheck.unknown(1.40, bottle, 24.5, Compensation.DEFAULT).certain()).isFalse();
    assertThat(MeterCheck.unknown(0.7, bottle, 18, Compensation.DEFAULT).certain()).isFalse();
    assertThat(MeterCheck.unknown(0.7, bottle, 18, Compensation.DEFAULT).faulty()).isTrue();
    assertThatThrownBy(() -> MeterCheck.unknown(0, bottle, 18, Compensation.DEFAULT))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> MeterCheck.corrected(1, 0)).isInstanceOf(Impossible.class);
  }

  /** A label within half a per cent of a table's value is that bottle, one per cent off is none. */
  @Test
  void aLabelIsTakenForATableWithinHalfAPerCent() {
    assertThat(KclStandard.ofLabel(1.413 * 1.0049).isTabulated()).isTrue();
    assertThat(KclStandard.ofLabel(1.413 * 0.99).isTabulated()).isFalse();
    assertThat(KclStandard.ofLabel(1.413 * 1.01).isTabulated()).isFalse();
  }

  private static MeterCheck offBy(double percent) {
    return MeterCheck.raw(1.413 * (1 + percent / 100), KclStandard.ofLabel(1.413), 25, BY);
  }

  private static final Compensation BY = Compensation.DEFAULT;

  /** Half a per cent is what a hand-held meter shows (practice): 0.4 is true, 0.6 is not. */
  @Test
  void readsTrueWithinHalfAPerCent() {
    assertThat(offBy(0.49).readsTrue()).isTrue();
    assertThat(offBy(-0.49).readsTrue()).isTrue();
    assertThat(offBy(0.51).readsTrue()).isFalse();
    assertThat(offBy(-0.51).readsTrue()).isFalse();
    assertThat(offBy(-0.51).offPct()).isCloseTo(0.51, within(1e-9));
    assertThat(offBy(0.51).tooHigh()).isTrue();
    assertThat(offBy(-0.51).tooHigh()).isFalse();
  }

  /** A factor of 0.9 or 1.1 is the last that may correct; beyond, clean or replace. */
  @Test
  void tenPerCentIsTheLastThatAFactorCorrects() {
    assertThat(MeterCheck.isCorrectable(1.1)).isTrue();
    assertThat(MeterCheck.isCorrectable(0.9)).isTrue();
    assertThat(MeterCheck.isCorrectable(1.1001)).isFalse();
    assertThat(MeterCheck.isCorrectable(0.8999)).isFalse();
  }

  /** At 25 C both kinds show the same; 1.91 %/K makes half a per cent in a quarter of a degree. */
  @Test
  void nearTwentyFiveDegreesBothKindsOfMeterShowTheSame() {
    KclStandard bottle = KclStandard.ofLabel(1.413);
    assertThat(MeterCheck.unknown(1.413, bottle, 25, BY).sameEitherWay()).isTrue();
    assertThat(MeterCheck.unknown(1.413, bottle, 24.8, BY).sameEitherWay()).isTrue();
    assertThat(MeterCheck.unknown(1.413, bottle, 25.2, BY).sameEitherWay()).isTrue();
    assertThat(MeterCheck.unknown(1.413, bottle, 24.7, BY).sameEitherWay()).isFalse();
    assertThat(MeterCheck.unknown(1.413, bottle, 25.3, BY).sameEitherWay()).isFalse();
  }

  /**
   * What a meter shows decides whether it compensates only when one way of reading is good to 10 %
   * and the other at least 6 % worse. At 22 C the two differ by 3 x 1.91 = 5.73 % or so, at 21 C by
   * 7.6 %.
   */
  @Test
  void theKindOfMeterIsPlainFromSixPerCent() {
    KclStandard bottle = KclStandard.ofLabel(1.413);
    assertThat(MeterCheck.unknown(bottle.ecAt(22), bottle, 22, BY).certain()).isFalse();
    assertThat(MeterCheck.unknown(bottle.ecAt(21), bottle, 21, BY).certain()).isTrue();
    double ten = bottle.ecAt(15) * 0.902;
    double more = bottle.ecAt(15) * 0.898;
    assertThat(MeterCheck.unknown(ten, bottle, 15, BY).certain()).isTrue();
    assertThat(MeterCheck.unknown(more, bottle, 15, BY).certain()).isFalse();
    assertThat(MeterCheck.unknown(ten, bottle, 15, BY).compensates()).isFalse();
  }

  /**
   * Near 25 C both kinds show the same: a meter 5 % off by either reading cannot tell which it is,
   * however far off it is; and one that shows the label is neither high nor low.
   */
  @Test
  void nearTwentyFiveDegreesNothingIsPlain() {
    KclStandard bottle = KclStandard.ofLabel(1.413);
    MeterCheck low = MeterCheck.unknown(0.95 * 1.413, bottle, 24.5, BY);
    assertThat(low.offPct()).isBetween(4.0, 6.0);
    assertThat(low.certain()).isFalse();
    MeterCheck just = MeterCheck.unknown(1.413, bottle, 25, BY);
    assertThat(just.compensates()).as("as most meters do").isTrue();
    assertThat(just.tooHigh()).isFalse();
    assertThat(just.offPct()).isZero();
  }

  /**
   * Labels between the primary tables, straight in log EC: the geometric mean of two bottles has
   * the mean of their courses; a label under 0.01 mol/kg has that one's. Table values at 10 C: CRC
   * Handbook, 1.01395/1.40823, 9.29172/12.8246, 80.844/108.62.
   */
  @Test
  void aLabelBetweenTwoTablesHasTheMeanCourse() {
    double weak = 1.01395 / 1.40823;
    double middle = 9.29172 / 12.8246;
    double strong = 80.844 / 108.62;
    double mean1 = Math.sqrt(1.40823 * 12.8246);
    double mean2 = Math.sqrt(12.8246 * 108.62);
    assertThat(KclStandard.ofLabel(mean1).ecAt(10) / mean1)
        .isCloseTo((weak + middle) / 2, within(1e-12));
    assertThat(KclStandard.ofLabel(mean2).ecAt(10) / mean2)
        .isCloseTo((middle + strong) / 2, within(1e-12));
    assertThat(KclStandard.ofLabel(0.1).ecAt(10)).isCloseTo(0.1 * weak, within(1e-12));
    assertThat(KclStandard.ofLabel(114).ecAt(10)).isCloseTo(114 * strong, within(1e-12));
    assertThat(KclStandard.ofLabel(0.1).tolerancePct()).isEqualTo(1);
  }

  /** A standard's own factor to 25 C. */
  private static double f25(KclStandard standard, double celsius) {
    return standard.ecAt(25) / standard.ecAt(celsius);
  }
}
