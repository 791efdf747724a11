package leat.level;

import java.util.function.DoubleUnaryOperator;
import leat.numeric.Roots;

/**
 * The level of a volume by a bracketed root, for the tanks that have no closed inverse.
 *
 * <p>Source: {@link Roots}; the volume rises strictly with the level.
 */
final class Inverse {
  private Inverse() {}

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
