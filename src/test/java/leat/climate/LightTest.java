package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LightTest {
  private static Stream<Row> kind(String kind, int atLeast) {
    return Sheet.of("season-light.csv").where(r -> r.text("kind").equals(kind)).atLeast(atLeast);
  }

  static Stream<Row> months() {
    return kind("month", 34);
  }

  static Stream<Row> radiation() {
    return kind("radiation", 2);
  }

  static Stream<Row> meters() {
    return kind("meter", 3);
  }

  static Stream<Row> sills() {
    return kind("sill", 3);
  }

  static Stream<Row> lamps() {
    return kind("lamp", 8);
  }

  @Test
  void everyRowHasItsTest() {
    long tested = 0;
    for (Stream<Row> some : List.of(months(), radiation(), meters(), sills(), lamps())) {
      tested += some.count();
    }
    assertThat(tested).isEqualTo(Sheet.of("season-light.csv").rows().size());
  }

  private static void close(Row r, String column, double value) {
    if (r.has(column)) {
      assertThat(value)
          .as(r.idAndProvenance() + " " + column)
          .isCloseTo(r.num(column), within(1e-12 + r.num("tol_rel") * r.num(column)));
    }
  }

  @ParameterizedTest
  @MethodSource("months")
  void month(Row r) {
    boolean coast = r.numOr("krs", 0.16) == TemperatureRadiation.COAST;
    Site site = new Site(r.num("latitude_deg"), r.num("altitude_m"), coast, 2);
    MonthLight month =
        MonthLight.of(
            site,
            (int) r.num("month"),
            r.numOr("tmin_C", Double.NaN),
            r.numOr("tmax_C", Double.NaN));
    close(r, "ra_MJ_m2_d", month.raMjM2());
    close(r, "day_length_h", month.daylightHours());
    close(r, "rso_MJ_m2_d", month.clearMjM2());
    close(r, "rs_hargreaves_MJ_m2_d", month.rsMjM2());
    close(r, "capped_days", month.cappedDays());
    close(r, "dli_clear_mol", month.clearMolM2());
    close(r, "dli_mol", month.molM2());
    close(r, "dli_inside_mol", DailyLight.insideMolM2(month.molM2(), r.num("transmission"), 1));
    if (!r.has("tmin_C")) {
      assertThat(month.molM2()).isNaN();
    }
  }

  @ParameterizedTest
  @MethodSource("radiation")
  void fromRadiation(Row r) {
    double open = DailyLight.molM2(r.num("rs_MJ_m2_d"));
    close(r, "dli_mol", open);
    close(
        r,
        "dli_inside_mol",
        DailyLight.insideMolM2(open, r.num("transmission"), r.num("sun_share")));
  }

  @ParameterizedTest
  @MethodSource("meters")
  void meter(Row r) {
    double ppfd = LightMeter.ppfdUmolM2S(r.num("lux"), r.num("lux_per_umol"));
    close(r, "ppfd_umol", ppfd);
    close(r, "dli_mol", LightMeter.molM2(ppfd, r.num("hours_light")));
  }

  @ParameterizedTest
  @MethodSource("sills")
  void sill(Row r) {
    double share =
        WindowSill.skyShare(r.num("window_width_m"), r.num("window_height_m"), r.num("distance_m"));
    close(r, "sky_share", share);
    close(r, "dli_inside_mol", WindowSill.molM2(r.num("natural_mol"), share, r.num("glass")));
    assertThat(share).isCloseTo(patches(r), within(2e-5));
  }

  /** Second route: the pane in 400 x 400 patches of even sky, each by its cosine at the leaf. */
  private static double patches(Row r) {
    int n = 400;
    double w = r.num("window_width_m");
    double h = r.num("window_height_m");
    double d = r.num("distance_m");
    double sum = 0;
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        double x = (i + 0.5) / n * w - w / 2;
        double z = (k + 0.5) / n * h;
        double s2 = x * x + d * d + z * z;
        sum += z / Math.sqrt(s2) * d / Math.sqrt(s2) / s2;
      }
    }
    return sum * w * h / n / n / Math.PI;
  }

  private static Lamp lamp(Row r) {
    double efficacy =
        r.has("efficacy_umol_J")
            ? r.num("efficacy_umol_J")
            : Lamp.ofLumenUmolJ(r.num("lumen_per_W"), r.num("lux_per_umol"));
    return new Lamp(
        r.numOr("lamp_W", Double.NaN), efficacy, r.num("utilisation"), r.num("area_m2"));
  }

  @ParameterizedTest
  @MethodSource("lamps")
  void lampDay(Row r) {
    Lamp lamp = lamp(r);
    LampDay day = lamp.day(r.num("natural_mol"), r.num("need_mol"), r.num("max_hours"));
    assertThat(day.status().word()).isEqualTo(r.text("status"));
    close(r, "ppfd_umol", lamp.ppfdUmolM2S());
    close(r, "missing_mol", day.missingMolM2());
    close(r, "hours", day.hours());
    close(r, "kWh_day", day.kwhDay());
    close(r, "W_needed", day.wattsNeeded());
    close(r, "dli_with_lamp_mol", day.reachedMolM2());
    // Second route, by energy: the photons of the hours burnt are those that were missing.
    if (day.status() == LampDay.Status.OK) {
      double photons = day.hours() * 3600 * lamp.watts() * lamp.umolPerJ() * lamp.landing() / 1e6;
      assertThat(photons / lamp.areaM2()).isCloseTo(day.missingMolM2(), within(1e-9));
      assertThat(day.kwhDay()).isCloseTo(lamp.watts() * day.hours() / 1000, within(1e-12));
    }
  }

  /** A season's months by its own days: each equals the mean of its days. */
  @Test
  void monthsOfASeason() {
    SeasonWeather season = Seattle.from(LocalDate.of(2014, 4, 20), 164);
    Site site = Site.of(Seattle.LATITUDE, 0);
    List<MonthLight> months = MonthLight.of(season, site);
    assertThat(months).extracting(MonthLight::month).containsExactly(4, 5, 6, 7, 8, 9);
    assertThat(months).extracting(MonthLight::days).containsExactly(11, 31, 30, 31, 31, 30);
    double sum = 0;
    for (int i = 11; i < 42; i++) {
      sum += ReferenceDay.radiationMjM2(season.day(i), site);
    }
    assertThat(months.get(1).rsMjM2()).isCloseTo(sum / 31, within(1e-9));
    assertThat(months.get(1).clearMjM2()).isGreaterThan(months.get(1).rsMjM2());
  }

  /** In polar night nothing holds the light down: there is none. */
  @Test
  void polarNight() {
    MonthLight december = MonthLight.of(Site.of(78, 0), 12, -20, -5);
    assertThat(december.cappedDays()).isZero();
    assertThat(december.molM2()).isZero();
    assertThat(december.daylightHours()).isZero();
  }

  @Test
  void measuredBeforeSunBeforeTemperature() {
    Site site = Site.of(48.2, 200);
    WeatherDay day = WeatherDay.of(LocalDate.of(2027, 6, 15), 14, 25, 0);
    assertThat(ReferenceDay.radiationBy(day)).isEqualTo(RadiationBy.TEMPERATURE);
    WeatherDay sun = day.withSky(9, Double.NaN, Double.NaN);
    assertThat(ReferenceDay.radiationBy(sun)).isEqualTo(RadiationBy.SUN_HOURS);
    WeatherDay measured = day.withSky(9, 22.4, Double.NaN);
    assertThat(ReferenceDay.radiationMjM2(measured, site)).isEqualTo(22.4);
    WeatherDay none = WeatherDay.of(day.date(), Double.NaN, Double.NaN, 0);
    assertThat(ReferenceDay.radiationMjM2(none, site)).isNaN();
    double n = DayLength.hours(48.2, 166);
    double ra = ExtraterrestrialRadiation.mjM2(48.2, 166);
    assertThat(SunHoursRadiation.mjM2(n + 0.3, n, ra)).isEqualTo(0.75 * ra);
    assertThat(SunHoursRadiation.mjM2(0, 0, 0)).isZero();
  }

  /** Needs against season-light.md section 3, read there; how known is in each row. */
  @Test
  void needs() {
    assertThat(LightNeed.all()).hasSize(12);
    assertThat(LightNeed.find("lettuce").goodMolM2()).isEqualTo(17);
    assertThat(LightNeed.find("pepper").lowMolM2()).isEqualTo(15);
    assertThat(LightNeed.find("mint").lowMolM2()).isEqualTo(8.6);
    assertThat(LightNeed.find("oak")).isNull();
    assertThat(LightNeed.find("tomato").lampHours()).isEqualTo(18);
    assertThat(LightNeed.find("basil").lampHours()).isEqualTo(16);
    for (LightNeed one : LightNeed.all()) {
      assertThat(one.lowMolM2()).isLessThan(one.goodMolM2());
    }
  }

  @Test
  void coversAndRefusals() {
    assertThat(Cover.of("film").transmission()).isEqualTo(0.69);
    assertThat(Cover.of("brick")).isNull();
    for (Cover one : Cover.values()) {
      assertThat(one.transmission()).isBetween(0.5, 1.0);
      assertThat(Cover.of(one.word())).isSameAs(one);
    }
    assertThatThrownBy(() -> new Lamp(60, 5, 0.6, 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Lamp(0, 2, 0.6, 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Lamp(60, 2, 0, 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Lamp(60, 2, 0.5, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Lamp(60, 2, 0.5, 1).day(1, 9, 25)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> DailyLight.molM2(-1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> DailyLight.insideMolM2(9, 1.2, 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> WindowSill.skyShare(1, 1, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> MonthLight.of(Site.of(48, 0), 13, 1, 2))
        .isInstanceOf(Impossible.class);
  }
}
