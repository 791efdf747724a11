package leat.hydraulics;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import leat.numeric.Roots;

/**
 * Finds a {@link Balance}: which towers take part, the greatest share, and each valve.
 *
 * <p>Source: sheet hydraulics-balance.md sections 1 and 2.
 */
final class BalanceSolver {
  /** Wants that pass the end of the curve by less, as share, end there: decimals do not add up. */
  private static final double SAME_SHARE = 1e-12;

  private final PumpCurve curve;
  private final Manifold manifold;
  private final double[] wants;
  private final boolean equal;
  private final boolean[] active;
  private final Manifold wanting;
  private final ManifoldFlow open;
  private double total;
  private int running;
  private boolean leftOut;

  BalanceSolver(PumpCurve curve, Manifold manifold, double[] wants, boolean equal) {
    this.curve = curve;
    this.manifold = manifold;
    this.wants = wants.clone();
    this.equal = equal;
    this.active = new boolean[wants.length];
    double shutoff = curve.shutoffHead();
    Manifold left = manifold;
    for (int i = 0; i < wants.length; i++) {
      if (manifold.isClosed(i) || wants[i] == 0) {
        left = left.closed(i);
        this.wants[i] = 0;
      } else if (Accepted.over(shutoff, manifold.riser(i).lift()) > 0) {
        active[i] = true;
        running++;
        total += wants[i];
      } else {
        leftOut = true;
      }
    }
    this.wanting = left;
    this.open = left.solve(curve);
    if (equal && running > 0) {
      equalise();
    }
  }

  /** Equal wants that use up the whole curve, so that the greatest share is 1. */
  private void equalise() {
    total = curve.maxFlow();
    for (int i = 0; i < wants.length; i++) {
      wants[i] = active[i] ? total / running : 0;
    }
  }

  Balance solve() {
    if (running == 0) {
      return dry();
    }
    double toTheEnd = curve.maxFlow() / total;
    double most = toTheEnd > 1 - SAME_SHARE ? 1 : toTheEnd;
    DoubleUnaryOperator spare = spare();
    double share = most;
    int limiting = -1;
    if (spare.applyAsDouble(most) < -Accepted.SAME_HEAD) {
      share = Roots.bracketed(spare, 0, most);
      limiting = tightest(share);
    }
    double flow = Math.min(share * total, curve.maxFlow());
    double head = headFor(flow);
    HeldFlow held = HeldFlow.of(curve, takingPart(), flows(share));
    SetValve[] valves = new SetValve[wants.length];
    for (int i = 0; i < valves.length; i++) {
      valves[i] = valve(i, share, held, i == limiting);
    }
    return new Balance(
        status(share, limiting),
        equal ? OptionalDouble.empty() : OptionalDouble.of(share),
        limiting,
        leftForOthers(limiting),
        flow,
        head,
        open,
        valves);
  }

  private Balance dry() {
    SetValve[] valves = new SetValve[wants.length];
    for (int i = 0; i < valves.length; i++) {
      valves[i] = SetValve.closed(equal ? 0 : wants[i], 0);
    }
    OptionalDouble none = OptionalDouble.empty();
    OptionalDouble share = equal ? none : OptionalDouble.of(0);
    return new Balance(
        Balance.Status.NO_FLOW, share, -1, none, 0, curve.shutoffHead(), open, valves);
  }

  private Balance.Status status(double share, int limiting) {
    if (leftOut) {
      return equal || share == 1 ? Balance.Status.LEFT_OUT : Balance.Status.LEFT_OUT_SHORT;
    }
    if (!equal && share == 1) {
      return Balance.Status.WANTED;
    }
    if (limiting < 0) {
      return Balance.Status.END_OF_CURVE;
    }
    return equal ? Balance.Status.EQUAL : Balance.Status.SHORT;
  }

  /** The risers that take part; those over the shut-off head are closed, too. */
  private Manifold takingPart() {
    Manifold part = wanting;
    for (int i = 0; i < wants.length; i++) {
      part = active[i] || wanting.isClosed(i) ? part : part.closed(i);
    }
    return part;
  }

  private double[] flows(double share) {
    double[] flows = new double[wants.length];
    for (int i = 0; i < flows.length; i++) {
      flows[i] = active[i] ? share * wants[i] : Double.POSITIVE_INFINITY;
    }
    return flows;
  }

  private SetValve valve(int i, double share, HeldFlow held, boolean limits) {
    double openFlow = open.flow(i);
    if (!active[i]) {
      return SetValve.closed(equal ? 0 : wants[i], openFlow);
    }
    double flow = share * wants[i];
    double wanted = equal ? flow : wants[i];
    double head = held.heads()[i];
    return limits || head <= Accepted.SAME_HEAD
        ? SetValve.open(wanted, openFlow, flow)
        : SetValve.part(wanted, openFlow, flow, head, held.moreK()[i]);
  }

  private double headFor(double flow) {
    return curve.head(flow) - manifold.commonLoss(flow);
  }

  /** Head that the least favoured tower has to spare at a share of the wants, m; it falls. */
  private DoubleUnaryOperator spare() {
    return new DoubleUnaryOperator() {
      @Override
      public double applyAsDouble(double share) {
        return spareOf(tightest(share), share);
      }
    };
  }

  private double spareOf(int i, double share) {
    double head = headFor(Math.min(share * total, curve.maxFlow()));
    return head - manifold.riser(i).head(share * wants[i]);
  }

  private int tightest(double share) {
    int tightest = -1;
    for (int i = 0; i < wants.length; i++) {
      if (active[i] && (tightest < 0 || spareOf(i, share) < spareOf(tightest, share))) {
        tightest = i;
      }
    }
    return tightest;
  }

  private OptionalDouble leftForOthers(int limiting) {
    if (equal || limiting < 0 || running < 2 || wants[limiting] > curve.maxFlow()) {
      return OptionalDouble.empty();
    }
    double own = wants[limiting];
    double needed = manifold.riser(limiting).head(own);
    DoubleUnaryOperator spare =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double flow) {
            return headFor(flow) - needed;
          }
        };
    if (spare.applyAsDouble(own) < 0) {
      return OptionalDouble.empty();
    }
    // at the end of the curve there is less head than at the share, where it had too little already
    double flow = Roots.bracketed(spare, own, curve.maxFlow());
    return OptionalDouble.of(flow - own);
  }
}
