package leat.check;

import leat.hydraulics.Line;
import leat.hydraulics.Manifold;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.PumpCurve;
import leat.hydraulics.Riser;
import leat.system.Waterway;

/**
 * The valves of a plan as the grower sets them: with the tank at its refill mark, each until its
 * tower gets what is wanted; one that has too little stays open, and a tower without a valve takes
 * what comes. All are set together, since each valve closed feeds the others more.
 */
public final class SetValves {
  private static final int ROUNDS = 100;
  private static final double SETTLED = 1e-10;

  private final double[] moreK;
  private final double[] wanted;
  private boolean any;

  private SetValves(int risers) {
    this.moreK = new double[risers];
    this.wanted = new double[risers];
  }

  static SetValves of(Waterway way) {
    Manifold open = way.manifold(way.low());
    SetValves set = new SetValves(open.size());
    for (int t = 0; t < way.towers(); t++) {
      if (way.tower(t).valved() && way.wanted(t).isPresent()) {
        for (int k = 0; k < way.count(t); k++) {
          set.wanted[way.riserOf(t) + k] = way.wanted(t).getAsDouble();
        }
        set.any = true;
      }
    }
    if (set.any && !set.explicit(open, way.curve())) {
      set.settle(open, way.curve());
    }
    return set;
  }

  /** Whether some tower has a valve and a wanted flow. */
  public boolean any() {
    return any;
  }

  /** Whether a riser is held back. */
  public boolean holdsBack(int riser) {
    return moreK[riser] > 0;
  }

  /**
   * When each tower has a valve and the pump gives all that is wanted, the head at the manifold is
   * known and so is each valve; false otherwise.
   */
  private boolean explicit(Manifold open, PumpCurve curve) {
    double total = 0;
    for (int i = 0; i < wanted.length; i++) {
      if (!(wanted[i] > 0)) {
        return false;
      }
      total += wanted[i];
    }
    if (!(total < curve.maxFlow())) {
      return false;
    }
    double head = curve.head(total) - open.commonLoss(total);
    for (int i = 0; i < wanted.length; i++) {
      if (head < open.riser(i).head(wanted[i])) {
        return false;
      }
    }
    for (int i = 0; i < wanted.length; i++) {
      moreK[i] = kAt(open.riser(i), head, wanted[i]);
    }
    return true;
  }

  /** Valve by valve, each under the head that the others leave, until none moves. */
  private void settle(Manifold open, PumpCurve curve) {
    for (int round = 0; round < ROUNDS; round++) {
      ManifoldFlow flows = on(open).solve(curve);
      double moved = 0;
      for (int i = 0; i < moreK.length; i++) {
        if (wanted[i] > 0) {
          double k = kAt(open.riser(i), flows.manifoldHead(), wanted[i]);
          moved = Math.max(moved, Math.abs(k - moreK[i]) / (1 + k));
          moreK[i] = k;
        }
      }
      if (moved < SETTLED) {
        return;
      }
    }
  }

  /** Loss factor that leaves the wanted flow under a head at the manifold; 0 when it has less. */
  private static double kAt(Riser riser, double head, double flow) {
    Line line = riser.line();
    double held = head - riser.head(flow);
    return Math.max(0, held) / line.velocityHead(line.size() - 1, flow);
  }

  /** Risers with these valves, over any level. */
  public Manifold on(Manifold open) {
    Manifold set = open;
    for (int i = 0; any && i < moreK.length; i++) {
      if (moreK[i] > 0) {
        Riser riser = open.riser(i);
        Line line = riser.line().withMoreK(riser.line().size() - 1, moreK[i]);
        set = set.with(i, new Riser(line, riser.lift()));
      }
    }
    return set;
  }
}
