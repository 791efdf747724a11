package leat.stability;

import leat.numeric.Impossible;

/**
 * Equal guy lines from a ring to anchors on a circle.
 *
 * <pre>
 * tan a = ring/run;   R = M/ring;   T = k R/cos a;   peg pulled level k R, up k R tan a
 * between two lines at spacing B, pull at t from the first: R sin(B - t)/sin B, R sin t/sin B
 * k = 1.1547 for 3 lines (pull 30 degrees off a line), 1 for 4 and more
 * </pre>
 *
 * <p>The simple rule leaves out the lever of the line about the foot's edge and is 12 to 33 % high.
 * Lines tied to the tank, or to anything it carries, pull inside the body: they hold the tower to
 * the tank and change nothing against tipping or sliding of the whole. Elastic cord is no guy; a
 * railing is no anchor until someone entitled says so.
 *
 * <p>Source: balance of forces; the 15 % of three lines as in public notes on guyed masts; sheet
 * stability-build.md section 4. Check values: stability-guy-direction.csv, stability-guy-line.csv,
 * stability-overturn.csv.
 *
 * @param lines 3 or more, evenly round
 * @param ring height of the ring over the anchors' plane, m
 * @param run of the anchors from the axis, level, m
 * @param toGround false when they are tied to the tank
 */
public record GuyLines(int lines, double ring, double run, boolean toGround) {
  /** Fewest that hold every direction. */
  public static final int FEWEST = 3;

  /** Share of breaking load that line, knot and anchor may see, - (practice). */
  public static final double BREAKING_SHARE = 0.2;

  private static final int MOST = 60;
  private static final double SHORTEST = 1e-9;
  private static final double LONGEST = 1000;

  /** Refuses what cannot hold. */
  public GuyLines {
    if (lines < FEWEST) {
      throw new Impossible("lines", "fewer than 3 lines leave a direction open");
    }
    Impossible.unlessWithin("lines", lines, FEWEST, MOST, "60 lines are enough for any tower");
    Impossible.unlessWithin(
        "ring", ring, SHORTEST, LONGEST, "the ring is over the anchors, a kilometre at most");
    Impossible.unlessWithin(
        "run", run, SHORTEST, LONGEST, "lines run outwards, from above 0 to a kilometre");
  }

  /** The same lines, anchors lower by {@code by} m. */
  GuyLines raised(double by) {
    return new GuyLines(lines, ring + by, run, toGround);
  }

  /** Angle of a line from the level, rad. */
  public double angle() {
    return Math.atan2(ring, run);
  }

  /** Length of a line without knots, m. */
  public double length() {
    return Math.hypot(ring, run);
  }

  /** Angle between neighbours, rad. */
  public double spacing() {
    return 2 * Math.PI / lines;
  }

  /** Level pull of the worst line over the ring's, -, pull from the worst side. */
  public double sharing() {
    double spacing = spacing();
    return spacing > Math.PI / 2 + 1e-9 ? 1 / Math.sin(spacing) : 1;
  }

  /** What the lines see of a moment in N m that the weight leaves to them, by the simple rule. */
  public LineLoad under(double moment) {
    return pulled(Impossible.ifNegative("moment", moment) / ring);
  }

  /** What the lines see of a level pull on the ring in N. */
  LineLoad pulled(double pull) {
    double level = sharing() * pull;
    double steep = ring / run;
    return new LineLoad(
        pull * ring,
        pull,
        level * length() / run,
        level,
        level * steep,
        pull * steep / Math.cos(Math.PI / lines));
  }

  /**
   * What one active line presses on the foot at a level pull on the ring in N, N: the least of all
   * directions, for two active lines press more.
   */
  public double pressed(double pull) {
    return pull * ring / run;
  }

  /**
   * Least height of the ring at this run at which the worst line sees {@code tension} N under
   * {@code moment} N m; null when the run is too short for any height.
   */
  public Double leastRing(double moment, double tension) {
    return leastSide(run, moment, tension);
  }

  /**
   * Least run at this ring at which the worst line sees {@code tension} N under {@code moment} N m;
   * null when the ring is too low for any run.
   */
  public Double leastRun(double moment, double tension) {
    return leastSide(ring, moment, tension);
  }

  /** T = k M sqrt(h^2 + r^2)/(h r) solved for one of h and r: the rule is alike in both. */
  private Double leastSide(double other, double moment, double tension) {
    Impossible.ifNegative("moment", moment);
    Impossible.unlessPositive("tension", tension);
    double over = tension * other / (sharing() * moment);
    return over > 1 ? Double.valueOf(other / Math.sqrt((over - 1) * (over + 1))) : null;
  }
}
