package leat.level;

import java.util.function.DoubleUnaryOperator;
import leat.numeric.Roots;

/**
 * Finds a level or a volume among the bounds of a tank's stretches, and the level of a volume by a
 * bracketed root for the tanks that have no closed inverse.
 *
 * <p>Source: {@link Roots}; the volume rises strictly with the level.
 */
final class Inverse {
  private Inverse() {}

  /**
   * The stretch between two neighbours of a rising list in which a value lies, the upper one where
   * it is the bound of two; the first or last for one outside.
   *
   * @param bounds two or more, rising, m or m3
   * @param at a value of the same unit
   * @return index of the lower bound, from 0
   */
  static int stretch(double[] bounds, double at) {
    int k = 0;
    while (k < bounds.length - 2 && bounds[k + 1] <= at) {
      k++;
    }
    return k;
  }

  /**
   * The level in [low, high] at which the tank holds the volume.
   *
   * @param tank the tank
   * @param volume a volume between those at the two ends, m3
   * @param low lower end, m
   * @param high upper end, m
   */
  static double level(Tank tank, double volume, double low, double high) {
    if (volume <= tank.volume(low)) {
      return low;
    }
    if (volume >= tank.volume(high)) {
      return high;
    }
    return Roots.bracketed(
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double level) {
            return tank.volume(level) - volume;
          }
        },
        low,
        high);
  }
}
