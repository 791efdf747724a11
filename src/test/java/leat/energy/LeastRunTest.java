package leat.energy;

import static leat.energy.DutyTest.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LeastRunTest {
  /** Standard gravity, m/s2. */
  private static final double G = 9.80665;

  static Stream<Row> rows() {
    return Sheet.of("energy-min-on.csv").atLeast(6);
  }

  /** Film and fill by the sheet's own formulas; the hydraulics package has them in full. */
  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    double flow = r.num("flow_L_min") / 60_000;
    double bore = r.num("riser_bore_mm") / 1000;
    boolean held = Boolean.parseBoolean(r.text("check_valve"));
    double empty =
        Math.PI / 4 * bore * bore * r.num("riser_length_m") * (1 - r.num("riser_kept_full_share"));
    double gamma = flow / (r.num("film_perimeter_mm") / 1000);
    double nu = r.num("kinematic_viscosity_m2_s");
    double delta = Math.cbrt(3 * nu * gamma / G);
    double u = gamma / delta;
    Close.to(r, "film_thickness_mm", delta * 1000);
    Close.to(r, "film_mean_m_s", u);
    Close.to(r, "film_reynolds", 4 * gamma / nu);
    LeastRun least =
        LeastRun.of(
            held ? 0 : empty / flow,
            r.num("film_height_m"),
            u,
            r.num("delay_factor"),
            r.num("wetting_s"));
    Close.to(r, "fill_s", least.fillS());
    Close.to(r, "film_s", least.filmS());
    Close.to(r, "min_on_s", least.seconds());
    assertThat(least.wholeSeconds()).isEqualTo(Math.ceil(r.num("min_on_s")));
    assertThat(least.seconds() - least.fillS() - least.filmS())
        .isCloseTo(r.num("wetting_s"), within(1e-9));
  }

  @Test
  void theLongestPart() {
    assertThat(new LeastRun(12.6, 22.7, 20).longestPart()).isEqualTo(LeastRun.Part.FILM);
    assertThat(new LeastRun(2.5, 7.8, 20).longestPart()).isEqualTo(LeastRun.Part.WETTING);
    assertThat(new LeastRun(40, 7.8, 20).longestPart()).isEqualTo(LeastRun.Part.FILL);
  }

  @Test
  void wholeSecondsAreNotRaisedByRounding() {
    assertThat(new LeastRun(0.1, 0.2, 29.7).wholeSeconds()).isEqualTo(30);
    assertThat(new LeastRun(0.1, 0.2, 29.701).wholeSeconds()).isEqualTo(31);
    assertThat(LongestRest.of(1799.9999999999).wholeSeconds()).isEqualTo(1800);
    assertThat(LongestRest.of(1799.9).wholeSeconds()).isEqualTo(1799);
  }

  @Test
  void aRunIsHeldAgainstIt() {
    LeastRun least = new LeastRun(2.5, 7.8, 20);
    assertThat(least.coveredBy(new Timing(30, 600))).isFalse();
    assertThat(least.coveredBy(new Timing(31, 600))).isTrue();
    assertThat(least.coveredBy(new Timing(1, 0))).isTrue();
    // exactly: 4 s + 8 s + 20 s, all sums of powers of two
    assertThat(new LeastRun(4, 8, 20).coveredBy(new Timing(32, 600))).isTrue();
    assertThat(new LeastRun(4, 8, 20).coveredBy(new Timing(31.999, 600))).isFalse();
  }

  /** Sheet energy.md section 3: plug 20 mL and 0.12 L/d 48 min; bare roots holding 6 mL 14 min. */
  @Test
  void plugWaterAsInTheSheet() {
    double use = 0.12e-3 / 86_400;
    double plug =
        LongestRest.plugWaterS(
            20e-6, LongestRest.USUAL_USABLE_SHARE, use, LongestRest.USUAL_PEAK_FACTOR);
    double bare = LongestRest.plugWaterS(6e-6, 0.5, use, 2.5);
    assertThat(plug / 60).isCloseTo(48, within(1e-9));
    assertThat(bare / 60).isCloseTo(14.4, within(1e-9));
    assertThat(LongestRest.of(1800, plug).bound()).isEqualTo(LongestRest.Bound.DRY_LIMIT);
    assertThat(LongestRest.of(1800, bare).bound()).isEqualTo(LongestRest.Bound.PLUG_WATER);
    assertThat(LongestRest.of(1800, bare).seconds()).isEqualTo(bare);
    assertThat(LongestRest.of(1800).allows(new Timing(30, 1800))).isTrue();
    assertThat(LongestRest.of(1800).allows(new Timing(30, 1801))).isFalse();
  }

  @Test
  void refusesWhatCannotBe() {
    refused("fill time", () -> new LeastRun(-1, 1, 1));
    refused("wetting", () -> new LeastRun(0, 0, 0));
    refused("film speed", () -> LeastRun.of(1, 1, 0, 3, 20));
    refused("film height", () -> LeastRun.of(1, -1, 1, 3, 20));
    refused("delay factor", () -> LeastRun.of(1, 1, 1, 0.5, 20));
    refused("dry limit", () -> LongestRest.of(0));
    refused("dry limit", () -> new DryLimit(0, 1, 1));
    refused("use", () -> LongestRest.plugWaterS(20e-6, 0.5, 0, 2.5));
    refused("plug water", () -> LongestRest.plugWaterS(0, 0.5, 1e-9, 2.5));
    refused("usable share", () -> LongestRest.plugWaterS(1e-6, 1.5, 1e-9, 2.5));
    refused("peak factor", () -> LongestRest.plugWaterS(1e-6, 0.5, 1e-9, 0.9));
  }
}
