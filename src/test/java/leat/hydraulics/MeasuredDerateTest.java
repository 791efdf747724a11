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

class MeasuredDerateTest {
  static Stream<Row> flows() {
    return Sheet.of("hydraulics-derate.csv").atLeast(7);
  }

  static Stream<Row> buckets() {
    return Sheet.of("hydraulics-measured.csv").atLeast(13);
  }

  static Stream<Row> powers() {
    return Sheet.of("hydraulics-power.csv").atLeast(6);
  }

  @ParameterizedTest
  @MethodSource("flows")
  void explainsAFlow(Row r) {
    PumpCurve printed = Cases.printed(r);
    Riser riser = new Riser(Cases.plain(r, Cases.water(r)), r.num("static_head_m"));
    double flow = r.num("measured_flow_L_min") * L_MIN;
    MeasuredDerate m = MeasuredDerate.of(printed, riser, flow);
    double tol = r.num("tol_rel");
    assertThat(m.status().word().replace('-', '_')).isEqualTo(r.text("status"));
    same(r, m.systemHead(), "system_head_m", tol, 1);
    same(r, m.printedHead().orElse(Double.NaN), "printed_head_m", tol, 1);
    same(r, m.derate().orElse(Double.NaN), "derate_pct", tol, 100);
    if (m.usable()) {
      assertThat(OperatingPoint.of(printed.derated(m.derate().getAsDouble()), riser).flow())
          .isCloseTo(flow, withPercentage(1e-6));
    }
  }

  /** Within the watch 100 % of the printed head would do. */
  private static boolean holdsFull(MeasuredDerate m) {
    return m.low().orElse(2) <= 1 && m.high().orElse(1) >= 1;
  }

  @ParameterizedTest
  @MethodSource("buckets")
  void explainsABucketAndAWatch(Row r) {
    PumpCurve printed = Cases.printed(r);
    Line line = Cases.plain(r, Cases.water(r));
    Riser riser = new Riser(line, r.num("trial_static_head_m"));
    MeasuredDerate m =
        r.has("bucket_time_s")
            ? MeasuredDerate.of(
                printed,
                riser,
                r.num("bucket_L") / 1000,
                r.num("bucket_time_s"),
                r.num("watch_uncertainty_s"))
            : MeasuredDerate.of(printed, riser, 0);
    double tol = r.num("tol_rel");
    assertThat(m.status().word().replace('-', '_')).isEqualTo(r.text("status"));
    same(r, m.flow() / L_MIN, "measured_flow_L_min", tol, 1);
    same(r, line.reynolds(0, m.flow()), "reynolds", tol, 1);
    same(r, m.systemHead(), "system_head_m", tol, 1);
    same(r, m.printedHead().orElse(Double.NaN), "printed_head_m", tol, 1);
    same(r, m.derate().orElse(Double.NaN), "derate_pct", tol, 100);
    same(r, m.low().orElse(Double.NaN), "derate_low_pct", tol, 100);
    same(r, m.high().orElse(Double.NaN), "derate_high_pct", tol, 100);
    same(
        r,
        m.sensitivity().orElse(Double.NaN),
        "derate_change_pct_per_1pct_flow",
        r.num("tol_rel_sensitivity"),
        1);
    same(r, m.printedFlow() / L_MIN, "flow_by_printed_curve_L_min", tol, 1);
    if (r.has("range_holds_100")) {
      assertThat(holdsFull(m)).isEqualTo(r.text("range_holds_100").equals("yes"));
    }
    if (r.has("flow_at_low_L_min")) {
      PumpCurve real = printed.derated(m.derate().getAsDouble());
      OperatingPoint low = OperatingPoint.of(real, new Riser(line, r.num("low_static_head_m")));
      same(r, low.flow() / L_MIN, "flow_at_low_L_min", tol, 1);
      same(r, low.shutoffHead() - low.lift(), "margin_at_low_m", tol, 1);
      same(r, low.shutoffHead() / low.lift() - 1, "margin_at_low_pct", tol, 100);
    }
  }

  /** A blank cell must be unknown here too. */
  private static void same(Row r, double ours, String column, double tol, double factor) {
    if (r.has(column)) {
      assertThat(ours * factor)
          .as(column + " " + r.idAndProvenance())
          .isCloseTo(r.num(column), within(tol * Math.abs(r.num(column))));
    } else {
      assertThat(ours).as(column + " " + r.idAndProvenance()).isNaN();
    }
  }

  @ParameterizedTest
  @MethodSource("powers")
  void powerAgreesWithTheSheet(Row r) {
    double rho = Water.density(r.num("temperature_C"));
    double watts = Power.hydraulic(rho, r.num("flow_L_min") * L_MIN, r.num("head_m"));
    double tol = r.num("tol_rel");
    same(r, watts, "hydraulic_power_W", tol, 1);
    double electric = r.num("electric_W");
    if (r.text("expect").equals("error")) {
      assertThatThrownBy(() -> Power.efficiency(watts, electric)).isInstanceOf(Impossible.class);
    } else {
      same(r, Power.efficiency(watts, electric), "efficiency_pct", tol, 100);
    }
  }

  /** Two towers in one bucket: the derate found gives the caught flow back. */
  @Property
  void explainsTwoTowersTogether(@ForAll @Scale(3) @DoubleRange(min = 2, max = 12) double litres) {
    Liquid water = Liquid.water(20);
    Line line = new Line(water, new PipeSection(2, 0.013, 1.5e-6, 2.3));
    Line common = new Line(water, new PipeSection(0.5, 0.016, 1.5e-6, 2));
    Manifold m = new Manifold(common, new Riser(line, 1.7), new Riser(line, 1.3));
    PumpCurve printed = PumpCurve.parabola(2.8, 33 * L_MIN);
    MeasuredDerate d = MeasuredDerate.of(printed, m, 1e-3 * litres, 60, 1);
    if (d.usable()) {
      assertThat(m.solve(printed.derated(d.derate().getAsDouble())).totalFlow())
          .isCloseTo(litres * L_MIN, withPercentage(1e-6));
      assertThat(d.low().getAsDouble()).isLessThan(d.derate().getAsDouble());
      assertThat(d.high().getAsDouble()).isGreaterThan(d.derate().getAsDouble());
    }
  }

  /**
   * So long a catch makes the share good to what was wanted: with its own watch the range is as
   * wide, but for the square of it.
   */
  @Test
  void catchingAsLongAsIsSaidGivesTheErrorWanted() {
    Line line = new Line(Liquid.water(20), new PipeSection(2.2, 0.013, 1.5e-6, 2.5));
    Riser riser = new Riser(line, 1.2);
    PumpCurve printed = PumpCurve.parabola(2.8, 33 * L_MIN);
    double flow = 6 * L_MIN;
    MeasuredDerate alone = MeasuredDerate.of(printed, riser, flow);
    assertThat(alone.low()).isEmpty();
    for (double watch : new double[] {0.5, 1, 2}) {
      double seconds = alone.sensitivity().getAsDouble() * watch / 0.01;
      MeasuredDerate d = MeasuredDerate.of(printed, riser, flow * seconds, seconds, watch);
      double share = d.derate().getAsDouble();
      assertThat(1 - d.low().getAsDouble() / share).isCloseTo(0.01, within(5e-4));
      assertThat(d.high().getAsDouble() / share - 1).isCloseTo(0.01, within(5e-4));
    }
    assertThat(MeasuredDerate.of(printed, riser, 0).sensitivity()).isEmpty();
  }
}
