package leat.quantity;

/**
 * A bucket and a watch: "10 L in 65 s".
 *
 * @param volume what ran in
 * @param time how long it took, above 0
 */
public record Bucket(Quantity volume, Quantity time) {
  /** Flow, m3/s. */
  public double flow() {
    return volume.value() / time.value();
  }
}
