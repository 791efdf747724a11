package leat.stability;

import leat.numeric.Impossible;

/**
 * The tank as wind and ground see it.
 *
 * @param mass empty, with what is bolted to its foot, kg
 * @param length outside of the long face, m; the diameter of a round one
 * @param width outside of the short face, m
 * @param height from its floor to its lid, m
 * @param coefficient force coefficient, -; see {@link Drag}
 * @param stand height of its floor over the foot plane, m
 * @param foot what it stands on
 */
public record Tub(
    double mass,
    double length,
    double width,
    double height,
    double coefficient,
    double stand,
    Foot foot) {
  /** Refuses what is no tank. */
  public Tub {
    Impossible.ifNegative("tank mass", mass);
    Impossible.unlessPositive("tank length", length);
    Impossible.unlessPositive("tank width", width);
    Impossible.unlessPositive("tank height", height);
    Impossible.ifNegative("stand", stand);
  }

  Face face(Foot.Side wind) {
    double across = wind == Foot.Side.LONG_FACE ? Math.max(length, width) : Math.min(length, width);
    return new Face(across * height, stand + height / 2, coefficient);
  }
}
