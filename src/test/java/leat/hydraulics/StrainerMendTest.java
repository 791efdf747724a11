package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Random;
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
    assertThat(s.belowTable()).isEqualTo(Boolean.parseBoolean(r.text("Re_below_table")));
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
    double bore = Mend.boreForLoss(LINE, 0, flow, 0.25).getAsDouble();
    assertThat(LINE.with(0, LINE.section(0).withBore(bore)).loss(flow))
        .isCloseTo(0.25, withPercentage(1e-6));
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
    assertThat(Mend.boreForLoss(LINE, 0, 1e-4, -0.1)).isEmpty();
    Manifold m = new Manifold(null, new Riser(LINE, 2.9));
    assertThat(Mend.boreForFlow(PUMP, m, 0, 0, 1e-4)).isEmpty();
    assertThat(Mend.liftForFlow(PUMP, m, 0, 32 * L_MIN)).isEmpty();
    assertThatThrownBy(() -> Mend.boreForVelocity(1e-4, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Strainer.of(1e-3, 5e-4, 1e-3, 1e-4, 1, 0.05, 1e-6))
        .isInstanceOf(Impossible.class);
  }

  /** Whatever is accepted gives finite answers; whatever is not is refused as Impossible. */
  @Test
  void nothingIsInfinite() {
    Random random = new Random(20260401);
    int accepted = 0;
    for (int i = 0; i < 40000; i++) {
      try {
        whole(random);
        accepted++;
      } catch (Impossible e) {
        assertThat(e.getMessage()).isNotBlank();
      }
    }
    assertThat(accepted).isGreaterThan(5000);
  }

  private static double any(Random r, double usual) {
    return switch (r.nextInt(150)) {
      case 0 -> 0;
      case 1 -> -usual;
      case 2 -> usual * 1e6;
      case 3 -> usual * 1e-9;
      case 4 -> Double.MIN_VALUE;
      case 5 -> Double.MAX_VALUE;
      case 6 -> Double.NaN;
      case 7 -> Double.POSITIVE_INFINITY;
      default -> usual * Math.pow(10, r.nextDouble() * 2 - 1);
    };
  }

  private static void whole(Random r) {
    Liquid water = Liquid.water(r.nextInt(45));
    PipeSection s = new PipeSection(any(r, 2), any(r, 0.013), any(r, 1e-5), any(r, 3));
    PipeSection t = new PipeSection(any(r, 1), any(r, 0.016), any(r, 1e-5), any(r, 3));
    PumpCurve pump =
        r.nextBoolean()
            ? PumpCurve.parabola(any(r, 2), any(r, 3e-4))
            : PumpCurve.points(new double[] {0, any(r, 1e-4)}, new double[] {any(r, 3), any(r, 1)});
    Riser one = new Riser(new Line(water, s), any(r, 1));
    Riser two = new Riser(new Line(water, t, s), any(r, 0.7));
    OperatingPoint p = OperatingPoint.of(pump, one);
    finite(p.flow(), p.head(), p.margin(), p.marginShare().orElse(0), p.stallsAt());
    Manifold m = new Manifold(r.nextBoolean() ? null : new Line(water, t), one, two);
    ManifoldFlow f = m.solve(pump);
    finite(f.totalFlow(), f.manifoldHead(), f.flow(0), f.flow(1), f.share(0), f.pumpHead());
    finite(m.drainBack(f, true), m.derateFor(pump, 1, any(r, 1e-4)).orElse(0));
    RiserFill fill = RiserFill.of(pump, one, r.nextBoolean());
    finite(fill.fillTime().orElse(0), fill.integratedTime().orElse(0), fill.drainBack());
    double flow = any(r, 1e-4);
    MeasuredDerate d = MeasuredDerate.of(pump, m, flow, any(r, 30), 1);
    finite(d.derate().orElse(0), d.low().orElse(0), d.high().orElse(0), d.sensitivity().orElse(0));
    HeadLoss h = HeadLoss.of(two, flow);
    finite(h.totalHead(), h.totalHeadChurchill(), h.fastest().frictionFactor());
    Film film = Film.of(flow, any(r, 0.1), 1, any(r, 1.5), water);
    finite(film.thickness(), film.transitTime(), film.volume(), film.reynolds());
    Jet jet = Jet.of(flow, any(r, 0.013), any(r, 0.02), 90, water);
    Gap gap = Gap.slot(flow, any(r, 0.002), any(r, 0.1), any(r, 0.003), 0.6, water);
    Cap cap = Cap.of(jet, 0, any(r, 0.2), any(r, 1));
    finite(jet.force(), jet.height(), gap.totalHead(), gap.viscousShare(), cap.liftRatio());
    Throttle v = Throttle.to(pump, one, flow);
    finite(v.valveHead(), v.valveK(), v.naturalFlow());
  }

  private static void finite(double... values) {
    for (double v : values) {
      assertThat(v).as(java.util.Arrays.toString(values)).isFinite();
    }
  }
}
