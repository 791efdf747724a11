package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
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
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FillFilmTest {
  static Stream<Row> fills() {
    return Sheet.of("hydraulics-fill.csv").atLeast(18);
  }

  static Stream<Row> films() {
    return Sheet.of("hydraulics-film.csv").atLeast(22);
  }

  private static void same(Row r, double ours, String column, String tolerance) {
    double want = r.num(column);
    assertThat(ours)
        .as(column + " " + r.idAndProvenance())
        .isCloseTo(want, within(Math.abs(want) * r.num(tolerance)));
  }

  @ParameterizedTest
  @MethodSource("fills")
  void fillAgreesWithTheSheet(Row r) {
    Liquid water = Cases.water(r);
    Riser riser = new Riser(Cases.plain(r, water), r.num("static_head_m"));
    boolean check = r.text("check_valve").equals("yes");
    RiserFill f = RiserFill.of(Cases.running(r), riser, check);
    double area = r.num("tank_plan_area_cm2") / 1e4;
    String simple = "tol_rel_simple";
    assertThat(f.reaches() ? "flow" : "no_reach").isEqualTo(r.text("status"));
    same(r, f.flow() / L_MIN, "flow_L_min", simple);
    same(r, f.riserVolume() * 1000, "riser_volume_above_level_L", simple);
    same(r, f.standsAt(), "column_stands_at_m", simple);
    same(r, f.drainBack() * 1000, "drain_back_L", simple);
    same(r, RiserFill.tankRise(f.drainBack(), area) * 1000, "tank_rise_mm", simple);
    if (r.has("fill_time_simple_s")) {
      same(r, f.firstFillTime().getAsDouble(), "fill_time_simple_s", simple);
      same(r, f.integratedTime().getAsDouble(), "fill_time_integrated_s", "tol_rel_integrated");
      same(r, f.restartTime().getAsDouble(), "restart_fill_time_s", "tol_rel_integrated");
      assertThat(f.fillTime().getAsDouble()).isEqualTo(check ? 0 : f.firstFillTime().getAsDouble());
    } else {
      assertThat(f.fillTime()).isEmpty();
      assertThat(f.integratedTime()).isEmpty();
      assertThat(f.restartTime()).isEmpty();
    }
    if (r.has("film_L")) {
      double film = film(r, f.flow(), water);
      same(r, film * 1000, "film_L", simple);
      same(r, (f.drainBack() + film) * 1000, "drain_back_with_film_L", simple);
      double rise = RiserFill.tankRise(f.drainBack() + film, area);
      same(r, rise * 1000, "tank_rise_with_film_mm", simple);
    }
  }

  private static double film(Row r, double flow, Liquid water) {
    if (flow == 0) {
      return 0;
    }
    double inside = r.num("tower_inner_diameter_mm") / 1000;
    return Film.of(flow, inside, 1, r.num("film_height_m"), water).volume();
  }

  /** Bird, Stewart and Lightfoot, section 2.2: ripples from Re 20, eddies over 1500. */
  private static String regime(double re) {
    return re < 20 ? "smooth" : re <= 1500 ? "wavy" : "turbulent";
  }

  @ParameterizedTest
  @MethodSource("films")
  void filmAgreesWithTheSheet(Row r) {
    String tol = "tol_rel";
    double rho = r.num("rho_kg_m3");
    double mu = r.num("mu_Pa_s");
    double mass = r.num("gamma_kg_m_s");
    same(r, Film.thickness(mass, rho, mu) * 1000, "thickness_mm", tol);
    same(r, Film.reynolds(mass, mu), "film_reynolds", tol);
    assertThat(regime(r.num("film_reynolds"))).isEqualTo(r.text("regime"));
    double speed = mass / rho / Film.thickness(mass, rho, mu);
    same(r, speed, "mean_velocity_m_s", tol);
    same(r, 1.5 * speed, "surface_velocity_m_s", tol);
    if (!r.has("flow_L_min")) {
      return;
    }
    Film f =
        Film.of(
            r.num("flow_L_min") * L_MIN,
            r.num("inner_diameter_mm") / 1000,
            r.num("wetted_fraction"),
            r.num("height_m"),
            Cases.water(r));
    same(r, f.perimeter() * 1000, "wetted_perimeter_mm", tol);
    same(r, f.loading() / L_MIN, "loading_L_min_per_m", tol);
    same(r, f.massLoading(), "gamma_kg_m_s", tol);
    same(r, f.reynolds(), "film_reynolds", tol);
    same(r, f.thickness() * 1000, "thickness_mm", tol);
    same(r, f.meanSpeed(), "mean_velocity_m_s", tol);
    same(r, f.surfaceSpeed(), "surface_velocity_m_s", tol);
    same(r, f.transitTime(), "transit_mean_s", tol);
    same(r, f.surfaceTransitTime(), "transit_surface_s", tol);
    same(r, f.volume() * 1000, "film_volume_L", tol);
    same(r, Math.cbrt(2.4 / 3) * f.thickness() * 1000, "thickness_kapitza_mm", tol);
    same(r, f.breaksBelow() / L_MIN, "loading_breaks_below_L_min_per_m", tol);
    assertThat(regime(f.reynolds())).isEqualTo(r.text("regime"));
    assertThat(f.indicationOnly()).isEqualTo(r.text("regime").equals("turbulent"));
  }

  @Property
  void eightTimesTheFlowIsTwiceTheThickness(
      @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 10) double litres) {
    Liquid water = Liquid.water(20);
    Film one = Film.of(litres * L_MIN, 0.105, 1, 1.5, water);
    Film eight = Film.of(8 * litres * L_MIN, 0.105, 1, 1.5, water);
    assertThat(eight.thickness()).isCloseTo(2 * one.thickness(), withPercentage(1e-9));
    assertThat(eight.transitTime()).isCloseTo(one.transitTime() / 4, withPercentage(1e-9));
    assertThat(one.volume()).isCloseTo(one.flow() * one.transitTime(), withPercentage(1e-9));
    assertThat(Film.flowForLoading(one.loading(), 0.105, 1))
        .isCloseTo(one.flow(), withPercentage(1e-9));
  }

  @Property
  void fillingTwoBoresAddsUp(@ForAll @Scale(4) @DoubleRange(min = 0.3, max = 1.9) double lift) {
    Liquid water = Liquid.water(20);
    Line line =
        new Line(
            water, new PipeSection(1.2, 0.019, 1.5e-6, 2), new PipeSection(1, 0.013, 1.5e-6, 1));
    Riser riser = new Riser(line, lift);
    double narrow = Math.PI / 4 * 0.013 * 0.013 * Math.min(lift, 1);
    double wide = Math.PI / 4 * 0.019 * 0.019 * Math.max(0, lift - 1);
    assertThat(riser.volumeAboveLevel()).isCloseTo(narrow + wide, within(1e-12));
    assertThat(riser.volumeUpTo(lift / 2)).isBetween(0.0, riser.volumeAboveLevel());
    RiserFill f = RiserFill.of(PumpCurve.parabola(2.4, 20 * L_MIN), riser, false);
    assertThat(f.integratedTime().getAsDouble()).isPositive().isLessThan(100);
    assertThat(riser.shorterThanLift()).isFalse();
  }

  @Test
  void anOutletUnderTheLevelHasNothingToFill() {
    Riser riser = new Riser(new Line(Liquid.water(20), new PipeSection(1, 0.013, 0, 2)), -0.1);
    RiserFill f = RiserFill.of(PumpCurve.parabola(2, 10 * L_MIN), riser, false);
    assertThat(f.riserVolume()).isZero();
    assertThat(f.drainBack()).isZero();
    assertThat(f.integratedTime().getAsDouble()).isZero();
  }

  @Test
  void refusesNonsense() {
    Liquid water = Liquid.water(20);
    assertThatThrownBy(() -> Film.of(0, 0.1, 1, 1, water)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Film.of(1e-4, 0.1, 1.1, 1, water)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Film.of(1e-4, 0, 1, 1, water)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> RiserFill.tankRise(1, 0)).isInstanceOf(Impossible.class);
  }
}
