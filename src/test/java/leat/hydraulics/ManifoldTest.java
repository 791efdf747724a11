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
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ManifoldTest {
  static Stream<String> cases() {
    return Sheet.of("hydraulics-manifold.csv")
        .where(r -> r.text("riser").equals("1"))
        .atLeast(21)
        .map(Row::id);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithTheSheet(String id) {
    var rows = Sheet.of("hydraulics-manifold.csv").where(r -> r.id().equals(id)).rows();
    Row first = rows.get(0);
    assertThat(rows).hasSize((int) first.num("riser_count"));
    Liquid water = Cases.water(first);
    PipeSection shared =
        new PipeSection(
            first.num("common_length_m"),
            first.num("common_bore_mm") / 1000,
            first.num("common_rough_mm") / 1000,
            first.num("common_K_sum"));
    Riser[] risers = rows.stream().map(r -> riser(r, water)).toArray(Riser[]::new);
    Manifold manifold = new Manifold(new Line(water, shared), risers);
    ManifoldFlow f = manifold.solve(Cases.running(first));
    for (int i = 0; i < risers.length; i++) {
      Row r = rows.get(i);
      same(r, f.pumpHead(), "pump_head_m");
      same(r, f.commonLoss(), "common_loss_m");
      same(r, f.manifoldHead(), "manifold_head_m");
      same(r, f.dry(i) ? 0 : f.flow(i) / f.totalFlow(), "flow_share");
      same(r, risers[i].line().velocity(0, f.flow(i)), "riser_velocity_m_s");
      same(r, risers[i].line().reynolds(0, f.flow(i)), "riser_reynolds");
      flow(r, f.totalFlow(), "pump_flow_L_min");
      flow(r, f.flow(i), "riser_flow_L_min");
      assertThat(f.dry(i) ? "no_flow" : "flow").isEqualTo(r.text("riser_status"));
    }
    // a second route: the whole manifold as one system head
    assertThat(OperatingPoint.of(Cases.running(first), manifold).flow())
        .isCloseTo(f.totalFlow(), within(1e-10 * L_MIN + 1e-9 * f.totalFlow()));
  }

  private static Riser riser(Row r, Liquid water) {
    PipeSection s =
        new PipeSection(
            r.num("riser_length_m"),
            r.num("riser_bore_mm") / 1000,
            r.num("riser_rough_mm") / 1000,
            r.num("riser_K_sum"));
    return new Riser(new Line(water, s), r.num("riser_static_head_m"));
  }

  private static void same(Row r, double ours, String column) {
    assertThat(ours)
        .as(column + " " + r.idAndProvenance())
        .isCloseTo(r.num(column), within(r.num("tol_rel") * Math.abs(r.num(column))));
  }

  private static void flow(Row r, double ours, String column) {
    double want = r.num(column);
    if (want == 0) {
      assertThat(ours).as(column + " " + r.idAndProvenance()).isEqualTo(0.0);
    } else {
      assertThat(ours / L_MIN)
          .as(column + " " + r.idAndProvenance())
          .isCloseTo(want, within(r.num("tol_abs_L_min")));
    }
  }

  private static Riser riser(double lift, double bore) {
    return new Riser(
        new Line(Liquid.water(20), new PipeSection(Math.max(0.3, lift + 0.4), bore, 1.5e-6, 2.3)),
        lift);
  }

  private static final Line COMMON =
      new Line(Liquid.water(20), new PipeSection(0.5, 0.016, 1.5e-6, 2));
  private static final PumpCurve PUMP =
      PumpCurve.points(
          new double[] {0, 8 * L_MIN, 16 * L_MIN, 24 * L_MIN, 33.3333 * L_MIN},
          new double[] {2.8, 2.55, 2, 1.2, 0});

  /** The common pipe and then a riser's, as one. */
  private static Line series(Riser riser) {
    return new Line(Liquid.water(20), COMMON.section(0), riser.line().section(0));
  }

  @Property
  void oneTowerIsTheOperatingPointInSeries(
      @ForAll @Scale(4) @DoubleRange(min = -0.5, max = 3) double lift,
      @ForAll @Scale(5) @DoubleRange(min = 0.004, max = 0.03) double bore) {
    Riser riser = riser(lift, bore);
    ManifoldFlow f = new Manifold(COMMON, riser).solve(PUMP);
    OperatingPoint p = OperatingPoint.of(PUMP, new Riser(series(riser), lift));
    assertThat(f.flow(0)).isCloseTo(p.flow(), within(1e-10 * p.flow() + 1e-18));
    assertThat(f.status()).isEqualTo(p.status());
    assertThat(f.margin(0)).isCloseTo(p.shutoffHead() - p.lift(), within(1e-9));
  }

  @Property
  void whatThePumpGivesTheRisersTake(
      @ForAll @Scale(4) @DoubleRange(min = -0.3, max = 3) double one,
      @ForAll @Scale(4) @DoubleRange(min = 0.2, max = 3) double two,
      @ForAll @Scale(4) @DoubleRange(min = 0.2, max = 3) double three,
      @ForAll @Scale(5) @DoubleRange(min = 0.005, max = 0.03) double bore,
      @ForAll @IntRange(min = 4, max = 12) int tenths) {
    Manifold m = new Manifold(COMMON, riser(one, 0.013), riser(two, bore), riser(three, 0.010));
    PumpCurve pump = PUMP.derated(tenths / 10.0);
    ManifoldFlow f = m.solve(pump);
    double sum = f.flow(0) + f.flow(1) + f.flow(2);
    assertThat(sum).isCloseTo(f.totalFlow(), within(1e-10 * f.totalFlow()));
    for (int i = 0; i < 3; i++) {
      assertThat(f.flow(i)).isNotNegative();
      if (f.dry(i)) {
        assertThat(f.manifoldHead()).isLessThanOrEqualTo(m.riser(i).lift());
      } else {
        assertThat(m.riser(i).head(f.flow(i))).isCloseTo(f.manifoldHead(), within(1e-9));
      }
    }
    if (f.status() == OperatingPoint.Status.FLOW) {
      assertThat(pump.head(f.totalFlow()) - m.commonLoss(f.totalFlow()))
          .isCloseTo(f.manifoldHead(), within(1e-9));
    }
  }

  @Property
  void derateForPutsTheFlowBack(
      @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 2) double one,
      @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 2) double two,
      @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 6) double litres) {
    Manifold m = new Manifold(COMMON, riser(one, 0.013), riser(two, 0.013));
    var derate = m.derateFor(PUMP, 1, litres * L_MIN);
    if (derate.isPresent() && derate.getAsDouble() <= 2) {
      assertThat(m.solve(PUMP.derated(derate.getAsDouble())).flow(1))
          .isCloseTo(litres * L_MIN, withPercentage(1e-6));
    }
  }

  @Test
  void equalRisersSharedAsOneObjectAgreeWithSeparateOnes() {
    Riser r = riser(1.5, 0.013);
    ManifoldFlow shared = new Manifold(COMMON, r, r).solve(PUMP);
    ManifoldFlow apart = new Manifold(COMMON, r, riser(1.5, 0.013)).solve(PUMP);
    assertThat(shared.flow(1)).isCloseTo(apart.flow(1), withPercentage(1e-10));
    assertThat(shared.flow(0) / shared.totalFlow()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void valvesGiveEachTowerWhatItWants() {
    Manifold m = new Manifold(COMMON, riser(1.1, 0.013), riser(1.7, 0.013));
    Throttle[] valves = Throttle.each(PUMP, m, 5 * L_MIN, 4 * L_MIN);
    Manifold closed = m;
    for (int i = 0; i < 2; i++) {
      assertThat(valves[i].reachable()).isTrue();
      Riser r = m.riser(i);
      closed = closed.with(i, new Riser(r.line().withMoreK(0, valves[i].valveK()), r.lift()));
    }
    ManifoldFlow f = closed.solve(PUMP);
    assertThat(f.flow(0)).isCloseTo(5 * L_MIN, withPercentage(1e-8));
    assertThat(f.flow(1)).isCloseTo(4 * L_MIN, withPercentage(1e-8));
  }

  @Test
  void namesTheStarved() {
    Manifold m = new Manifold(COMMON, riser(0.8, 0.019), riser(2.1, 0.013));
    ManifoldFlow f = m.solve(PUMP);
    assertThat(f.starved(1)).isTrue();
    assertThat(f.dry(0)).isFalse();
    assertThatThrownBy(() -> new Manifold(COMMON)).isInstanceOf(Impossible.class);
  }

  private static final Manifold TWO = new Manifold(COMMON, riser(1, 0.013), riser(1.2, 0.013));

  private static ManifoldFlow standingAt(double head, double... flows) {
    return new ManifoldFlow(
        TWO, OperatingPoint.Status.FLOW, flows[0] + flows[1], head + 0.1, 0.1, head, 2.4, flows);
  }

  /** A shut-off head of 2.4 m over 1 m leaves 1.4 m, 140 %; over 1.2 m as much again. */
  @Test
  void theMarginIsOverTheLift() {
    ManifoldFlow f = standingAt(1.3, 2e-4, 1e-4);
    assertThat(f.marginShare(0).getAsDouble()).isCloseTo(1.4, within(1e-12));
    assertThat(f.marginShare(1).getAsDouble()).isCloseTo(1, within(1e-12));
    ManifoldFlow low = new Manifold(null, riser(0, 0.013)).solve(PUMP);
    assertThat(low.marginShare(0)).isEmpty();
  }

  @Test
  void noFlowStandsAtTheLowestOutlet() {
    assertThat(TWO.headAtManifold(0)).isEqualTo(1);
    assertThat(TWO.head(0)).isEqualTo(1);
  }

  /** Past the end of the printed curve no share of it explains a flow; at its end there is none. */
  @Test
  void noShareGivesMoreThanTheGreatestFlow() {
    PumpCurve parabola = PumpCurve.parabola(2.8, 20 * L_MIN);
    Manifold one = new Manifold(null, riser(1, 0.013));
    assertThat(one.derateFor(parabola, 0, 20 * L_MIN)).isEmpty();
    assertThat(one.derateFor(parabola, 0, 25 * L_MIN)).isEmpty();
    double share = one.derateFor(parabola, 0, 10 * L_MIN).getAsDouble();
    // at half the greatest flow a parabola has three quarters of its head
    assertThat(share).isCloseTo(one.riser(0).head(10 * L_MIN) / 2.1, withPercentage(1e-6));
    assertThat(one.derateFor(parabola, 0, (20 - 1e-13) * L_MIN)).isEmpty();
  }

  /**
   * A curve that ends with 390 m left at 240 L/min, 30.1 m/s in 13 mm: over what a tube carries.
   */
  @Test
  void whatRunsOutAtTheEndOfTheCurveIsHeldToTheSpeedOfATube() {
    PumpCurve fire = PumpCurve.points(new double[] {0, 240 * L_MIN}, new double[] {400, 390});
    Line stub = new Line(Liquid.water(20), new PipeSection(0.1, 0.013, 1.5e-6, 1));
    assertThatThrownBy(() -> new Manifold(null, new Riser(stub, 1)).solve(fire))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("30 m/s");
    PumpCurve less = PumpCurve.points(new double[] {0, 238 * L_MIN}, new double[] {400, 390});
    assertThat(new Manifold(null, new Riser(stub, 1)).solve(less).status())
        .isEqualTo(OperatingPoint.Status.RUN_OUT);
  }
}
