package leat.hydraulics;

/**
 * Whatever hangs on a pump: one riser or a manifold of several.
 *
 * <p>Source: sheet hydraulics.md sections 4 and 6.
 */
public interface WaterSystem {
  /**
   * Total head the pump must give for a flow, m over the tank's level; it never falls with flow.
   *
   * @param flow of all risers together, m3/s, 0 or more
   */
  double head(double flow);

  /** Head at which the first drop leaves: the lowest outlet over the tank's level, m. */
  double leastLift();
}
