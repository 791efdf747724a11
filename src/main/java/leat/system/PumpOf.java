package leat.system;

import java.util.List;
import leat.hydraulics.PumpCurve;
import leat.plan.Section;
import leat.quantity.PumpPoint;

/** The printed curve of a plan's {@code pump} section. */
public final class PumpOf {
  private PumpOf() {}

  /** Whether a curve is given, by points or by its two ends. */
  public static boolean isKnown(Section pump) {
    return pump.has("curve") || pump.has("shutoff_head") || pump.has("max_flow");
  }

  /** The curve as printed, at the pump's speed, not derated. */
  public static PumpCurve printed(Section pump) {
    PumpCurve curve = pump.has("curve") ? points(pump.list("curve")) : ends(pump);
    return pump.has("speed") ? curve.atSpeed(pump.need("speed")) : curve;
  }

  private static PumpCurve points(List<?> points) {
    double[] flows = new double[points.size()];
    double[] heads = new double[points.size()];
    for (int i = 0; i < flows.length; i++) {
      PumpPoint point = (PumpPoint) points.get(i);
      flows[i] = point.flow().value();
      heads[i] = point.head().value();
    }
    return PumpCurve.points(flows, heads);
  }

  /** Refused with the key that is missing unless a curve is given. */
  static void needed(Section pump) {
    if (!isKnown(pump)) {
      throw pump.missing("curve");
    }
  }

  private static PumpCurve ends(Section pump) {
    needed(pump);
    return PumpCurve.parabola(pump.need("shutoff_head"), pump.need("max_flow"));
  }
}
