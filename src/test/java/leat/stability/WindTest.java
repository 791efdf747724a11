package leat.stability;

import static leat.stability.Rows.same;
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

class WindTest {
  static Stream<Row> profile() {
    return Sheet.of("stability-wind-profile.csv").atLeast(15);
  }

  @ParameterizedTest
  @MethodSource("profile")
  void profileAgreesWithTheSheet(Row r) {
    Terrain t = Terrain.named(r.text("terrain"));
    double z = r.num("z_m");
    SiteWind wind = SiteWind.ofMean(r.num("vb_m_s"), t, z, 1, null);
    same(r, WindProfile.heightUsed(t, z), "z_used_m", 0.001);
    same(r, WindProfile.terrainFactor(t), "k_r", 0.001);
    same(r, WindProfile.roughnessFactor(t, z), "c_r", 0.001);
    same(r, r.num("vb_m_s") * WindProfile.roughnessFactor(t, z), "v_mean_m_s", 0.001);
    same(r, WindProfile.turbulence(t, z), "I_v", 0.001);
    same(r, WindProfile.gustFactor(t, z), "gust_factor", 0.001);
    same(r, wind.gust(), "v_gust_m_s", 0.001);
    same(r, wind.pressure(r.num("rho_kg_m3")), "q_p_Pa", 0.001);
  }

  static Stream<Row> published() {
    return Sheet.of("stability-wind-profile.csv").having("published_q_p_Pa").atLeast(3);
  }

  @ParameterizedTest
  @MethodSource("published")
  void pressureAgreesWithPublishedExamples(Row r) {
    Terrain t = Terrain.named(r.text("terrain"));
    SiteWind wind = SiteWind.ofMean(r.num("vb_m_s"), t, r.num("z_m"), 1, null);
    same(r, wind.pressure(r.num("rho_kg_m3")), "published_q_p_Pa");
  }

  static Stream<Row> pressures() {
    return Sheet.of("stability-velocity-pressure.csv").atLeast(9);
  }

  @ParameterizedTest
  @MethodSource("pressures")
  void densityAndPressureAgreeWithTheSheet(Row r) {
    double rho =
        r.has("temp_C") ? density(r.num("temp_C"), 100 * r.num("pressure_hPa")) : Air.DENSITY;
    same(r, rho, "rho_kg_m3");
    same(r, Air.pressure(rho, r.num("v_m_s")), "q_Pa");
    assertThat(Air.speed(rho, Air.pressure(rho, r.num("v_m_s"))))
        .isCloseTo(r.num("v_m_s"), within(1e-12));
  }

  /** Dry air as an ideal gas, R as in the 1976 standard atmosphere. */
  private static double density(double celsius, double pascal) {
    return pascal / (287.05 * (celsius + 273.15));
  }

  static Stream<Row> classes() {
    return Sheet.of("stability-beaufort-class.csv").atLeast(21);
  }

  @ParameterizedTest
  @MethodSource("classes")
  void beaufortAgreesWithTheSheet(Row r) {
    int number = Beaufort.of(r.num("v_m_s"));
    assertThat(number).as(r.idAndProvenance()).isEqualTo((int) r.num("beaufort"));
  }

  @Test
  void beaufortsBandsAgreeWithTheSheet() {
    var rows = Sheet.of("stability-beaufort-table.csv").rows();
    assertThat(rows).hasSize(Beaufort.MOST + 1);
    for (Row r : rows) {
      int number = (int) r.num("beaufort");
      double low = r.num("v_low_m_s");
      double high = r.has("v_high_m_s") ? r.num("v_high_m_s") : 100;
      assertThat(Beaufort.of(low)).isEqualTo(number);
      assertThat(Beaufort.of(high)).isEqualTo(number);
      assertThat(Beaufort.of(Math.max(0, low - 0.1))).isEqualTo(Math.max(0, number - 1));
      assertThat(Air.pressure(Air.DENSITY, low))
          .isCloseTo(r.num("q_low_Pa"), within(1e-5 * r.num("q_low_Pa")));
      // v = 0.836 B^1.5 lies in its own band: two public sources of unit conversions.
      assertThat(Beaufort.of(0.836 * Math.pow(number, 1.5))).isEqualTo(number);
    }
  }

  /** A gust stays as it is, whatever the ground: no gust on a gust. */
  @Property
  void aGustIsTakenAsItIs(
      @ForAll @DoubleRange(min = 0, max = 60) double gust,
      @ForAll @DoubleRange(min = 0.1, max = 200) double height,
      @ForAll Terrain terrain) {
    SiteWind wind = SiteWind.ofGust(gust, terrain, height, 0.8, null);
    assertThat(wind.gust()).isEqualTo(gust);
    SiteWind back = SiteWind.ofMean(wind.mean(), terrain, height, 0.8, null);
    assertThat(back.gust()).isCloseTo(gust, within(1e-9));
    assertThat(SiteWind.gustAlone(gust).gust()).isEqualTo(gust);
  }

  /** qp = (1 + 7 Iv) rho vm^2/2 written out by hand for category II at 10 m, vb 24: WP05. */
  @Test
  void theMeanThatTipsItIsTheForecasts() {
    SiteWind wind = SiteWind.ofMean(24, Terrain.OPEN, 10, 1, null);
    assertThat(wind.meanFor(36.8092)).isCloseTo(24, withPercentage(0.01));
    assertThat(wind.beaufortFor(36.8092)).isEqualTo(9);
    assertThat(wind.meanFor(null)).isNull();
    assertThat(SiteWind.gustAlone(20).meanFor(10.0)).isNull();
    assertThat(SiteWind.gustAlone(20).beaufortFor(10.0)).isNull();
  }

  @Test
  void shelterAndOwnGustFactorAreFactors() {
    double plain = SiteWind.ofMean(20, Terrain.CITY, 13, 1, null).gust();
    assertThat(SiteWind.ofMean(20, Terrain.CITY, 13, 0.7, null).gust())
        .isCloseTo(0.7 * plain, within(1e-12));
    assertThat(SiteWind.ofMean(20, Terrain.CITY, 13, 1, 1.5).gust())
        .isCloseTo(20 * 1.5 * WindProfile.roughnessFactor(Terrain.CITY, 13), within(1e-12));
  }

  @Test
  void refusesWhatNoWindIs() {
    refused(() -> SiteWind.ofMean(20, Terrain.OPEN, 200.1, 1, null), "height above ground");
    refused(() -> SiteWind.ofMean(20, Terrain.OPEN, -0.1, 1, null), "height above ground");
    refused(() -> SiteWind.ofMean(-1, Terrain.OPEN, 10, 1, null), "wind");
    refused(() -> SiteWind.ofMean(20, Terrain.OPEN, 10, 0, null), "shelter");
    refused(() -> SiteWind.ofMean(20, Terrain.OPEN, 10, 1, 0.9), "gust factor");
    refused(() -> SiteWind.gustAlone(Double.NaN), "wind");
    refused(() -> Beaufort.of(-0.1), "wind");
    assertThat(Terrain.named("forest")).isNull();
  }

  private static void refused(Runnable what, String quantity) {
    assertThatThrownBy(what::run)
        .isInstanceOfSatisfying(
            Impossible.class, e -> assertThat(e.quantity()).isEqualTo(quantity));
  }
}
