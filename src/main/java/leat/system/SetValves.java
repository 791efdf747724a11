package leat.system;

import leat.hydraulics.HeldFlow;
import leat.hydraulics.Line;
import leat.hydraulics.Manifold;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.Riser;
import leat.plan.Taken;

/**
 * The valves of a plan as the grower sets them: with the tank at its refill mark, each until its
 * tower gets what is wanted; one that has too little stays open, and a tower without a valve takes
 * what comes. All are set together, since each valve closed feeds the others more.
 */
public final class SetValves {
  private static final SetValves NONE = new SetValves(null, null);

  private final double[] moreK;
  private final ManifoldFlow low;

  private SetValves(double[] moreK, ManifoldFlow low) {
    this.moreK = moreK;
    this.low = low;
  }

  /** The valves of a plan over its solved water's way. */
  public static SetValves of(Waterway way) {
    Manifold open = way.manifold(way.low());
    double[] wanted = new double[open.size()];
    boolean any = false;
    for (int t = 0; t < way.towers(); t++) {
      boolean set = way.tower(t).valved() && way.wanted(t).isPresent();
      any |= set;
      for (int k = 0; k < way.count(t); k++) {
        wanted[way.riserOf(t) + k] = set ? way.wanted(t).getAsDouble() : Double.POSITIVE_INFINITY;
      }
    }
    if (!any) {
      return NONE;
    }
    HeldFlow held = HeldFlow.of(way.curve(), open, wanted);
    return new SetValves(held.moreK(), held.flows());
  }

  /** The same, noted as taken where they hold a tower back. */
  public static SetValves of(Waterway way, Taken taken) {
    SetValves valves = of(way);
    if (valves.holdBack()) {
      taken.note("valves set at the refill mark to the flows wanted");
    }
    return valves;
  }

  /** Whether some tower has a valve and a wanted flow. */
  public boolean any() {
    return moreK != null;
  }

  /** Whether a riser is held back. */
  public boolean holdsBack(int riser) {
    return any() && moreK[riser] > 0;
  }

  /** Flows at the refill mark, where they are set. */
  public ManifoldFlow low(Waterway way) {
    return any() ? low : way.flows(way.low());
  }

  /** Flows at any level. */
  public ManifoldFlow flows(Waterway way, double level) {
    return on(way.manifold(level)).solve(way.curve());
  }

  /** Whether any riser is held back. */
  public boolean holdBack() {
    boolean held = false;
    for (int i = 0; any() && i < moreK.length; i++) {
      held |= moreK[i] > 0;
    }
    return held;
  }

  /** Risers with these valves, over any level. */
  public Manifold on(Manifold open) {
    Manifold set = open;
    for (int i = 0; any() && i < moreK.length; i++) {
      if (moreK[i] > 0) {
        Riser riser = open.riser(i);
        Line line = riser.line().withMoreK(riser.line().size() - 1, moreK[i]);
        set = set.with(i, new Riser(line, riser.lift()));
      }
    }
    return set;
  }
}
