package leat.climate;

/**
 * Rain that drains into the tank: mm x area x catch, the area seen from above of what drains there;
 * under a roof none.
 *
 * <p>Source: catch shares and the salt of rain are common practice; sheet season.md section 3,
 * check values season-rain.csv.
 */
public final class RainCatch {
  /** Share caught by an open tank, -; wind carries the rest. */
  public static final double OPEN_TANK = 0.9;

  /** Share caught by a lid that drains inwards, -. */
  public static final double LID = 0.8;

  /** Share caught by the sides of a tower, -. */
  public static final double TOWER_SIDES = 0.5;

  /** EC of rain, mS/cm. */
  public static final double RAIN_EC_MS_CM = 0.02;

  private RainCatch() {}
}
