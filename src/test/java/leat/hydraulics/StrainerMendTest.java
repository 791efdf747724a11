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

class StrainerMendTest {
  static Stream<Row> rows() {
    return Sheet.of("build-strainer.csv").atLeast(13);
  }

  private static void same(Row r, double ours, String column) {
    double want = r.num(column);
    assertThat(ours)
        .as(column + " " + r.idAndProvenance())
        .isCloseTo(want, within(Math.abs(want) * r.num("tol_rel")));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void strainerAgreesWithTheSheet(Row r) {
    Strainer s =
        Strainer.of(
            r.num("aperture_mm") / 1000,
            r.num("wire_mm") / 1000,
            r.num("mesh_area_cm2") / 1e4,
            r.num("flow_L_min") * L_MIN,
            r.num("clogged_fraction"),
            r.num("v_hole_max_m_s"),
            r.num("nu_m2_s"));
    same(r, s.openFraction(), "open_fraction");
    same(r, s.meshPerInch(), "mesh_per_inch");
    same(r, s.approachSpeed(), "v_approach_m_s");
    same(r, s.holeSpeed(), "v_hole_m_s");
    same(r, s.holeReynolds(), "Re_hole");
    same(r, s.k(), "K");
    same(r, s.head() * 1000, "head_loss_mm");
    same(r, s.requiredArea() * 1e4, "required_area_cm2");
    same(r, s.capillaryHold() * 1000, "capillary_hold_mm");
    assertThat(s.holeReynolds() < 20).isEqualTo(Boolean.parseBoolean(r.text("Re_below_table")));
    assertThat(s.areaOk()).isEqualTo(Boolean.parseBoolean(r.text("area_ok")));
  }

  @Property
  void strainerAreaPutsTheHeadBack(
      @ForAll @Scale(5) @DoubleRange(min = 0.0005, max = 0.02) double head) {
    double nu = 1e-6;
    double area = Mend.strainerArea(head, 1e-3, 5e-4, 1e-4, 0.5, nu).getAsDouble();
    assertThat(Strainer.of(1e-3, 5e-4, area, 1e-4, 0.5, 0.05, nu).head())
        .isCloseTo(head, withPercentage(1e-6));
  }

  private static final PumpCurve PUMP = PumpCurve.parabola(2.8, 33 * L_MIN);
  private static final Line LINE =
      new Line(Liquid.water(20), new PipeSection(2.2, 0.013, 1.5e-6, 2.5));

  @Property
  void boresPassExactly(@ForAll @Scale(3) @DoubleRange(min = 1, max = 9) double litres) {
    double flow = litres * L_MIN;
    double v = Mend.boreForVelocity(flow, 1.5);
    assertThat(LINE.with(0, LINE.section(0).withBore(v)).velocity(0, flow))
        .isCloseTo(1.5, within(1e-9));
  }

  @Property
  void mendsOfATowerAmongOthersPassExactly(
      @ForAll @Scale(3) @DoubleRange(min = 1, max = 6) double litres) {
    double flow = litres * L_MIN;
    Manifold m = new Manifold(null, new Riser(LINE, 1.2), new Riser(LINE, 1.5));
    var bore = Mend.boreForFlow(PUMP, m, 1, 0, flow);
    if (bore.isPresent() && bore.getAsDouble() > 6e-4) {
      Riser wider = new Riser(LINE.with(0, LINE.section(0).withBore(bore.getAsDouble())), 1.5);
      assertThat(m.with(1, wider).solve(PUMP).flow(1)).isCloseTo(flow, withPercentage(1e-5));
    }
    var lift = Mend.liftForFlow(PUMP, m, 1, flow);
    assertThat(lift).isPresent();
    assertThat(m.with(1, new Riser(LINE, lift.getAsDouble())).solve(PUMP).flow(1))
        .isCloseTo(flow, withPercentage(1e-5));
  }

  @Test
  void saysWhenNothingHelps() {
    Manifold m = new Manifold(null, new Riser(LINE, 2.9));
    assertThat(Mend.boreForFlow(PUMP, m, 0, 0, 1e-4)).isEmpty();
    assertThat(Mend.liftForFlow(PUMP, m, 0, 32 * L_MIN)).isEmpty();
    assertThatThrownBy(() -> Mend.boreForVelocity(1e-4, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Strainer.of(1e-3, 5e-4, 1e-3, 1e-4, 1, 0.05, 1e-6))
        .isInstanceOf(Impossible.class);
  }

  /** A bore that lets the second of two towers have 2 L/min exists, and is found. */
  @Test
  void aBoreForATowerAmongOthers() {
    Manifold m = new Manifold(null, new Riser(LINE, 1.2), new Riser(LINE, 1.5));
    double natural = m.solve(PUMP).flow(1);
    double bore = Mend.boreForFlow(PUMP, m, 1, 0, natural).getAsDouble();
    assertThat(bore).isCloseTo(0.013, withPercentage(1e-4));
    assertThat(Mend.boreForFlow(PUMP, m, 1, 0, 0.5 * natural).getAsDouble()).isLessThan(bore);
  }
}
