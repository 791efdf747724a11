package leat.system;

import leat.stability.Situation;
import leat.stability.Standing;

/** How sure a tower stands as its tank fills, for a picture. */
public final class StandingPicture {
  private static final int POINTS = 33;

  private StandingPicture() {}

  /** Volumes from an empty tank to its rim, m3. */
  public static double[] volumes(StandingOf standing) {
    double[] volumes = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      volumes[i] = standing.tank().capacity() * i / (POINTS - 1);
    }
    return volumes;
  }

  /**
   * Righting over overturning moment at those volumes, -; NaN where no wind overturns it.
   *
   * @param standing what stands
   * @param volumes in the tank, m3
   * @param growth of the plants, 0 to 1
   * @param pressure of the gust, Pa
   */
  public static double[] safety(
      StandingOf standing, double[] volumes, double growth, double pressure) {
    double[] safety = new double[volumes.length];
    for (int i = 0; i < safety.length; i++) {
      Situation state = new Situation("", Situation.massOf(volumes[i]), growth);
      Standing worst = standing.assembly().worst(state);
      Double value = worst.safety(pressure);
      safety[i] = value == null ? Double.NaN : value;
    }
    return safety;
  }
}
