package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is said exactly at a threshold and a hair beside it, on records made by hand: the threshold
 * itself stands in the sheets (hydraulics.md) and in the words of the answers.
 */
class ThresholdsTest {
  private static final Liquid WATER = Liquid.water(20);
  private static final Line LINE = new Line(WATER, new PipeSection(2.2, 0.013, 1.5e-6, 2.5));
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Cap cap(double jet, double weight, double holdDown) {
    return new Cap(jet, weight, holdDown);
  }

  /** Held down as hard as the jet pushes it stays. */
  @Test
  void aCapBesideTheJet() {
    assertThat(cap(2, 1, 2).liftsAgainstGrip()).isFalse();
    assertThat(cap(2.001, 1, 2).liftsAgainstGrip()).isTrue();
  }

  private static Gap gap(double orifice, double viscous, double edge) {
    return new Gap(1, 1, 1, 1, orifice, viscous, orifice + viscous, edge);
  }

  @Test
  void theDepthOnASpreader() {
    assertThat(gap(2, 1, 4).standingDepth()).as("the rim").isEqualTo(4);
    assertThat(gap(2, 1, 2.5).standingDepth()).as("the slot").isEqualTo(3);
  }

  @Test
  void aFilmClosesAtItsLoadingAndNotBelow() {
    double closed = Film.of(L_MIN, 0.1, 1, 1, WATER).flowForClosedFilm();
    assertThat(Film.of(closed * (1 - 1e-9), 0.1, 1, 1, WATER).rivuletsLikely()).isTrue();
    assertThat(Film.of(closed * (1 + 1e-9), 0.1, 1, 1, WATER).rivuletsLikely()).isFalse();
    double fast = Film.of(L_MIN, 0.1, 1, 1, WATER).reynolds();
    assertThat(Film.of(L_MIN * 1499 / fast, 0.1, 1, 1, WATER).indicationOnly()).isFalse();
    assertThat(Film.of(L_MIN * 1501 / fast, 0.1, 1, 1, WATER).indicationOnly()).isTrue();
    assertThat(new WallFilms.Want(1, 2, 2, 2).suitsAll()).isTrue();
    assertThat(new WallFilms.Want(1, 2.001, 2, 2).suitsAll()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "2000,LAMINAR",
    "2000.1,TRANSITIONAL",
    "3999.9,TRANSITIONAL",
    "4000,TURBULENT",
  })
  void howWaterRunsInATube(double re, String word) {
    assertThat(Regime.of(re)).hasToString(word);
  }

  /** Holes as wide as the wires are a quarter open: 0.05 m/s through them is 12.5 mm/s. */
  @Test
  void aStrainerJustLargeEnough() {
    double area = 1.0 / 128;
    Strainer enough = Strainer.of(1e-3, 1e-3, area, 0.0125 * area, 0, 0.05, 1e-6);
    assertThat(enough.requiredArea()).isEqualTo(area);
    assertThat(enough.areaOk()).isTrue();
    assertThat(Strainer.of(1e-3, 1e-3, area, 0.01251 * area, 0, 0.05, 1e-6).areaOk()).isFalse();
  }

  /** Blevins' B: 1.3 up to Re 20, 1.1 at 30, 0.52 from 400; straight between. */
  @ParameterizedTest
  @CsvSource({
    "5,1.3",
    "20,1.3",
    "25,1.2",
    "30,1.1",
    "35,1.025",
    "300,0.56",
    "400,0.52",
    "900,0.52"
  })
  void lossOfAMeshByItsReynoldsNumber(double re, double b) {
    double area = 0.01;
    // hole speed = flow/(area/4), Re = speed x 1 mm/1e-6 m2/s
    double flow = re * 1e-3 * area / 4;
    Strainer s = Strainer.of(1e-3, 1e-3, area, flow, 0, 0.05, 1e-6);
    assertThat(s.holeReynolds()).isCloseTo(re, within(1e-9));
    assertThat(s.k()).isCloseTo(b * (1 - 1.0 / 16) / (1.0 / 16), within(1e-9));
  }

  @Test
  void aValveTooCoarseAndAJugTooQuick() {
    assertThat(SetValve.part(1, 2, 1, 1, 1000).wantsClamp()).isFalse();
    assertThat(SetValve.part(1, 2, 1, 1, 1000.1).wantsClamp()).isTrue();
    assertThat(SetValve.closed(0, 2).wantsClamp()).isFalse();
    assertThat(SetValve.part(1, 2, 0.5, 1, 10).opensTo()).isEqualTo(4);
    assertThat(SetValve.tooQuick(15)).isFalse();
    assertThat(SetValve.tooQuick(14.9)).isTrue();
  }

  @Test
  void aWireGivesNoLessThanTheWaterGets() {
    assertThat(Power.efficiency(10, 10)).isEqualTo(1);
    assertThatThrownBy(() -> Power.efficiency(10.01, 10)).isInstanceOf(Impossible.class);
  }

  @Test
  void headsThatAreAsGoodAsEqual() {
    assertThat(Accepted.over(1e-10, 0)).as("a tenth of a nanometre").isZero();
    assertThat(Accepted.over(1.01e-10, 0)).isPositive();
    assertThat(Accepted.over(0, 1.01e-10)).isNegative();
  }

  private static OptionalDouble of(double value) {
    return OptionalDouble.of(value);
  }

  /** A catch of a second by a watch that is a second off has no upper end. */
  @Test
  void aCatchAsShortAsTheWatchIsOff() {
    PumpCurve pump = PumpCurve.parabola(2.8, 33 * L_MIN);
    Riser riser = new Riser(LINE, 1.2);
    assertThat(MeasuredDerate.of(pump, riser, 1e-4, 1, 1).high()).isEmpty();
    assertThat(MeasuredDerate.of(pump, riser, 1e-4 * 60, 60, 1).high()).isPresent();
    assertThat(MeasuredDerate.of(pump, riser, 1e-4 * 60, 60, 0).low())
        .as("a perfect watch")
        .isEqualTo(MeasuredDerate.of(pump, riser, 1e-4 * 60, 60, 0).high());
  }

  @Test
  void whatAShareIsBelievedAs() {
    PumpCurve pump = PumpCurve.parabola(2, 20 * L_MIN);
    Derate none = Derate.of(MeasuredDerate.of(pump, new Riser(LINE, 1.5), 0));
    assertThat(none.kind()).isEqualTo(Derate.Kind.NO_FLOW);
    assertThat(none.share()).as("1.5 m of 2 m").isCloseTo(0.75, within(1e-12));
    Derate above = Derate.of(MeasuredDerate.of(pump, new Riser(LINE, 2.5), 0));
    assertThat(above.share()).as("not over the print").isEqualTo(1);
    Derate level = Derate.of(MeasuredDerate.of(pump, new Riser(LINE, 0), 0));
    assertThat(level.share()).as("a lift of nought limits nothing").isEqualTo(1);
    assertThat(Derate.named(1.2).shareOfAnother()).isEqualTo(1);
    assertThat(Derate.named(0.6).shareOfAnother()).isEqualTo(0.6);
    assertThat(Derate.notNamed().shareOfAnother()).isEqualTo(0.7);
    assertThat(none.shareOfAnother()).isEqualTo(0.7);
    assertThat(Derate.notNamed().shareForVerdict()).isEqualTo(0.7);
    assertThat(Derate.notNamed().share()).isEqualTo(1);
    assertThat(none.high().getAsDouble()).isCloseTo(0.75, within(1e-12));
    assertThat(none.unexplained()).isFalse();
    assertThat(Derate.of(MeasuredDerate.of(pump, new Riser(LINE, 1.5), 25 * L_MIN)).unexplained())
        .isTrue();
  }

  /** A pump of which half as much head is left must have twice as much printed. */
  @Test
  void theSamePumpForAnotherShareOfHead() {
    PumpNeeded p =
        PumpNeeded.of(new Manifold(null, new Riser(LINE, 1.9)), 0.7, 0.2, 998.2, 8 * L_MIN);
    PumpNeeded half = p.at(0.35);
    assertThat(half.derate()).isEqualTo(0.35);
    assertThat(half.shutoffHead()).isCloseTo(2 * p.shutoffHead(), within(1e-12));
    assertThat(half.printedHead()).isCloseTo(2 * p.printedHead(), within(1e-12));
    assertThat(half.maxFlow()).isEqualTo(p.maxFlow());
    assertThat(half.head()).isEqualTo(p.head());
    assertThat(half.metBy(PumpCurve.parabola(2 * p.shutoffHead() * (1 + 1e-9), p.maxFlow())))
        .isTrue();
    assertThatThrownBy(() -> p.at(0)).isInstanceOf(Impossible.class);
    // a curve that ends before the wanted flow, however high
    assertThat(p.metBy(PumpCurve.parabola(900, 7.9 * L_MIN))).isFalse();
    PumpCurve flat = PumpCurve.points(new double[] {0, 8 * L_MIN}, new double[] {900, 800});
    assertThat(p.metBy(flat)).as("it ends at the very flow").isTrue();
  }

  private static SetValve valve(double open, double flow) {
    return flow == 0
        ? SetValve.closed(0, open)
        : open == flow ? SetValve.open(flow, open, flow) : SetValve.part(flow, open, flow, 1, 1);
  }

  private static Balance balance(OptionalDouble share, int limiting, SetValve... valves) {
    return new Balance(Balance.Status.SHORT, share, limiting, NONE, 1, 1, null, valves);
  }

  /** The tower that would run most over goes first; alike ones as listed, closed ones never. */
  @Test
  void inWhichOrderValvesAreSet() {
    assertThat(balance(NONE, -1, valve(3, 2), valve(8, 2), valve(5, 0), valve(4, 2)).order())
        .containsExactly(1, 3, 0);
    assertThat(balance(NONE, -1, valve(4, 2), valve(2, 1), valve(6, 3)).order())
        .containsExactly(0, 1, 2);
    assertThat(balance(NONE, -1, valve(4, 2), valve(4.1, 2)).order()).containsExactly(1, 0);
    assertThat(balance(NONE, -1, valve(4, 2), valve(5, 0)).active()).isEqualTo(1);
  }

  /** One valve is set once; from two on the first is set again after the last. */
  @Test
  void howManyRounds() {
    assertThat(balance(NONE, -1, valve(2, 2), valve(5, 0)).rounds()).isZero();
    assertThat(balance(NONE, -1, valve(3, 2), valve(2, 2)).rounds()).isEqualTo(1);
    assertThat(balance(NONE, -1, valve(3, 2), valve(4, 2)).rounds()).isEqualTo(2);
    assertThat(balance(NONE, -1, valve(3, 2), valve(4, 2), valve(5, 2)).rounds()).isEqualTo(2);
  }

  @Test
  void secondsOfAJug() {
    assertThat(Balance.secondsFor(1e-3, 1e-4).getAsDouble()).isCloseTo(10, within(1e-12));
    assertThat(Balance.secondsFor(1e-3, 0)).isEmpty();
  }

  /** A box of 0.1 m2 over a hole: t = 2 A (sqrt h1 - sqrt h2)/(C a sqrt(2 g)). */
  @Test
  void drainingABox() {
    double bore = 0.01;
    double k = 0.62 * Math.PI / 4 * bore * bore * Math.sqrt(2 * 9.80665);
    TankDrain d = TankDrain.throughHole(h -> 0.1, bore, 0.02, 0.62, 0.27, 0.05);
    assertThat(d.seconds()).isCloseTo(0.2 * (Math.sqrt(0.25) - Math.sqrt(0.03)) / k, within(1e-6));
    assertThat(d.flowAtStart()).isCloseTo(k * Math.sqrt(0.25), within(1e-12));
    assertThat(d.flowAtEnd()).isCloseTo(k * Math.sqrt(0.03), within(1e-12));
    assertThat(d.volume()).isCloseTo(0.022, within(1e-12));
    assertThat(d.volumeLeft()).isCloseTo(0.005, within(1e-12));
    assertThat(d.naiveSeconds()).isCloseTo(0.022 / (k * 0.5), within(1e-9));
  }

  @Test
  void drainingNothingAndToTheFloor() {
    TankDrain none = TankDrain.throughHole(h -> 0.1, 0.01, 0, 0.62, 0.2, 0.2);
    assertThat(none.seconds()).isZero();
    assertThat(none.volume()).isZero();
    assertThat(none.volumeLeft()).isCloseTo(0.02, within(1e-12));
    TankDrain all = TankDrain.throughHole(h -> 0.1, 0.01, 0, 0.62, 0.2, 0);
    assertThat(all.volumeLeft()).isZero();
    assertThat(all.volume()).isCloseTo(0.02, within(1e-12));
    assertThat(all.flowAtEnd()).isZero();
  }

  /** Air is drawn from one and a half bores over the centre. */
  @Test
  void wherePlainWaterEndsAndAirIsDrawn() {
    double bore = 0.25;
    double from = 1.5 * bore;
    assertThat(TankDrain.throughHole(h -> 1, bore, 0, 0.62, 1, from).drawsAir()).isFalse();
    assertThat(TankDrain.throughHole(h -> 1, bore, 0, 0.62, 1, from - 1e-6).drawsAir()).isTrue();
    Line hose = new Line(WATER, new PipeSection(1, bore, 1.5e-6, 1));
    assertThat(TankDrain.throughHose(h -> 1, hose, 0.25, 1, 1, 0.25 + from).drawsAir()).isFalse();
    assertThat(TankDrain.throughHose(h -> 1, hose, 0.25, 1, 1, 0.25 + from - 1e-6).drawsAir())
        .isTrue();
  }

  @Test
  void noWaterRunsOutBelowTheDrain() {
    assertThatThrownBy(() -> TankDrain.throughHole(h -> 1, 0.01, 0.1, 0.62, 0.2, 0.09))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("below the drain's centre");
    assertThat(TankDrain.throughHole(h -> 1, 0.01, 0.1, 0.62, 0.2, 0.1).flowAtEnd()).isZero();
    assertThatThrownBy(() -> TankDrain.throughHole(h -> 1, 0.01, 0.1, 0.62, 0.1, 0.1))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> TankDrain.throughHose(h -> 1, LINE, 0.1, 0, 0.2, 0.1))
        .as("no head is left at the end")
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("no head is left");
    assertThat(TankDrain.throughHose(h -> 1, LINE, 0.1, 0.01, 0.2, 0.1).flowAtEnd()).isPositive();
    assertThatThrownBy(() -> TankDrain.throughHose(h -> 1, LINE, 0.1, 0.5, 0.2, 0.09))
        .isInstanceOf(Impossible.class);
  }

  /** v2/2g of 2 m/s is 0.2039 m: a plate there is just not reached. */
  @Test
  void aJetUnderItsPlate() {
    double bore = 0.01;
    double flow = 2 * Math.PI / 4 * bore * bore;
    double top = 4 / (2 * 9.80665);
    Jet under = Jet.of(flow, bore, top * 0.99, Jet.FLAT, WATER);
    assertThat(under.reaches()).isTrue();
    assertThat(under.plateSpeed()).isCloseTo(0.2, within(1e-9));
    assertThat(under.force()).isCloseTo(WATER.density() * flow * 0.2, within(1e-9));
    Jet over = Jet.of(flow, bore, top * 1.01, Jet.FLAT, WATER);
    assertThat(over.reaches()).isFalse();
    assertThat(over.force()).isZero();
    assertThat(Jet.of(flow, bore, 0, Jet.DOME, WATER).force())
        .as("turned back it pushes twice")
        .isCloseTo(2 * WATER.density() * flow * 2, within(1e-9));
  }

  @Test
  void boresThatDoNotChange() {
    assertThat(BoreChange.contraction(0.013, 0.013)).isZero();
    assertThat(BoreChange.expansion(0.013, 0.013)).isZero();
    assertThat(BoreChange.reducer(0.02, 0.01, 45)).isPositive();
    assertThatThrownBy(() -> BoreChange.reducer(0.02, 0.01, 45.1)).isInstanceOf(Impossible.class);
    assertThat(BoreChange.onOtherBore(1, 0.01, 0.02)).isCloseTo(16, within(1e-12));
    assertThat(Screen.sharp(0.3)).isEqualTo(17);
    assertThat(Screen.sharp(0.7)).isCloseTo(1.1, within(1e-12));
    assertThat(Screen.sharp(0.45)).isCloseTo(Math.sqrt(7.7 * 3.8), within(1e-12));
    assertThat(Screen.woven(1)).isZero();
  }

  @Test
  void aPumpAtHalfSpeed() {
    PumpCurve pump = PumpCurve.parabola(2, 20 * L_MIN);
    PumpCurve slow = pump.atSpeed(0.5);
    assertThat(slow.shutoffHead()).as("a quarter of the head").isCloseTo(0.5, within(1e-12));
    assertThat(slow.maxFlow()).as("half of the flow").isCloseTo(10 * L_MIN, within(1e-15));
    assertThat(slow.slope(5 * L_MIN)).isCloseTo(0.5 * pump.slope(10 * L_MIN), within(1e-9));
    assertThat(pump.atSpeed(1)).isSameAs(pump);
    assertThat(pump.derated(1)).isSameAs(pump);
    assertThat(pump.derated(2).shutoffHead()).isEqualTo(4);
    assertThatThrownBy(() -> pump.derated(2.01)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> pump.atSpeed(2.01)).isInstanceOf(Impossible.class);
  }

  /** A flat start and an end at no head are curves that pumps have. */
  @Test
  void whatACurveOfPointsMayBe() {
    double[] flows = {0, 1e-4, 2e-4};
    PumpCurve curve = PumpCurve.points(flows, new double[] {2, 2, 0});
    assertThat(curve.head(1e-4)).isEqualTo(2);
    assertThat(curve.head(2e-4)).isZero();
    assertThatThrownBy(() -> PumpCurve.points(flows, new double[] {2, 2.01, 0}))
        .hasMessageContaining("must not rise");
    assertThatThrownBy(() -> PumpCurve.points(new double[] {0, 1e-4, 1e-4}, new double[] {2, 1, 0}))
        .hasMessageContaining("flows must rise");
    assertThatThrownBy(() -> PumpCurve.points(new double[] {1e-5, 1e-4}, new double[] {2, 1}))
        .hasMessageContaining("at a flow of 0");
    assertThatThrownBy(() -> PumpCurve.points(new double[] {0}, new double[] {2}))
        .hasMessageContaining("at least two points");
    assertThatThrownBy(() -> PumpCurve.points(flows, new double[] {2, 1}))
        .hasMessageContaining("at least two points");
    assertThat(PumpCurve.points(new double[] {0, 1e-4}, new double[] {2, 1}).maxFlow())
        .isEqualTo(1e-4);
  }
}
