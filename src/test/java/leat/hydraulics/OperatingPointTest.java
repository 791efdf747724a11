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

class OperatingPointTest {
  static Stream<Row> rows() {
    return Sheet.of("hydraulics-operating-point.csv").atLeast(23);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    PumpCurve curve = Cases.running(r);
    Riser riser = new Riser(Cases.line(r, Cases.water(r)), r.num("static_head_m"));
    OperatingPoint point = OperatingPoint.of(curve, riser);
    double flow = point.flow();
    double head = point.head();
    Line other = riser.line().with(FrictionModel.CHURCHILL);
    String status = point.status().name().toLowerCase(java.util.Locale.ROOT);
    if (r.has("wanted_flow_L_min")) {
      Throttle t =
          Throttle.each(curve, new Manifold(null, riser), r.num("wanted_flow_L_min") * L_MIN)[0];
      status = t.reachable() ? "throttled" : "wanted_flow_not_reachable";
      flow = t.flow();
      head = t.pumpHead();
      other = other.withMoreK(0, t.valveK());
      if (r.has("extra_head_m")) {
        same(r, t.valveHead(), "extra_head_m");
        same(r, t.valveK(), "extra_K_on_bore1");
        Riser throttled = new Riser(riser.line().withMoreK(0, t.valveK()), riser.lift());
        assertThat(OperatingPoint.of(curve, throttled).flow())
            .isCloseTo(flow, withPercentage(1e-8));
      } else {
        assertThat(t.valveK()).isZero();
      }
    }
    assertThat(status).as(r.idAndProvenance()).isEqualTo(r.text("status"));
    same(r, flow / L_MIN, "flow_L_min_colebrook");
    same(r, head, "head_m_colebrook");
    same(r, riser.line().velocity(0, flow), "velocity1_m_s");
    same(r, riser.line().reynolds(0, flow), "reynolds1");
    OperatingPoint churchill = OperatingPoint.of(curve, new Riser(other, riser.lift()));
    same(r, churchill.flow() / L_MIN, "flow_L_min_churchill");
    same(r, churchill.head(), "head_m_churchill");
    if (flow > 0) {
      assertThat(churchill.flow())
          .isCloseTo(flow, withPercentage(100 * r.num("tol_rel_other_model")));
    }
  }

  private static void same(Row r, double ours, String column) {
    double want = r.num(column);
    assertThat(ours)
        .as(column + " " + r.idAndProvenance())
        .isCloseTo(want, within(Math.abs(want) * r.num("tol_rel_same_model")));
  }

  /**
   * F. M. White, Fluid Mechanics, example 11.6 (memory): pump of the form H = 490 - 0.26 Q2 (ft,
   * thousands of gal/min) raising water 120 ft through 1500 ft of 16 in pipe with f 0.030: system
   * head 120 + 1.335 Q2, operating flow 15.2; the pump and pipe are remembered, coefficient and
   * answer were recomputed here, not seen again. Here f 0.030 comes from a pipe so rough that
   * Colebrook gives it at any flow.
   */
  @Test
  void meetsWhitesTwoReservoirs() {
    double foot = 0.3048;
    double kgpm = 1000 * 3.785411784e-3 / 60;
    double bore = 16.0 / 12 * foot;
    double rough = 3.7 * bore * Math.pow(10, -1 / (2 * Math.sqrt(0.030)));
    Line pipe = new Line(Liquid.water(15.6), new PipeSection(1500 * foot, bore, rough, 0));
    PumpCurve pump = PumpCurve.parabola(490 * foot, Math.sqrt(490 / 0.26) * kgpm);
    OperatingPoint p = OperatingPoint.of(pump, new Riser(pipe, 120 * foot));
    assertThat(p.flow() / kgpm).isCloseTo(15.2, within(0.05));
    assertThat(p.flow() / kgpm).isCloseTo(Math.sqrt(370 / 1.595), withPercentage(0.2));
  }

  private static OperatingPoint point(double lift, double length, double derate) {
    Line line = new Line(Liquid.water(20), new PipeSection(length, 0.013, 1.5e-6, 2.5));
    return OperatingPoint.of(
        PumpCurve.parabola(2.6, 15 * L_MIN).derated(derate), new Riser(line, lift));
  }

  @Property
  void flowFallsAsLiftLengthOrDeratingGrows(
      @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 2.5) double lift,
      @ForAll @Scale(4) @DoubleRange(min = 0.2, max = 6) double length,
      @ForAll @Scale(4) @DoubleRange(min = 0.4, max = 1) double derate) {
    OperatingPoint p = point(lift, length, derate);
    if (p.status() == OperatingPoint.Status.NO_FLOW) {
      assertThat(p.flow()).isZero();
      assertThat(p.head()).isEqualTo(p.shutoffHead());
      assertThat(point(lift + 0.05, length, derate).flow()).isZero();
      return;
    }
    assertThat(point(lift + 0.05, length, derate).flow()).isLessThan(p.flow());
    assertThat(point(lift, length + 0.1, derate).flow()).isLessThan(p.flow());
    assertThat(point(lift, length, derate - 0.02).flow()).isLessThan(p.flow());
  }

  @Test
  void aValveTimesAJug() {
    assertThat(Throttle.secondsFor(1e-3, 4 * L_MIN)).isCloseTo(15, within(1e-12));
    Riser riser = new Riser(new Line(Liquid.water(20), new PipeSection(1, 0.01, 0, 1)), 1);
    PumpCurve pump = PumpCurve.parabola(2, 1e-4);
    assertThatThrownBy(() -> Throttle.each(pump, new Manifold(null, riser), 0))
        .isInstanceOf(Impossible.class);
    assertThat(Throttle.each(pump, new Manifold(null, riser), 2e-4)[0].reachable()).isFalse();
  }
}
