package leat.system;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leat.hydraulics.Derate;
import leat.hydraulics.Manifold;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.PumpCurve;

/** Points of a pump's curve and of what the risers take, for a picture. */
public final class PumpPicture {
  private static final int POINTS = 49;

  /** Shares of the printed head by which the risers' curve is found; the greatest passes it. */
  private static final double MOST_SHARE = 1.15;

  /** Points of a curve: as many heads as flows. */
  public record Curve(double[] flows, double[] heads) {}

  /** The shares of the printed head that may be: the least and the greatest. */
  public record Doubt(double low, double high) {}

  private PumpPicture() {}

  /** A pump's curve from no flow to its end. */
  public static Curve of(PumpCurve pump) {
    double[] flows = new double[POINTS];
    double[] heads = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      flows[i] = pump.maxFlow() * i / (POINTS - 1);
      heads[i] = pump.head(flows[i]);
    }
    return new Curve(flows, heads);
  }

  /**
   * What all risers take together over a level: where ever stronger pumps would meet them.
   *
   * @param way the water's way
   * @param level in the tank, m
   */
  public static Curve ofRisers(Waterway way, double level) {
    Manifold risers = way.manifold(level);
    List<double[]> points = new ArrayList<>();
    double least = risers.leastLift();
    if (least >= 0) {
      points.add(new double[] {0, least});
    }
    for (int i = 1; i <= POINTS; i++) {
      ManifoldFlow flow = risers.solve(way.printed().derated(MOST_SHARE * i / POINTS));
      if (flow.totalFlow() > 0 && flow.totalFlow() < way.printed().maxFlow()) {
        points.add(new double[] {flow.totalFlow(), flow.pumpHead()});
      }
    }
    double[] flows = new double[points.size()];
    double[] heads = new double[flows.length];
    for (int i = 0; i < flows.length; i++) {
      flows[i] = points.get(i)[0];
      heads[i] = points.get(i)[1];
    }
    return new Curve(flows, heads);
  }

  /**
   * How far the pump may lie from what is believed: 70 % to the print when nothing is told, the
   * watch's seconds after a bucket; null where no range is known.
   */
  public static Doubt doubt(Derate believed) {
    if (believed.kind() == Derate.Kind.NOT_NAMED) {
      return new Doubt(PumpCurve.USUAL_DERATE_WORN, 1);
    }
    if (believed.kind() != Derate.Kind.MEASURED) {
      return null;
    }
    OptionalDouble low = believed.measured().low();
    OptionalDouble high = believed.measured().high();
    return low.isPresent() && high.isPresent() && low.getAsDouble() > 0
        ? new Doubt(low.getAsDouble(), high.getAsDouble())
        : null;
  }
}
