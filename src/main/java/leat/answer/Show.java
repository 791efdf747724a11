package leat.answer;

import leat.quantity.Unit;
import leat.quantity.Units;

/**
 * How a quantity is shown: its metric unit (also that of CSV and JSON), its US customary unit, and
 * significant digits.
 */
public final class Show {
  private final Unit metric;
  private final Unit us;
  private final Unit usSmall;
  private final int digits;

  private Show(Unit metric, Unit us, Unit usSmall, int digits) {
    this.metric = metric;
    this.us = us;
    this.usSmall = usSmall;
    this.digits = digits;
  }

  /** Metric unit, US unit, digits. */
  public static Show of(Unit metric, Unit us, int digits) {
    return new Show(metric, us, us, digits);
  }

  /** The same unit in both systems. */
  public static Show of(Unit unit, int digits) {
    return new Show(unit, unit, unit, digits);
  }

  /** The same units with other digits. */
  public Show digits(int n) {
    return new Show(metric, us, usSmall, n);
  }

  /** Unit of CSV, JSON and metric text. */
  public Unit metric() {
    return metric;
  }

  /** Unit of US customary text. */
  public Unit us() {
    return us;
  }

  /** Unit of this value in text: less than one US unit is shown in the smaller one. */
  Unit unit(boolean inUs, double value) {
    if (!inUs) {
      return metric;
    }
    return value != 0 && Math.abs(us.fromBase(value)) < 1 ? usSmall : us;
  }

  /** Significant digits in text. */
  public int digits() {
    return digits;
  }

  /** Heights and heads. */
  public static final Show M = of(Units.M, Units.FOOT, 3);

  /** Small lengths. */
  public static final Show MM = of(Units.MM, Units.INCH, 3);

  /** Pump flows. */
  public static final Show L_MIN = of(Units.L_MIN, Units.GPM, 3);

  /** Use by plants. */
  public static final Show L_D = of(Units.L_D, Units.GPD, 3);

  /** Volumes in a tank. */
  public static final Show L = of(Units.L, Units.GALLON, 3);

  /** Volumes in a measuring cup, or in a spoon. */
  public static final Show ML = new Show(Units.ML, Units.FLOZ, Units.TSP, 3);

  /** Speeds of water. */
  public static final Show M_S = of(Units.M_S, Units.FT_S, 3);

  /** Plan areas of meshes and bodies. */
  public static final Show CM2 = of(Units.CM2, Units.IN2, 3);

  /** Sections of wire. */
  public static final Show MM2 = of(Units.MM2, 3);

  /** Shares. */
  public static final Show PERCENT = of(Units.PERCENT, 2);

  /** Short times. */
  public static final Show S = of(Units.S, 2);

  /** Minutes. */
  public static final Show MIN = of(Units.MIN, 3);

  /** Hours. */
  public static final Show H = of(Units.H, 3);

  /** Power. */
  public static final Show W = of(Units.W, 3);

  /** Energy. */
  public static final Show KWH = of(Units.KWH, 3);

  /** Force. */
  public static final Show N = of(Units.N, Units.LBF, 2);

  /** Temperature. */
  public static final Show C = of(Units.C, Units.F, 3);

  /** Masses of salts: a scale for them shows grams everywhere. */
  public static final Show G = of(Units.G, 3);

  /** Masses of towers. */
  public static final Show KG = of(Units.KG, Units.LB, 3);

  /** EC at 25 C unless said. */
  public static final Show MS_CM = of(Units.MS_CM, 3);

  /** Concentrations. */
  public static final Show MG_L = of(Units.MG_L, 3);

  /** Alkalinity. */
  public static final Show MEQ_L = of(Units.MEQ_L, 2);

  /** Dose rates. */
  public static final Show ML_L = of(Units.ML_L, Units.TSP_GAL, 2);

  /** Resistances. */
  public static final Show OHM = of(Units.OHM, 3);

  /** Voltages. */
  public static final Show V = of(Units.V, 3);

  /** Currents. */
  public static final Show A = of(Units.A, 3);

  /** Charge of batteries. */
  public static final Show AH = of(Units.AH, 3);
}
