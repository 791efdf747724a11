package leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

class NothingInfiniteTest {
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
    finite(p.flow(), p.head(), p.lift(), p.shutoffHead());
    Manifold m = new Manifold(r.nextBoolean() ? null : new Line(water, t), one, two);
    ManifoldFlow f = m.solve(pump);
    finite(f.totalFlow(), f.manifoldHead(), f.flow(0), f.flow(1), f.margin(0), f.pumpHead());
    finite(m.derateFor(pump, 1, any(r, 1e-4)).orElse(0));
    RiserFill fill = RiserFill.of(pump, one, r.nextBoolean());
    finite(fill.fillTime().orElse(0), fill.integratedTime().orElse(0), fill.drainBack());
    double flow = any(r, 1e-4);
    MeasuredDerate d = MeasuredDerate.of(pump, m, flow, any(r, 30), 1);
    finite(d.derate().orElse(0), d.low().orElse(0), d.high().orElse(0), d.sensitivity().orElse(0));
    HeadLoss h = HeadLoss.behind(null, 0, two, flow);
    finite(h.totalHead(), h.totalHeadChurchill(), h.fastest().frictionFactor());
    Film film = Film.of(flow, any(r, 0.1), 1, any(r, 1.5), water);
    finite(film.thickness(), film.transitTime(), film.volume(), film.reynolds());
    Jet jet = Jet.of(flow, any(r, 0.013), any(r, 0.02), 90, water);
    Gap gap = Gap.slot(flow, any(r, 0.002), any(r, 0.1), any(r, 0.003), 0.6, water);
    Cap cap = Cap.of(jet, any(r, 0.2), any(r, 1));
    finite(jet.force(), jet.height(), gap.totalHead(), gap.edgeHead(), cap.jetForce());
    Throttle v = Throttle.each(pump, new Manifold(null, one), flow)[0];
    finite(v.valveHead(), v.valveK(), v.naturalFlow());
  }

  private static void finite(double... values) {
    for (double v : values) {
      assertThat(v).as(java.util.Arrays.toString(values)).isFinite();
    }
  }
}
