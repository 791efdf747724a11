package leat.parts;

import leat.numeric.Impossible;

/**
 * A printed part of the list.
 *
 * @param name to print
 * @param pieces how many, of all towers
 * @param mass of one, net, kg
 * @param printTime of one, s; null when not known
 * @param material index of its filament in {@link BuildList}, 0 for the first
 */
public record Part(String name, int pieces, double mass, Double printTime, int material) {
  /** Refuses what cannot be printed. */
  public Part {
    Impossible.unlessWithin("pieces", pieces, 1, 1_000_000, "a part has 1 to 1 000 000 pieces");
    Impossible.unlessPositive("mass", mass);
    if (printTime != null) {
      Impossible.unlessPositive("print time", printTime);
    }
  }

  /** All pieces, net, kg. */
  public double massOfAll() {
    return pieces * mass;
  }

  /** All pieces, s; null when not known. */
  public Double timeOfAll() {
    return printTime == null ? null : Double.valueOf(pieces * printTime);
  }
}
