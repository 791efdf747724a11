package leat.energy;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Resistance of copper conductors.
 *
 * <pre>r = table at 20 C, or rho/A;  r(T) = r (1 + 0.00393 (T - 20))
 * gauge n: d = 0.127 mm x 92^((36 - n)/39)</pre>
 *
 * <p>Source: IEC 60228 maxima at 20 C, plain copper (three public reprints); annealed copper
 * standard 0.017241 ohm mm2/m and 0.00393 1/K at 20 C; American wire gauge from memory, 18 is 0.823
 * mm2; sheet energy.md section 6, check values energy-cable.csv.
 */
public final class Copper {
  /** Temperatures a cable with common insulation works at, C. */
  public static final Validity VALID = Validity.of("conductor, C", -40, 90);

  /** Resistivity of annealed copper at 20 C, ohm m. */
  public static final double RESISTIVITY = 0.017241e-6;

  /** Temperature coefficient of copper at 20 C, 1/K. */
  public static final double TEMPERATURE_COEFFICIENT = 0.00393;

  private static final double REFERENCE_CELSIUS = 20;

  /** Nominal cross-sections of the tables, m2. */
  private static final double[] AREA = {0.5e-6, 0.75e-6, 1e-6, 1.5e-6, 2.5e-6, 4e-6, 6e-6};

  /** IEC 60228 class 1 and 2 (solid, stranded), ohm/m. */
  private static final double[] SOLID = {
    36.0e-3, 24.5e-3, 18.1e-3, 12.1e-3, 7.41e-3, 4.61e-3, 3.08e-3
  };

  /** IEC 60228 class 5 and 6 (flexible), ohm/m. */
  private static final double[] FLEXIBLE = {
    39.0e-3, 26.0e-3, 19.5e-3, 13.3e-3, 7.98e-3, 4.95e-3, 3.30e-3
  };

  /** Cross-sections that agree so far are the same size, no unit. */
  static final double SAME_SIZE = 1e-6;

  /** Diameter of gauge 36, m, and the two fixed gauges' ratio and distance. */
  private static final double GAUGE_36_M = 0.127e-3;

  private static final double GAUGE_RATIO = 92;
  private static final double GAUGE_STEPS = 39;

  /** Wire gauges that are usual for low voltage, the thinnest first (from memory). */
  private static final double[] GAUGES = {24, 22, 20, 18, 16, 14, 12, 10};

  /** Wire gauges that are usual for low voltage, the thinnest first. */
  public static double[] usualGauges() {
    return GAUGES.clone();
  }

  /**
   * The thinnest usual wire gauge that is no thinner than a cross-section.
   *
   * @param area cross-section, m2
   * @return American wire gauge; empty over 10
   * @throws Impossible if it is not above 0
   */
  public static java.util.OptionalDouble gaugeFor(double area) {
    area(area);
    for (int i = 0; i < GAUGES.length; i++) {
      if (gaugeArea(GAUGES[i]) >= area) {
        return java.util.OptionalDouble.of(GAUGES[i]);
      }
    }
    return java.util.OptionalDouble.empty();
  }

  /** Two digits of a cross-section, -: as sheets of wire gauges print it. */
  private static final double PRINTED = 0.01;

  /**
   * The usual wire gauge that a cross-section is the metric print of.
   *
   * @param area cross-section, m2
   * @return American wire gauge; empty when no gauge has this section within 1 %
   * @throws Impossible if it is not above 0
   */
  public static java.util.OptionalDouble gaugeOf(double area) {
    area(area);
    for (int i = 0; i < GAUGES.length; i++) {
      if (Math.abs(gaugeArea(GAUGES[i]) / area - 1) < PRINTED) {
        return java.util.OptionalDouble.of(GAUGES[i]);
      }
    }
    return java.util.OptionalDouble.empty();
  }

  /** How a conductor is built. */
  public enum Strands {
    /** IEC 60228 class 1 or 2. */
    SOLID_OR_STRANDED,
    /** IEC 60228 class 5 or 6: cords. */
    FLEXIBLE
  }

  private Copper() {}

  static double area(double area) {
    Impossible.unlessPositive("cross-section", area);
    return Impossible.unlessWithin(
        "cross-section", area, 1e-9, 1e-2, "it must lie between 0.001 mm2 and 100 cm2");
  }

  private static int row(double area) {
    area(area);
    for (int i = 0; i < AREA.length; i++) {
      if (Math.abs(area - AREA[i]) <= SAME_SIZE * AREA[i]) {
        return i;
      }
    }
    return -1;
  }

  /** The sizes of the tables, rising, m2. */
  public static double[] tableSizes() {
    return AREA.clone();
  }

  /**
   * Resistance of one conductor at 20 C: the standard's maximum where the size is in its table,
   * else by resistivity (4 to 13 per cent under such a maximum).
   *
   * @param strands how it is built
   * @param area cross-section, m2
   * @return ohm/m
   * @throws Impossible if the cross-section is not above 0
   */
  public static double ohmPerM(Strands strands, double area) {
    int row = row(area);
    if (row < 0) {
      return byResistivity(area);
    }
    return strands == Strands.FLEXIBLE ? FLEXIBLE[row] : SOLID[row];
  }

  /**
   * Resistance of one conductor at 20 C by the resistivity of copper.
   *
   * @param area cross-section, m2
   * @return ohm/m
   * @throws Impossible if the cross-section is not above 0
   */
  public static double byResistivity(double area) {
    return RESISTIVITY / area(area);
  }

  /**
   * Factor on the resistance at 20 C.
   *
   * @param celsius temperature of the conductor, C
   * @return no unit
   * @throws Impossible if it is outside -100 to 250 C
   */
  public static double temperatureFactor(double celsius) {
    Impossible.unlessWithin(
        "conductor", celsius, -100, 250, "a cable's conductor lies between -100 and 250 C");
    return 1 + TEMPERATURE_COEFFICIENT * (celsius - REFERENCE_CELSIUS);
  }

  /**
   * Cross-section of a wire gauge.
   *
   * @param gauge American wire gauge, 0 to 40
   * @return m2
   * @throws Impossible if it is outside 0 to 40
   */
  public static double gaugeArea(double gauge) {
    Impossible.unlessWithin("gauge", gauge, 0, 40, "a wire gauge lies between 0 and 40");
    double d = GAUGE_36_M * Math.pow(GAUGE_RATIO, (36 - gauge) / GAUGE_STEPS);
    return Math.PI / 4 * d * d;
  }
}
