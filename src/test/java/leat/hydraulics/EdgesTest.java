package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * What no tube carries, and the lift that equals the shut-off head (hydraulics.md, OP09, MFT07).
 */
class EdgesTest {
  private static final Liquid WATER = Liquid.water(20);
  private static final Line LINE = new Line(WATER, new PipeSection(2.2, 0.013, 1.5e-6, 2.5));

  private static void isNoFlow(double shutoff, double lift) {
    PumpCurve pump = PumpCurve.parabola(shutoff, 15 * L_MIN);
    OperatingPoint p = OperatingPoint.of(pump, new Riser(LINE, lift));
    assertThat(p.status()).isEqualTo(OperatingPoint.Status.NO_FLOW);
    assertThat(p.flow()).isEqualTo(0.0);
    ManifoldFlow f = new Manifold(LINE, new Riser(LINE, lift)).solve(pump);
    assertThat(f.status()).isEqualTo(OperatingPoint.Status.NO_FLOW);
    assertThat(f.totalFlow()).isEqualTo(0.0);
    assertThat(f.flow(0)).isEqualTo(0.0);
    assertThat(f.margin(0)).isEqualTo(0.0);
    assertThat(f.starved(0)).isFalse();
    Balance b = Balance.wanted(pump, new Manifold(LINE, new Riser(LINE, lift)), L_MIN);
    assertThat(b.status()).isEqualTo(Balance.Status.NO_FLOW);
    assertThat(b.totalFlow()).isEqualTo(0.0);
  }

  /** Outlet 1.9 m, low 100 mm, shut-off 1.8 m: 1.9 - 0.1 is 1.7999999999999998. */
  @Test
  void aLiftEqualToTheShutoffHeadButForItsLastDigitIsNoFlow() {
    assertThat(1.9 - 0.1).isLessThan(1.8);
    isNoFlow(1.8, 1.9 - 0.1);
    isNoFlow(1.9 - 0.1, 1.8);
  }

  @Property
  void anyLiftInMillimetresThatEqualsTheShutoffHeadIsNoFlow(
      @ForAll @IntRange(min = 300, max = 4000) int outlet,
      @ForAll @IntRange(min = 1, max = 250) int low) {
    isNoFlow((outlet - low) / 1000.0, outlet / 1000.0 - low / 1000.0);
  }

  @Property
  void andAMillimetreMoreIsFlow(
      @ForAll @IntRange(min = 300, max = 4000) int outlet,
      @ForAll @IntRange(min = 1, max = 250) int low) {
    double lift = outlet / 1000.0 - low / 1000.0;
    PumpCurve pump = PumpCurve.parabola((outlet - low + 1) / 1000.0, 15 * L_MIN);
    assertThat(OperatingPoint.of(pump, new Riser(LINE, lift)).flow()).isPositive();
    assertThat(new Manifold(null, new Riser(LINE, lift)).solve(pump).flow(0)).isPositive();
  }

  /** What {@code head --flow 8000000L/min} asks: 133 m3/s in 13 mm, 1 000 km/s. */
  @Test
  void aSpeedThatCannotBeIsRefusedWithTheQuestionAboutUnits() {
    Riser riser = new Riser(LINE, 1.9);
    assertThatThrownBy(() -> HeadLoss.behind(null, 0, riser, 8e6 * L_MIN))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("30 m/s")
        .hasMessageContaining("L/h")
        .satisfies(e -> assertThat(((Impossible) e).quantity()).isEqualTo("flow"));
    double thirty = 30 * Math.PI / 4 * 0.013 * 0.013;
    assertThat(HeadLoss.behind(null, 0, riser, 0.999 * thirty).totalHead()).isLessThan(1000);
    assertThatThrownBy(() -> HeadLoss.behind(null, 0, riser, 1.001 * thirty))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> HeadLoss.behind(null, 0, riser, 0))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("above 0");
    assertThatThrownBy(() -> HeadLoss.behind(null, 0, riser, Double.NaN))
        .isInstanceOf(Impossible.class);
  }

  @Test
  void aKilometreOfHeadIsRefused() {
    Line longTube = new Line(WATER, new PipeSection(5000, 0.004, 1.5e-6, 0));
    assertThatThrownBy(() -> HeadLoss.behind(null, 0, new Riser(longTube, 1), 4 * L_MIN))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("1 km");
    assertThat(TubeLimits.carries(longTube, 4 * L_MIN)).isFalse();
    assertThatThrownBy(() -> PumpCurve.parabola(1001, 1e-4)).isInstanceOf(Impossible.class);
    assertThatThrownBy(
            () ->
                MeasuredDerate.of(
                    PumpCurve.parabola(2, 20 * L_MIN), new Riser(longTube, 1), 4 * L_MIN))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("1 km");
    PumpCurve fire = PumpCurve.parabola(900, 2000 * L_MIN);
    Line wide = new Line(WATER, new PipeSection(1, 0.02, 1.5e-6, 1));
    assertThatThrownBy(() -> new Manifold(null, new Riser(wide, 1)).solve(fire))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("30 m/s");
  }

  @Test
  void aManifoldOfClosedValvesGivesNothing() {
    Manifold m = new Manifold(LINE, new Riser(LINE, 1), new Riser(LINE, 1.2)).closed(0);
    PumpCurve pump = PumpCurve.parabola(2.5, 15 * L_MIN);
    ManifoldFlow one = m.solve(pump);
    ManifoldFlow alone = new Manifold(LINE, new Riser(LINE, 1.2)).solve(pump);
    assertThat(one.flow(1)).isEqualTo(alone.flow(0));
    assertThat(m.headAtManifold(alone.totalFlow()))
        .isEqualTo(alone.manifold().headAtManifold(alone.totalFlow()));
    assertThat(m.derateFor(pump, 0, 1e-5)).isEmpty();
    Manifold all = m.closed(1);
    ManifoldFlow none = all.solve(pump);
    assertThat(none.status()).isEqualTo(OperatingPoint.Status.NO_FLOW);
    assertThat(none.flows()).containsExactly(0, 0);
    assertThatThrownBy(() -> all.headAtManifold(1e-5)).isInstanceOf(Impossible.class);
    assertThat(all.with(0, m.riser(0)).isClosed(1)).isTrue();
  }

  private static final PumpCurve SHORT =
      PumpCurve.points(new double[] {0, 5 * L_MIN}, new double[] {3, 2.5});

  /**
   * One tower over the shut-off head of 3 m and one that the printed curve's end reaches: that one
   * may have all of the curve, not the half that two would share.
   */
  @Test
  void equalFlowsAreSharedAmongThoseThatCanHaveSome() {
    Line wide = new Line(WATER, new PipeSection(1, 0.025, 1.5e-6, 1));
    Manifold m = new Manifold(null, new Riser(wide, 3.5), new Riser(wide, 0.5));
    Balance b = Balance.equal(SHORT, m);
    assertThat(b.status()).isEqualTo(Balance.Status.LEFT_OUT);
    assertThat(b.valves()[1].flow()).isEqualTo(5 * L_MIN);
    assertThat(b.valves()[1].wanted()).isEqualTo(5 * L_MIN);
    assertThat(b.valves()[0].flow()).isZero();
    assertThat(b.valves()[0].wanted()).isZero();
    assertThat(b.share()).isEmpty();
    assertThat(b.active()).isEqualTo(1);
    Manifold three =
        new Manifold(null, new Riser(wide, 0.5), new Riser(wide, 3.5), new Riser(wide, 0.6));
    Balance two = Balance.equal(SHORT, three);
    assertThat(two.valves()[0].flow()).isEqualTo(2.5 * L_MIN);
    assertThat(two.valves()[2].flow()).isEqualTo(2.5 * L_MIN);
    // a closed tower is none of those that share
    Balance closed = Balance.equal(SHORT, three.closed(0));
    assertThat(closed.valves()[2].flow()).isEqualTo(5 * L_MIN);
    assertThatThrownBy(() -> Balance.equal(SHORT, three.closed(0).closed(1).closed(2)))
        .isInstanceOf(Impossible.class);
  }

  /** What was wanted stays told: of a tower over the shut-off head, of a share, of equal flows. */
  @Test
  void theWantsAreToldAsTheyWere() {
    Line wide = new Line(WATER, new PipeSection(1, 0.025, 1.5e-6, 1));
    Manifold high = new Manifold(null, new Riser(wide, 3.5), new Riser(wide, 3.2));
    Balance none = Balance.wanted(SHORT, high, 2 * L_MIN, 3 * L_MIN);
    assertThat(none.status()).isEqualTo(Balance.Status.NO_FLOW);
    assertThat(none.valves()[1].wanted()).isEqualTo(3 * L_MIN);
    assertThat(Balance.equal(SHORT, high).valves()[1].wanted()).isZero();
    Manifold m =
        new Manifold(null, new Riser(wide, 3.5), new Riser(wide, 0.5), new Riser(wide, 0.6));
    Balance part = Balance.wanted(SHORT, m, L_MIN, 4 * L_MIN, 6 * L_MIN);
    assertThat(part.status()).isEqualTo(Balance.Status.LEFT_OUT_SHORT);
    assertThat(part.valves()[0].wanted()).isEqualTo(L_MIN);
    assertThat(part.valves()[2].wanted()).isEqualTo(6 * L_MIN);
    // 5 L/min of the 10 that are wanted
    assertThat(part.share().getAsDouble()).isCloseTo(0.5, within(1e-9));
    assertThat(part.valves()[2].flow()).isCloseTo(3 * L_MIN, within(1e-12));
    assertThat(JugRounds.curveEndsFirst(part)).isTrue();
    // two valves are part closed: they drift with one another
    assertThat(part.rounds()).isEqualTo(2);
    assertThat(Balance.wanted(SHORT, m.closed(2), 0, 2 * L_MIN, 0).rounds()).isEqualTo(1);
  }
}
