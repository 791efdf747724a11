package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Inverse of the balance: checked by putting the answer back. */
class PumpNeededTest {
  private static final Liquid WATER = Liquid.water(20);
  private static final Line COMMON = new Line(WATER, new PipeSection(0.6, 0.019, 1.5e-6, 2));

  private static Manifold two(double one, double two) {
    return new Manifold(
        COMMON,
        new Riser(new Line(WATER, new PipeSection(one + 0.3, 0.013, 1.5e-6, 2.3)), one),
        new Riser(new Line(WATER, new PipeSection(two + 0.3, 0.013, 1.5e-6, 2.3)), two));
  }

  private static boolean does(PumpCurve printed, double derate, Manifold m, double[] wants) {
    Balance b = Balance.wanted(printed.derated(derate), m, wants);
    return b.status() == Balance.Status.WANTED;
  }

  @Property
  void theBoxDoesAndAHairLessDoesNot(
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 2.5) double one,
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 2.5) double two,
      @ForAll @Scale(2) @DoubleRange(min = 0.5, max = 8) double litres,
      @ForAll @Scale(2) @DoubleRange(min = 0.4, max = 1) double derate) {
    Manifold m = two(one, two);
    double[] wants = {litres * L_MIN, 3 * L_MIN};
    PumpNeeded p = PumpNeeded.of(m, derate, 0.2, WATER.density(), wants);
    double h = p.shutoffHead();
    double q = p.maxFlow();
    assertThat(does(PumpCurve.parabola(h * (1 + 1e-7), q), derate, m, wants)).isTrue();
    assertThat(does(PumpCurve.parabola(h * (1 - 1e-5), q), derate, m, wants)).isFalse();
    assertThat(does(PumpCurve.parabola(h, q * (1 - 1e-5)), derate, m, wants)).isFalse();
    assertThat(derate * h).isGreaterThanOrEqualTo(1.2 * Math.max(one, two) * (1 - 1e-12));
    assertThat(p.metBy(PumpCurve.parabola(h * (1 + 1e-9), q))).isTrue();
    assertThat(p.metBy(PumpCurve.parabola(h * (1 - 1e-6), q))).isFalse();
  }

  /** Second route: no other box on a fine grid through the same duty is smaller. */
  @Test
  void noSmallerBoxDoes() {
    Manifold m = two(1.2, 1.7);
    PumpNeeded p = PumpNeeded.of(m, 0.7, 0, WATER.density(), 4 * L_MIN, 3 * L_MIN);
    double box = p.shutoffHead() * p.maxFlow();
    for (int n = 1; n < 1000; n++) {
      double most = p.flow() * 1000.0 / n;
      double head = p.printedHead() / (1 - Math.pow(p.flow() / most, 2));
      assertThat(head * most).isGreaterThanOrEqualTo(box * (1 - 1e-9));
    }
    // and the duty lies where the parabola's own power is greatest
    PumpCurve curve = PumpCurve.parabola(p.shutoffHead(), p.maxFlow());
    double power = p.flow() * curve.head(p.flow());
    assertThat(1.01 * p.flow() * curve.head(1.01 * p.flow())).isLessThan(power);
    assertThat(0.99 * p.flow() * curve.head(0.99 * p.flow())).isLessThan(power);
  }

  /** OP-like worked figures: 8 L/min in 13 mm takes 2.281405 m (hydraulics.md section 4). */
  @Test
  void theWorkedRiserOfTheSheet() {
    Line line = new Line(WATER, new PipeSection(2.2, 0.013, 1.5e-6, 2.5));
    Manifold m = new Manifold(null, new Riser(line, 1.9));
    PumpNeeded p = PumpNeeded.of(m, 0.7, 0.2, WATER.density(), 8 * L_MIN);
    assertThat(p.head()).isCloseTo(2.281405, within(5e-7));
    assertThat(p.printedHead()).isCloseTo(2.281405 / 0.7, within(1e-6));
    assertThat(p.shutoffHead()).isCloseTo(1.5 * 2.281405 / 0.7, within(2e-6));
    assertThat(p.maxFlow() / L_MIN).isCloseTo(8 * Math.sqrt(3), within(1e-6));
    double watts = 998.2067456 * 9.80665 * 8 / 60000 * 2.281405;
    assertThat(p.hydraulicWatts()).isCloseTo(watts, withPercentage(1e-4));
    assertThat(p.goodWatts()).isCloseTo(4 * watts, withPercentage(1e-4));
    assertThat(p.poorWatts()).isCloseTo(20 * watts, withPercentage(1e-4));
    PumpCurve yours = PumpCurve.parabola(2.4, 20 * L_MIN);
    PumpCurve scaled = PumpCurve.parabola(p.shutoffHeadShapedAs(yours).getAsDouble(), 20 * L_MIN);
    assertThat(0.7 * scaled.head(8 * L_MIN)).isCloseTo(p.head(), withPercentage(1e-9));
    assertThat(p.shutoffHeadShapedAs(PumpCurve.parabola(2.4, 8 * L_MIN))).isEmpty();
  }

  @Test
  void aGreatMarginTakesMoreHeadAndLessFlow() {
    Manifold m = two(1.2, 1.7);
    double[] wants = {4 * L_MIN, 3 * L_MIN};
    PumpNeeded usual = PumpNeeded.of(m, 1, 0.2, WATER.density(), wants);
    PumpNeeded cautious = PumpNeeded.of(m, 1, 2, WATER.density(), wants);
    assertThat(cautious.shutoffHead()).isCloseTo(5.1, within(1e-12));
    assertThat(cautious.maxFlow()).isLessThan(usual.maxFlow());
    assertThat(does(PumpCurve.parabola(5.1 + 1e-7, cautious.maxFlow()), 1, m, wants)).isTrue();
    PumpNeeded low = PumpNeeded.of(m, 1, 0.2, WATER.density(), 4 * L_MIN, 0);
    assertThat(low.lift()).isEqualTo(1.2);
  }

  @Test
  void refusals() {
    Manifold m = two(1.2, 1.7);
    assertThatThrownBy(() -> PumpNeeded.of(m, 0, 0.2, 998, 1e-4, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> PumpNeeded.of(m, 1.1, 0.2, 998, 1e-4, 0))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> PumpNeeded.of(m, 1, 0.2, 998, 0, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> PumpNeeded.of(m, 1, 0.2, 998, 1e-4)).isInstanceOf(Impossible.class);
    Manifold under = new Manifold(null, new Riser(m.riser(0).line(), -2));
    assertThatThrownBy(() -> PumpNeeded.of(under, 1, 0.2, 998, 1e-5))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("by itself");
  }
}
