package leat.solution.conductivity;

import leat.numeric.Impossible;
import leat.numeric.MonotoneCubic;
import leat.numeric.Validity;

/**
 * A potassium chloride standard and its true conductivity at a temperature.
 *
 * <p>Three scales of concentration are in use and differ by 0.3 % at 0.01 and 3 % at 1: mol a
 * kilogram of water (primary), demal (legal metrology), mol a litre (the bottles in shops). A
 * bottle is what its label says: the label's value at 25 C picks the table, and the table's course
 * with temperature is scaled to the label. Between the tabulated temperatures a monotone cubic; it
 * errs under 0.02 %.
 *
 * <p>Source: primary values, CRC Handbook table after Wu et al. 1991, 1994 and Pratt et al. 2001
 * (Pure Appl. Chem. 73, 1783), the effect of carbon dioxide subtracted; demal, OIML R 56; mol/L,
 * tables printed in instrument manuals. Of these the values at 5, 18 and 30 C (0.01 mol/kg), 0, 15,
 * 25, 40 C (0.1), 10, 25 C (1), at 10, 20 and 35 C of the bottles and some of the demal ones are
 * from memory; each lies within 0.03 % (primary) or 0.1 % of a smooth curve through the others.
 * Marked below: values that were computed from the primary table's course. Check values: sheet
 * solution-ec-standards.csv.
 */
public final class KclStandard {
  /** Temperatures of the tables, C. */
  public static final Validity VALID = Validity.of("temperature, C", 0, 40);

  /** Labels that can be a potassium chloride standard, mS/cm at 25 C. */
  public static final Validity LABELS = Validity.of("label, mS/cm", 0.08, 115);

  private static final double[] CELSIUS = {0, 5, 10, 15, 18, 20, 25, 30, 35, 40};
  private static final int AT_25 = 6;
  private static final int FAMILIES = 3;

  /** Farthest a label may lie from a table's value at 25 C to be taken for it, -. */
  private static final double SAME_BOTTLE = 0.005;

  private static final String[] NAMES = {
    "0.01 mol/kg KCl",
    "0.1 mol/kg KCl",
    "1 mol/kg KCl",
    "0.01 D KCl",
    "0.1 D KCl",
    "1 D KCl",
    "1413 uS/cm KCl",
    "12880 uS/cm KCl",
    "111800 uS/cm KCl"
  };

  // uncertainty of the values, per cent, one a family
  private static final double[] TOLERANCE_PCT = {0.04, 0.1, 0.3};
  private static final double TOLERANCE_OTHER_PCT = 1;

  // mS/cm, one column a temperature of CELSIUS
  private static final double[][] VALUES = {
    {0.77292, 0.89096, 1.01395, 1.14145, 1.21993, 1.27303, 1.40823, 1.54663, 1.68779, 1.83127},
    {7.11685, 8.1837, 9.29172, 10.4371, 11.1406, 11.6159, 12.8246, 14.0592, 15.316, 16.591},
    // 18 and 40 C: cubic through the neighbours, 0.05 % at 40 C
    {63.488, 72.03, 80.844, 89.9, 95.435, 99.17, 108.62, 118.24, 127.97, 137.8},
    // demal at 0, 5, 10, 30, 40 C: course of the primary table
    {0.77296, 0.891, 1.014, 1.1414, 1.22, 1.2737, 1.4083, 1.54671, 1.6876, 1.83136},
    {7.13206, 8.20118, 9.31157, 10.455, 11.163, 11.644, 12.852, 14.08924, 15.353, 16.62645},
    {65.0603, 73.81384, 82.84612, 92.12, 97.8, 101.7, 111.31, 121.16824, 131.1, 141.2},
    // bottles at 35 and 40 C (and 18 C of 111.8): course of the primary table
    {0.776, 0.896, 1.02, 1.147, 1.225, 1.278, 1.413, 1.552, 1.6935, 1.8375},
    {7.15, 8.22, 9.33, 10.48, 11.19, 11.67, 12.88, 14.12, 15.382, 16.663},
    {65.4, 74.1, 83.2, 92.5, 98.2, 102.1, 111.8, 121.8, 131.7, 141.8}
  };

  private final int table;
  private final double label;

  private KclStandard(int table, double label) {
    this.table = table;
    this.label = label;
  }

  /**
   * The standard in a bottle, by the value on its label.
   *
   * @param ec25 value at 25 C printed on the label, mS/cm, such as 1.413
   * @throws Impossible if no potassium chloride solution of a bottle has it
   */
  public static KclStandard ofLabel(double ec25) {
    Impossible.unlessWithin(
        "standard",
        ec25,
        LABELS.low(0),
        LABELS.high(0),
        "a potassium chloride standard lies between 0.08 and 115 mS/cm, such as 1.413 mS/cm");
    int nearest = -1;
    double off = SAME_BOTTLE;
    for (int i = 0; i < VALUES.length; i++) {
      double away = Math.abs(ec25 / VALUES[i][AT_25] - 1);
      if (away < off) {
        nearest = i;
        off = away;
      }
    }
    return new KclStandard(nearest, ec25);
  }

  /** Value at 25 C, mS/cm: the label's. */
  public double ec25() {
    return label;
  }

  /** Whether a table exists for this label; otherwise its course with temperature is a guess. */
  public boolean isTabulated() {
    return table >= 0;
  }

  /** What it is, such as "1413 uS/cm KCl" or "0.01 D KCl"; "KCl" for a label without a table. */
  public String name() {
    return table < 0 ? "KCl" : NAMES[table];
  }

  /** Uncertainty of its values, per cent. */
  public double tolerancePct() {
    return table < 0 ? TOLERANCE_OTHER_PCT : TOLERANCE_PCT[table / FAMILIES];
  }

  /**
   * True conductivity at the bottle's temperature: what a meter without compensation should show.
   *
   * @param celsius temperature, C, 0 to 40
   * @return EC, mS/cm
   * @throws Impossible outside the tables
   */
  public double ecAt(double celsius) {
    Impossible.unlessWithin(
        "temperature",
        celsius,
        VALID.low(0),
        VALID.high(0),
        "the standard is tabulated from 0 to 40 C");
    return label * (table < 0 ? courseBetween(label, celsius) : course(table, celsius));
  }

  /** EC(T)/EC(25) of a table. */
  private static double course(int table, double celsius) {
    double[] values = VALUES[table];
    return new MonotoneCubic(CELSIUS, values).value(celsius) / values[AT_25];
  }

  /** EC(T)/EC(25) for any label: between the primary tables straight in log EC, below as 0.01. */
  private static double courseBetween(double ec25, double celsius) {
    int i = ec25 > VALUES[1][AT_25] ? 1 : 0;
    double weak = VALUES[i][AT_25];
    double share = Math.log(ec25 / weak) / Math.log(VALUES[i + 1][AT_25] / weak);
    double within = Math.min(1, Math.max(0, share));
    return (1 - within) * course(i, celsius) + within * course(i + 1, celsius);
  }
}
