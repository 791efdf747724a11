package leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/**
 * Valves that hold each riser to what is wanted: against {@link Balance} where all wants are met,
 * and against the manifold solved with the found valves in every case.
 */
class HeldFlowTest {
  private static final Liquid WATER = Liquid.water(20);
  private static final double L_MIN = 1e-3 / 60;

  private static Manifold risers(double lift, double higher, double bore) {
    Line common = new Line(WATER, new PipeSection(0.6, 0.019, 1.5e-6, 1));
    Line riser = new Line(WATER, new PipeSection(1.9, bore, 1.5e-6, 1.5));
    return new Manifold(common, new Riser(riser, lift), new Riser(riser, lift + higher));
  }

  @Property(tries = 300)
  void agreesWithTheManifoldSolvedWithItsValves(
      @ForAll @DoubleRange(min = 0.5, max = 1.8) double lift,
      @ForAll @DoubleRange(min = 0, max = 0.6) double higher,
      @ForAll @DoubleRange(min = 8, max = 16) double bore,
      @ForAll @DoubleRange(min = 0.5, max = 8) double first,
      @ForAll @DoubleRange(min = 0.5, max = 8) double second) {
    PumpCurve curve = PumpCurve.parabola(2.4, 18 * L_MIN);
    Manifold open = risers(lift, higher, bore / 1000);
    double[] wanted = {first * L_MIN, second * L_MIN};
    HeldFlow held = HeldFlow.of(curve, open, wanted);
    ManifoldFlow solved = held.flows().manifold().solve(curve);
    for (int i = 0; i < 2; i++) {
      assertThat(held.flows().flow(i)).isLessThanOrEqualTo(wanted[i] * (1 + 1e-9));
      assertThat(solved.flow(i)).isCloseTo(held.flows().flow(i), within(1e-8 * L_MIN));
      if (held.moreK()[i] == 0) {
        assertThat(held.flows().flow(i)).isLessThanOrEqualTo(wanted[i] * (1 + 1e-9));
      } else {
        assertThat(held.flows().flow(i)).isCloseTo(wanted[i], within(1e-9 * L_MIN));
      }
    }
    Balance balance = Balance.wanted(curve, open, wanted);
    if (balance.status() == Balance.Status.WANTED) {
      for (int i = 0; i < 2; i++) {
        double k = balance.valves()[i].k().orElseThrow();
        assertThat(held.moreK()[i]).isCloseTo(k, within(1e-6 * (1 + k)));
      }
    }
  }

  @Property(tries = 100)
  void aRiserWithoutAWantTakesWhatComes(
      @ForAll @DoubleRange(min = 0.5, max = 1.2) double lift,
      @ForAll @DoubleRange(min = 0.5, max = 4) double first) {
    PumpCurve curve = PumpCurve.parabola(2.4, 18 * L_MIN);
    Manifold open = risers(lift, 0.2, 0.013);
    HeldFlow held = HeldFlow.of(curve, open, first * L_MIN, Double.POSITIVE_INFINITY);
    assertThat(held.moreK()[1]).isZero();
    assertThat(held.flows().flow(1)).isGreaterThanOrEqualTo(open.solve(curve).flow(1));
    ManifoldFlow solved = held.flows().manifold().solve(curve);
    assertThat(solved.flow(1)).isCloseTo(held.flows().flow(1), within(1e-8 * L_MIN));
  }

  /**
   * A tower that has too little stays open; the other's valve is set beside it as it really runs.
   * Second route: the manifold solved with these valves gives the other what it wants. Set as if
   * the first had all it wants, its valve would let too much through.
   */
  @Property(tries = 200)
  void whereOneHasTooLittleTheOtherStillGetsWhatItWants(
      @ForAll @DoubleRange(min = 0.8, max = 1.6) double lift,
      @ForAll @DoubleRange(min = 0.1, max = 0.6) double higher,
      @ForAll @DoubleRange(min = 0.2, max = 0.9) double share) {
    PumpCurve curve = PumpCurve.parabola(2.4, 18 * L_MIN);
    Manifold open = risers(lift, higher, 0.013);
    ManifoldFlow natural = open.solve(curve);
    double low = Math.max(natural.flow(0) * share, 0.2 * L_MIN);
    double high = 17 * L_MIN - low;
    Throttle[] valves = Throttle.each(curve, open, low, high);
    assertThat(valves[0].reachable()).isTrue();
    assertThat(valves[1].reachable()).isFalse();
    Riser first = open.riser(0);
    Line throttled = first.line().withMoreK(first.line().size() - 1, valves[0].valveK());
    ManifoldFlow set = open.with(0, new Riser(throttled, first.lift())).solve(curve);
    assertThat(set.flow(0)).isCloseTo(low, within(1e-8 * L_MIN));
    assertThat(set.flow(1)).isCloseTo(valves[1].flow(), within(1e-8 * L_MIN));
    assertThat(set.flow(1)).isGreaterThanOrEqualTo(natural.flow(1) - 1e-8 * L_MIN);
    double total = low + high;
    double asIfHad = curve.head(total) - open.commonLoss(total) - first.head(low);
    assertThat(asIfHad).isLessThan(valves[0].valveHead());
  }

  /**
   * What {@link Balance} shares out is what its valves let through, and the pump gives no less
   * here.
   */
  @Property(tries = 200)
  void aShareOfTheWantsIsHadByTheSameValves(
      @ForAll @DoubleRange(min = 0.8, max = 1.6) double lift,
      @ForAll @DoubleRange(min = 0.1, max = 0.6) double higher,
      @ForAll @DoubleRange(min = 4, max = 12) double first,
      @ForAll @DoubleRange(min = 4, max = 12) double second) {
    PumpCurve curve = PumpCurve.parabola(2.4, 18 * L_MIN);
    Manifold open = risers(lift, higher, 0.013);
    Balance balance = Balance.wanted(curve, open, first * L_MIN, second * L_MIN);
    double share = balance.share().orElseThrow();
    ManifoldFlow later = balance.flows(open, curve);
    HeldFlow held = HeldFlow.of(curve, open, first * L_MIN, second * L_MIN);
    for (int i = 0; i < 2; i++) {
      double want = (i == 0 ? first : second) * L_MIN;
      assertThat(later.flow(i)).isCloseTo(share * want, within(1e-6 * L_MIN));
      assertThat(held.flows().flow(i)).isLessThanOrEqualTo(want * (1 + 1e-9));
    }
    assertThat(held.flows().totalFlow()).isGreaterThanOrEqualTo(balance.totalFlow() - 1e-8 * L_MIN);
  }
}
