package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
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

class WarmthTest {
  static Stream<Row> rows() {
    return Sheet.of("season-gdd.csv").atLeast(10);
  }

  /** The rows of New York need weather that is not kept here. */
  static Stream<Row> days() {
    return Sheet.of("season-gdd-days.csv")
        .where(r -> r.text("location").equals("Seattle"))
        .atLeast(4);
  }

  static Stream<Row> warming() {
    return Sheet.of("season-warming.csv").atLeast(5);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void degreeDays(Row r) {
    for (DegreeDays method : DegreeDays.values()) {
      assertThat(method.ofDay(r.num("tmin_C"), r.num("tmax_C"), r.num("base_C"), r.num("upper_C")))
          .as(r.idAndProvenance() + method)
          .isCloseTo(
              r.num("gdd_" + method.name().toLowerCase(java.util.Locale.ROOT)),
              within(r.num("tol_abs")));
    }
  }

  @ParameterizedTest
  @MethodSource("days")
  void daysToHarvest(Row r) {
    LocalDate transplant = LocalDate.parse(r.text("transplant"));
    int length = transplant.lengthOfYear() - transplant.getDayOfYear() + 1;
    SeasonWeather season = Seattle.from(transplant, length);
    for (String method : new String[] {"clipped", "sine"}) {
      int days =
          DegreeDays.valueOf(method.toUpperCase(java.util.Locale.ROOT))
              .daysTo(
                  r.num("target_gdd"),
                  season.tminCelsius(),
                  season.tmaxCelsius(),
                  0,
                  r.num("base_C"),
                  r.num("upper_C"));
      assertThat(days).as(r + method).isEqualTo((int) r.numOr("days_" + method, -1));
      if (days >= 0) {
        assertThat(transplant.plusDays(days).toString()).isEqualTo(r.text("reached_" + method));
      } else {
        assertThat(r.text("reached_" + method)).isEqualTo("not this year");
      }
    }
    double sum = 0;
    for (int i = 0; i < season.size(); i++) {
      double tmin = season.tminCelsius()[i];
      double tmax = season.tmaxCelsius()[i];
      sum += DegreeDays.CLIPPED.ofDay(tmin, tmax, r.num("base_C"), r.num("upper_C"));
    }
    assertThat(sum).isCloseTo(r.num("gdd_clipped_to_year_end"), within(1e-6));
  }

  /** Second route: the held sine averaged over 20 000 points; its kinks cost no more than 1E-4. */
  @Property(tries = 60)
  void sineByIntegration(
      @ForAll @DoubleRange(min = -10, max = 30) double tmin,
      @ForAll @DoubleRange(min = 0, max = 25) double span,
      @ForAll @DoubleRange(min = 0, max = 15) double base,
      @ForAll @DoubleRange(min = 5, max = 25) double width) {
    double tmax = tmin + span;
    int n = 20_000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double t = (tmax + tmin) / 2 + span / 2 * Math.sin(2 * Math.PI * (i + 0.5) / n);
      sum += Math.max(base, Math.min(base + width, t)) - base;
    }
    assertThat(DegreeDays.SINE.ofDay(tmin, tmax, base, base + width))
        .isCloseTo(sum / n, within(1e-5));
  }

  /** Warmer is never less, and a constant temperature is the same in all three. */
  @Property
  void laws(
      @ForAll @DoubleRange(min = -10, max = 30) double tmin,
      @ForAll @DoubleRange(min = 0, max = 25) double span,
      @ForAll @DoubleRange(min = 0, max = 5) double more) {
    for (DegreeDays method : DegreeDays.values()) {
      assertThat(method.ofDay(tmin, tmin + span + more, 4, 24))
          .isGreaterThanOrEqualTo(method.ofDay(tmin, tmin + span, 4, 24) - 1e-12);
    }
    double still = Math.min(24, tmin);
    assertThat(DegreeDays.SINE.ofDay(still, still, 4, 24))
        .isCloseTo(DegreeDays.SIMPLE.ofDay(still, still, 4, 24), within(1e-12));
    assertThat(DegreeDays.CLIPPED.ofDay(still, still, 4, 24))
        .isCloseTo(DegreeDays.SIMPLE.ofDay(still, still, 4, 24), within(1e-12));
    assertThat(DegreeDays.SINE.ofDay(tmin, tmin + span, 3, DegreeDays.NO_UPPER))
        .isGreaterThanOrEqualTo(DegreeDays.SINE.ofDay(tmin, tmin + span, 3, 30));
  }

  /** Ten days of a tenth make one, though ten tenths added up stay a hair under it. */
  @Test
  void aTargetMetExactlyIsMet() {
    double[] still = new double[20];
    java.util.Arrays.fill(still, 0.1);
    double sum = 0;
    for (int i = 0; i < 10; i++) {
      sum += 0.1;
    }
    assertThat(sum).isLessThan(1);
    assertThat(DegreeDays.SIMPLE.daysTo(1, still, still, 0, 0, 24)).isEqualTo(9);
    assertThat(DegreeDays.SIMPLE.daysTo(1, still, still, 5, 0, 24)).isEqualTo(9);
    assertThat(DegreeDays.SIMPLE.daysTo(1.05, still, still, 0, 0, 24)).isEqualTo(10);
    assertThat(DegreeDays.SIMPLE.daysTo(2.01, still, still, 0, 0, 24)).isEqualTo(-1);
  }

  @Test
  void cropsAndRefusals() {
    assertThat(CropWarmth.find("pepper").upperCelsius()).isEqualTo(35);
    assertThat(CropWarmth.find("tomato").baseCelsius()).isEqualTo(7);
    assertThat(CropWarmth.find("oak")).isNull();
    assertThat(CropWarmth.all()).hasSize(7);
    assertThatThrownBy(() -> DegreeDays.SINE.ofDay(5, 4, 0, 9)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> DegreeDays.SINE.ofDay(5, 9, 9, 9)).isInstanceOf(Impossible.class);
    for (DegreeDays each : DegreeDays.values()) {
      assertThatThrownBy(() -> each.ofDay(5, 4.9, 0, 9)).isInstanceOf(Impossible.class);
    }
    assertThatThrownBy(() -> DegreeDays.CLIPPED.ofDay(5, 9, 9, 9)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> HargreavesSamani.mmDay(5, 4.9, 30)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> TemperatureRadiation.mjM2(TemperatureRadiation.INLAND, 5, 4.9, 30, 20))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> DegreeDays.SINE.daysTo(0, new double[1], new double[1], 0, 4, 24))
        .isInstanceOf(Impossible.class);
  }

  private static void close(Row r, String column, double value) {
    assertThat(value)
        .as(r.idAndProvenance())
        .isCloseTo(r.num(column), within(r.num("tol_rel") * r.num(column)));
  }

  @ParameterizedTest
  @MethodSource("warming")
  void tankWarmth(Row r) {
    double watts = r.num("pump_W") * r.num("on_share");
    double m3 = r.num("volume_L") / 1000;
    double ua = r.num("loss_W_K");
    double seconds = r.num("hours") * 3600;
    double tau = TankSwing.timeConstantS(m3, ua);
    close(r, "rise_adiabatic_K", TankWarmth.riseMostK(watts, seconds, m3));
    close(r, "rise_steady_K", TankWarmth.riseSteadyK(watts, ua));
    close(r, "time_constant_h", tau / 3600);
    close(r, "rise_after_K", TankSwing.riseAfterK(watts, ua, m3, seconds));
    close(r, "daily_swing_ratio", TankSwing.swingShare(tau));
    close(r, "daily_lag_h", TankSwing.swingLagS(tau) / 3600);
  }

  /** Second route: the heat balance stepped through ten days of swinging air. */
  @Test
  void swingByIntegration() {
    double tau = TankSwing.timeConstantS(0.045, 6);
    double dt = 10;
    double t = 0;
    double most = 0;
    double at = 0;
    for (int i = 0; i < 86_400; i++) {
      double s = (i + 0.5) * dt;
      double air = Math.sin(2 * Math.PI * s / 86_400);
      t += dt / tau * (air - t);
      if (i >= 77_760 && t > most) {
        most = t;
        at = (i + 1) * dt;
      }
    }
    assertThat(TankSwing.swingShare(tau)).isCloseTo(most, within(1e-3));
    assertThat(TankSwing.swingLagS(tau)).isCloseTo(at % 86_400 - 21_600, within(60.0));
    assertThat(TankWarmth.lossWPerK(0.75)).isCloseTo(6, within(1e-12));
  }

  /** A square tank of 0.25 m2 filled 0.4 m deep: lid and bottom 0.5 m2, four sides of 0.2 m2. */
  @Test
  void theOutsideOfATank() {
    assertThat(TankWarmth.outsideM2(0.25, 0.4)).isCloseTo(1.3, within(1e-12));
    assertThatThrownBy(() -> TankWarmth.outsideM2(0, 0.4)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> TankWarmth.outsideM2(0.25, 0)).isInstanceOf(Impossible.class);
  }

  /** 1.05 x 5 mm x 0.2 m2 x 0.5; three closed towers of 0.005 m2 each. */
  @Test
  void openWater() {
    assertThat(OpenWater.litresDay(5, 0.2, 0.5)).isCloseTo(0.525, within(1e-12));
    assertThat(OpenWater.closedTowersM2(3)).isCloseTo(0.015, within(1e-12));
  }
}
