package leat.solution.acid;

import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;
import leat.numeric.Roots;
import leat.numeric.Validity;

/**
 * The carbonate system of a fresh water at one temperature: how alkalinity, pH and dissolved
 * carbonate hang together.
 *
 * <pre>
 * log K = a + b T + c/T + d log10 T + f/T^2        T in kelvin
 * h = 10^-pH, D = h^2 + K1 h + K1 K2, a1 = K1 h/D, a2 = K1 K2/D
 * Alk = CT (a1 + 2 a2) + Kw/h - h                  closed
 * Alk = KH p (K1/h + 2 K1 K2/h^2) + Kw/h - h       open to carbon dioxide at p
 * </pre>
 *
 * Activities are left out: at an ionic strength of 0.01 mol/L acid needs fall by about 2 %.
 *
 * <p>Source: Plummer and Busenberg 1982, Geochim. Cosmochim. Acta 46, 1011, for all four constants.
 * Check values: solution-acid.csv.
 */
public final class Carbonate {
  /** Range of the constants; below 0 and above 90 C they are refused. */
  public static final Validity VALID = Validity.of("water C", 0, 90);

  /** Temperature taken when none is told, C. */
  public static final double USUAL_CELSIUS = 20;

  /** Carbon dioxide of open air, parts per million by volume. */
  public static final double OPEN_AIR_PPM = 420;

  /** Carbon dioxide of a closed room or a tank with busy roots, parts per million by volume. */
  public static final double STUFFY_AIR_PPM = 2000;

  private static final double ZERO_CELSIUS_K = 273.15;
  private static final double[] LOG_K1 = {-356.3094, -0.06091964, 21834.37, 126.8339, -1684915};
  private static final double[] LOG_K2 = {-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9};
  private static final double[] LOG_KW = {-283.9710, -0.05069842, 13323.00, 102.24447, -1119669};
  private static final double[] LOG_KH = {108.3865, 0.01985076, -6919.53, -40.45154, 669365};

  private final double k1;
  private final double k2;
  private final double kw;
  private final double kh;

  private Carbonate(double k1, double k2, double kw, double kh) {
    this.k1 = k1;
    this.k2 = k2;
    this.kw = kw;
    this.kh = kh;
  }

  /**
   * The constants at a temperature.
   *
   * @param celsius water temperature, C
   * @return the system
   * @throws Impossible if the temperature lies outside 0 to 90 C
   */
  public static Carbonate at(double celsius) {
    Impossible.unlessWithin(
        "temperature", celsius, 0, 90, "the constants of carbonic acid are known from 0 to 90 C");
    double t = celsius + ZERO_CELSIUS_K;
    return new Carbonate(
        constant(LOG_K1, t), constant(LOG_K2, t), constant(LOG_KW, t), constant(LOG_KH, t));
  }

  private static double constant(double[] k, double t) {
    return Math.pow(10, k[0] + k[1] * t + k[2] / t + k[3] * Math.log10(t) + k[4] / (t * t));
  }

  /** pK of carbonic acid, -. */
  public double pk1() {
    return -Math.log10(k1);
  }

  /** pK of hydrogencarbonate, -. */
  public double pk2() {
    return -Math.log10(k2);
  }

  /** pK of water, -. */
  public double pkw() {
    return -Math.log10(kw);
  }

  /** log10 of Henry's constant in mol/(L atm). */
  public double logKh() {
    return Math.log10(kh);
  }

  /**
   * Dissolved carbonate of a water.
   *
   * @param alkalinityMeqL alkalinity, meq/L
   * @param ph its pH, -
   * @return all carbonate species together, mmol/L
   * @throws Impossible if such a water cannot be: its pH is further from neutral than its
   *     alkalinity allows
   */
  public double totalMmolL(double alkalinityMeqL, double ph) {
    if (!canBe(alkalinityMeqL, ph)) {
      throw new Impossible(
          "ph", "a water of so little alkalinity cannot have so high a pH: measure both again");
    }
    double h = Math.pow(10, -ph);
    return (alkalinityMeqL - 1000 * (kw / h - h)) / charge(h);
  }

  /**
   * Whether a water of this alkalinity and pH can be: it needs no negative carbonate.
   *
   * @param alkalinityMeqL alkalinity, meq/L
   * @param ph its pH, -
   */
  public boolean canBe(double alkalinityMeqL, double ph) {
    double h = Math.pow(10, -ph);
    return alkalinityMeqL >= 1000 * (kw / h - h);
  }

  /**
   * Dissolved carbon dioxide of such a water over what one atmosphere of the gas holds in it: over
   * 1 it would fizz, so that alkalinity and pH hardly belong together.
   *
   * @param totalMmolL carbonate species together, mmol/L
   * @param ph its pH, -
   */
  public double fizz(double totalMmolL, double ph) {
    double h = Math.pow(10, -ph);
    double dissolved = totalMmolL * h * h / (h * h + k1 * h + k1 * k2);
    return 0.001 * dissolved / kh;
  }

  private double charge(double h) {
    return (k1 * h + 2 * k1 * k2) / (h * h + k1 * h + k1 * k2);
  }

  /**
   * Alkalinity of a closed water.
   *
   * @param totalMmolL carbonate species together, mmol/L
   * @param ph pH, -
   * @return alkalinity, meq/L; negative when strong acid is over
   */
  public double closedMeqL(double totalMmolL, double ph) {
    double h = Math.pow(10, -ph);
    return totalMmolL * charge(h) + 1000 * (kw / h - h);
  }

  /**
   * Alkalinity of a water in equilibrium with air.
   *
   * @param ppm carbon dioxide in the air, parts per million by volume at one atmosphere
   * @param ph pH, -
   * @return alkalinity, meq/L; negative when strong acid is over
   */
  public double openMeqL(double ppm, double ph) {
    double h = Math.pow(10, -ph);
    double dissolved = kh * ppm * 1e-6;
    return 1000 * (dissolved * (k1 / h + 2 * k1 * k2 / (h * h)) + kw / h - h);
  }

  /**
   * pH of a closed water after acid: right for the first hour.
   *
   * @param alkalinityMeqL alkalinity before, meq/L
   * @param totalMmolL carbonate species together, mmol/L
   * @param acid the acid
   * @param acidMmolL poured, mmol/L
   * @return pH, -
   * @throws Impossible if it leaves 0 to 14
   */
  public double closedPh(double alkalinityMeqL, double totalMmolL, Acid acid, double acidMmolL) {
    return balanced(
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double ph) {
            return alkalinityMeqL - acidMmolL * acid.protons(ph) - closedMeqL(totalMmolL, ph);
          }
        });
  }

  /**
   * pH of a closed water.
   *
   * @param alkalinityMeqL alkalinity, meq/L; negative when strong acid is over
   * @param totalMmolL carbonate species together, mmol/L
   * @return pH, -
   * @throws Impossible if it leaves 0 to 14
   */
  public double closedPh(double alkalinityMeqL, double totalMmolL) {
    return balanced(
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double ph) {
            return alkalinityMeqL - closedMeqL(totalMmolL, ph);
          }
        });
  }

  /**
   * pH towards which a water with acid in it climbs in the open.
   *
   * @param alkalinityMeqL alkalinity before the acid, meq/L
   * @param ppm carbon dioxide in the air, parts per million by volume at one atmosphere
   * @param acid the acid
   * @param acidMmolL poured, mmol/L
   * @return pH, -
   * @throws Impossible if it leaves 0 to 14
   */
  public double openPh(double alkalinityMeqL, double ppm, Acid acid, double acidMmolL) {
    return balanced(
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double ph) {
            return alkalinityMeqL - acidMmolL * acid.protons(ph) - openMeqL(ppm, ph);
          }
        });
  }

  /**
   * pH that a water comes to in the open.
   *
   * @param alkalinityMeqL alkalinity, meq/L; negative when strong acid is over
   * @param ppm carbon dioxide in the air, parts per million by volume at one atmosphere
   * @return pH, -
   * @throws Impossible if it leaves 0 to 14
   */
  public double openPh(double alkalinityMeqL, double ppm) {
    return balanced(
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double ph) {
            return alkalinityMeqL - openMeqL(ppm, ph);
          }
        });
  }

  private static double balanced(DoubleUnaryOperator excess) {
    if (excess.applyAsDouble(0) <= 0 || excess.applyAsDouble(14) >= 0) {
      throw new Impossible("volume", "so much acid or alkalinity leaves the range of pH 0 to 14");
    }
    return Roots.bracketed(excess, 0, 14);
  }
}
