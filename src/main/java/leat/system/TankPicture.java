package leat.system;

import leat.level.Tank;

/** Points of a tank's litres over its height, for a picture. */
public final class TankPicture {
  private static final int POINTS = 49;

  private TankPicture() {}

  /** Levels from the lowest that is known to the rim, m. */
  public static double[] levels(Tank tank) {
    double[] levels = new double[POINTS];
    double low = tank.lowestLevel();
    for (int i = 0; i < POINTS; i++) {
      levels[i] = low + (tank.height() - low) * i / (POINTS - 1);
    }
    return levels;
  }

  /** Volumes at those levels, m3. */
  public static double[] volumes(Tank tank, double[] levels) {
    double[] volumes = new double[levels.length];
    for (int i = 0; i < volumes.length; i++) {
      volumes[i] = tank.volume(Math.min(levels[i], tank.height()));
    }
    return volumes;
  }
}
