package leat.level;

import leat.numeric.Impossible;

/**
 * A tank of still liquid: the volume it holds to a level, and the level of a volume.
 *
 * <p>The level is the height of the liquid above the lowest point of the inside, in m. Volumes are
 * net: what stands in the tank ({@link Displaced}) is taken off already. {@link #volume} rises
 * strictly with the level and {@link #level} is its exact inverse, to rounding.
 *
 * <p>A filled thin wall bulges by 1 to 3 % of the drawn volume at the top, and warming the liquid
 * from 15 to 30 C adds 0.35 %: neither is modelled. Pour known litres to know.
 *
 * <p>Source: geometry, the volume is the integral of the section's area over the level; Check
 * values: sheets level-tank-volume.csv and level-tank-shapes.csv.
 */
public interface Tank {
  /** A level or a relative volume beyond the end by less than this is the end, as typed, m or 1. */
  double ROUNDING = 1e-9;

  /** Height of the rim above the lowest point inside, m. */
  double height();

  /** Lowest level of which the volume is known, m: 0, except in a table that begins higher. */
  default double lowestLevel() {
    return 0;
  }

  /**
   * Net volume up to a level, m3.
   *
   * @param level height of the liquid above the lowest point inside, m, from {@link #lowestLevel}
   *     to {@link #height}
   * @throws Impossible if the level lies outside
   */
  double volume(double level);

  /**
   * Level of a net volume, m.
   *
   * @param volume net volume, m3, from {@link #lowestVolume} to {@link #capacity}
   * @throws Impossible if the tank does not hold it, or it is negative
   */
  double level(double volume);

  /**
   * Net area of the liquid's surface at a level, m2; the slope of {@link #volume}. At a kink it is
   * the area just above.
   *
   * @param level height of the liquid above the lowest point inside, m
   * @throws Impossible if the level lies outside
   */
  double area(double level);

  /** Levels at which the section may change abruptly, m; narrow ledges lie between them. */
  default double[] kinks() {
    return new double[0];
  }

  /** Net volume to the rim, m3. */
  default double capacity() {
    return volume(height());
  }

  /** Net volume at {@link #lowestLevel}, m3. */
  default double lowestVolume() {
    return volume(lowestLevel());
  }

  /**
   * Returns the level, held to the ends when only rounding leaves them; for implementations.
   *
   * @param level level, m
   * @throws Impossible if it lies outside the tank
   */
  default double checkedLevel(double level) {
    double low = lowestLevel();
    if (!(level >= low - ROUNDING)) {
      throw new Impossible(
          "level",
          low > 0 && level >= 0
              ? "the table does not reach down to it, and is not drawn out"
              : "a level cannot lie below the floor");
    }
    if (level > height() + ROUNDING) {
      throw new Impossible("level", "it lies above the rim of the tank");
    }
    return Math.min(Math.max(level, low), height());
  }

  /**
   * Returns the volume, held to the ends when only rounding leaves them; for implementations.
   *
   * @param volume volume, m3
   * @throws Impossible if the tank does not hold it
   */
  default double checkedVolume(double volume) {
    double low = lowestVolume();
    double high = capacity();
    if (!(volume >= low - ROUNDING * high)) {
      throw new Impossible(
          "volume",
          low > 0 && volume >= 0
              ? "the table does not reach down to it, and is not drawn out"
              : "a volume cannot be negative");
    }
    if (volume > high * (1 + ROUNDING)) {
      throw new Impossible("volume", "it is more than the tank holds");
    }
    return Math.min(Math.max(volume, low), high);
  }
}
