package leat.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

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

class OxygenTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-oxygen.csv").atLeast(10);
  }

  static Stream<Row> published() {
    return Sheet.of("solution-oxygen.csv").having("published_1atm_mg_L").atLeast(7);
  }

  private static Oxygen.Answer atAltitude(double celsius, double metres) {
    return Oxygen.atPressure(celsius, Oxygen.pressureKpa(metres));
  }

  static Oxygen.Answer answer(Row r) {
    return r.text("pressure_given").equals("true")
        ? Oxygen.atPressure(r.num("temperature_C"), r.num("pressure_kPa"))
        : atAltitude(r.num("temperature_C"), r.num("altitude_m"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Oxygen.Answer a = answer(r);
    org.assertj.core.data.Percentage near = withPercentage(100 * r.num("tol_rel"));
    String as = r.idAndProvenance();
    assertThat(a.pressureKpa()).as(as).isCloseTo(r.num("pressure_kPa"), near);
    assertThat(a.seaLevelMgL()).as(as).isCloseTo(r.num("saturation_1atm_mg_L"), near);
    assertThat(a.saturationMgL()).as(as).isCloseTo(r.num("saturation_mg_L"), near);
    assertThat(a.shareOf18Pct()).as(as).isCloseTo(r.num("share_of_18C_pct"), near);
    assertThat(a.fourIsPct()).as(as).isCloseTo(r.num("four_mg_L_is_pct"), near);
  }

  @ParameterizedTest
  @MethodSource("published")
  void agreesWithThePublishedTable(Row r) {
    assertThat(answer(r).seaLevelMgL())
        .as(r.idAndProvenance())
        .isCloseTo(
            r.num("published_1atm_mg_L"),
            org.assertj.core.data.Offset.offset(r.num("tol_published")));
  }

  /**
   * Second route: Garcia and Gordon 1992, Limnol. Oceanogr. 37, 1307, the fit to Benson and Krause
   * in umol/kg at salinity 0 (coefficients from memory), 31.9988 g/mol and the density of water.
   */
  @Property
  void garciaAndGordonAgree(@ForAll @DoubleRange(min = 0, max = 40) double celsius) {
    double ts = Math.log((298.15 - celsius) / (273.15 + celsius));
    double[] a = {5.80871, 3.20291, 4.17887, 5.10006, -9.86643e-2, 3.80369};
    double ln = 0;
    for (int i = a.length - 1; i >= 0; i--) {
      ln = ln * ts + a[i];
    }
    double t = celsius;
    double density =
        0.999842594
            + 6.793952e-5 * t
            - 9.09529e-6 * t * t
            + 1.001685e-7 * t * t * t
            - 1.120083e-9 * Math.pow(t, 4)
            + 6.536332e-12 * Math.pow(t, 5);
    assertThat(Oxygen.saturationMgL(celsius, Oxygen.ATMOSPHERE_KPA))
        .isCloseTo(Math.exp(ln) * 31.9988e-3 * density, withPercentage(0.1));
  }

  @Property
  void warmerAndHigherHoldsLess(
      @ForAll @DoubleRange(min = 0, max = 39) double celsius,
      @ForAll @DoubleRange(min = -400, max = 3000) double altitude) {
    double here = atAltitude(celsius, altitude).saturationMgL();
    assertThat(atAltitude(celsius + 1, altitude).saturationMgL()).isLessThan(here);
    assertThat(atAltitude(celsius, altitude + 50).saturationMgL()).isLessThan(here);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> atAltitude(-0.1, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> atAltitude(40.1, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> atAltitude(20, 44_400)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Oxygen.atPressure(20, 1013)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Oxygen.atPressure(Double.NaN, 101)).isInstanceOf(Impossible.class);
  }

  @Test
  void theTemperatureThatHoldsSoMuchGivesItBack() {
    for (double celsius = 0.5; celsius < 40; celsius += 1.7) {
      for (double kpa = 75; kpa < 105; kpa += 7) {
        double held = Oxygen.saturationMgL(celsius, kpa);
        assertThat(Oxygen.celsiusHolding(held, kpa)).isCloseTo(celsius, within(1e-6));
      }
    }
    assertThat(Oxygen.celsiusHolding(20, 101.325)).isEqualTo(0);
    assertThat(Oxygen.celsiusHolding(1, 101.325)).isEqualTo(40);
  }

  /** Doubled each 10 K over 20 C; the warmest water that holds enough, by a table's two sides. */
  @Test
  void rootsNeedMoreInWarmth() {
    assertThat(Oxygen.rootsNeedMgL(12)).isEqualTo(4);
    assertThat(Oxygen.rootsNeedMgL(20)).isEqualTo(4);
    assertThat(Oxygen.rootsNeedMgL(30)).isCloseTo(8, within(1e-12));
    for (double kpa : new double[] {101.325, 84.556, 60}) {
      double enough = Oxygen.celsiusEnough(kpa);
      assertThat(Oxygen.atPressure(enough - 0.01, kpa).tooLittle()).isFalse();
      assertThat(Oxygen.atPressure(enough + 0.01, kpa).tooLittle()).isTrue();
    }
    assertThat(Oxygen.celsiusEnough(30)).isBetween(0.0, 20.0);
  }

  /** What is told beside the figure: less or more than at 18 C, from half a per cent. */
  @ParameterizedTest
  @MethodSource("rows")
  void comparedWithEighteenDegrees(Row r) {
    Oxygen.Answer a = answer(r);
    double share = r.num("share_of_18C_pct");
    assertThat(a.lessThanAt18()).as(r.idAndProvenance()).isEqualTo(r.num("temperature_C") > 18);
    assertThat(a.offPct())
        .as(r.idAndProvenance())
        .isCloseTo(Math.abs(share - 100), within(r.num("tol_rel") * share));
  }

  /** Water loses 2 % of its oxygen a kelvin about 18 C: a fifth of a kelvin is not told. */
  @Test
  void aboutEighteenDegreesNothingIsTold() {
    assertThat(atAltitude(18, 0).offPct()).isZero();
    assertThat(atAltitude(18, 0).lessThanAt18()).isFalse();
    assertThat(atAltitude(18.2, 0).offPct()).isZero();
    assertThat(atAltitude(17.8, 0).offPct()).isZero();
    assertThat(atAltitude(18.3, 0).offPct()).isCloseTo(0.6, within(0.05));
    assertThat(atAltitude(17.7, 0).offPct()).isCloseTo(0.6, within(0.05));
  }

  /** Rot spreads over 26 C (practice). */
  @Test
  void warmIsOverTwentySix() {
    assertThat(atAltitude(26, 0).warm()).isFalse();
    assertThat(atAltitude(26.1, 0).warm()).isTrue();
  }

  /**
   * The air thins by 12 Pa a metre at the sea: half a per cent of 101.325 kPa, 507 Pa, is 42 m up.
   */
  @Test
  void thinAirBeginsAtFortyMetres() {
    assertThat(atAltitude(20, 0).thinAir()).isFalse();
    assertThat(atAltitude(20, 40).thinAir()).isFalse();
    assertThat(atAltitude(20, 45).thinAir()).isTrue();
  }

  /**
   * 30 kPa, the thinnest air that is taken: 14.62 x 0.296 x 0.98/0.994 = 4.27 mg/L in ice water.
   */
  @Test
  void iceWaterHoldsEnoughInTheThinnestAir() {
    assertThat(Oxygen.saturationMgL(0, 30)).isCloseTo(4.27, within(0.01));
    assertThat(Oxygen.celsiusEnough(30)).isGreaterThan(0);
    assertThatThrownBy(() -> Oxygen.celsiusEnough(29.9)).isInstanceOf(Impossible.class);
  }
}
