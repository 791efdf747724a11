package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * What flows: the three properties every formula of this package needs.
 *
 * <p>Source: {@link Water}; other liquids only for the printed examples of textbooks.
 *
 * @param density kg/m3, 100 to 3000
 * @param viscosity dynamic viscosity, Pa s, 1E-5 to 10
 * @param surfaceTension against air, N/m, 0 to 1
 */
public record Liquid(double density, double viscosity, double surfaceTension) {
  /** Standard acceleration of gravity, m/s2 (ISO 80000-3, by definition). */
  public static final double GRAVITY = 9.80665;

  /**
   * @throws Impossible for a liquid that is none
   */
  public Liquid {
    Impossible.unlessWithin("density", density, 100, 3000, "a liquid weighs 100 to 3000 kg/m3");
    Impossible.unlessWithin(
        "viscosity", viscosity, 1E-5, 10, "a liquid that flows has 1E-5 to 10 Pa s");
    Impossible.unlessWithin(
        "surface tension", surfaceTension, 0, 1, "surface tension is between 0 and 1 N/m");
  }

  /**
   * Water, and so any working nutrient solution.
   *
   * @param celsius temperature, C, 0 to 60
   * @return its properties
   * @throws Impossible outside 0 to 60 C
   */
  public static Liquid water(double celsius) {
    return new Liquid(
        Water.density(celsius), Water.viscosity(celsius), Water.surfaceTension(celsius));
  }

  /** Water at {@link Water#USUAL_CELSIUS}; worked out once. */
  public static Liquid usualWater() {
    return Usual.WATER;
  }

  private static final class Usual {
    static final Liquid WATER = water(Water.USUAL_CELSIUS);
  }

  /** Kinematic viscosity, m2/s. */
  public double kinematicViscosity() {
    return viscosity / density;
  }
}
