package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Random;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class BalanceLawsTest {
  private static final Liquid WATER = Liquid.water(20);
  private static final PipeSection SHARED = new PipeSection(0.8, 0.016, 1.5e-6, 2);
  private static final Line COMMON = new Line(WATER, SHARED);
  private static final double SHUTOFF = 2.8;
  private static final double MOST = 30 * L_MIN;
  private static final PumpCurve PUMP = PumpCurve.parabola(SHUTOFF, MOST);

  private static Riser riser(double lift, double bore) {
    return new Riser(new Line(WATER, new PipeSection(lift + 0.3, bore, 1.5e-6, 2.3)), lift);
  }

  private static Manifold three(double one, double two, double three, double bore) {
    return new Manifold(COMMON, riser(one, 0.013), riser(two, bore), riser(three, 0.010));
  }

  /** Second route: the whole network by Newton, valves as K, at the mark and half a metre lower. */
  @Property(tries = 200)
  void theWholeNetworkByNewtonAgrees(
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 2.2) double one,
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 2.2) double two,
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 2.2) double three,
      @ForAll @Scale(4) @DoubleRange(min = 0.008, max = 0.02) double bore,
      @ForAll @Scale(2) @DoubleRange(min = 0.5, max = 5) double litres) {
    Manifold m = three(one, two, three, bore);
    Balance b = Balance.wanted(PUMP, m, litres * L_MIN, 3 * L_MIN, 2 * L_MIN);
    Manifold set = b.valved(m);
    double[] newton = new WholeNetwork(SHUTOFF, MOST, SHARED, set).flows();
    for (int i = 0; i < 3; i++) {
      assertThat(b.valves()[i].flow() / L_MIN).isCloseTo(newton[i] / L_MIN, within(1e-6));
    }
    ManifoldFlow full = b.flows(Pipes.lifted(m, -0.25), PUMP);
    double[] later = new WholeNetwork(SHUTOFF, MOST, SHARED, Pipes.lifted(set, -0.25)).flows();
    for (int i = 0; i < 3; i++) {
      assertThat(full.flow(i) / L_MIN).isCloseTo(later[i] / L_MIN, within(1e-6));
    }
  }

  @Property
  void theFlowsLieOnThePumpsCurveAndNobodyGetsMoreThanItWants(
      @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 3) double one,
      @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 3) double two,
      @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 3) double three,
      @ForAll @Scale(3) @DoubleRange(min = 0.1, max = 20) double litres) {
    Manifold m = three(one, two, three, 0.013);
    double[] wants = {litres * L_MIN, 4 * L_MIN, 0.5 * L_MIN};
    Balance b = Balance.wanted(PUMP, m, wants);
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      SetValve v = b.valves()[i];
      sum += v.flow();
      assertThat(v.flow()).isLessThanOrEqualTo(wants[i]);
      if (v.state() != SetValve.State.CLOSED) {
        assertThat(v.flow()).isCloseTo(b.share().getAsDouble() * wants[i], withPercentage(1e-9));
        assertThat(v.head().getAsDouble()).isNotNegative();
        assertThat(m.riser(i).head(v.flow()) + v.head().getAsDouble())
            .isCloseTo(b.manifoldHead(), within(1e-9));
      }
    }
    assertThat(sum).isCloseTo(b.totalFlow(), within(1e-12 * MOST));
    assertThat(PUMP.head(b.totalFlow()) - m.commonLoss(b.totalFlow()))
        .isCloseTo(b.manifoldHead(), within(1e-9));
    assertThat(b.met()).isEqualTo(b.status() == Balance.Status.WANTED);
  }

  @Property
  void closingAValveNeverLowersTheOthers(
      @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 2.5) double one,
      @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 2.5) double two,
      @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 2.5) double three,
      @ForAll @IntRange(min = 0, max = 2) int which,
      @ForAll @Scale(1) @DoubleRange(min = 0, max = 5000) double k) {
    Manifold m = three(one, two, three, 0.013);
    ManifoldFlow before = m.solve(PUMP);
    ManifoldFlow after = SetValve.onRiser(m, which, k).solve(PUMP);
    ManifoldFlow shut = m.closed(which).solve(PUMP);
    double rounding = 1e-9 * L_MIN;
    for (int i = 0; i < 3; i++) {
      if (i != which) {
        assertThat(after.flow(i)).isGreaterThanOrEqualTo(before.flow(i) - rounding);
        assertThat(shut.flow(i)).isGreaterThanOrEqualTo(after.flow(i) - rounding);
      }
    }
    assertThat(after.flow(which)).isLessThanOrEqualTo(before.flow(which) + rounding);
    assertThat(shut.flow(which)).isEqualTo(0.0);
    assertThat(shut.starved(which)).isFalse();
  }

  @Property
  void equalTowersNeedEqualValves(
      @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 2.5) double lift,
      @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 2.5) double other,
      @ForAll @Scale(3) @DoubleRange(min = 0.2, max = 6) double litres) {
    double want = litres * L_MIN;
    Manifold m = new Manifold(COMMON, riser(lift, 0.013), riser(other, 0.013), riser(lift, 0.013));
    Balance wanted = Balance.wanted(PUMP, m, want, want, want);
    Balance equal = Balance.equal(PUMP, m);
    for (Balance b : new Balance[] {wanted, equal}) {
      assertThat(b.valves()[0].state()).isEqualTo(b.valves()[2].state());
      assertThat(b.valves()[0].flow()).isEqualTo(b.valves()[2].flow());
      assertThat(b.valves()[0].k()).isEqualTo(b.valves()[2].k());
    }
    // and as great as the greatest share of alike wants that cannot all be had
    Balance greedy = Balance.wanted(PUMP, m, MOST, MOST, MOST);
    assertThat(equal.totalFlow()).isCloseTo(greedy.totalFlow(), within(1e-9 * MOST));
  }

  /** As the sheet's third way: random settings, none of which beats the share. */
  @Property(tries = 100)
  void noOtherSettingBeatsTheShare(
      @ForAll @Scale(3) @DoubleRange(min = 0.8, max = 2) double one,
      @ForAll @Scale(3) @DoubleRange(min = 0.8, max = 2) double two,
      @ForAll long seed) {
    Manifold m = new Manifold(COMMON, riser(one, 0.013), riser(two, 0.013));
    double[] wants = {9 * L_MIN, 7 * L_MIN};
    Balance b = Balance.wanted(PUMP, m, wants);
    Random random = new Random(seed);
    for (int n = 0; n < 20; n++) {
      Manifold other = SetValve.onRiser(m, 0, Math.exp(8 * random.nextDouble()) - 1);
      other = SetValve.onRiser(other, 1, Math.exp(8 * random.nextDouble()) - 1);
      ManifoldFlow f = other.solve(PUMP);
      double worst = Math.min(f.flow(0) / wants[0], f.flow(1) / wants[1]);
      assertThat(Math.min(1, worst)).isLessThanOrEqualTo(b.share().getAsDouble() + 1e-9);
    }
  }

  @Property
  void tenRoundsWithAJugArriveAtTheSolvedFlows(
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 1.9) double one,
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 1.9) double two,
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 1.9) double three) {
    Manifold m = three(one, two, three, 0.013);
    Balance b = Balance.wanted(PUMP, m, 3 * L_MIN, 3 * L_MIN, 2 * L_MIN);
    JugRounds rounds = JugRounds.of(PUMP, m, b, b.order(), 10);
    assertThat(rounds.worst()[9]).isLessThan(1e-6);
    assertThat(rounds.worst()[1]).isLessThan(rounds.worst()[0] + 1e-12);
  }

  /**
   * Sheet section 4, "Small change": c = (1/r)/(1/s + sum of 1/r_k over all but the one that takes
   * less); BA04 0.16, BA05 0.30. Those two numbers are what tower 2 takes more when tower 1 takes
   * less (the sheet's words have them the other way round, which gives 0.25 and 0.41).
   */
  @Test
  void oneTowersWaterGoesToTheOtherAsTheSheetSays() {
    assertThat(coupling("BA04", 1, 0)).isCloseTo(0.16, within(0.005));
    assertThat(coupling("BA05", 1, 0)).isCloseTo(0.30, within(0.005));
  }

  /** What {@code gains} takes more when {@code loses} takes less, solved, and by the formula. */
  private static double coupling(String id, int gains, int loses) {
    BalanceTest.Case c = BalanceTest.Case.of(id);
    Balance b = c.solve();
    Manifold set = b.valved(c.set());
    Manifold bit = SetValve.onRiser(set, loses, 1e-4 * b.valves()[loses].k().getAsDouble());
    ManifoldFlow before = set.solve(c.now());
    ManifoldFlow after = bit.solve(c.now());
    double solved =
        (after.flow(gains) - before.flow(gains)) / (before.flow(loses) - after.flow(loses));
    double r = Pipes.slope(set.riser(gains).line(), before.flow(gains));
    double s = -c.now().slope(before.totalFlow()) + Pipes.slope(c.common(), before.totalFlow());
    assertThat((1 / r) / (1 / s + 1 / r)).isCloseTo(solved, withPercentage(0.5));
    return solved;
  }

  @Test
  void theWordsAndTheRefusals() {
    Manifold m = three(1, 1.5, 2, 0.013);
    assertThatThrownBy(() -> Balance.wanted(PUMP, m, 0, 0, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Balance.wanted(PUMP, m, 1e-4)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Balance.wanted(PUMP, m, 1e-4, -1e-9, 0))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Balance.wanted(PUMP, m, 1e-10, 1e-10, 1e-10))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("too small");
    assertThatThrownBy(() -> Balance.equal(PUMP, m.closed(0).closed(1).closed(2)))
        .isInstanceOf(Impossible.class);
    assertThat(Balance.equal(PUMP, m.closed(1)).valves()[1].state())
        .isEqualTo(SetValve.State.CLOSED);
  }

  @Test
  void aTowerOverTheShutoffHeadIsLeftOutInEveryMode() {
    Manifold m = new Manifold(COMMON, riser(3, 0.013), riser(1.5, 0.013), riser(1.9, 0.013));
    Balance some = Balance.wanted(PUMP, m, 2 * L_MIN, 20 * L_MIN, 9 * L_MIN);
    assertThat(some.status()).isEqualTo(Balance.Status.LEFT_OUT_SHORT);
    assertThat(some.limiting()).isPositive();
    assertThat(some.valves()[0].state()).isEqualTo(SetValve.State.CLOSED);
    Balance equal = Balance.equal(PUMP, m);
    assertThat(equal.status()).isEqualTo(Balance.Status.LEFT_OUT);
    assertThat(equal.valves()[1].flow()).isEqualTo(equal.valves()[2].flow());
    assertThat(equal.active()).isEqualTo(2);
  }

  /** Sheet section 2: blank when it cannot have its want even alone, or there are no others. */
  @Test
  void whatIsLeftForOthers() {
    Manifold one = new Manifold(COMMON, riser(1.5, 0.013));
    Balance alone = Balance.wanted(PUMP, one, 20 * L_MIN);
    assertThat(alone.status()).isEqualTo(Balance.Status.SHORT);
    assertThat(alone.leftForOthers()).isEmpty();
    assertThat(alone.rounds()).isZero();
    assertThat(alone.totalFlow()).isCloseTo(one.solve(PUMP).totalFlow(), withPercentage(1e-9));
    Manifold two = new Manifold(COMMON, riser(1.5, 0.013), riser(0.5, 0.013));
    assertThat(Balance.wanted(PUMP, two, 20 * L_MIN, L_MIN).leftForOthers()).isEmpty();
    assertThat(Balance.wanted(PUMP, two, 31 * L_MIN, L_MIN).leftForOthers()).isEmpty();
    // a pump that still lifts well at its end: the tall one has its want while the end is shared
    PumpCurve strong = PumpCurve.points(new double[] {0, 6 * L_MIN}, new double[] {2.8, 2.75});
    Balance b = Balance.wanted(strong, two, 5 * L_MIN, 8 * L_MIN);
    assertThat(b.status()).isEqualTo(Balance.Status.END_OF_CURVE);
    assertThat(b.leftForOthers()).isEmpty();
    // put back: others that together take what is left let the tall one have its want exactly
    Balance tight = Balance.wanted(PUMP, two, 6 * L_MIN, 15 * L_MIN);
    assertThat(tight.limiting()).isZero();
    double left = tight.leftForOthers().getAsDouble();
    Balance again = Balance.wanted(PUMP, two, 6 * L_MIN, left * (1 - 1e-9));
    assertThat(again.status()).isEqualTo(Balance.Status.WANTED);
    assertThat(again.valves()[0].head().getAsDouble()).isCloseTo(0, within(1e-6));
    assertThat(Balance.wanted(PUMP, two, 6 * L_MIN, left * 1.001).status())
        .isEqualTo(Balance.Status.SHORT);
  }

  @Test
  void leftOutWithACurveThatEndsFirstTellsNoRounds() {
    PumpCurve ends =
        PumpCurve.points(new double[] {0, 4 * L_MIN, 8 * L_MIN}, new double[] {2.8, 2.7, 2.6});
    Manifold m = new Manifold(COMMON, riser(3, 0.013), riser(1, 0.013), riser(1.2, 0.013));
    Balance equal = Balance.equal(ends, m);
    assertThat(equal.status()).isEqualTo(Balance.Status.LEFT_OUT);
    assertThat(JugRounds.curveEndsFirst(equal)).isTrue();
    Balance wanted = Balance.wanted(ends, m, L_MIN, 6 * L_MIN, 6 * L_MIN);
    assertThat(wanted.status()).isEqualTo(Balance.Status.LEFT_OUT_SHORT);
    assertThat(JugRounds.curveEndsFirst(wanted)).isTrue();
    Balance some = Balance.wanted(ends, m, L_MIN, L_MIN, L_MIN);
    assertThat(some.status()).isEqualTo(Balance.Status.LEFT_OUT);
    assertThat(JugRounds.curveEndsFirst(some)).isFalse();
    assertThat(some.met()).isFalse();
    assertThat(JugRounds.of(ends, m, some, some.order(), 2).flows().length).isEqualTo(2);
  }

  @Test
  void wantsThatAddUpToTheEndOfTheCurveAreHad() {
    double[] wants = {0.1 / 3, 0.2 / 3, 0.3 / 3, 0.7 / 3};
    double sum = (0.1 + 0.7 + 0.2 + 0.3) / 3 * (1 - 1e-15);
    double[] flows = new double[4];
    Riser[] risers = new Riser[4];
    for (int i = 0; i < 4; i++) {
      flows[i] = wants[i] * 6 * L_MIN;
      risers[i] = riser(0.5 + 0.1 * i, 0.013);
    }
    double end = sum * 6 * L_MIN;
    PumpCurve ends = PumpCurve.points(new double[] {0, end}, new double[] {2.8, 2.7});
    Balance b = Balance.wanted(ends, new Manifold(COMMON, risers), flows);
    assertThat(b.status()).isEqualTo(Balance.Status.WANTED);
    assertThat(b.share().getAsDouble()).isEqualTo(1);
    assertThat(b.totalFlow()).isLessThanOrEqualTo(end);
    assertThat(b.rounds()).isEqualTo(2);
  }

  @Test
  void aCurveThatEndsFirstDecidesWithEqualFlowsToo() {
    PumpCurve ends =
        PumpCurve.points(new double[] {0, 4 * L_MIN, 8 * L_MIN}, new double[] {2.8, 2.7, 2.6});
    Manifold m = new Manifold(COMMON, riser(1, 0.013), riser(1.2, 0.013));
    Balance b = Balance.equal(ends, m);
    assertThat(b.status()).isEqualTo(Balance.Status.END_OF_CURVE);
    assertThat(JugRounds.curveEndsFirst(b)).isTrue();
    assertThat(b.valves()[0].flow() / L_MIN).isCloseTo(4, within(1e-12));
    assertThat(JugRounds.of(ends, m, b, b.order(), 2).flows()).isEmpty();
  }
}
