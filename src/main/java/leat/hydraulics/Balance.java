package leat.hydraulics;

import java.util.OptionalDouble;
import leat.numeric.Impossible;

/**
 * Valves in the risers, set so that each tower gets what it should: explicit, one answer only.
 *
 * <pre>
 * H_m = H'(W) - h_common(W),   valve head v_i = H_m - z_i - a_i(w_i),   K_i = v_i 2g/V_i^2
 * share = greatest l &lt;= 1 with l W &lt;= Qmax and H'(l W) - h_common(l W) &gt;= z_i + a_i(l w_i) for all i
 * </pre>
 *
 * <p>When the wants cannot be had, all towers get the same share of their want, as great as
 * possible (our choice); equal flows are the same with all wants alike. A tower that is dry at open
 * valves is no special case: throttling the low one lifts H_m. An open valve's own loss belongs to
 * the riser; K comes on top, on the bore of the riser's last section.
 *
 * <p>Source: sheet hydraulics-balance.md; check values: hydraulics-balance.csv.
 *
 * @param status what can be had
 * @param share of the wants that all get, -; empty for equal flows
 * @param limiting index of the tower whose open valve decides, -1 when none does
 * @param leftForOthers what the others may take together if the limiting tower shall have all it
 *     wants, m3/s; empty when it cannot have that even alone, or none is limited
 * @param totalFlow of all towers, m3/s
 * @param manifoldHead head at the manifold over the tank's level, m
 * @param open flows with the valves of all wanted towers open
 * @param valves one a riser, in order
 */
public record Balance(
    Status status,
    OptionalDouble share,
    int limiting,
    OptionalDouble leftForOthers,
    double totalFlow,
    double manifoldHead,
    ManifoldFlow open,
    SetValve[] valves) {

  /** Open flows over set flows closer than this are alike: then the order as listed, -. */
  private static final double ALIKE = 1e-9;

  /** Rounds that are enough: a third only where a jug moved by more than a second. */
  private static final int ENOUGH = 2;

  /** A jug that every kitchen has, m3 (practice). */
  public static final double USUAL_JUG = 0.001;

  /** What can be had. */
  public enum Status {
    /** Each tower gets its want. */
    WANTED("wanted"),
    /** The pump cannot give all wants: each tower gets the same share. */
    SHORT("short"),
    /** Equal flows, as great as possible. */
    EQUAL("equal"),
    /** The printed curve ends first: no promise beyond. */
    END_OF_CURVE("end-of-curve"),
    /** A tower lies over the shut-off head; no valve helps it, the rest is as wanted or equal. */
    LEFT_OUT("left-out"),
    /** The same, and the rest gets a share only. */
    LEFT_OUT_SHORT("left-out-short"),
    /** Every wanted tower lies over the shut-off head. */
    NO_FLOW("no-flow");

    private final String word;

    Status(String word) {
      this.word = word;
    }

    /** The word to print. */
    public String word() {
      return word;
    }
  }

  /**
   * Valves for wanted flows.
   *
   * @param curve the pump, derated
   * @param manifold the risers over the level at which the valves are set: the refill mark, so that
   *     no tower gets less later
   * @param wanted m3/s, one a riser, 0 for a tower that is closed
   * @return the valves
   * @throws Impossible unless there is one for each riser, none negative, one above 0, or if a
   *     wanted flow is too small for a valve
   */
  public static Balance wanted(PumpCurve curve, Manifold manifold, double... wanted) {
    if (wanted.length != manifold.size()) {
      throw new Impossible("flow", "name one wanted flow for each tower");
    }
    double sum = 0;
    for (double w : wanted) {
      sum += Impossible.ifNegative("flow", w);
    }
    if (!(sum > 0)) {
      throw new Impossible("flow", "at least one tower must want a flow above 0");
    }
    return new BalanceSolver(curve, manifold, wanted, false).solve();
  }

  /**
   * Valves for equal flows, as great as possible.
   *
   * @param curve the pump, derated
   * @param manifold the risers over the level at which the valves are set; a closed one stays so
   * @return the valves
   * @throws Impossible if a flow is too small for a valve, or all are closed
   */
  public static Balance equal(PumpCurve curve, Manifold manifold) {
    boolean open = false;
    double[] alike = new double[manifold.size()];
    for (int i = 0; i < alike.length; i++) {
      open |= !manifold.isClosed(i);
      // what it comes to is the solver's: here only who is to have some
      alike[i] = manifold.isClosed(i) ? 0 : curve.maxFlow();
    }
    if (!open) {
      throw new Impossible("flow", "every valve is closed: no flow can pass");
    }
    return new BalanceSolver(curve, manifold, alike, true).solve();
  }

  /** Whether every tower gets all that was asked for. */
  public boolean met() {
    return status == Status.WANTED || status == Status.EQUAL;
  }

  /** Risers with these valves, over any level: {@code at} is the same towers at that level. */
  public Manifold valved(Manifold at) {
    Manifold set = at;
    for (int i = 0; i < valves.length; i++) {
      set = valves[i].on(set, i);
    }
    return set;
  }

  /**
   * What the towers get later with the valves so set.
   *
   * @param at the same risers over another level
   * @param curve the pump, with this or another derate
   * @return the flows
   */
  public ManifoldFlow flows(Manifold at, PumpCurve curve) {
    return valved(at).solve(curve);
  }

  /**
   * The order of setting by hand with a jug: first the tower that runs over most with all open,
   * last the one with least; closed towers are not in it.
   *
   * @return indices of risers
   */
  public int[] order() {
    int[] order = new int[active()];
    int n = 0;
    for (int i = 0; i < valves.length; i++) {
      if (valves[i].flow() > 0) {
        int at = n++;
        while (at > 0 && overMore(i, order[at - 1])) {
          order[at] = order[at - 1];
          at--;
        }
        order[at] = i;
      }
    }
    return order;
  }

  private boolean overMore(int one, int other) {
    return valves[one].opensTo() > valves[other].opensTo() * (1 + ALIKE);
  }

  /**
   * Times to go round with the jug: once when a single valve is to be set, as nothing drifts then;
   * else two, which are enough; 0 when nothing is to be set.
   */
  public int rounds() {
    int part = 0;
    for (SetValve v : valves) {
      part += v.state() == SetValve.State.PART ? 1 : 0;
    }
    return part > 1 ? ENOUGH : part;
  }

  /** Number of towers that get water. */
  public int active() {
    int n = 0;
    for (SetValve v : valves) {
      n += v.flow() > 0 ? 1 : 0;
    }
    return n;
  }

  /**
   * Seconds in which a jug fills.
   *
   * @param jug m3, above 0
   * @param flow m3/s, 0 or more
   * @return s; empty when nothing comes
   * @throws Impossible unless the jug is above 0
   */
  public static OptionalDouble secondsFor(double jug, double flow) {
    Impossible.unlessPositive("jug", jug);
    return flow > 0 ? OptionalDouble.of(Throttle.secondsFor(jug, flow)) : OptionalDouble.empty();
  }
}
