package leat.numeric;

/**
 * An input that physics, chemistry or arithmetic refuses, with the reason in words the grower can
 * act on: "a bore of 0 m carries no water". It is the only exception a trade function throws on
 * purpose; the command turns it into an error with exit code 2.
 */
public final class Impossible extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String quantity;

  /**
   * @param quantity the trade word of the input that is refused, such as "bore"; the caller maps it
   *     to the flag or plan key that was typed
   * @param reason one clause without a final stop, such as "a pipe needs a bore above 0"
   */
  public Impossible(String quantity, String reason) {
    super(reason, null, false, false);
    this.quantity = quantity;
  }

  /** The trade word of the refused input. */
  public String quantity() {
    return quantity;
  }

  /** Returns {@code value} when it is finite and above zero; refuses it otherwise. */
  public static double unlessPositive(String quantity, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new Impossible(quantity, "it must be above 0");
    }
    return value;
  }

  /** Returns {@code value} when it is finite and not negative; refuses it otherwise. */
  public static double ifNegative(String quantity, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new Impossible(quantity, "it cannot be negative");
    }
    return value;
  }

  /**
   * Returns {@code value} when it lies in [low, high]; refuses it with {@code reason} otherwise.
   */
  public static double unlessWithin(
      String quantity, double value, double low, double high, String reason) {
    if (!(value >= low && value <= high)) {
      throw new Impossible(quantity, reason);
    }
    return value;
  }
}
