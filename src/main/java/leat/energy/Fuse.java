package leat.energy;

import java.util.OptionalDouble;
import leat.numeric.Impossible;

/**
 * A blade fuse for the cable, and what the cord carries. A fuse protects the cable, not the pump;
 * time-lag for the inrush.
 *
 * <p>Source: blade fuse sizes from memory; 1.25 of the current is common practice; cords 0.5 mm2 3
 * A, 0.75 6 A, 1 10 A, 1.5 16 A (a public safety body's table for mains flex), 2.5 20 A (a maker's
 * table); sheet energy.md section 6, check values energy-cable.csv.
 */
public final class Fuse {
  /** A fuse is at least so many times the running current (common practice). */
  public static final double OVER_CURRENT = 1.25;

  private static final double[] SIZES = {1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30};
  private static final double[] CORD_AREA = {0.5e-6, 0.75e-6, 1e-6, 1.5e-6, 2.5e-6};
  private static final double[] CORD_A = {3, 6, 10, 16, 20};

  private Fuse() {}

  /**
   * The next size at or above 1.25 of the current.
   *
   * @param amperes running current, A
   * @return A; empty above the largest size, 30 A
   * @throws Impossible if the current is negative
   */
  public static OptionalDouble sizeA(double amperes) {
    double least = OVER_CURRENT * Impossible.ifNegative("current", amperes);
    for (int i = 0; i < SIZES.length; i++) {
      if (SIZES[i] >= least) {
        return OptionalDouble.of(SIZES[i]);
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * What a cord of a listed size carries.
   *
   * @param area cross-section, m2
   * @return A; empty when the size is not listed
   * @throws Impossible if the cross-section is not above 0
   */
  public static OptionalDouble cordLimitA(double area) {
    Copper.area(area);
    for (int i = 0; i < CORD_AREA.length; i++) {
      if (Math.abs(area - CORD_AREA[i]) <= Copper.SAME_SIZE * CORD_AREA[i]) {
        return OptionalDouble.of(CORD_A[i]);
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * What a cord carries at least: the limit of the largest listed size that is not thicker.
   *
   * @param area cross-section, m2
   * @return A; 0 under 0.5 mm2
   * @throws Impossible if the cross-section is not above 0
   */
  public static double cordCarriesAtLeastA(double area) {
    Copper.area(area);
    double carries = 0;
    for (int i = 0; i < CORD_AREA.length; i++) {
      if (area >= CORD_AREA[i] * (1 - Copper.SAME_SIZE)) {
        carries = CORD_A[i];
      }
    }
    return carries;
  }
}
