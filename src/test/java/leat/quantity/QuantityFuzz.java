package leat.quantity;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * What is typed as a quantity is a finite number or refused with words that point into it. Driven
 * by coverage with {@code mvn -Pjazzer}; the corpus is tried in every build.
 */
public final class QuantityFuzz {
  private static final Dimension[] DIMENSIONS = Dimension.values();

  private QuantityFuzz() {}

  /**
   * Tries one input as one dimension, which its bytes choose: every comparison with the name of a
   * unit is watched, and all dimensions at once take a thirtieth of a second an input.
   */
  public static void fuzzerTestOneInput(byte[] data) {
    int which = Math.floorMod(Arrays.hashCode(data), DIMENSIONS.length);
    one(new String(data, StandardCharsets.UTF_8), DIMENSIONS[which]);
  }

  /** Tries one input as every dimension. */
  public static void everyDimension(byte[] data) {
    for (Dimension dimension : DIMENSIONS) {
      one(new String(data, StandardCharsets.UTF_8), dimension);
    }
  }

  private static void one(String typed, Dimension dimension) {
    try {
      Quantity quantity = QuantityReader.read(typed, dimension);
      if (!Double.isFinite(quantity.value())) {
        throw new AssertionError(dimension + ": no finite number from " + typed);
      }
    } catch (Unreadable e) {
      check(e, typed);
    }
  }

  private static void check(Unreadable e, String typed) {
    boolean inside = 0 <= e.start() && e.start() <= e.end() && e.end() <= typed.length();
    if (!inside || e.message().isBlank() || e.code().isBlank()) {
      throw new AssertionError(e.code() + " at " + e.start() + " to " + e.end() + " of " + typed);
    }
    if (e.suggestion() != null && e.suggestion().equals(typed)) {
      throw new AssertionError("suggests what was typed: " + typed);
    }
  }
}
