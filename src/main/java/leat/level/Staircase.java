package leat.level;

import leat.numeric.Impossible;

/**
 * The steps of a sender: the resistance of each, from the bottom, and the band of levels and
 * volumes in which it is read, for a rising, a falling and an unknown motion.
 *
 * <pre>steps l_i with hysteresis h:   unknown [l_i - h, l_(i+1)]
 *                               rising  [l_i, l_(i+1)]     falling [l_i - h, l_(i+1) - h]</pre>
 *
 * The lowest band begins at the floor, the top band ends at the rim: beyond its ends the sender is
 * blind. A step's level is an edge, where its reading begins while the level rises; a reed's level
 * ({@link Ladder}) is a centre.
 *
 * <p>Source: sheets level-plan-decode.csv (steps) and level-sender-steps.csv (ladders).
 */
public final class Staircase {
  private static final int MOTIONS = 3;

  private final Tank tank;
  private final double capacity;
  private final double[] ohm;
  private final double[][] levelLow;
  private final double[][] levelHigh;
  private final double[][] volumeLow;
  private final double[][] volumeHigh;

  private Staircase(Tank tank, double capacity, double[] ohm, boolean levels) {
    this.tank = tank;
    this.capacity = capacity;
    this.ohm = ohm.clone();
    checkOhms();
    this.levelLow = levels ? new double[MOTIONS][ohm.length] : null;
    this.levelHigh = levels ? new double[MOTIONS][ohm.length] : null;
    this.volumeLow = new double[MOTIONS][ohm.length];
    this.volumeHigh = new double[MOTIONS][ohm.length];
  }

  private void checkOhms() {
    if (ohm.length < 2) {
      throw new Impossible("steps", "a sender needs at least two steps");
    }
    boolean rises = ohm[1] > ohm[0];
    for (int i = 0; i < ohm.length; i++) {
      Accepted.ohm("steps", ohm[i]);
      if (i > 0 && ohm[i] == ohm[i - 1]) {
        throw new Impossible("steps", "two neighbouring steps have the same resistance");
      }
      if (i > 0 && ohm[i] > ohm[i - 1] != rises) {
        throw new Impossible(
            "steps", "the ohms must only rise, or only fall, from the lowest step to the highest");
      }
    }
  }

  /**
   * A sender whose steps are known by level.
   *
   * @param tank the tank
   * @param levels level at which each reading begins while the level rises, m, from the lowest
   * @param ohms resistance of each step, ohm, rising or falling all the way
   * @param hysteresis how much longer each reading lasts while the level falls, m
   * @throws Impossible if levels do not rise, lie outside the tank, ohms turn or repeat, or the
   *     hysteresis is negative or reaches below the floor
   */
  public static Staircase bySteps(Tank tank, double[] levels, double[] ohms, double hysteresis) {
    if (levels.length != ohms.length) {
      throw new Impossible("steps", "each step needs a level and a resistance");
    }
    Impossible.ifNegative("steps", levels.length == 0 ? 0 : levels[0]);
    double[] edges = new double[Math.max(0, levels.length - 1)];
    for (int i = 0; i < edges.length; i++) {
      edges[i] = levels[i + 1];
      if (!(levels[i + 1] > levels[i])) {
        throw new Impossible("steps", "the steps' levels must rise from step to step");
      }
    }
    return byLevelEdges(tank, edges, ohms, hysteresis, null, "steps");
  }

  /**
   * A sender whose edges are known by volume, as a fit finds them, in a known tank.
   *
   * @param tank the tank
   * @param edges net volume at which each reading begins while the level rises, m3, rising
   * @param ohms resistance from there on, ohm
   * @param below resistance under the first edge, ohm
   * @param hysteresis how much longer each reading lasts while the level falls, m
   * @throws Impossible as {@link #bySteps}
   */
  public static Staircase byEdges(
      Tank tank, double[] edges, double[] ohms, double below, double hysteresis) {
    double[] levels = new double[edges.length];
    for (int i = 0; i < edges.length; i++) {
      if (edges[i] > tank.capacity() * (1 + Tank.ROUNDING)) {
        throw new Impossible("edges", "an edge lies above the rim of the tank");
      }
      levels[i] = tank.level(edges[i]);
    }
    return byLevelEdges(tank, levels, withBelow(edges, ohms, below), hysteresis, edges, "edges");
  }

  /**
   * A sender whose edges are known by volume, in a tank of unknown shape: volumes only, no levels.
   *
   * @param capacity what the tank holds to its rim, m3
   * @param edges net volume at which each reading begins while the level rises, m3, rising
   * @param ohms resistance from there on, ohm
   * @param below resistance under the first edge, ohm
   * @param hysteresis how much longer each reading lasts while the level falls, as a volume, m3
   * @throws Impossible as {@link #bySteps}
   */
  public static Staircase byEdgesAlone(
      double capacity, double[] edges, double[] ohms, double below, double hysteresis) {
    Accepted.volume("capacity", capacity);
    Staircase s = new Staircase(null, capacity, withBelow(edges, ohms, below), false);
    checkEdges(edges, hysteresis, capacity, "edges");
    fill(s.volumeLow, s.volumeHigh, edges, hysteresis, capacity);
    return s;
  }

  private static double[] withBelow(double[] edges, double[] ohms, double below) {
    if (edges.length != ohms.length) {
      throw new Impossible("edges", "each edge needs a volume and a resistance");
    }
    double[] all = new double[ohms.length + 1];
    all[0] = below;
    System.arraycopy(ohms, 0, all, 1, ohms.length);
    return all;
  }

  private static void checkEdges(double[] edges, double hysteresis, double top, String word) {
    Impossible.ifNegative("hysteresis", hysteresis);
    for (int i = 0; i < edges.length; i++) {
      Impossible.ifNegative(word, edges[i]);
      if (i > 0 && !(edges[i] > edges[i - 1])) {
        throw new Impossible(word, "they must rise from step to step");
      }
      if (!(edges[i] < top)) {
        throw new Impossible(word, "a step lies above the rim of the tank");
      }
    }
    if (edges.length > 0 && edges[0] - hysteresis < 0) {
      throw new Impossible("hysteresis", "it reaches below the floor");
    }
  }

  private static Staircase byLevelEdges(
      Tank tank,
      double[] edges,
      double[] ohms,
      double hysteresis,
      double[] edgeVolumes,
      String word) {
    Staircase s = new Staircase(tank, tank.capacity(), ohms, true);
    checkEdges(edges, hysteresis, tank.height(), word);
    fill(s.levelLow, s.levelHigh, edges, hysteresis, tank.height());
    s.fillVolumes();
    if (edgeVolumes != null) {
      s.keepGivenVolumes(edgeVolumes);
    }
    return s;
  }

  /** Bands from rising edges and a hysteresis, in m or m3. */
  private static void fill(
      double[][] low, double[][] high, double[] edges, double hysteresis, double top) {
    for (int m = 0; m < MOTIONS; m++) {
      double lowLess = m == Motion.RISING.ordinal() ? 0 : hysteresis;
      double highLess = m == Motion.FALLING.ordinal() ? hysteresis : 0;
      for (int i = 0; i <= edges.length; i++) {
        low[m][i] = i == 0 ? 0 : edges[i - 1] - lowLess;
        high[m][i] = i == edges.length ? top : edges[i] - highLess;
      }
    }
  }

  /** A rising edge given as a volume stays that volume, not the volume of its level. */
  private void keepGivenVolumes(double[] edges) {
    for (int i = 0; i < edges.length; i++) {
      volumeLow[Motion.RISING.ordinal()][i + 1] = edges[i];
      volumeHigh[Motion.RISING.ordinal()][i] = edges[i];
      volumeHigh[Motion.UNKNOWN.ordinal()][i] = edges[i];
    }
  }

  /**
   * A sender given by drawing.
   *
   * @param tank the tank
   * @param ladder its reeds
   * @throws Impossible if a reed lies above the rim, or stops or rim keep a step from being read
   */
  public static Staircase byLadder(Tank tank, Ladder ladder) {
    int n = ladder.size();
    double[] ohms = new double[n];
    for (int i = 0; i < n; i++) {
      ohms[i] = ladder.node(i);
    }
    Staircase s = new Staircase(tank, tank.capacity(), ohms, true);
    for (int i = 0; i < n; i++) {
      if (ladder.reed(i) > tank.height()) {
        throw new Impossible("reeds", "a reed lies above the rim of the tank");
      }
      if (!ladder.isRead(i, tank.height())) {
        throw new Impossible("stops", "the stops or the rim keep a step from ever being read");
      }
      for (Motion motion : new Motion[] {Motion.UNKNOWN, Motion.RISING, Motion.FALLING}) {
        s.levelLow[motion.ordinal()][i] = ladder.levelLow(i, motion);
        s.levelHigh[motion.ordinal()][i] = ladder.levelHigh(i, motion, tank.height());
      }
    }
    s.fillVolumes();
    return s;
  }

  private void fillVolumes() {
    for (int m = 0; m < MOTIONS; m++) {
      for (int i = 0; i < ohm.length; i++) {
        volumeLow[m][i] = volumeAtLeast(tank, levelLow[m][i]);
        volumeHigh[m][i] = volumeAtMost(tank, levelHigh[m][i]);
      }
    }
  }

  /** Least volume at a level; below a table's first point only 0 is sure. */
  private static double volumeAtLeast(Tank tank, double level) {
    return level < tank.lowestLevel() || level == 0 ? 0 : tank.volume(level);
  }

  /** Greatest volume at a level; below a table's first point that point's volume. */
  private static double volumeAtMost(Tank tank, double level) {
    return level < tank.lowestLevel() ? tank.lowestVolume() : tank.volume(level);
  }

  /**
   * The same steps whose edges may each lie further off, up or down: bands wider by that much at
   * both ends, the floor and the rim apart.
   *
   * @param volume how far an edge may lie from what is written, such as half a pour, m3
   * @throws Impossible if it is negative
   */
  public Staircase withEdgeError(double volume) {
    Impossible.ifNegative("edge_error", volume);
    if (volume == 0) {
      return this;
    }
    Staircase s = new Staircase(tank, capacity, ohm, hasLevels());
    int last = ohm.length - 1;
    for (int m = 0; m < MOTIONS; m++) {
      for (int i = 0; i <= last; i++) {
        boolean floor = i == 0;
        boolean rim = i == last;
        s.volumeLow[m][i] = floor ? volumeLow[m][i] : Math.max(0, volumeLow[m][i] - volume);
        s.volumeHigh[m][i] = rim ? volumeHigh[m][i] : Math.min(capacity, volumeHigh[m][i] + volume);
        if (hasLevels()) {
          s.levelLow[m][i] = floor ? levelLow[m][i] : levelOf(s.volumeLow[m][i]);
          s.levelHigh[m][i] = rim ? levelHigh[m][i] : levelOf(s.volumeHigh[m][i]);
        }
      }
    }
    return s;
  }

  /** Level of a volume; below a table's first point 0, as only that is sure. */
  private double levelOf(double volume) {
    return volume < tank.lowestVolume() ? 0 : tank.level(volume);
  }

  /** Number of steps. */
  public int size() {
    return ohm.length;
  }

  /** Resistance of step {@code i}, from the bottom, ohm. */
  public double ohm(int i) {
    return ohm[i];
  }

  /** Whether the ohms fall as the tank fills. */
  public boolean falls() {
    return ohm[1] < ohm[0];
  }

  /** Whether levels are known, or volumes only. */
  public boolean hasLevels() {
    return levelLow != null;
  }

  /** What the tank holds to the rim, m3. */
  public double capacity() {
    return capacity;
  }

  /**
   * Lowest level at which step {@code i} is read, m.
   *
   * @param i step, from the bottom
   * @param motion which way the level moves
   * @throws Impossible if the tank's shape is unknown
   */
  public double levelLow(int i, Motion motion) {
    return levels(levelLow)[motion.ordinal()][i];
  }

  /**
   * Highest level at which step {@code i} is read, m.
   *
   * @param i step, from the bottom
   * @param motion which way the level moves
   * @throws Impossible if the tank's shape is unknown
   */
  public double levelHigh(int i, Motion motion) {
    return levels(levelHigh)[motion.ordinal()][i];
  }

  private static double[][] levels(double[][] known) {
    if (known == null) {
      throw new Impossible("tank", "levels need the shape of the tank");
    }
    return known;
  }

  /**
   * Least volume at which step {@code i} is read, m3.
   *
   * @param i step, from the bottom
   * @param motion which way the level moves
   */
  public double volumeLow(int i, Motion motion) {
    return volumeLow[motion.ordinal()][i];
  }

  /**
   * Greatest volume at which step {@code i} is read, m3.
   *
   * @param i step, from the bottom
   * @param motion which way the level moves
   */
  public double volumeHigh(int i, Motion motion) {
    return volumeHigh[motion.ordinal()][i];
  }

  /**
   * Widest band of the steps between the lowest and the top one, motion unknown, m3; of all steps
   * when there are only two.
   */
  public double widestMiddleBand() {
    int m = Motion.UNKNOWN.ordinal();
    int skip = ohm.length > 2 ? 1 : 0;
    double widest = 0;
    for (int i = skip; i < ohm.length - skip; i++) {
      widest = Math.max(widest, volumeHigh[m][i] - volumeLow[m][i]);
    }
    return widest;
  }

  /**
   * Highest of the steps between the lowest and the top one, motion unknown, m; of all steps when
   * there are only two. A fall by so much changes the reading wherever it begins.
   *
   * @throws Impossible if the tank's shape is unknown
   */
  public double highestMiddleStep() {
    double[] low = levels(levelLow)[Motion.UNKNOWN.ordinal()];
    double[] high = levelHigh[Motion.UNKNOWN.ordinal()];
    int skip = ohm.length > 2 ? 1 : 0;
    double highest = 0;
    for (int i = skip; i < ohm.length - skip; i++) {
      highest = Math.max(highest, high[i] - low[i]);
    }
    return highest;
  }
}
