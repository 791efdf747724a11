package leat.log;

import leat.numeric.Impossible;

/**
 * Why the EC changed over a span without pouring: water that left (concentration), rain that came
 * (dilution), salt that was taken. The three add up to the change exactly.
 *
 * <pre>
 * U = V0 + rain - V1,  Lm(a,b) = (b - a)/ln(b/a),  E = Lm(EC0, EC1),  L = Lm(V0, V1)
 * by concentration = E U/L    by dilution = -E rain/L    by salt = E ln(EC1 V1/(EC0 V0))</pre>
 *
 * <p>Source: logarithmic-mean split, as Ang (2004) is cited in public abstracts; exact for constant
 * rates inside the span. Check values: log-ec-split.csv.
 *
 * @param used litres the plants drew, in the unit of the volumes
 * @param byConcentration change of EC by water that left, mS/cm
 * @param byDilution change of EC by rain, mS/cm
 * @param bySalt change of EC by salt taken, mS/cm
 * @param uptake EC of what the plants drew, mS/cm; NaN when they drew nothing
 */
public record EcSplit(
    double used, double byConcentration, double byDilution, double bySalt, double uptake) {
  /**
   * Splits a change.
   *
   * @param v0 volume at the start, m3 (any unit, one for all volumes)
   * @param ec0 EC at the start, mS/cm
   * @param v1 volume at the end, m3
   * @param ec1 EC at the end, mS/cm
   * @param rain rain in between, m3
   * @throws Impossible if a volume or an EC is not above 0, or the rain is negative
   */
  public static EcSplit of(double v0, double ec0, double v1, double ec1, double rain) {
    Impossible.unlessPositive("volume", v0);
    Impossible.unlessPositive("volume", v1);
    Impossible.unlessPositive("ec", ec0);
    Impossible.unlessPositive("ec", ec1);
    Impossible.ifNegative("rain", rain);
    double used = v0 + rain - v1;
    double e = logMean(ec0, ec1);
    double v = logMean(v0, v1);
    return new EcSplit(
        used,
        e * used / v,
        -e * rain / v,
        e * Math.log(ec1 * v1 / (ec0 * v0)),
        used == 0 ? Double.NaN : (ec0 * v0 - ec1 * v1) / used);
  }

  private static double logMean(double a, double b) {
    double x = (b - a) / a;
    return x == 0 ? a : (b - a) / Math.log1p(x);
  }
}
