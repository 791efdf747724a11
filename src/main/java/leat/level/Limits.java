package leat.level;

import leat.numeric.Impossible;

/**
 * How far a reading may lie from a step's resistance and still mean it, and what counts as open and
 * short.
 *
 * <pre>x = measured - lead;  half window of a step = reading + tolerance * ohm</pre>
 *
 * All resistors off the same way is the worst case of a string, tolerance times the node, and is
 * what the window uses; parts that scatter do better.
 *
 * <p>Source: sheet level-decode.csv. The defaults are common practice, without a published source.
 *
 * @param reading tolerance of the meter or ADC, ohm
 * @param tolerance tolerance of the resistors, a share (0.02 for 2 %)
 * @param lead resistance of the two lead wires, ohm, taken off each reading once
 * @param openAbove from here on the wire is broken or no reed closed, ohm
 * @param shortBelow below this the cable is shorted, ohm
 */
public record Limits(
    double reading, double tolerance, double lead, double openAbove, double shortBelow) {
  /** Meter or ADC tolerance when none is given, ohm. Common practice. */
  public static final double DEFAULT_READING = 1.5;

  /** Resistor tolerance when none is given, a share. Common practice. */
  public static final double DEFAULT_TOLERANCE = 0.02;

  /** Open from here when nothing is given, ohm. Common practice. */
  public static final double DEFAULT_OPEN_ABOVE = 1000;

  /** Short below this when nothing is given, ohm. Common practice. */
  public static final double DEFAULT_SHORT_BELOW = 2;

  /** A meter's zero is never further off, ohm. Common practice. */
  public static final double MOST_NEGATIVE = -10;

  /** Slack of a window for rounding, ohm. */
  static final double ROUNDING = 1e-9;

  /** The defaults, no lead. */
  public static final Limits DEFAULT =
      new Limits(DEFAULT_READING, DEFAULT_TOLERANCE, 0, DEFAULT_OPEN_ABOVE, DEFAULT_SHORT_BELOW);

  /**
   * @throws Impossible if one is negative, the tolerance is not below 1, or open lies not above
   *     short
   */
  public Limits {
    Accepted.ohm("reading", reading);
    Impossible.unlessWithin("tolerance", tolerance, 0, 0.99, "it must lie from 0 to below 100 %");
    Accepted.ohm("lead", lead);
    Accepted.ohm("short_below", shortBelow);
    Accepted.ohm("open_above", openAbove);
    if (openAbove <= shortBelow) {
      throw new Impossible("open_above", "open must begin above what counts as a short");
    }
  }

  /**
   * Half width of a step's window, ohm.
   *
   * @param ohm the step's resistance, ohm
   */
  public double halfWindow(double ohm) {
    return reading + tolerance * ohm;
  }
}
