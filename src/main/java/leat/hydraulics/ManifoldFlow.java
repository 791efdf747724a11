package leat.hydraulics;

import java.util.OptionalDouble;

/**
 * What each riser of a {@link Manifold} gets.
 *
 * <p>Source: sheet hydraulics.md section 6; check values: hydraulics-manifold.csv.
 *
 * @param manifold what was solved
 * @param status no flow when every riser is dry, run-out at the end of the pump's curve, else flow
 * @param totalFlow of all risers, m3/s
 * @param pumpHead head the pump gives, m
 * @param commonLoss lost in the common pipe, m
 * @param manifoldHead head at the manifold over the tank's level, m; dry risers stand at it
 * @param shutoffHead of the curve, m
 * @param flows of the risers in order, m3/s, exactly 0 for a dry one
 */
public record ManifoldFlow(
    Manifold manifold,
    OperatingPoint.Status status,
    double totalFlow,
    double pumpHead,
    double commonLoss,
    double manifoldHead,
    double shutoffHead,
    double[] flows) {

  /** Flow of riser {@code i}, m3/s. */
  public double flow(int i) {
    return flows[i];
  }

  /** Riser {@code i} gets nothing. */
  public boolean dry(int i) {
    return flows[i] == 0;
  }

  /** Shut-off head less the lift of riser {@code i}, m. */
  public double margin(int i) {
    return Accepted.over(shutoffHead, manifold.riser(i).lift());
  }

  /** That over the lift, -; empty when the outlet is not above the level. */
  public OptionalDouble marginShare(int i) {
    double lift = manifold.riser(i).lift();
    return lift > 1e-9 ? OptionalDouble.of(margin(i) / lift) : OptionalDouble.empty();
  }

  /**
   * Riser {@code i} is dry though the pump alone would reach it: the others pull it down. A closed
   * one is not starved.
   */
  public boolean starved(int i) {
    return dry(i) && margin(i) > 0 && !manifold.isClosed(i);
  }
}
