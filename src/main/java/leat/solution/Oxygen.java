package leat.solution;

import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;
import leat.numeric.Roots;
import leat.numeric.Validity;

/**
 * Oxygen that fresh water can hold in equilibrium with moist air.
 *
 * <pre>
 * ln C1 = -139.34411 + 1.575701E5/T - 6.642308E7/T^2 + 1.243800E10/T^3 - 8.621949E11/T^4
 * C = C1 P (1 - pw/P)(1 - th P) / ((1 - pw)(1 - th))
 * ln pw = 11.8571 - 3840.70/T - 216961/T^2
 * th = 0.000975 - 1.426E-5 t + 6.436E-8 t^2
 * P = 101.325 (1 - 2.25577E-5 h)^5.25588 kPa
 * </pre>
 *
 * C1 in mg/L at one atmosphere, T in kelvin, t in degrees Celsius, P and pw in atmospheres inside
 * the second line, h in metres. Salt at 2 mS/cm takes off less than 1 % and is left out. It is what
 * fits in, not what is in there.
 *
 * <p>Source: Benson and Krause 1984, as in Standard Methods 4500-O; standard atmosphere of ISO
 * 2533. Check values: solution-oxygen.csv (Garcia and Gordon 1992 agree to 0.1 %). What roots need:
 * common practice, no source.
 */
public final class Oxygen {
  /** Range of the fit; outside, it is refused. */
  public static final Validity VALID = Validity.of("water C", 0, 40);

  /** Altitudes over which the pressure was compared with the 1976 atmosphere, 0.02 %. */
  public static final Validity PRESSURE_VALID = Validity.of("altitude m", -100, 2400);

  /** The temperature that answers are compared with, C. */
  public static final double COMPARED_CELSIUS = 18;

  /** Below this roots suffer, mg/L (common practice). */
  public static final double ROOTS_LOW_MG_L = 4;

  /** Water at which roots need no more than that, C. */
  private static final double ROOTS_COOL_CELSIUS = 20;

  /** Warming that doubles what roots use, K (a doubling each 10 K: common practice). */
  private static final double DOUBLING_K = 10;

  /** Over this rot spreads easily, C (common practice). */
  public static final double WARM_CELSIUS = 26;

  /** A hot week's water, for comparison, C. */
  public static final double HOT_WEEK_CELSIUS = 29;

  /** Share of the standard atmosphere under which the air is thin enough to be told, -. */
  private static final double THIN_AIR = 0.995;

  /** Difference from 18 C worth telling, per cent. */
  private static final double WORTH_TELLING_PCT = 0.5;

  /** The standard atmosphere, kPa. */
  public static final double ATMOSPHERE_KPA = 101.325;

  private static final double ZERO_CELSIUS_K = 273.15;
  private static final double LAPSE_PER_M = 2.25577e-5;
  private static final double LAPSE_POWER = 5.25588;
  private static final double LOWEST_ALTITUDE_M = -500;
  private static final double HIGHEST_ALTITUDE_M = 9000;
  private static final double LOWEST_PRESSURE_KPA = 30;
  private static final double HIGHEST_PRESSURE_KPA = 110;

  /** Coefficients of ln C1 in powers of 1/T, C1 in mg/L, T in K. */
  private static final double[] LN_C1 = {
    -139.34411, 1.575701e5, -6.642308e7, 1.243800e10, -8.621949e11
  };

  /** Coefficients of ln pw in powers of 1/T, pw in atm, T in K. */
  private static final double[] LN_VAPOUR = {11.8571, -3840.70, -216961};

  /** Coefficients of th in powers of t, 1/atm, t in C. */
  private static final double[] THETA = {0.000975, -1.426e-5, 6.436e-8};

  private Oxygen() {}

  /**
   * What water holds at a place.
   *
   * @param celsius water temperature, C
   * @param pressureKpa station pressure, kPa
   * @param seaLevelMgL saturation at one atmosphere, mg/L
   * @param saturationMgL saturation here, mg/L
   * @param shareOf18Pct that over the saturation here at 18 C, per cent
   * @param fourIsPct what 4 mg/L is in per cent of saturation here
   * @param rootsNeedMgL what roots need at that temperature, mg/L
   */
  public record Answer(
      double celsius,
      double pressureKpa,
      double seaLevelMgL,
      double saturationMgL,
      double shareOf18Pct,
      double fourIsPct,
      double rootsNeedMgL) {
    /** Whether less fits in than roots need. */
    public boolean tooLittle() {
      return saturationMgL < rootsNeedMgL;
    }

    /** Whether the water is so warm that rot spreads easily. */
    public boolean warm() {
      return celsius > WARM_CELSIUS;
    }

    /** Whether the air is thinner than at the sea. */
    public boolean thinAir() {
      return pressureKpa < THIN_AIR * ATMOSPHERE_KPA;
    }

    /** How much more or less fits in than at 18 C, per cent without sign; 0 when about the same. */
    public double offPct() {
      double off = Math.abs(shareOf18Pct - 100);
      return off < WORTH_TELLING_PCT ? 0 : off;
    }

    /** Whether less fits in than at 18 C. */
    public boolean lessThanAt18() {
      return shareOf18Pct < 100;
    }
  }

  /**
   * What roots need of oxygen in the water: 4 mg/L when it is cool, doubled for each 10 K over 20
   * C, for they use more as it warms.
   *
   * @param celsius water temperature, C
   * @return dissolved oxygen, mg/L
   */
  public static double rootsNeedMgL(double celsius) {
    double over = Math.max(0, celsius - ROOTS_COOL_CELSIUS);
    return ROOTS_LOW_MG_L * Math.pow(2, over / DOUBLING_K);
  }

  /**
   * The warmest water that can still hold what roots need: even at 30 kPa ice-cold water holds 4.3
   * mg/L.
   *
   * @param pressureKpa station pressure, kPa
   * @return temperature, C
   * @throws Impossible if the pressure is outside 30 to 110 kPa
   */
  public static double celsiusEnough(double pressureKpa) {
    return Roots.bracketed(
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double celsius) {
            return saturationMgL(celsius, pressureKpa) - rootsNeedMgL(celsius);
          }
        },
        VALID.low(0),
        VALID.high(0));
  }

  /**
   * Saturation under a measured pressure.
   *
   * @param celsius water temperature, C
   * @param pressureKpa station pressure, kPa; not the sea-level value of a forecast
   * @return saturation and what it means
   * @throws Impossible if the water is outside 0 to 40 C or the pressure outside 30 to 110 kPa
   */
  public static Answer atPressure(double celsius, double pressureKpa) {
    double here = saturationMgL(celsius, pressureKpa);
    double cool = saturationMgL(COMPARED_CELSIUS, pressureKpa);
    return new Answer(
        celsius,
        pressureKpa,
        saturationMgL(celsius, ATMOSPHERE_KPA),
        here,
        100 * here / cool,
        100 * ROOTS_LOW_MG_L / here,
        rootsNeedMgL(celsius));
  }

  /**
   * Oxygen at saturation.
   *
   * @param celsius water temperature, C
   * @param pressureKpa station pressure, kPa
   * @return dissolved oxygen, mg/L
   * @throws Impossible if the water is outside 0 to 40 C or the pressure outside 30 to 110 kPa
   */
  public static double saturationMgL(double celsius, double pressureKpa) {
    Impossible.unlessWithin("water", celsius, 0, 40, "the oxygen tables end at 0 and 40 C");
    Impossible.unlessWithin(
        "pressure",
        pressureKpa,
        LOWEST_PRESSURE_KPA,
        HIGHEST_PRESSURE_KPA,
        "a station pressure lies between 30 and 110 kPa");
    double inverse = 1 / (celsius + ZERO_CELSIUS_K);
    double oneAtmosphere = Math.exp(power(LN_C1, inverse));
    double vapour = Math.exp(power(LN_VAPOUR, inverse));
    double theta = power(THETA, celsius);
    double p = pressureKpa / ATMOSPHERE_KPA;
    return oneAtmosphere * p * (1 - vapour / p) * (1 - theta * p) / ((1 - vapour) * (1 - theta));
  }

  /**
   * The temperature at which water just holds so much: saturation falls as water warms.
   *
   * @param saturationMgL dissolved oxygen, mg/L
   * @param pressureKpa station pressure, kPa
   * @return temperature, C; 0 or 40 where the fit ends before it is met
   * @throws Impossible if the oxygen is not above 0 or the pressure outside 30 to 110 kPa
   */
  public static double celsiusHolding(double saturationMgL, double pressureKpa) {
    Impossible.unlessPositive("oxygen", saturationMgL);
    if (saturationMgL(VALID.low(0), pressureKpa) <= saturationMgL) {
      return VALID.low(0);
    }
    if (saturationMgL(VALID.high(0), pressureKpa) >= saturationMgL) {
      return VALID.high(0);
    }
    return Roots.bracketed(
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double celsius) {
            return saturationMgL(celsius, pressureKpa) - saturationMgL;
          }
        },
        VALID.low(0),
        VALID.high(0));
  }

  /**
   * Pressure of the standard atmosphere.
   *
   * @param altitudeM height above the sea, m
   * @return station pressure, kPa
   * @throws Impossible if the altitude is outside -500 to 9000 m
   */
  public static double pressureKpa(double altitudeM) {
    Impossible.unlessWithin(
        "altitude",
        altitudeM,
        LOWEST_ALTITUDE_M,
        HIGHEST_ALTITUDE_M,
        "an altitude lies between -500 m and 9000 m");
    return ATMOSPHERE_KPA * Math.pow(1 - LAPSE_PER_M * altitudeM, LAPSE_POWER);
  }

  private static double power(double[] coefficients, double x) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }
}
