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

class HeadLossTest {
  static Stream<Row> rows() {
    return Sheet.of("hydraulics-headloss.csv").atLeast(20);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Liquid liquid = new Liquid(r.num("rho_kg_m3"), r.num("mu_Pa_s"), 0.07);
    Riser riser = new Riser(Cases.line(r, liquid), r.num("static_head_m"));
    HeadLoss h = HeadLoss.behind(null, 0, riser, r.num("flow_L_min") * L_MIN);
    HeadLoss.OfSection first = h.sections().get(0);
    check(r, first.velocity(), "velocity1_m_s");
    check(r, first.reynolds(), "reynolds1");
    check(r, first.frictionFactor(), "f1_colebrook");
    check(r, h.frictionHead(), "friction_head_m_colebrook");
    check(r, h.fittingHead(), "minor_head_m");
    check(r, h.totalHead(), "total_head_m_colebrook");
    check(r, h.totalHeadChurchill(), "total_head_m_churchill");
    Line churchill = riser.line().with(FrictionModel.CHURCHILL);
    check(r, churchill.frictionFactor(0, h.flow()), "f1_churchill");
    assertThat(h.totalHeadChurchill() - h.staticHead())
        .isCloseTo(h.lostHead(), withPercentage(100 * r.num("tol_rel_other_model")));
  }

  private static void check(Row r, double ours, String column) {
    assertThat(ours)
        .as(column + " " + r.idAndProvenance())
        .isCloseTo(r.num(column), withPercentage(100 * r.num("tol_rel_same_model")));
  }

  /** The worked sum of hydraulics.md section 4. */
  @Test
  void meetsTheWorkedSum() {
    Line line = new Line(Liquid.water(20), new PipeSection(2.2, 0.013, 1.5e-6, 2.5));
    HeadLoss h = HeadLoss.behind(null, 0, new Riser(line, 1.9), 8 * L_MIN);
    assertThat(h.totalHead()).isCloseTo(2.281405, within(1e-6));
    assertThat(h.fastest().regime()).isEqualTo(Regime.TURBULENT);
    assertThat(h.share(h.staticHead()) + h.share(h.lostHead())).isCloseTo(1, within(1e-12));
  }

  /**
   * Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, example 8.8 (memory): water at 60
   * F, 12 gal/min through 60 ft of 0.0625 ft copper tubing, drawn (5E-6 ft), four elbows 1.5, a
   * globe valve 10 and a faucet 2. Printed pressures 10.7, 21.3 and 30.5 psi without losses, with
   * friction, with all: so friction 10.6 and fittings 9.2 psi, each to a tenth.
   */
  @Test
  void meetsMunsonsPlumbingExample() {
    double foot = 0.3048;
    Liquid water = new Liquid(999, 1.121e-3, 0.073);
    PipeSection pipe = new PipeSection(60 * foot, 0.0625 * foot, 5e-6 * foot, 4 * 1.5 + 10 + 2);
    Line line = new Line(water, pipe);
    double flow = 12 * 3.785411784e-3 / 60;
    double psi = 6894.757 / (999 * Liquid.GRAVITY);
    assertThat(line.frictionLoss(flow) / psi).isCloseTo(10.6, within(0.1));
    assertThat(line.fittingLoss(flow) / psi).isCloseTo(9.2, within(0.1));
    assertThat(Fitting.k("elbow") * 4 + Fitting.valveK("globe") + 2).isEqualTo(18);
  }

  @Property
  void headRisesWithFlowWithoutAJump(
      @ForAll @Scale(12) @DoubleRange(min = 1e-7, max = 1e-3) double flow,
      @ForAll @Scale(12) @DoubleRange(min = 0.004, max = 0.05) double bore,
      @ForAll @Scale(12) @DoubleRange(min = 0.01, max = 5) double length) {
    Line line = new Line(Liquid.water(20), new PipeSection(length, bore, 1.5e-6, 1.5));
    double h = line.loss(flow);
    assertThat(line.loss(flow * 1.0001)).isGreaterThan(h).isCloseTo(h, withPercentage(0.1));
    assertThat(line.loss(flow * (1 + 1e-12))).isCloseTo(h, withPercentage(1e-9));
  }

  @Property
  void flowAtIsTheInverse(
      @ForAll @Scale(12) @DoubleRange(min = 1e-9, max = 1e-3) double flow,
      @ForAll @Scale(12) @DoubleRange(min = 0.002, max = 0.05) double bore,
      @ForAll @Scale(12) @DoubleRange(min = 0, max = 5) double k,
      @ForAll boolean churchill) {
    FrictionModel model = churchill ? FrictionModel.CHURCHILL : FrictionModel.BLEND;
    PipeSection first = new PipeSection(2, bore, 1.5e-6, k);
    PipeSection second = new PipeSection(1, bore * 0.8, 1e-5, 1);
    Line line = new Line(Liquid.water(20), model, first, second);
    assertThat(line.flowAt(line.loss(flow))).isCloseTo(flow, withPercentage(1e-7));
  }

  @Property
  void slopeIsTheDerivative(
      @ForAll @Scale(12) @DoubleRange(min = 1e-7, max = 1e-3) double flow,
      @ForAll @Scale(12) @DoubleRange(min = 0.004, max = 0.05) double bore) {
    Line line = new Line(Liquid.water(20), new PipeSection(2, bore, 1.5e-5, 1.5));
    double re = line.reynolds(0, flow);
    if (Math.abs(re - 2000) < 1 || Math.abs(re - 4000) < 1) {
      return;
    }
    double step = 1e-5 * flow;
    double chord = (line.loss(flow + step) - line.loss(flow - step)) / (2 * step);
    LossAt asked = line.asked();
    asked.ask(flow);
    assertThat(asked.slope()).isCloseTo(chord, withPercentage(1e-3));
  }

  @Test
  void noFlowLosesNothing() {
    Line line = new Line(Liquid.water(20), new PipeSection(2, 0.013, 1.5e-6, 2));
    assertThat(line.loss(0)).isZero();
    assertThat(line.flowAt(0)).isZero();
    assertThat(line.flowAt(-1)).isZero();
  }

  @Test
  void refusesPipesThatCannotBe() {
    assertRefused(() -> new PipeSection(1, 0, 0, 0), "bore");
    assertRefused(() -> new PipeSection(-1, 0.01, 0, 0), "length");
    assertRefused(() -> new PipeSection(1, 0.01, 0.02, 0), "roughness");
    assertRefused(() -> new PipeSection(1, 0.01, 0, -1), "k");
    assertRefused(() -> new PipeSection(1, Double.NaN, 0, 0), "bore");
    assertRefused(() -> new PipeSection(1, 1e-300, 0, 0), "bore");
    assertRefused(() -> new Line(Liquid.water(20)), "riser");
    Line line = new Line(Liquid.water(20), new PipeSection(0, 0.01, 0, 0));
    assertRefused(() -> line.flowAt(1), "length");
    assertRefused(() -> line.loss(-1), "flow");
    assertRefused(() -> HeadLoss.behind(null, 0, new Riser(line, 1), 0), "flow");
  }

  private static void assertRefused(Runnable what, String quantity) {
    assertThatThrownBy(what::run)
        .isInstanceOfSatisfying(
            Impossible.class, e -> assertThat(e.quantity()).isEqualTo(quantity));
  }

  /** 0.3, 1.5 and 2.5 m/s: common practice, no source; a hair on each side. */
  @Test
  void speedsAreJudgedAtTheirBounds() {
    assertThat(at(0.2999).slow()).isTrue();
    assertThat(at(0.3).slow()).isFalse();
    assertThat(at(1.5).fast()).isFalse();
    assertThat(at(1.5001).fast()).isTrue();
    assertThat(at(2.5).absurd()).isFalse();
    assertThat(at(2.5001).absurd()).isTrue();
  }

  private static HeadLoss.OfSection at(double velocity) {
    return new HeadLoss.OfSection(
        new PipeSection(2.2, 0.013, 0, 0), velocity, 1e4, Regime.TURBULENT, 0.03, 1, 0);
  }
}
