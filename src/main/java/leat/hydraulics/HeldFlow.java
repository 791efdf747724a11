package leat.hydraulics;

import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;
import leat.numeric.Roots;

/**
 * Risers whose valves are closed until each takes at most what is wanted; one that has less stays
 * open, one without a wanted flow takes what comes. One root in the head at the manifold, because
 * the sum of flows rises with it; explicit when every riser gets what is wanted. Every valve that
 * is set is set here: {@link Throttle} tells of each by itself, {@link Balance} sets shares of what
 * is wanted.
 *
 * <pre>
 * Q_i = min(w_i, loss_i^-1(H_m - z_i)),   H'(sum Q) - loss_common(sum Q) = H_m
 * K_i = (H_m - z_i - loss_i(w_i)) 2g/V_i^2  where it is held back, else 0
 * </pre>
 *
 * <p>Source: sheets hydraulics.md section 6 and hydraulics-balance.md; check: the manifold solved
 * with these valves, a second way, gives the same flows.
 *
 * @param flows of the manifold with these valves
 * @param heads held back by each valve, m
 * @param moreK of each valve on the bore of the riser's last section, -
 */
public record HeldFlow(ManifoldFlow flows, double[] heads, double[] moreK) {
  private static final double ROUNDING = 1e-9;

  /** A section of pipe takes no greater K, -. */
  private static final double MOST_K = 1e9;

  /**
   * Valves set over one level.
   *
   * @param curve the pump, derated
   * @param open the risers with open valves
   * @param wanted m3/s, one a riser, above 0; infinite for a riser that takes what comes or is
   *     closed
   * @return flows and valves
   * @throws Impossible unless there is one for each riser, all above 0, or if one is too small for
   *     a valve
   */
  public static HeldFlow of(PumpCurve curve, Manifold open, double... wanted) {
    if (wanted.length != open.size()) {
      throw new Impossible("flow", "name one wanted flow for each tower");
    }
    for (double w : wanted) {
      Impossible.unlessWithin(
          "flow", w, 1e-15, Double.POSITIVE_INFINITY, "a wanted flow is above 0");
    }
    double head = explicit(curve, open, wanted);
    if (Double.isNaN(head)) {
      ManifoldFlow free = open.solve(curve);
      if (!over(free, wanted)) {
        return new HeldFlow(free, new double[wanted.length], new double[wanted.length]);
      }
      return held(curve, open, wanted, headByRoot(curve, open, wanted, free.manifoldHead()));
    }
    return held(curve, open, wanted, head);
  }

  /** Head at the manifold when all get what they want, m; NaN when they do not. */
  private static double explicit(PumpCurve curve, Manifold open, double[] wanted) {
    double total = 0;
    for (int i = 0; i < wanted.length; i++) {
      total += open.isClosed(i) ? 0 : wanted[i];
    }
    if (!(total < curve.maxFlow())) {
      return Double.NaN;
    }
    double head = curve.head(total) - open.commonLoss(total);
    for (int i = 0; i < wanted.length; i++) {
      if (!open.isClosed(i) && open.riser(i).head(wanted[i]) > head) {
        return Double.NaN;
      }
    }
    return head;
  }

  private static boolean over(ManifoldFlow free, double[] wanted) {
    for (int i = 0; i < wanted.length; i++) {
      if (free.flow(i) > wanted[i]) {
        return true;
      }
    }
    return false;
  }

  private static double headByRoot(
      PumpCurve curve, Manifold open, double[] wanted, double freeHead) {
    double end = curve.maxFlow();
    double[] flows = new double[wanted.length];
    DoubleUnaryOperator missing =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double head) {
            double total = Math.min(fill(open, head, wanted, end, flows), end);
            return curve.head(total) - open.commonLoss(total) - head;
          }
        };
    return Roots.bracketed(missing, freeHead - ROUNDING, curve.shutoffHead() + ROUNDING);
  }

  private static double fill(
      Manifold open, double head, double[] wanted, double end, double[] flows) {
    double total = 0;
    for (int i = 0; i < wanted.length; i++) {
      Riser riser = open.riser(i);
      flows[i] =
          open.isClosed(i)
              ? 0
              : riser.line().flowAt(head - riser.lift(), flows[i], Math.min(wanted[i], end));
      total += flows[i];
    }
    return total;
  }

  private static HeldFlow held(PumpCurve curve, Manifold open, double[] wanted, double head) {
    double[] flows = new double[wanted.length];
    double[] heads = new double[wanted.length];
    double[] moreK = new double[wanted.length];
    double total = Math.min(fill(open, head, wanted, curve.maxFlow(), flows), curve.maxFlow());
    Manifold set = open;
    for (int i = 0; i < wanted.length; i++) {
      boolean takesLess = open.isClosed(i) || flows[i] < wanted[i];
      heads[i] = takesLess ? 0 : Math.max(0, head - open.riser(i).head(wanted[i]));
      if (heads[i] > 0) {
        moreK[i] = k(open.riser(i).line(), wanted[i], heads[i]);
        set = SetValve.onRiser(set, i, moreK[i]);
      }
    }
    ManifoldFlow found =
        new ManifoldFlow(
            set,
            OperatingPoint.Status.FLOW,
            total,
            curve.head(total),
            open.commonLoss(total),
            head,
            curve.shutoffHead(),
            flows);
    return new HeldFlow(found, heads, moreK);
  }

  private static double k(Line line, double flow, double head) {
    return Impossible.unlessWithin(
        "flow",
        head / line.velocityHead(line.size() - 1, flow),
        0,
        MOST_K,
        "it is too small: no valve on this tube can be set to it");
  }

  /** Whether riser {@code i} gets all that is wanted, m3/s. */
  boolean gives(int i, double wanted) {
    return flows.flow(i) >= wanted;
  }
}
