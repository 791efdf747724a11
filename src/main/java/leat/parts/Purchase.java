package leat.parts;

import leat.numeric.Impossible;

/**
 * A bought thing, such as the pump.
 *
 * @param name to print
 * @param cost money; null when not known
 */
public record Purchase(String name, Double cost) {
  /** Refuses a negative price. */
  public Purchase {
    if (cost != null) {
      Impossible.ifNegative("price", cost);
    }
  }
}
