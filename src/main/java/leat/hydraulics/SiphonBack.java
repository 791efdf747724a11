package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Whether water siphons back through the riser when the pump stops.
 *
 * <p>A riser whose outlet ends under water in a cup empties the cup down to the outlet's edge,
 * through the pump, unless a check valve holds. Open to the air, the riser's own water runs back
 * and the flow breaks. An outlet under the tank's level runs on by itself, pump or no pump.
 *
 * <p>Source: sheet hydraulics.md section 7 (hydrostatics).
 *
 * @param drowned the outlet lies under the cup's water
 * @param siphons it does, and no check valve holds the water
 * @param volume the cup would give back, m3; 0 if it does not siphon
 * @param runsOn the outlet lies under the tank's level: water runs without the pump
 */
public record SiphonBack(boolean drowned, boolean siphons, double volume, boolean runsOn) {
  /**
   * Whether a riser siphons.
   *
   * @param lift of the riser's own edge over the tank's highest level, m
   * @param cupLevel water level in the cup over the same level, m; at or under the lift when open
   * @param cupArea plan area of the cup's water, m2, 0 or more
   * @param checkValve whether one at the pump holds the column
   * @return what happens at a stop
   * @throws Impossible if the area is negative
   */
  public static SiphonBack of(double lift, double cupLevel, double cupArea, boolean checkValve) {
    Impossible.unlessWithin("lift", lift, -1000, 1000, "a lift is under a kilometre");
    Impossible.unlessWithin("cup", cupLevel, -1000, 1000, "a level is under a kilometre");
    Impossible.unlessWithin("area", cupArea, 0, 1e4, "an area is 0 or more");
    boolean drowned = cupLevel > lift;
    boolean siphons = drowned && !checkValve;
    double volume = siphons ? cupArea * (cupLevel - lift) : 0;
    return new SiphonBack(drowned, siphons, volume, lift < 0);
  }
}
