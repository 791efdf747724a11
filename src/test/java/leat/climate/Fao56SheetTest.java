package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Examples of FAO-56: the unrounded formula, and beside it what the book prints. */
class Fao56SheetTest {
  private Map<String, String> in;

  static Stream<Row> rows() {
    return Sheet.of("season-fao56.csv").atLeast(44);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void unrounded(Row r) {
    double expected = r.num("expected");
    assertThat(value(r))
        .as(r.idAndProvenance())
        .isCloseTo(expected, within(Math.max(r.num("tol_rel") * Math.abs(expected), 1e-12)));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void asPrinted(Row r) {
    if (r.has("published")) {
      assertThat(value(r))
          .as(r.idAndProvenance())
          .isCloseTo(r.num("published"), within(r.num("published_tol") + 1e-12));
    }
  }

  private double of(String name) {
    return Double.parseDouble(in.get(name));
  }

  private int day() {
    return (int) of("day_of_year");
  }

  private double ra() {
    return ExtraterrestrialRadiation.mjM2(of("latitude_deg"), day());
  }

  private double sunRs() {
    return SunHoursRadiation.mjM2(
        of("sunshine_h"), DayLength.hours(of("latitude_deg"), day()), ra());
  }

  private double bothEa() {
    return ActualVapour.fromBothKPa(of("tmin_C"), of("tmax_C"), of("rhmin_pct"), of("rhmax_pct"));
  }

  private double value(Row r) {
    in = new HashMap<>();
    for (String pair : r.text("inputs").split(";")) {
      String[] sides = pair.strip().split("=", 2);
      in.put(sides[0], sides[1]);
    }
    return switch (r.text("quantity")) {
      case "pressure" -> AirPressure.kPa(of("altitude_m"));
      case "psychrometric" -> PsychrometricConstant.kPaPerC(of("pressure_kPa"));
      case "saturation_vapour_pressure" -> SaturationVapour.kPa(of("t_C"));
      case "mean_saturation_vapour_pressure" ->
          SaturationVapour.meanKPa(of("tmin_C"), of("tmax_C"));
      case "actual_vapour_pressure_rh" -> bothEa();
      case "actual_vapour_pressure_rhmean" ->
          ActualVapour.fromMeanKPa(of("tmin_C"), of("tmax_C"), of("rhmean_pct"));
      case "actual_vapour_pressure_tmin" -> ActualVapour.fromDewPointKPa(of("tmin_C"));
      case "vapour_pressure_deficit" ->
          SaturationVapour.meanKPa(of("tmin_C"), of("tmax_C")) - bothEa();
      case "slope_vapour_pressure" -> SaturationVapour.slopeKPaPerC(of("t_C"));
      case "inverse_relative_distance" -> SunPosition.inverseDistance(day());
      case "declination" -> SunPosition.declinationRad(day());
      case "extraterrestrial_radiation" -> ra();
      case "daylight_hours" -> DayLength.hours(of("latitude_deg"), day());
      case "solar_radiation_sunshine" -> sunRs();
      case "net_shortwave" -> NetRadiation.shortMjM2(of("rs"));
      case "soil_heat_month" -> MonthsSoilHeat.ofMonthMjM2(of("t_before_C"), of("t_after_C"));
      case "wind_at_2m" -> WindAtTwoMetres.ms(of("wind_m_s"), of("height_m"));
      case "net_radiation" -> of("rns") - of("rnl");
      case "net_longwave" ->
          NetRadiation.longMjM2(of("tmin_C"), of("tmax_C"), of("ea_kPa"), of("rs"), of("rso"));
      case "clear_sky_radiation" -> ClearSkyRadiation.mjM2(of("altitude_m"), of("ra"));
      case "net_radiation_full" -> net(of("ea_kPa"), sunRs());
      case "et0_penman_monteith" -> penmanMonteith();
      case "et0_penman_monteith_parts" ->
          PenmanMonteith.mmDay(
              of("tmean_C"), of("rn"), of("g"), of("u2_m_s"), of("es_kPa"), of("ea_kPa"), gamma());
      case "et0_penman_monteith_missing" -> missing();
      case "et0_hargreaves" -> HargreavesSamani.mmDay(of("tmin_C"), of("tmax_C"), ra());
      default -> throw new IllegalStateException(r.text("quantity"));
    };
  }

  private double gamma() {
    return PsychrometricConstant.kPaPerC(AirPressure.kPa(of("altitude_m")));
  }

  private double net(double ea, double rs) {
    return NetRadiation.mjM2(
        of("tmin_C"), of("tmax_C"), ea, rs, ClearSkyRadiation.mjM2(of("altitude_m"), ra()));
  }

  private double penmanMonteith() {
    double ea = in.containsKey("ea_kPa") ? of("ea_kPa") : bothEa();
    double mean = (of("tmax_C") + of("tmin_C")) / 2;
    double soil =
        in.containsKey("t_before_C") ? MonthsSoilHeat.sinceMonthMjM2(of("t_before_C"), mean) : 0;
    return et0(ea, sunRs(), soil);
  }

  private double missing() {
    double rs =
        TemperatureRadiation.mjM2(
            of("krs"),
            of("tmin_C"),
            of("tmax_C"),
            ra(),
            ClearSkyRadiation.mjM2(of("altitude_m"), ra()));
    return et0(SaturationVapour.kPa(of("tmin_C")), rs, ReferenceDay.SOIL_HEAT_OF_A_DAY);
  }

  private double et0(double ea, double rs, double soil) {
    return PenmanMonteith.mmDay(
        (of("tmax_C") + of("tmin_C")) / 2,
        net(ea, rs),
        soil,
        of("u2_m_s"),
        SaturationVapour.meanKPa(of("tmin_C"), of("tmax_C")),
        ea,
        gamma());
  }

  /** FAO-56 example 18 (Uccle, 6 July) from a row of weather, wind at 10 m turned into 2.078. */
  @Test
  void uccleFromARow() {
    WeatherDay day =
        WeatherDay.of(java.time.LocalDate.of(2027, 7, 6), 12.3, 21.5, 0)
            .withHumidity(Double.NaN, 63, 84, Double.NaN)
            .withSky(9.25, Double.NaN, 2.078);
    ReferenceDay got = ReferenceDay.of(day, Site.of(50.8, 100));
    assertThat(got.method()).isEqualTo(Method.PENMAN_MONTEITH);
    assertThat(got.et0Mm()).isCloseTo(3.88031091661, within(4e-6));
    assertThat(got.raMjM2()).isCloseTo(41.09, within(0.01));
    assertThat(got.daylightHours()).isCloseTo(16.1, within(0.05));
    assertThat(got.vapourDeficitKPa()).isCloseTo(1.997 - 1.409, within(0.001));
    assertThat(got.radiationBy()).isEqualTo(RadiationBy.SUN_HOURS);
    assertThat(got.humidityBy()).isEqualTo(HumidityBy.BOTH);
    Site high = new Site(50.8, 100, false, 10);
    WeatherDay tenMetres = day.withSky(9.25, Double.NaN, 10 / 3.6);
    assertThat(ReferenceDay.of(tenMetres, high).et0Mm()).isCloseTo(3.9, within(0.05));
  }
}
