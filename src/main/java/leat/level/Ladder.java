package leat.level;

import leat.numeric.Impossible;

/**
 * A chain of reeds by drawing: where the reeds are, how far off the float's magnet pulls them in
 * and drops them, the resistors between their taps, and the float's stops.
 *
 * <p>A reed pulls in when the magnet is within pull-in of it, drops out when it is further than
 * drop-out, and keeps its state between. Every reed taps one string of resistors between the hot
 * wire and the return at one end. With the return at the bottom the meter reads the lowest closed
 * reed, at the top the highest; a closed pair reads one of its two, never a mean.
 *
 * <p>Source: nodal analysis; sheets level-sender-steps.csv, level-sender-sequence.csv and
 * level-sender-gap.csv. A sender with one resistor a reed in parallel is not covered.
 */
public final class Ladder {
  /** The end of the string to which the second wire goes. */
  public enum ReturnAt {
    /** Low ohms are empty; the lowest closed reed is read. */
    BOTTOM,
    /** High ohms are empty; the highest closed reed is read. */
    TOP
  }

  private final double[] reed;
  private final double[] resistor;
  private final double[] node;
  private final ReturnAt returnAt;
  private final double pullIn;
  private final double dropOut;
  private final double bottomStop;
  private final double topStop;

  /**
   * @param reeds levels at which the magnet is opposite each reed, m, from the bottom, strictly
   *     rising, at least two
   * @param resistors resistor of each reed, from the bottom: between its tap and the next one (or
   *     the terminal) on the return side, ohm; above 0, at the terminal it may be 0, a wire link
   * @param returnAt which end the return wire goes to
   * @param pullIn half width within which a reed pulls in, m
   * @param dropOut half width beyond which it drops out, m, above pull-in
   * @param bottomStop level at which the float comes to rest below, m
   * @param topStop level at which it comes to rest above, m
   * @throws Impossible if these do not describe a sender, or a stop keeps the float from a reed
   */
  public Ladder(
      double[] reeds,
      double[] resistors,
      ReturnAt returnAt,
      double pullIn,
      double dropOut,
      double bottomStop,
      double topStop) {
    this.reed = reeds.clone();
    this.resistor = resistors.clone();
    this.returnAt = returnAt;
    this.pullIn = Accepted.size("pull_in", pullIn);
    this.dropOut = Accepted.size("drop_out", dropOut);
    this.bottomStop = Accepted.sizeOrZero("stops", bottomStop);
    this.topStop = Accepted.sizeOrZero("stops", topStop);
    check();
    this.node = nodes();
  }

  /**
   * Reeds at an even pitch.
   *
   * @param count number of reeds
   * @param first level of the lowest, m
   * @param pitch distance of neighbours, m
   * @return their levels, m
   * @throws Impossible if there are fewer than two, or over a thousand, or the pitch is not above 0
   */
  public static double[] evenReeds(int count, double first, double pitch) {
    if (count < 2 || count > 1000) {
      throw new Impossible("reeds", "a ladder has from 2 to 1000 reeds");
    }
    Accepted.sizeOrZero("first", first);
    Accepted.size("pitch", pitch);
    double[] levels = new double[count];
    for (int i = 0; i < count; i++) {
      levels[i] = first + i * pitch;
    }
    return levels;
  }

  /**
   * Resistors, from the bottom, of a string whose node resistances are straight from empty to full.
   *
   * @param count number of reeds
   * @param empty resistance at the lowest reed, ohm
   * @param full resistance at the highest reed, ohm; above empty with the return at the bottom,
   *     below it with the return at the top
   * @return the resistor of each reed, ohm
   * @throws Impossible if empty and full are the same or negative
   */
  public static double[] evenResistors(int count, double empty, double full) {
    if (count < 2 || count > 1000) {
      throw new Impossible("reeds", "a ladder has from 2 to 1000 reeds");
    }
    Accepted.ohm("empty", empty);
    Accepted.ohm("full", full);
    if (empty == full) {
      throw new Impossible("full", "full and empty cannot have the same resistance");
    }
    double[] resistors = new double[count];
    java.util.Arrays.fill(resistors, Math.abs(full - empty) / (count - 1));
    resistors[full > empty ? 0 : count - 1] = Math.min(full, empty);
    return resistors;
  }

  private void check() {
    int n = reed.length;
    if (n < 2) {
      throw new Impossible("reeds", "a ladder needs at least two reeds");
    }
    if (resistor.length != n) {
      throw new Impossible("resistors", "there must be one resistor a reed, 0 ohm for a link");
    }
    Accepted.sizeOrZero("first", reed[0]);
    for (int i = 1; i < n; i++) {
      if (!(reed[i] > reed[i - 1])) {
        throw new Impossible("reeds", "the reeds' levels must rise from reed to reed");
      }
      Accepted.size("reeds", reed[i]);
    }
    for (int i = 0; i < n; i++) {
      Accepted.ohm("resistors", resistor[i]);
      boolean terminal = i == (returnAt == ReturnAt.BOTTOM ? 0 : n - 1);
      if (!terminal && resistor[i] == 0) {
        throw new Impossible("resistors", "two steps would have the same resistance");
      }
    }
    if (!(dropOut > pullIn)) {
      throw new Impossible("drop_out", "a reed drops out further off than it pulls in");
    }
    if (!(topStop > bottomStop)) {
      throw new Impossible("stops", "the upper stop must lie above the lower");
    }
    if (reed[0] + pullIn < bottomStop || reed[n - 1] - pullIn > topStop) {
      throw new Impossible("stops", "a stop keeps the float from a reed");
    }
  }

  private double[] nodes() {
    int n = reed.length;
    double[] nodes = new double[n];
    double sum = 0;
    for (int k = 0; k < n; k++) {
      int i = returnAt == ReturnAt.BOTTOM ? k : n - 1 - k;
      sum += resistor[i];
      nodes[i] = sum;
    }
    return nodes;
  }

  /** Number of reeds. */
  public int size() {
    return reed.length;
  }

  /** Level of reed {@code i}, counted from the bottom, m. */
  public double reed(int i) {
    return reed[i];
  }

  /** Resistance read when only reed {@code i} is closed, ohm. */
  public double node(int i) {
    return node[i];
  }

  /**
   * Greatest distance of neighbouring reeds, m.
   *
   * @param reeds their levels, m, rising
   */
  public static double greatestPitch(double[] reeds) {
    double most = 0;
    for (int i = 1; i < reeds.length; i++) {
      most = Math.max(most, reeds[i] - reeds[i - 1]);
    }
    return most;
  }

  /** Lowest level of the float at which reed {@code i} is read, m; before the stops. */
  double floatLow(int i, Motion motion) {
    double closes = reed[i] - (motion == Motion.RISING ? pullIn : dropOut);
    if (returnAt == ReturnAt.TOP || i == 0) {
      return closes;
    }
    return Math.max(closes, reed[i - 1] + (motion == Motion.RISING ? dropOut : pullIn));
  }

  /** Highest level of the float at which reed {@code i} is read, m; before the stops. */
  double floatHigh(int i, Motion motion) {
    double opens = reed[i] + (motion == Motion.FALLING ? pullIn : dropOut);
    if (returnAt == ReturnAt.BOTTOM || i == reed.length - 1) {
      return opens;
    }
    return Math.min(opens, reed[i + 1] - (motion == Motion.FALLING ? dropOut : pullIn));
  }

  /**
   * Lowest level of the liquid at which step {@code i} is read, m: 0 when the float can rest there.
   *
   * @param i reed, from the bottom
   * @param motion which way the level moves
   */
  public double levelLow(int i, Motion motion) {
    // a reed closed on the way down to the stop still holds there when the level turns
    return floatLow(i, Motion.FALLING) <= bottomStop + Tank.ROUNDING ? 0 : floatLow(i, motion);
  }

  /**
   * Highest level of the liquid at which step {@code i} is read, m: the rim when the float can stop
   * there.
   *
   * @param i reed, from the bottom
   * @param motion which way the level moves
   * @param rim height of the tank's rim, m
   */
  public double levelHigh(int i, Motion motion, double rim) {
    double end = Math.min(topStop, rim);
    return floatHigh(i, Motion.RISING) >= end - Tank.ROUNDING ? rim : floatHigh(i, motion);
  }

  /**
   * Whether the float's way between its stops and the rim leads through step {@code i} both ways.
   *
   * @param i reed, from the bottom
   * @param rim height of the tank's rim, m
   */
  public boolean isRead(int i, double rim) {
    return floatLow(i, Motion.RISING) < Math.min(topStop, rim)
        && floatHigh(i, Motion.FALLING) > bottomStop;
  }
}
