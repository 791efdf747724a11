package leat.hydraulics;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;
import leat.numeric.Roots;

/**
 * Several risers, equal or not, off one pump through a common pipe.
 *
 * <pre>
 * Q_i = 0                       if H_m &lt;= z_i  (dry: water stands at H_m in it)
 * loss_i(Q_i) = H_m - z_i       else
 * H'(sum Q) - loss_common(sum Q) = H_m
 * </pre>
 *
 * <p>H_m, the head at the manifold over the tank's level, is bracketed between the lowest outlet
 * and the shut-off head; each riser is solved inside from its own last answer. With one riser it is
 * the operating point of common pipe and riser in series. K of a riser takes in its share of the
 * tee and the exit.
 *
 * <p>Source: sheet hydraulics.md section 6; check values: hydraulics-manifold.csv.
 */
public final class Manifold implements WaterSystem {
  /** Widens a bracket so that a flat curve's last digit cannot close it, m. */
  private static final double ROUNDING = 1e-9;

  private final Line common;
  private final Riser[] risers;
  private final boolean[] closed;
  private final boolean allClosed;
  private final double leastLift;

  /**
   * @param common pipe from the pump to the manifold, or null for none
   * @param risers at least one
   * @throws Impossible without a riser
   */
  public Manifold(Line common, Riser... risers) {
    this(common, risers.clone(), new boolean[risers.length]);
  }

  private Manifold(Line common, Riser[] risers, boolean[] closed) {
    if (risers.length == 0) {
      throw new Impossible("towers", "a pump needs at least one tower");
    }
    this.common = common;
    this.risers = risers;
    this.closed = closed;
    double least = Double.POSITIVE_INFINITY;
    double leastOfAll = Double.POSITIVE_INFINITY;
    for (int i = 0; i < risers.length; i++) {
      leastOfAll = Math.min(leastOfAll, risers[i].lift());
      if (!closed[i]) {
        least = Math.min(least, risers[i].lift());
      }
    }
    this.allClosed = least == Double.POSITIVE_INFINITY;
    this.leastLift = allClosed ? leastOfAll : least;
  }

  /** Number of risers. */
  public int size() {
    return risers.length;
  }

  /** Riser {@code i}. */
  public Riser riser(int i) {
    return risers[i];
  }

  @Override
  public double leastLift() {
    return leastLift;
  }

  /** The same with riser {@code i} replaced. */
  public Manifold with(int i, Riser other) {
    Riser[] changed = risers.clone();
    changed[i] = other;
    return new Manifold(common, changed, closed);
  }

  /** The same with the valve of riser {@code i} closed: it takes nothing, and holds none back. */
  public Manifold closed(int i) {
    boolean[] more = closed.clone();
    more[i] = true;
    return new Manifold(common, risers, more);
  }

  /** Whether the valve of riser {@code i} is closed. */
  public boolean isClosed(int i) {
    return closed[i];
  }

  /** Head lost in the common pipe, m; {@code flow} m3/s. */
  public double commonLoss(double flow) {
    return common == null ? 0 : common.loss(flow);
  }

  /**
   * Which riser gets what.
   *
   * @param curve the pump, derated
   * @return the flows
   * @throws Impossible if a riser has neither length nor K, or water would run over {@link
   *     TubeLimits#MOST_SPEED}
   */
  public ManifoldFlow solve(PumpCurve curve) {
    double shutoff = curve.shutoffHead();
    double[] flows = new double[risers.length];
    if (Accepted.over(shutoff, leastLift) <= 0 || allClosed) {
      return new ManifoldFlow(
          this, OperatingPoint.Status.NO_FLOW, 0, shutoff, 0, shutoff, shutoff, flows);
    }
    double end = curve.maxFlow();
    if (InSeries.fits(this)) {
      return InSeries.solve(this, common, curve);
    }
    double endHead = curve.head(end);
    double atEnd = endHead - commonLoss(end);
    if (fill(atEnd, flows, end) >= end) {
      return runOut(end, endHead, shutoff, flows);
    }
    DoubleUnaryOperator balance = balance(curve, end, endHead, flows);
    double low = Math.max(leastLift, atEnd) - ROUNDING;
    double manifoldHead = Roots.bracketed(balance, low, shutoff + ROUNDING);
    double total = Math.min(fill(manifoldHead, flows, end), end);
    acceptSpeeds(total, flows);
    return new ManifoldFlow(
        this,
        OperatingPoint.Status.FLOW,
        total,
        curve.head(total),
        commonLoss(total),
        manifoldHead,
        shutoff,
        flows);
  }

  /** At the end of the curve, past which nothing is known. */
  ManifoldFlow runOut(double end, double endHead, double shutoff, double[] flows) {
    double manifoldHead = headAtManifold(end);
    fill(manifoldHead, flows, end);
    acceptSpeeds(end, flows);
    return new ManifoldFlow(
        this,
        OperatingPoint.Status.RUN_OUT,
        end,
        endHead,
        commonLoss(end),
        manifoldHead,
        shutoff,
        flows);
  }

  void acceptSpeeds(double total, double[] flows) {
    if (common != null) {
      TubeLimits.accept(common, total);
    }
    for (int i = 0; i < flows.length; i++) {
      TubeLimits.accept(risers[i].line(), flows[i]);
    }
  }

  /** Falls with the head at the manifold; past its end the curve goes on by its last slope. */
  private DoubleUnaryOperator balance(PumpCurve curve, double end, double endHead, double[] flows) {
    return new DoubleUnaryOperator() {
      @Override
      public double applyAsDouble(double manifoldHead) {
        double total = fill(manifoldHead, flows, end);
        double pump = total <= end ? curve.head(total) : endHead + curve.slope(end) * (total - end);
        return pump - commonLoss(total) - manifoldHead;
      }
    };
  }

  /** Flows, each at most {@code cap}, at a head at the manifold; returns their sum. */
  private double fill(double manifoldHead, double[] flows, double cap) {
    double total = 0;
    for (int i = 0; i < risers.length; i++) {
      Riser r = risers[i];
      if (closed[i]) {
        flows[i] = 0;
      } else if (i > 0 && !closed[i - 1] && areSame(i, i - 1)) {
        flows[i] = flows[i - 1];
      } else {
        flows[i] = r.line().flowAt(manifoldHead - r.lift(), flows[i], cap);
      }
      total += flows[i];
    }
    return total;
  }

  /** Whether two risers take equal flows. */
  boolean areSame(int i, int k) {
    return risers[i].line() == risers[k].line() && risers[i].lift() == risers[k].lift();
  }

  /** Head at the manifold at which the risers together take {@code flow} m3/s, m. */
  public double headAtManifold(double flow) {
    if (flow <= 0) {
      return leastLift;
    }
    double high = Double.POSITIVE_INFINITY;
    for (int i = 0; i < risers.length; i++) {
      high = closed[i] ? high : Math.min(high, risers[i].head(flow));
    }
    if (allClosed) {
      throw new Impossible("flow", "every valve is closed: no flow can pass");
    }
    double[] flows = new double[risers.length];
    DoubleUnaryOperator missing =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double manifoldHead) {
            return fill(manifoldHead, flows, 2 * flow) - flow;
          }
        };
    return Roots.bracketed(missing, leastLift, high + ROUNDING * (1 + Math.abs(high)));
  }

  /** Flow of all risers together at a head at the manifold, m3/s; {@code manifoldHead} m. */
  public double totalAt(double manifoldHead) {
    return fill(manifoldHead, new double[risers.length], 50);
  }

  @Override
  public double head(double flow) {
    return headAtManifold(flow) + commonLoss(flow);
  }

  /**
   * Share of the printed head at which riser {@code i} gets {@code flow}, all others taking what
   * they then take; with a flow of 0 the share at which it falls dry.
   *
   * @param printed curve, not derated
   * @param i which riser
   * @param flow m3/s, 0 or more
   * @return the share, -, over 1 when the printed pump cannot; empty when no share can because the
   *     others would take more than the greatest flow, or it is closed
   */
  public OptionalDouble derateFor(PumpCurve printed, int i, double flow) {
    double manifoldHead = risers[i].head(flow);
    double total = totalAt(manifoldHead);
    if (closed[i] || !(total < printed.maxFlow())) {
      return OptionalDouble.empty();
    }
    double head = printed.head(total);
    if (!(head > Accepted.NO_HEAD)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Math.max(0, manifoldHead + commonLoss(total)) / head);
  }
}
