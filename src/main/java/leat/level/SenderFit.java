package leat.level;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.numeric.Impossible;

/**
 * What a sender really does, from pairs of volume poured in and ohms read.
 *
 * <ol>
 *   <li>isotonic least squares of ohms on volume, equal weights: neighbours that break the order
 *       are pooled to their mean until none does;
 *   <li>a new step begins where the fitted value moves by more than {@code sameWithin};
 *   <li>a step's ohms are the mean of its raw readings; an edge lies between the last volume of one
 *       step and the first of the next;
 *   <li>a step whose raw readings spread over more than {@code sameWithin} is suspect: a splash.
 * </ol>
 *
 * Settle the waves, keep the pump off, fit rising and falling apart. Lead resistance stays in the
 * readings, so the plan's lead is then 0.
 *
 * <p>Source: pool adjacent violators, R. E. Barlow and others, Statistical Inference under Order
 * Restrictions, 1972 (from memory); scikit-learn agrees. Check values: sheet level-fit.csv.
 *
 * @param motion whether it was poured in or drained
 * @param falls whether the ohms fall as the tank fills
 * @param sameWithin readings nearer than this are one step, ohm
 * @param volume volumes, rising, m3
 * @param raw readings in that order, ohm
 * @param isotonic fitted values, ohm
 * @param isotonicRms root mean square of reading less isotonic fit, ohm
 * @param isotonicMax greatest such residual, ohm
 * @param orderViolations number of neighbours out of order
 * @param steps the steps, from the bottom
 * @param edges the edges between them, one fewer
 * @param stepRms root mean square of reading less its step's ohms, ohm
 * @param stepMax greatest such residual, ohm
 */
public record SenderFit(
    Motion motion,
    boolean falls,
    double sameWithin,
    double[] volume,
    double[] raw,
    double[] isotonic,
    double isotonicRms,
    double isotonicMax,
    int orderViolations,
    List<Step> steps,
    List<Edge> edges,
    double stepRms,
    double stepMax) {
  /**
   * A step found.
   *
   * @param ohm mean of its readings, ohm
   * @param readings how many
   * @param first index of its first reading, by volume
   * @param spread greatest less least of its raw readings, ohm
   * @param suspect whether it spreads over more than one step may: pour those litres again
   */
  public record Step(double ohm, int readings, int first, double spread, boolean suspect) {}

  /**
   * An edge found.
   *
   * @param low last volume with the lower step, m3
   * @param high first volume with the upper step, m3
   * @param middle the middle, m3, for the plan
   */
  public record Edge(double low, double high, double middle) {
    /** Half the pour: how far the edge may lie from its middle, m3. */
    public double uncertainty() {
      return (high - low) / 2;
    }
  }

  /**
   * The fit.
   *
   * @param volumes volume in the tank at each reading, m3, in the order read: not going back while
   *     rising, nor up while falling; rows in another order go through {@link Pours#order} first
   * @param ohms readings, ohm
   * @param motion RISING when poured in, FALLING when drained
   * @param falls whether the ohms fall as the tank fills
   * @param sameWithin readings nearer than this are one step, ohm; about half the smallest gap
   * @throws Impossible if there are fewer than two pairs, one is not a number, the volumes go back,
   *     or the motion is unknown
   */
  public static SenderFit of(
      double[] volumes, double[] ohms, Motion motion, boolean falls, double sameWithin) {
    Pours.checkPairs(volumes, ohms);
    Accepted.ohm("same_within", Impossible.unlessPositive("same_within", sameWithin));
    if (motion == Motion.UNKNOWN) {
      throw new Impossible("motion", "a fit needs one motion: poured in, or drained");
    }
    for (int i = 1; i < volumes.length; i++) {
      boolean back =
          motion == Motion.RISING ? volumes[i] < volumes[i - 1] : volumes[i] > volumes[i - 1];
      if (back) {
        throw new Impossible(
            "litres",
            motion == Motion.RISING
                ? "they go back while they are said to rise"
                : "they rise while they are said to fall");
      }
    }
    int[] order = Pours.order(volumes);
    double[] volume = Pours.inOrder(volumes, order);
    double[] raw = Pours.inOrder(ohms, order);
    double[] fit = Isotonic.fit(raw, falls);
    List<Step> steps = steps(raw, fit, sameWithin);
    double[] byStep = new double[raw.length];
    for (Step s : steps) {
      Arrays.fill(byStep, s.first(), s.first() + s.readings(), s.ohm());
    }
    return new SenderFit(
        motion,
        falls,
        sameWithin,
        volume,
        raw,
        fit,
        Math.sqrt(Isotonic.residual(raw, fit) / raw.length),
        Isotonic.greatest(raw, fit),
        Isotonic.violations(raw, falls),
        steps,
        edges(volume, steps),
        Math.sqrt(Isotonic.residual(raw, byStep) / raw.length),
        Isotonic.greatest(raw, byStep));
  }

  private static List<Step> steps(double[] raw, double[] fit, double sameWithin) {
    List<Step> steps = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= raw.length; i++) {
      if (i == raw.length || Math.abs(fit[i] - fit[i - 1]) > sameWithin) {
        double sum = 0;
        double least = raw[first];
        double most = raw[first];
        for (int k = first; k < i; k++) {
          sum += raw[k];
          least = Math.min(least, raw[k]);
          most = Math.max(most, raw[k]);
        }
        steps.add(
            new Step(sum / (i - first), i - first, first, most - least, most - least > sameWithin));
        first = i;
      }
    }
    return steps;
  }

  private static List<Edge> edges(double[] volume, List<Step> steps) {
    List<Edge> edges = new ArrayList<>();
    for (int s = 1; s < steps.size(); s++) {
      double low = volume[steps.get(s).first() - 1];
      double high = volume[steps.get(s).first()];
      edges.add(new Edge(low, high, (low + high) / 2));
    }
    return edges;
  }

  /**
   * Index, by volume, of the reading of a step that lies furthest from the step's median; of equal
   * ones the first.
   *
   * @param step the step, from the bottom
   */
  public int furthest(int step) {
    Step s = steps.get(step);
    double[] own = Arrays.copyOfRange(raw, s.first(), s.first() + s.readings());
    Arrays.sort(own);
    double median = (own[(own.length - 1) / 2] + own[own.length / 2]) / 2;
    int worst = s.first();
    for (int i = s.first(); i < s.first() + s.readings(); i++) {
      if (Math.abs(raw[i] - median) > Math.abs(raw[worst] - median)) {
        worst = i;
      }
    }
    return worst;
  }

  /** Greatest residual of the steps that are not suspect, ohm. */
  public double soundMax() {
    double most = 0;
    for (Step s : steps) {
      for (int i = s.first(); i < s.first() + s.readings() && !s.suspect(); i++) {
        most = Math.max(most, Math.abs(raw[i] - s.ohm()));
      }
    }
    return most;
  }

  /**
   * Tolerance of a reading for the plan, ohm: the greatest sound residual in tenths, and a meter's
   * usual 1.5 at least.
   */
  public double readingTolerance() {
    return Math.max(Limits.DEFAULT_READING, Math.ceil(soundMax() * 10) / 10);
  }

  /**
   * Steps between the ends seen by one reading only: the pours were coarser than the sender, some
   * of its steps may have been jumped over; say "at most this fine".
   */
  public int seenOnce() {
    int n = 0;
    for (int i = 1; i + 1 < steps.size(); i++) {
      n += steps.get(i).readings() == 1 ? 1 : 0;
    }
    return n;
  }

  /** Widest uncertainty of an edge, m3; 0 without an edge. */
  public double edgeUncertainty() {
    double most = 0;
    for (Edge e : edges) {
      most = Math.max(most, e.uncertainty());
    }
    return most;
  }

  /** Middles of the edges, m3: the plan's {@code edges}, in its rising order. */
  public double[] edgeVolumes() {
    double[] v = new double[edges.size()];
    for (int i = 0; i < v.length; i++) {
      v[i] = edges.get(i).middle();
    }
    return v;
  }

  /** Ohms from each edge on, ohm: the plan's {@code edges}. */
  public double[] edgeOhms() {
    double[] ohms = new double[edges.size()];
    for (int i = 0; i < ohms.length; i++) {
      ohms[i] = steps.get(i + 1).ohm();
    }
    return ohms;
  }

  /** Ohms under the first edge, ohm: the plan's {@code below}. */
  public double below() {
    return steps.get(0).ohm();
  }

  /**
   * Hysteresis from a rising and a falling fit of one sender: mean difference of the edges between
   * steps both found, as levels in a tank (m) or, without a tank, as volumes (m3). Refused when
   * they found different numbers of steps, or no edge.
   *
   * @param rising fit while pouring in
   * @param falling fit while draining
   * @param tank the tank; null for a volume
   * @throws Impossible as said, or when the falling edges lie above the rising ones
   */
  public static double hysteresis(SenderFit rising, SenderFit falling, Tank tank) {
    if (rising.edges.size() != falling.edges.size() || rising.edges.isEmpty()) {
      throw new Impossible("pairs", "the two fits did not find the same edges");
    }
    double sum = 0;
    for (int i = 0; i < rising.edges.size(); i++) {
      double up = rising.edges.get(i).middle();
      double down = falling.edges.get(i).middle();
      sum += tank == null ? up - down : tank.level(up) - tank.level(down);
    }
    double mean = sum / rising.edges.size();
    if (mean < 0) {
      throw new Impossible("pairs", "the edges while draining lie above those while pouring in");
    }
    return mean;
  }
}
