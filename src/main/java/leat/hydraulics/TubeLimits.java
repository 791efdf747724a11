package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * What no tube of a tower carries: beyond these a unit is wrong, and a figure would mislead.
 *
 * <p>Source: common practice, no source; water hoses run at 0.5 to 3 m/s under 50 m of head at
 * most.
 */
public final class TubeLimits {
  /** Nothing in a tower runs as fast as this, m/s (practice). */
  public static final double MOST_SPEED = 30;

  /** No pump or tube of a tower has as much head as this, m (practice). */
  public static final double MOST_HEAD = 1000;

  private static final String TOO_FAST =
      "water would run over 30 m/s in the tube: is the flow in L/h or mL/min, or the bore in cm?";
  private static final String TOO_HIGH =
      "the tube would take over 1 km of head: is the flow in L/h, the bore in cm, the length in mm?";

  private TubeLimits() {}

  /**
   * Whether a line can carry a flow within both limits.
   *
   * @param line pipe
   * @param flow m3/s, 0 or more
   */
  public static boolean carries(Line line, double flow) {
    for (int i = 0; i < line.size(); i++) {
      if (!(line.velocity(i, flow) <= MOST_SPEED)) {
        return false;
      }
    }
    return line.loss(flow) <= MOST_HEAD;
  }

  /**
   * A flow that the line can be asked about.
   *
   * @param line pipe
   * @param flow m3/s, 0 or more
   * @return the flow, m3/s
   * @throws Impossible if any section would run over {@link #MOST_SPEED}
   */
  static double accept(Line line, double flow) {
    for (int i = 0; i < line.size(); i++) {
      Impossible.unlessWithin("flow", line.velocity(i, flow), 0, MOST_SPEED, TOO_FAST);
    }
    return flow;
  }

  /**
   * A loss that a tube can have.
   *
   * @param head lost, m, 0 or more
   * @return the head, m
   * @throws Impossible over {@link #MOST_HEAD}
   */
  static double acceptHead(double head) {
    return Impossible.unlessWithin("flow", head, 0, MOST_HEAD, TOO_HIGH);
  }
}
