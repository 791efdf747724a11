package leat.level;

import leat.numeric.Impossible;

/**
 * The fixed resistor that separates the steps of a sender best at the ADC: the smallest gap between
 * the counts of neighbouring steps is as great as can be.
 *
 * <pre>gap = 2^N (Vs/Vref) Rf (b - a)/((Rf + a)(Rf + b))      a &lt; b neighbours, with lead</pre>
 *
 * One pair alone is best at Rf = sqrt(a b). The best of many is such a peak, a crossing of two
 * pairs' gaps, or a limit; all are tried. The peak is very flat. Limits: the ADC does not reach its
 * last transition at the greatest node voltage, and the current at the least resistance is not over
 * what is wanted.
 *
 * <p>Source: calculus on the divider's formula. Check values: sheet level-divider-design.csv.
 *
 * @param divider the divider with the best resistor
 * @param gap smallest gap of neighbouring steps' counts, not rounded, counts
 * @param gapLow the lower resistance of the pair with that gap, ohm
 * @param gapHigh the higher one, ohm
 * @param steps every step in order of its resistance, with its spread
 * @param worst which of the steps can be misread by most, an index; -1 when one has no bound
 * @param apart for each step but the last, whether what it can be taken for stays apart from what
 *     the next one can
 * @param leastFixed least resistor that the limits allow, ohm
 * @param greatestFixed greatest one, ohm; null when nothing limits it
 */
public record DividerDesign(
    Divider divider,
    double gap,
    double gapLow,
    double gapHigh,
    Divider.Step[] steps,
    int worst,
    boolean[] apart,
    double leastFixed,
    Double greatestFixed) {
  /**
   * Greatest current in the sender when no other limit is named, A: reeds and their thin resistors
   * are not made for more. Common practice, without a published source.
   */
  public static final double GREATEST_CURRENT = 0.1;

  /** Least fixed resistor considered, ohm. */
  private static final double LEAST_FIXED = 1e-3;

  /** What a controller's pin feeds without harm, A; common practice, no source. */
  private static final double PIN_CURRENT = 0.0101;

  /** Steps that lie further apart by less than this share are not worth a soldering iron. */
  private static final double WORTH = 0.05;

  /** Whether it parts the closest steps by so much more than another that a change pays. */
  public boolean isWorthMoreThan(DividerDesign other) {
    return gap > (1 + WORTH) * other.gap || allApart() && !other.allApart();
  }

  /** Whether a controller's pin should not feed it. */
  public boolean overloadsPin() {
    return greatestCurrent() > PIN_CURRENT;
  }

  /** Whether the ADC cannot read one of the steps. */
  public boolean isBlind() {
    boolean blind = false;
    for (int i = 0; i < steps.length; i++) {
      blind |= steps[i].blind();
    }
    return blind;
  }

  /** Whether the steps all stay apart. */
  public boolean allApart() {
    for (boolean a : apart) {
      if (!a) {
        return false;
      }
    }
    return true;
  }

  /** Greatest current through the sender over all steps, A. */
  public double greatestCurrent() {
    double most = 0;
    for (Divider.Step s : steps) {
      most = Math.max(most, s.current());
    }
    return most;
  }

  /** Greatest heat in the sender over all steps, W. */
  public double greatestPower() {
    double most = 0;
    for (Divider.Step s : steps) {
      most = Math.max(most, s.power());
    }
    return most;
  }

  /**
   * How a given divider sees a sender.
   *
   * @param divider the divider
   * @param ohms resistances of the steps, ohm, in any order
   * @param lead the sender's lead, ohm
   * @param ladderTolerance tolerance of the ladder's resistors, a share
   * @param blindBelow codes under this are not to be trusted, counts; 0 for none
   * @throws Impossible if there are fewer than two steps, or two alike
   */
  public static DividerDesign of(
      Divider divider, double[] ohms, double lead, double ladderTolerance, int blindBelow) {
    return report(divider, sorted(ohms), lead, ladderTolerance, blindBelow, 0, null);
  }

  /**
   * The best fixed resistor.
   *
   * @param divider the divider; its own resistor does not matter
   * @param ohms resistances of the steps, ohm, in any order
   * @param lead the sender's lead, ohm
   * @param ladderTolerance tolerance of the ladder's resistors, a share
   * @param mostCurrent greatest current wanted in the sender, A; null for {@link #GREATEST_CURRENT}
   * @param series the series to choose from; null for any value
   * @param blindBelow codes under this are not to be trusted, counts; 0 for none
   * @throws Impossible if there are fewer than two steps, two alike, or no resistor keeps the
   *     limits
   */
  public static DividerDesign best(
      Divider divider,
      double[] ohms,
      double lead,
      double ladderTolerance,
      Double mostCurrent,
      ESeries series,
      int blindBelow) {
    double[] steps = sorted(ohms);
    Accepted.ohm("lead", lead);
    double[] total = new double[steps.length];
    for (int i = 0; i < steps.length; i++) {
      total[i] = steps[i] + lead;
    }
    double least = leastFixed(divider, total, mostCurrent);
    double most = greatestFixed(divider, total);
    if (least > most) {
      throw new Impossible("resistor", "no fixed resistor keeps both the range and the current");
    }
    double fixed =
        series == null ? bestOfAny(total, least, most) : bestOf(series, total, least, most);
    Double limit = most == Double.MAX_VALUE ? null : Double.valueOf(most);
    return report(divider.withFixed(fixed), steps, lead, ladderTolerance, blindBelow, least, limit);
  }

  private static double[] sorted(double[] ohms) {
    if (ohms.length < 2) {
      throw new Impossible("steps", "a sender needs at least two steps");
    }
    double[] steps = ohms.clone();
    java.util.Arrays.sort(steps);
    for (int i = 0; i < steps.length; i++) {
      Accepted.ohm("steps", steps[i]);
      if (i > 0 && steps[i] == steps[i - 1]) {
        throw new Impossible("steps", "two steps have the same resistance");
      }
    }
    return steps;
  }

  /** Share of the supply at which the ADC reaches its last transition, less its error. */
  private static double lastShare(Divider d) {
    double share = (d.codes() - 1.5 - d.adcError()) * d.reference() / (d.codes() * d.supply());
    if (!(share > 0)) {
      throw new Impossible("adc_error", "the ADC's error is as great as its range");
    }
    return share;
  }

  private static double leastFixed(Divider d, double[] total, Double mostCurrent) {
    double least = 0;
    double share = lastShare(d);
    if (d.side() == Divider.Side.LOW && share < 1) {
      least = total[total.length - 1] * (1 / share - 1);
    }
    double most = mostCurrent == null ? GREATEST_CURRENT : mostCurrent;
    Impossible.unlessWithin("max_current", most, 1e-6, 1000, "it must lie from 1 uA to 1 kA");
    least = Math.max(least, d.supply() / most - total[0]);
    return Math.max(least, Math.nextUp(LEAST_FIXED));
  }

  private static double greatestFixed(Divider d, double[] total) {
    double share = lastShare(d);
    if (d.side() == Divider.Side.LOW || share >= 1 || d.ratiometric()) {
      return Double.MAX_VALUE;
    }
    return total[0] * share / (1 - share);
  }

  /** Gap of a pair over the ADC's scale. */
  private static double gap(double a, double b, double fixed) {
    return fixed * (b - a) / ((fixed + a) * (fixed + b));
  }

  private static double smallestGap(double[] total, double fixed) {
    double least = Double.MAX_VALUE;
    for (int i = 0; i + 1 < total.length; i++) {
      least = Math.min(least, gap(total[i], total[i + 1], fixed));
    }
    return least;
  }

  private static double bestOf(ESeries series, double[] total, double least, double most) {
    double best = 0;
    double bestGap = -1;
    for (long milliohm : series.milliohms()) {
      double r = milliohm / 1000.0;
      if (r >= least && r <= most) {
        double g = smallestGap(total, r);
        if (g > bestGap) {
          bestGap = g;
          best = r;
        }
      }
    }
    if (bestGap < 0) {
      throw new Impossible("resistor", "no value of the series keeps the range and the current");
    }
    return best;
  }

  private static double bestOfAny(double[] total, double least, double most) {
    double best = least;
    double bestGap = smallestGap(total, best);
    int pairs = total.length - 1;
    double[] tried = new double[3];
    for (int i = 0; i < pairs; i++) {
      for (int j = i; j < pairs; j++) {
        int n = candidates(total, i, j, tried);
        tried[n++] = most == Double.MAX_VALUE ? best : most;
        for (int k = 0; k < n; k++) {
          double r = tried[k];
          if (r > 0 && r >= least && r <= most && smallestGap(total, r) > bestGap) {
            bestGap = smallestGap(total, r);
            best = r;
          }
        }
      }
    }
    return best;
  }

  /** Peak of a pair (i = j), or the crossings of two pairs' gaps. */
  private static int candidates(double[] total, int i, int j, double[] out) {
    double a = total[i];
    double b = total[i + 1];
    if (i == j) {
      out[0] = Math.sqrt(a * b);
      return 1;
    }
    double c = total[j];
    double d = total[j + 1];
    // (b - a)(x + c)(x + d) = (d - c)(x + a)(x + b)
    double p = (b - a) - (d - c);
    double q = (b - a) * (c + d) - (d - c) * (a + b);
    double r = (b - a) * c * d - (d - c) * a * b;
    double root = q * q - 4 * p * r;
    if (p == 0 || root < 0) {
      return 0; // of two pairs equally far apart the lower has the wider gap everywhere
    }
    double t = -(q + Math.copySign(Math.sqrt(root), q)) / 2;
    out[0] = t / p;
    out[1] = t == 0 ? 0 : r / t;
    return 2;
  }

  private static DividerDesign report(
      Divider divider,
      double[] ohms,
      double lead,
      double ladderTolerance,
      int blindBelow,
      double least,
      Double most) {
    int n = ohms.length;
    Divider.Step[] steps = new Divider.Step[n];
    int worst = 0;
    for (int i = 0; i < n; i++) {
      steps[i] = divider.step(ohms[i], lead, ladderTolerance, blindBelow);
      if (steps[i].misread() == null) {
        worst = -1;
      } else if (worst >= 0 && steps[i].misread() > steps[worst].misread()) {
        worst = i;
      }
    }
    boolean[] apart = new boolean[n - 1];
    int tightest = 0;
    for (int i = 0; i + 1 < n; i++) {
      apart[i] = steps[i].ohmHigh() != null && steps[i].ohmHigh() < steps[i + 1].ohmLow();
      if (gap(ohms[i] + lead, ohms[i + 1] + lead, divider.fixed())
          < gap(ohms[tightest] + lead, ohms[tightest + 1] + lead, divider.fixed())) {
        tightest = i;
      }
    }
    double scale = divider.codes() * divider.supply() / divider.reference();
    return new DividerDesign(
        divider,
        scale * gap(ohms[tightest] + lead, ohms[tightest + 1] + lead, divider.fixed()),
        ohms[tightest],
        ohms[tightest + 1],
        steps,
        worst,
        apart,
        least,
        most);
  }
}
