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

  /** Whether another is the same but for its number. */
  public boolean isLike(Part other) {
    boolean sameTime =
        printTime == null
            ? other.printTime == null
            : other.printTime != null && printTime.doubleValue() == other.printTime;
    return name.equals(other.name) && mass == other.mass && sameTime && material == other.material;
  }

  /** The same with more pieces. */
  public Part plus(int more) {
    return new Part(name, pieces + more, mass, printTime, material);
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
