package leat.parts;

import leat.numeric.Impossible;

/**
 * A tower's mass, dry, with plants, and running.
 *
 * <p>The film is only some tenths of a kg; pots, medium and roots are the wet mass. Whether it
 * stands is judged with the pump off.
 *
 * <p>Source: geometry; sheet stability-build.md section 6. Check values: build-wet-mass.csv.
 *
 * @param dry printed parts, kg
 * @param plants with their wet pots, kg
 * @param film on the wall while it runs, kg; see the film of hydraulics
 * @param riser water in the riser while it runs, kg
 */
public record WetMass(double dry, double plants, double film, double riser) {
  /** Refuses negative masses. */
  public WetMass {
    Impossible.ifNegative("dry mass", dry);
    Impossible.ifNegative("plant mass", plants);
    Impossible.ifNegative("film", film);
    Impossible.ifNegative("riser", riser);
  }

  /**
   * Water in a full pipe.
   *
   * @param bore inside diameter, m, above 0
   * @param length m, 0 or more
   * @param density of the water, kg/m3, above 0
   * @return kg
   * @throws Impossible outside
   */
  public static double ofPipe(double bore, double length, double density) {
    Impossible.unlessPositive("bore", bore);
    Impossible.ifNegative("length", length);
    return Impossible.unlessPositive("density", density) * Math.PI / 4 * bore * bore * length;
  }

  /** With plants, pump off, kg. */
  public double off() {
    return dry + plants;
  }

  /** Running, kg. */
  public double on() {
    return off() + film + riser;
  }

  /** Both together. */
  public WetMass and(WetMass other) {
    return new WetMass(
        dry + other.dry, plants + other.plants, film + other.film, riser + other.riser);
  }
}
