package leat.quantity;

/**
 * From low to high: "28..34 L", "26 mm to 268 mm".
 *
 * @param low the lower end
 * @param high the upper end, not below it; the same quantity when one value was typed
 */
public record Span(Quantity low, Quantity high) {

  /** The middle, in the base of the dimension. */
  public double middle() {
    return low.value() + (high.value() - low.value()) / 2;
  }
}
