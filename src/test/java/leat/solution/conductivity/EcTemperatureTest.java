package leat.solution.conductivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import leat.solution.NaturalWater;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class EcTemperatureTest {
  static Stream<Row> readings() {
    return Sheet.of("solution-ec-temperature.csv").having("f25").atLeast(18);
  }

  static Stream<Row> norm() {
    return Sheet.of("solution-ec-f25-table.csv").having("f25").atLeast(36);
  }

  private static Compensation by(Row r) {
    return r.text("method").equals("linear")
        ? Compensation.linear(r.num("coefficient_pct_per_K"))
        : Compensation.NATURAL_WATER;
  }

  @ParameterizedTest
  @MethodSource("readings")
  void agreesWithTheSheet(Row r) {
    double celsius = r.num("temperature_C");
    double raw = r.num("ec_raw_mS_cm");
    EcReading reading = EcReading.raw(raw, celsius, by(r));
    agrees(r, "f25", by(r).f25(celsius));
    agrees(r, "ec25_mS_cm", reading.ec25());
    assertThat(reading.f25()).isEqualTo(by(r).f25(celsius));
    assertThat(by(r).rawAt(reading.ec25(), celsius)).isCloseTo(raw, within(1e-12));
  }

  /**
   * Within the sheet's tolerance; where that is finer than the eight digits the sheet prints, equal
   * to the last of them.
   */
  private static void agrees(Row r, String column, double value) {
    if (r.num("tol_rel") < 1e-8) {
      BigDecimal printed = new BigDecimal(value).round(new MathContext(8));
      assertThat(printed).as(r.idAndProvenance()).isEqualByComparingTo(r.text(column));
    } else {
      assertThat(value)
          .as(r.idAndProvenance())
          .isCloseTo(r.num(column), withinPercentage(100 * r.num("tol_rel")));
    }
  }

  /**
   * The table of the norm; its own tolerance is half the last printed digit and the fit's error.
   */
  @ParameterizedTest
  @MethodSource("norm")
  void agreesWithTheTableOfTheNorm(Row r) {
    assertThat(NaturalWater.f25(r.num("temperature_C")))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("f25"), within(r.num("tol_abs")));
  }

  @Test
  void theLineOfTheContract() {
    EcReading reading = EcReading.raw(1.85, 18, Compensation.DEFAULT);
    assertThat(reading.ec25()).isCloseTo(2.1355, within(5e-5));
    assertThat(reading.ppm500()).isCloseTo(500 * reading.ec25(), within(1e-9));
    assertThat(reading.ppm640()).isCloseTo(640 * reading.ec25(), within(1e-9));
    assertThat(reading.ppm700()).isCloseTo(700 * reading.ec25(), within(1e-9));
    assertThat(EcReading.at25(1.85).ec25()).isEqualTo(1.85);
    assertThat(PpmScale.of(500).ec(900)).isCloseTo(1.8, within(1e-12));
  }

  @Property
  void colderMeansALargerFactorAndNothingMovesAt25(
      @ForAll @DoubleRange(min = 0, max = 35) double celsius,
      @ForAll @DoubleRange(min = 0.1, max = 3.5) double pctPerK) {
    Compensation linear = Compensation.linear(pctPerK);
    assertThat(linear.f25(celsius)).isGreaterThan(linear.f25(celsius + 0.5));
    assertThat(NaturalWater.f25(celsius)).isGreaterThan(NaturalWater.f25(celsius + 0.5));
    assertThat(linear.f25(25)).isEqualTo(1);
    assertThat(NaturalWater.f25(25)).isEqualTo(1);
  }

  @Property
  void theWayBackIsExact(
      @ForAll @DoubleRange(min = 0, max = 500) double ec,
      @ForAll @DoubleRange(min = 0, max = 60) double celsius) {
    double ec25 = Compensation.DEFAULT.to25(ec, celsius);
    assertThat(Compensation.DEFAULT.rawAt(ec25, celsius)).isCloseTo(ec, within(1e-9));
    assertThat(Compensation.DEFAULT.to25(2 * ec, celsius)).isCloseTo(2 * ec25, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 36, Double.NaN, Double.POSITIVE_INFINITY})
  void theNormEndsWithItsTable(double celsius) {
    assertThatThrownBy(() -> NaturalWater.f25(celsius))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("35.9");
  }

  @Test
  void refusesTheImpossible() {
    assertThatThrownBy(() -> LinearCompensation.f25(1.91, -1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> LinearCompensation.f25(1.91, 61)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Compensation.linear(4)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Compensation.linear(Double.NaN)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> EcReading.at25(-1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> EcReading.at25(1413)).hasMessageContaining("uS/cm");
    assertThatThrownBy(() -> PpmScale.of(600)).hasMessageContaining("500, 640 or 700");
    assertThatThrownBy(() -> PpmScale.PPM500.ec(-1)).isInstanceOf(Impossible.class);
    assertThat(Compensation.isCold(9)).isTrue();
    assertThat(Compensation.isCold(10)).isFalse();
  }

  /** Coefficients of meters and feeds lie between 1.8 and 2.2 %/K (practice); others are odd. */
  @Test
  void whatACompensationIs() {
    assertThat(Compensation.NATURAL_WATER.isNaturalWater()).isTrue();
    assertThat(Compensation.DEFAULT.isNaturalWater()).isFalse();
    assertThat(Compensation.DEFAULT.f25(26)).isCloseTo(1 / 1.0191, within(1e-12));
    assertThat(Compensation.DEFAULT.isOdd()).isFalse();
    assertThat(Compensation.linear(0).isOdd()).isTrue();
    assertThat(Compensation.linear(3.5).isOdd()).isTrue();
    assertThat(Compensation.linear(1.79).isOdd()).isTrue();
    assertThat(Compensation.linear(2.21).isOdd()).isTrue();
    assertThat(Compensation.linear(1.8).isOdd()).isFalse();
    assertThat(Compensation.linear(2.2).isOdd()).isFalse();
    assertThat(Compensation.NATURAL_WATER.isOdd()).isFalse();
    // ISO 7888: 0 to 35.9 C
    assertThat(Compensation.NATURAL_WATER.coldest()).isZero();
    assertThat(Compensation.NATURAL_WATER.warmest()).isEqualTo(35.9);
    assertThat(Compensation.DEFAULT.warmest()).isGreaterThan(35.9);
    assertThat(Compensation.DEFAULT.f25(Compensation.DEFAULT.coldest())).isPositive();
    assertThat(Compensation.DEFAULT.f25(Compensation.DEFAULT.warmest())).isPositive();
  }

  /**
   * A degree Fahrenheit is 5/9 K: what a meter prints as 1.91 % per degree Celsius is 1.06 % per
   * degree Fahrenheit, and the usual 1.8 to 2.2 % are 1.0 to 1.2 %.
   */
  @Test
  void coefficientsPerDegreeFahrenheit() {
    assertThat(Compensation.DEFAULT.pctPer(1)).isEqualTo(1.91);
    assertThat(Compensation.DEFAULT.pctPer(5.0 / 9)).isCloseTo(1.061, within(5e-4));
    assertThat(Compensation.leastPctPer(5.0 / 9)).isCloseTo(1.0, within(1e-9));
    assertThat(Compensation.mostPctPer(5.0 / 9)).isCloseTo(1.222, within(5e-4));
  }

  /** ISO 7888 is made for waters of 60 to 1000 uS/cm at 25 C. */
  @Test
  void theWatersOfTheNorm() {
    assertThat(EcReading.at25(0.059).naturalWater()).isFalse();
    assertThat(EcReading.at25(0.06).naturalWater()).isTrue();
    assertThat(EcReading.at25(1).naturalWater()).isTrue();
    assertThat(EcReading.at25(1.01).naturalWater()).isFalse();
    // 0.99 mS/cm raw at 10 C are 1.39 mS/cm at 25 C: 0.99 x 1.40
    assertThat(EcReading.raw(0.99, 10, Compensation.DEFAULT).naturalWater()).isFalse();
  }

  /** Meters in ppm: 1 mS/cm is 500, 640 or 700. */
  @ParameterizedTest
  @ValueSource(ints = {500, 640, 700})
  void thePpmScales(int factor) {
    PpmScale scale = PpmScale.of(factor);
    assertThat(scale.factor()).isEqualTo(factor);
    assertThat(scale.ppm(1.5)).isEqualTo(1.5 * factor);
    assertThat(scale.ec(factor)).isEqualTo(1);
    assertThatThrownBy(() -> PpmScale.of(factor + 1)).isInstanceOf(Impossible.class);
  }

  /** No plant lives over 10 mS/cm (practice). */
  @Test
  void overTenMilliSiemensNoPlantLives() {
    assertThat(EcReading.raw(10, 25, Compensation.DEFAULT).tooStrong()).isFalse();
    assertThat(EcReading.raw(10.01, 25, Compensation.DEFAULT).tooStrong()).isTrue();
  }
}
