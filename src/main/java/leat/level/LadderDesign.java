package leat.level;

import leat.numeric.Impossible;

/**
 * The string of preferred resistors whose node resistances come nearest to those wanted.
 *
 * <p>{@code best} has the least possible greatest error over all strings of the series, and among
 * those the least sum of squares: an exact optimum by dynamic programming over (step, node
 * resistance in thousandths of an ohm). {@code feedForward} takes the resistor nearest to what is
 * missing, step by step; {@code separate} rounds each difference alone, so that errors pile up;
 * both are for comparison. The best string is seldom unique.
 *
 * <p>A first target of 0 means a wire link; every other resistor is above 0.
 *
 * <p>Source: R. Bellman's principle of optimality; IEC 60063 values. Check values: sheet
 * level-ladder-design.csv, whose greatest errors an integer programme confirms.
 *
 * @param series the series
 * @param returnAt where the string's return is: at the bottom when the wanted ohms rise with level
 * @param target wanted node resistances by reed, from the bottom, ohm
 * @param resistor best resistors by reed, from the bottom, each towards the return, ohm
 * @param node their node resistances by reed, from the bottom, ohm
 * @param maxError greatest error of {@code node}, ohm
 * @param sumOfSquares sum of the squares of its errors, ohm2
 * @param feedForward resistors by rounding with memory, by reed from the bottom, ohm
 * @param feedForwardMaxError their greatest error, ohm
 * @param separateMaxError greatest error when each difference is rounded alone, ohm
 */
public record LadderDesign(
    ESeries series,
    Ladder.ReturnAt returnAt,
    double[] target,
    double[] resistor,
    double[] node,
    double maxError,
    double sumOfSquares,
    double[] feedForward,
    double feedForwardMaxError,
    double separateMaxError) {
  /** Greatest node resistance of a ladder, ohm; no float sender comes near it. */
  public static final double GREATEST = 10_000;

  /** Most steps of a ladder: a metre of stem with a reed every 5 mm. Common practice. */
  public static final int MOST_STEPS = 200;

  /** Least mean step of a ladder, ohm: the least resistor there is; a closed reed has as much. */
  public static final double LEAST_STEP = ESeries.LEAST;

  /** How far beyond its end reeds a float is stopped when nobody says, m. Common practice. */
  public static final double STOP_BEYOND = 0.006;

  /**
   * Resistances straight from the lowest reed to the highest.
   *
   * @param empty at the lowest reed, ohm
   * @param full at the highest reed, ohm
   * @param steps number of reeds
   * @return wanted node resistances by reed, from the bottom, ohm
   * @throws Impossible if they are negative, or less apart than {@link #LEAST_STEP} a step, or
   *     there are not from 2 to {@link #MOST_STEPS} steps
   */
  public static double[] equalOhms(double empty, double full, int steps) {
    checkSteps(steps);
    checkEnds(empty, full, steps);
    double[] target = new double[steps];
    for (int i = 0; i < steps; i++) {
      target[i] = i == steps - 1 ? full : empty + (full - empty) * i / (steps - 1);
    }
    return target;
  }

  /**
   * Levels of reeds at even pitch.
   *
   * @param first level of the lowest reed, m
   * @param last level of the highest, m
   * @param steps number of reeds
   * @return their levels, m
   * @throws Impossible if last is not above first, or there are not from 2 to {@link #MOST_STEPS}
   */
  public static double[] evenLevels(double first, double last, int steps) {
    checkSteps(steps);
    return Ladder.evenReeds(steps, first, (last - first) / (steps - 1));
  }

  /**
   * Level of the highest reed of a sender whose lowest and highest step lie so far apart.
   *
   * @param first level of the lowest, m
   * @param length distance of the highest from it, m
   */
  public static double lastOf(double first, double length) {
    return first + length;
  }

  /**
   * Level of the float's lower stop when nobody says: a little under the lowest reed.
   *
   * @param reeds levels of the reeds, m, rising
   */
  public static double lowerStop(double[] reeds) {
    return Math.max(0, reeds[0] - STOP_BEYOND);
  }

  /**
   * Level of the float's upper stop when nobody says: a little over the highest reed.
   *
   * @param reeds levels of the reeds, m, rising
   */
  public static double upperStop(double[] reeds) {
    return reeds[reeds.length - 1] + STOP_BEYOND;
  }

  /**
   * Distance of neighbouring reeds up to which one closes before the other opens.
   *
   * @param pullIn half width at which a reed closes, m
   * @param dropOut half width at which it opens, m
   * @return the sum of both, m
   */
  public static double bridges(double pullIn, double dropOut) {
    return pullIn + dropOut;
  }

  /**
   * Whether the least node may be taken for a shorted cable.
   *
   * @param limits what counts as short, and the meter's tolerance
   */
  public boolean looksShort(Limits limits) {
    return Math.min(node[0], node[node.length - 1]) < limits.shortBelow() + limits.reading();
  }

  private static void checkSteps(int steps) {
    Impossible.unlessWithin("steps", steps, 2, MOST_STEPS, "a ladder has from 2 to 200 steps");
  }

  private static void checkEnds(double empty, double full, int steps) {
    Impossible.ifNegative("empty", empty);
    Impossible.ifNegative("full", full);
    if (empty != full && Math.abs(full - empty) < LEAST_STEP * (steps - 1)) {
      throw new Impossible(
          "steps", "a step is at least 0.1 ohm, the least resistor: fewer steps or a wider range");
    }
    if (empty == full) {
      throw new Impossible("full", "full and empty cannot have the same resistance");
    }
  }

  /**
   * Resistances straight in the litres at the reeds: a needle then reads litres.
   *
   * @param empty at the lowest reed, ohm
   * @param full at the highest reed, ohm
   * @param tank the tank
   * @param reeds levels of the reeds, m, rising
   * @return wanted node resistances by reed, from the bottom, ohm
   * @throws Impossible if a reed lies outside the tank
   */
  public static double[] ohmsByVolume(double empty, double full, Tank tank, double[] reeds) {
    checkSteps(reeds.length);
    checkEnds(empty, full, reeds.length);
    double first = tank.volume(reeds[0]);
    double all = tank.volume(reeds[reeds.length - 1]) - first;
    if (!(all > 0)) {
      throw new Impossible("reeds", "the reeds' levels must rise from reed to reed");
    }
    double[] target = new double[reeds.length];
    for (int i = 0; i < reeds.length; i++) {
      target[i] = empty + (full - empty) * ((tank.volume(reeds[i]) - first) / all);
    }
    return target;
  }

  /**
   * Levels of the reeds that put the same volume between neighbours.
   *
   * @param tank the tank
   * @param first level of the lowest reed, m
   * @param last level of the highest, m
   * @param steps number of reeds
   * @return their levels, m
   * @throws Impossible if a level lies outside the tank, or last is not above first
   */
  public static double[] equalVolumeReeds(Tank tank, double first, double last, int steps) {
    checkSteps(steps);
    double low = tank.volume(first);
    double all = tank.volume(last) - low;
    if (!(last > first)) {
      throw new Impossible("last", "the highest reed must lie above the lowest");
    }
    double[] reeds = new double[steps];
    for (int i = 0; i < steps; i++) {
      reeds[i] = tank.level(low + all * i / (steps - 1));
    }
    reeds[0] = first;
    reeds[steps - 1] = last;
    return reeds;
  }

  /**
   * The best string for wanted node resistances.
   *
   * @param series the series
   * @param target wanted node resistances by reed, from the bottom, ohm, rising or falling all the
   *     way; the least may be 0, a wire link
   * @throws Impossible if they do not, or one is negative or over 10 kohm
   */
  public static LadderDesign of(ESeries series, double[] target) {
    checkSteps(target.length);
    boolean rises = target[1] > target[0];
    double[] rising = rises ? target.clone() : reversed(target);
    for (int i = 0; i < rising.length; i++) {
      Impossible.unlessWithin("ohm", rising[i], 0, GREATEST, "a node lies from 0 to 10 kohm");
      if (i > 0 && !(rising[i] > rising[i - 1])) {
        throw new Impossible("ohm", "the wanted ohms must only rise or only fall");
      }
    }
    long[] values = series.milliohms();
    LadderSearch search = new LadderSearch(values, rising);
    long[] best = search.best();
    double[] node = new double[best.length];
    double[] part = new double[best.length];
    double worst = 0;
    double squares = 0;
    for (int i = 0; i < best.length; i++) {
      node[i] = best[i] / 1000.0;
      part[i] = (best[i] - (i == 0 ? 0 : best[i - 1])) / 1000.0;
      double error = node[i] - rising[i];
      worst = Math.max(worst, Math.abs(error));
      squares += error * error;
    }
    double[] fed = new double[best.length];
    for (int i = 0; i < best.length; i++) {
      fed[i] = (search.feed[i] - (i == 0 ? 0 : search.feed[i - 1])) / 1000.0;
    }
    return new LadderDesign(
        series,
        rises ? Ladder.ReturnAt.BOTTOM : Ladder.ReturnAt.TOP,
        target.clone(),
        rises ? part : reversed(part),
        rises ? node : reversed(node),
        worst,
        squares,
        rises ? fed : reversed(fed),
        search.feedError / 1000,
        search.separate() / 1000);
  }

  private static double[] reversed(double[] x) {
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      y[i] = x[x.length - 1 - i];
    }
    return y;
  }

  /** Error of the node of reed {@code i}, from the bottom, ohm. */
  public double error(int i) {
    return node[i] - target[i];
  }

  /**
   * Whether the windows of reed {@code i} and the next one stay apart: the gap of their nodes is
   * over the sum of their half windows.
   *
   * @param i reed, from the bottom, not the last
   * @param limits the windows
   */
  public boolean apart(int i, Limits limits) {
    return Math.abs(node[i + 1] - node[i])
        > limits.halfWindow(node[i]) + limits.halfWindow(node[i + 1]);
  }

  /**
   * Number of neighbouring pairs whose windows overlap.
   *
   * @param limits the windows
   */
  public int overlaps(Limits limits) {
    int n = 0;
    for (int i = 0; i + 1 < node.length; i++) {
      n += apart(i, limits) ? 0 : 1;
    }
    return n;
  }
}
