package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A line of three tubes, 1 m of 16 mm, 0.5 m of 13 mm and 0.2 m of 10 mm, counted back from its
 * outlet by hand; and risers side by side.
 */
class LinePartsTest {
  private static final Liquid WATER = Liquid.water(20);
  private static final Line LINE =
      new Line(
          WATER,
          new PipeSection(1, 0.016, 1.5e-6, 1),
          new PipeSection(0.5, 0.013, 1.5e-6, 2),
          new PipeSection(0.2, 0.010, 1.5e-6, 3));

  private static double area(double bore) {
    return Math.PI / 4 * bore * bore;
  }

  @Test
  void waterThatStandsInTheLastMetres() {
    assertThat(LINE.volumeBack(0)).isZero();
    assertThat(LINE.volumeBack(0.1)).isCloseTo(0.1 * area(0.010), within(1e-15));
    assertThat(LINE.volumeBack(0.3))
        .isCloseTo(0.2 * area(0.010) + 0.1 * area(0.013), within(1e-15));
    double all = 0.2 * area(0.010) + 0.5 * area(0.013) + area(0.016);
    assertThat(LINE.volumeBack(1.7)).isCloseTo(all, within(1e-15));
    assertThat(LINE.volumeBack(2.7)).isCloseTo(all + area(0.016), within(1e-15));
    assertThat(LINE.length()).isCloseTo(1.7, within(1e-12));
  }

  /** Each tube rubs by itself, and each fitting counts at the speed of its own tube. */
  @Test
  void lossInItsParts() {
    double flow = 5 * L_MIN;
    double friction0 = LINE.frictionLoss(0, flow);
    double friction1 = LINE.frictionLoss(1, flow);
    double friction2 = LINE.frictionLoss(2, flow);
    double fittings = LINE.fittingLoss(flow);
    assertThat(fittings)
        .isCloseTo(
            LINE.velocityHead(0, flow)
                + 2 * LINE.velocityHead(1, flow)
                + 3 * LINE.velocityHead(2, flow),
            within(1e-12));
    assertThat(LINE.loss(flow))
        .isCloseTo(friction0 + friction1 + friction2 + fittings, within(1e-12));
    assertThat(LINE.frictionLoss(flow)).isCloseTo(friction0 + friction1 + friction2, within(1e-12));
  }

  /** Friction by Darcy's own sum: f L/D v2/2g, with Re = v D/nu. */
  @Test
  void oneTubeByHand() {
    double flow = 5 * L_MIN;
    double v = flow / area(0.013);
    assertThat(LINE.velocity(1, flow)).isCloseTo(v, within(1e-12));
    assertThat(LINE.velocityHead(1, flow)).isCloseTo(v * v / (2 * 9.80665), within(1e-12));
    assertThat(LINE.reynolds(1, flow))
        .isCloseTo(v * 0.013 / WATER.kinematicViscosity(), within(1e-6));
    assertThat(LINE.frictionLoss(1, flow))
        .isCloseTo(
            LINE.frictionFactor(1, flow) * 0.5 / 0.013 * v * v / (2 * 9.80665), within(1e-12));
  }

  /** The slope is what a hair more flow costs. */
  @ParameterizedTest
  @CsvSource({"0.5", "2", "5", "9"})
  void slopeOfTheLoss(double litres) {
    double flow = litres * L_MIN;
    double hair = 1e-6 * flow;
    double cost = (LINE.loss(flow + hair) - LINE.loss(flow - hair)) / (2 * hair);
    LossAt asked = LINE.asked();
    asked.ask(flow);
    assertThat(asked.slope()).isCloseTo(cost, within(1e-4 * cost));
  }

  @Test
  void changed() {
    Line valved = LINE.withMoreK(1, 10);
    double flow = 5 * L_MIN;
    assertThat(valved.loss(flow) - LINE.loss(flow))
        .isCloseTo(10 * LINE.velocityHead(1, flow), within(1e-12));
    assertThat(LINE.flowAt(LINE.loss(flow))).isCloseTo(flow, within(1e-12));
    assertThat(LINE.flowAt(0)).isZero();
    assertThat(LINE.flowAt(-1)).isZero();
    assertThatThrownBy(() -> LINE.loss(-1e-9)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> LINE.loss(101)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Line(WATER)).isInstanceOf(Impossible.class);
  }

  private static Manifold three() {
    Line thin = new Line(WATER, new PipeSection(1.5, 0.013, 1.5e-6, 2));
    return new Manifold(LINE, new Riser(thin, 1.0), new Riser(thin, 1.2), new Riser(thin, 0.8));
  }

  /** At a head of 1.1 m the one at 1.2 m gets nothing; the others what their own line lets by. */
  @Test
  void risersAtOneHead() {
    Manifold m = three();
    Line line = m.riser(0).line();
    assertThat(m.leastLift()).isEqualTo(0.8);
    assertThat(m.totalAt(1.1)).isCloseTo(line.flowAt(0.1) + line.flowAt(0.3), within(1e-12));
    assertThat(m.totalAt(0.8)).isZero();
    assertThat(m.closed(2).leastLift()).isEqualTo(1.0);
    assertThat(m.closed(2).totalAt(1.1)).isCloseTo(line.flowAt(0.1), within(1e-12));
    assertThat(Pipes.lifted(m, 0.1).leastLift()).isCloseTo(0.9, within(1e-12));
    assertThat(m.headAtManifold(0)).isEqualTo(0.8);
    double total = m.totalAt(1.3);
    assertThat(m.headAtManifold(total)).isCloseTo(1.3, within(1e-9));
    assertThat(m.head(total)).isCloseTo(1.3 + LINE.loss(total), within(1e-9));
    assertThat(Pipes.alone(m).commonLoss(total)).isZero();
  }

  /** Closed all, its least lift is that of all risers, and no flow can pass. */
  @Test
  void allClosed() {
    Manifold shut = three().closed(0).closed(1).closed(2);
    assertThat(shut.leastLift()).isEqualTo(0.8);
    assertThatThrownBy(() -> shut.headAtManifold(1e-5))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("every valve is closed");
    assertThatThrownBy(() -> Balance.equal(PumpCurve.parabola(2, 1e-4), shut))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("every valve is closed");
  }

  /** The share of head with which a riser just gets a flow: with it solved, it gets it. */
  @Test
  void aShareOfHeadForOneRiser() {
    Manifold m = three();
    PumpCurve printed = PumpCurve.parabola(4, 60 * L_MIN);
    double share = m.derateFor(printed, 1, 2 * L_MIN).getAsDouble();
    assertThat(m.solve(printed.derated(share)).flow(1)).isCloseTo(2 * L_MIN, within(1e-10));
    assertThat(m.derateFor(printed, 1, 59 * L_MIN)).as("past the end of the curve").isEmpty();
    assertThat(m.closed(1).derateFor(printed, 1, 2 * L_MIN)).as("it is closed").isEmpty();
  }

  /** Tubes of one bore joined cost nothing; narrower ones cost on the narrow side. */
  @Test
  void tubesJoined() {
    PipeSection wide = new PipeSection(1, 0.016, 1.5e-6, 0);
    PipeSection narrow = new PipeSection(1, 0.010, 1.5e-6, 0);
    double b2 = Math.pow(0.010 / 0.016, 2);
    PipeSection[] in = PipeRun.joined(wide, narrow);
    assertThat(in[0].fittingsK()).isZero();
    assertThat(in[1].fittingsK()).isCloseTo(0.5 * (1 - b2), within(1e-12));
    PipeSection[] out = PipeRun.joined(narrow, wide);
    assertThat(out[0].fittingsK()).isCloseTo((1 - b2) * (1 - b2), within(1e-12));
    assertThat(out[1].fittingsK()).isZero();
    PipeSection[] same = PipeRun.joined(wide, wide);
    assertThat(same[0].fittingsK() + same[1].fittingsK()).isZero();
  }
}
