package leat.energy;

/**
 * A battery as it is bought: the next size that is sold, or several of the largest side by side.
 *
 * <p>Source: sizes that are common in shops, from memory.
 *
 * @param eachC charge of one, C
 * @param count how many side by side
 */
public record BatterySize(double eachC, int count) {
  private static final double AH = 3600;

  /** Lead-acid, Ah (from memory). */
  private static final double[] LEAD = {1.2, 2.3, 3.4, 5, 7, 9, 12, 18, 26, 35, 55, 75, 100, 200};

  /** Lithium iron phosphate, Ah (from memory). */
  private static final double[] LITHIUM = {1.5, 3, 4.5, 6, 7, 10, 12, 20, 30, 50, 100, 200};

  /**
   * The size to buy for a capacity.
   *
   * @param neededC capacity that is needed, C, 0 or more
   * @param lead lead-acid, else lithium iron phosphate
   */
  public static BatterySize atLeast(double neededC, boolean lead) {
    double needed = leat.numeric.Impossible.ifNegative("capacity", neededC) / AH;
    double[] sizes = lead ? LEAD : LITHIUM;
    for (double size : sizes) {
      if (size >= needed) {
        return new BatterySize(size * AH, 1);
      }
    }
    double largest = sizes[sizes.length - 1];
    return new BatterySize(largest * AH, (int) Math.min(1e6, Math.ceil(needed / largest)));
  }
}
