package leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WaterTest {
  static Stream<Row> rows() {
    return Sheet.of("hydraulics-water.csv").atLeast(20);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    double t = r.num("temperature_C");
    double rho = 100 * r.num("tol_rel_rho");
    double mu = 100 * r.num("tol_rel_mu");
    String as = r.idAndProvenance();
    assertThat(Water.density(t)).as(as).isCloseTo(r.num("rho_iapws95_kg_m3"), withPercentage(rho));
    assertThat(Water.densityKell(t))
        .as(as)
        .isCloseTo(r.num("rho_kell1975_kg_m3"), withPercentage(1e-7));
    if (r.has("rho_tanaka2001_kg_m3")) {
      assertThat(Water.densityTanaka(t))
          .as(as)
          .isCloseTo(r.num("rho_tanaka2001_kg_m3"), withPercentage(1e-7));
    }
    assertThat(Water.viscosity(t))
        .as(as)
        .isCloseTo(r.num("mu_iapws_sr6_eq7_Pa_s"), withPercentage(1e-4))
        .isCloseTo(r.num("mu_iapws2008_Pa_s"), withPercentage(mu));
    assertThat(Water.viscosity(t) / Water.density(t))
        .as(as)
        .isCloseTo(r.num("nu_m2_s"), withPercentage(mu));
    double pv = 100 * r.num("tol_rel_pvap");
    assertThat(vapourPressure(t))
        .as(as)
        .isCloseTo(r.num("pvap_buck_Pa"), withPercentage(1e-4))
        .isCloseTo(r.num("pvap_iapws_if97_Pa"), withPercentage(pv));
    assertThat(Water.surfaceTension(t))
        .as(as)
        .isCloseTo(r.num("sigma_iapws_N_m"), withPercentage(mu));
  }

  /** A. L. Buck 1996, Pa: the sheet's column, which no answer needs. */
  private static double vapourPressure(double t) {
    return 611.21 * Math.exp((18.678 - t / 234.5) * t / (257.14 + t));
  }

  /** IAPWS SR6-08(2011): at 298.15 K, 0.1 MPa the viscosity is 889.996774 uPa s (memory). */
  @Test
  void meetsTheCheckValueOfTheViscosityRelease() {
    assertThat(Water.viscosity(25)).isCloseTo(889.996774e-6, withPercentage(1e-7));
  }

  @Property
  void densitiesOfTwoAuthorsAgree(@ForAll @Scale(12) @DoubleRange(min = 0, max = 40) double t) {
    assertThat(Water.densityTanaka(t)).isCloseTo(Water.densityKell(t), withPercentage(1e-3));
  }

  @Property
  void warmWaterRunsThinner(@ForAll @Scale(12) @DoubleRange(min = 0, max = 59) double t) {
    assertThat(Water.viscosity(t + 1)).isLessThan(Water.viscosity(t));
    assertThat(Water.surfaceTension(t + 1)).isLessThan(Water.surfaceTension(t));
  }

  @Test
  void refusesIceAndSteam() {
    assertThatThrownBy(() -> Water.density(-0.1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Liquid.water(61)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Water.viscosity(Double.NaN)).isInstanceOf(Impossible.class);
  }
}
