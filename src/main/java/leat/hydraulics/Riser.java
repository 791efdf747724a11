package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * A line of pipe that ends {@code lift} above the tank's water level.
 *
 * <pre>system head H_s(Q) = lift + losses(Q)</pre>
 *
 * <p>Source: sheet hydraulics.md sections 4 and 7; check values: hydraulics-headloss.csv,
 * hydraulics-fill.csv.
 *
 * @param line the pipe from the pump (or from the manifold) to the outlet
 * @param lift height of the outlet over the water level in the tank, m, -1000 to 1000; take the
 *     lowest working level. If the outlet ends under water in a cup, the cup's level is the outlet
 */
public record Riser(Line line, double lift) implements WaterSystem {
  /**
   * @throws Impossible for a lift beyond a kilometre
   */
  public Riser {
    Impossible.unlessWithin("lift", lift, -1000, 1000, "a lift is under a kilometre");
  }

  @Override
  public double head(double flow) {
    return lift + line.loss(flow);
  }

  @Override
  public double leastLift() {
    return lift;
  }

  /** Volume above the tank's level, m3: full while running, empty after a stop; 0 if below it. */
  public double volumeAboveLevel() {
    return volumeUpTo(lift);
  }

  /** Volume between the tank's level and {@code height} over it, m3; not past the outlet. */
  public double volumeUpTo(double height) {
    if (lift <= 0 || height <= 0) {
      return 0;
    }
    double top = Math.min(height, lift);
    return line.volumeBack(lift) - line.volumeBack(lift - top);
  }

  /** Whether the pipe is shorter than the height it must climb: measure again. */
  public boolean shorterThanLift() {
    return line.length() < lift;
  }
}
