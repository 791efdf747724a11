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

class PipeRunTest {
  private static final Liquid WATER = Liquid.water(20);

  private static PipeSection piece(double length, double bore, double k) {
    return new PipeSection(length, bore, 1.5e-6, k);
  }

  private static PipeSection[] whole(PipeSection... pieces) {
    return PipeRun.withExit(PipeRun.withEntrance(PipeRun.joined(pieces)));
  }

  /**
   * Second route: Bernoulli by hand over 19, 13 and 16 mm, each K on the velocity in its own bore;
   * contraction after Crane 0.5 (1 - b2), expansion after Borda and Carnot (v1 - v2)^2/2g.
   */
  @Property
  void everyLossStandsOnItsOwnVelocityHead(
      @ForAll @Scale(2) @DoubleRange(min = 0.5, max = 20) double litres) {
    double flow = litres * L_MIN;
    PipeSection[] bare = {piece(1, 0.019, 1.5), piece(0.6, 0.013, 0), piece(1.4, 0.016, 0.3)};
    Line run = new Line(WATER, whole(bare));
    double v1 = speed(flow, 0.019);
    double v2 = speed(flow, 0.013);
    double v3 = speed(flow, 0.016);
    double narrow = 13.0 / 19 * 13 / 19;
    double lost =
        (0.5 + 1.5) * head(v1)
            + 0.5 * (1 - narrow) * head(v2)
            + head(v2 - v3)
            + (0.3 + 1) * head(v3);
    assertThat(run.fittingLoss(flow)).isCloseTo(lost, withPercentage(1e-9));
    assertThat(run.frictionLoss(flow))
        .isCloseTo(new Line(WATER, bare).frictionLoss(flow), withPercentage(1e-12));
  }

  private static double speed(double flow, double bore) {
    return flow / (Math.PI / 4 * bore * bore);
  }

  private static double head(double speed) {
    return speed * speed / (2 * 9.80665);
  }

  @Test
  void onePieceHasItsTwoEndsAndEqualBoresHaveNoJoint() {
    assertThat(whole(piece(1, 0.013, 0))[0].fittingsK())
        .isCloseTo(PipeSection.K_WHEN_NOT_NAMED, within(1e-12));
    PipeSection[] equal = PipeRun.joined(piece(1, 0.013, 0.2), piece(2, 0.013, 0.4));
    assertThat(equal[0].fittingsK()).isEqualTo(0.2);
    assertThat(equal[1].fittingsK()).isEqualTo(0.4);
    PipeSection given = piece(1, 0.013, 0);
    PipeRun.withEntrance(given);
    assertThat(given.fittingsK()).isEqualTo(0.0);
    assertThatThrownBy(() -> PipeRun.changeK(0, 0.01)).isInstanceOf(Impossible.class);
  }

  /** Second route: along each tower that runs, the lost heads add up to what the pump gives. */
  @Property
  void behindACommonPipeTheHeadsAddUpToThePumps(
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 1.8) double one,
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 1.8) double two) {
    Line common = new Line(WATER, piece(0.6, 0.019, 0.5), piece(0.2, 0.016, 0.2));
    Manifold m =
        new Manifold(
            common,
            new Riser(new Line(WATER, piece(2.2, 0.013, 2)), one),
            new Riser(new Line(WATER, piece(2.2, 0.012, 2)), two));
    ManifoldFlow f = m.solve(PumpCurve.parabola(3, 30 * L_MIN));
    for (int i = 0; i < 2; i++) {
      if (!f.dry(i)) {
        HeadLoss h = HeadLoss.behind(common, f.totalFlow(), m.riser(i), f.flow(i));
        assertThat(h.totalHead()).isCloseTo(f.pumpHead(), within(1e-9));
        assertThat(h.staticHead() + h.lostHead()).isCloseTo(h.totalHead(), within(1e-12));
        assertThat(h.sections()).hasSize(3);
        double sum = 0;
        for (HeadLoss.OfSection s : h.sections()) {
          sum += s.frictionHead() + s.fittingHead();
        }
        assertThat(sum).isCloseTo(h.lostHead(), within(1e-12));
        assertThat(h.totalHeadChurchill()).isCloseTo(h.totalHead(), withPercentage(10));
      }
    }
  }

  @Test
  void aCommonPipeCarriesAtLeastTheRisersFlow() {
    Line line = new Line(WATER, piece(1, 0.013, 1));
    assertThatThrownBy(() -> HeadLoss.behind(line, 1e-5, new Riser(line, 1), 1e-4))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("all towers");
    assertThat(HeadLoss.behind(null, 0, new Riser(line, 1), 1e-4).totalHead())
        .isEqualTo(HeadLoss.behind(null, 0, new Riser(line, 1), 1e-4).totalHead());
  }
}
