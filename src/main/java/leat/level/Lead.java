package leat.level;

import leat.numeric.Impossible;

/**
 * Resistance of a two-wire copper lead.
 *
 * <pre>R = 2 rho(t) l/A,   rho(t) = rho20 (1 + alpha (t - 20))</pre>
 *
 * Measure it with the far ends twisted together and subtract it once, never both in the meter's
 * zero and in the plan. Half an ohm matters only for the lowest steps.
 *
 * <p>Source: IEC 60028, standard annealed copper (from memory); worked value of the sheet level.md:
 * 5 m of 0.22 mm2 is 0.78 ohm.
 */
public final class Lead {
  /** Resistivity of standard annealed copper at 20 C, ohm m. Source: IEC 60028, from memory. */
  public static final double COPPER_20 = 1.7241e-8;

  /** Its temperature coefficient at 20 C, 1/K. Source: IEC 60028, from memory. */
  public static final double COPPER_COEFFICIENT = 3.93e-3;

  private Lead() {}

  /**
   * Resistance of both wires.
   *
   * @param length length of the cable, one way, m
   * @param section copper section of one wire, m2
   * @param celsius temperature, C
   * @return resistance, ohm
   * @throws Impossible if length is negative, the section not above 0, or the temperature not from
   *     -60 to 150 C
   */
  public static double ohm(double length, double section, double celsius) {
    Impossible.unlessWithin("length", length, 0, 1e6, "it must lie from 0 to 1000 km");
    Impossible.unlessWithin("section", section, 1e-10, 1, "it must lie from 0.0001 mm2 to 1 m2");
    Impossible.unlessWithin("temperature", celsius, -60, 150, "a lead lies from -60 to 150 C");
    return 2 * COPPER_20 * (1 + COPPER_COEFFICIENT * (celsius - 20)) * length / section;
  }
}
