package leat.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * The root of a continuous function in a bracket.
 *
 * <p>Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4
 * (zeroin). Tests compare it with the Brent solver of Hipparchus. It is our own because loading
 * that library's solver costs a one-off sum a fifth of its start-up; see DEVELOPERS.md,
 * "Decisions".
 */
public final class Roots {
  private static final int MOST_STEPS = 200;

  private Roots() {}

  /**
   * The x in [low, high] with f(x) = 0, to full double precision.
   *
   * @param f a continuous function
   * @param low one end of the bracket, in the unit of x
   * @param high the other end
   * @return the root
   * @throws IllegalArgumentException if f has the same sign at both ends
   */
  public static double bracketed(DoubleUnaryOperator f, double low, double high) {
    double a = low;
    double b = high;
    double fa = f.applyAsDouble(a);
    double fb = f.applyAsDouble(b);
    if (fa == 0) {
      return a;
    }
    if (fb == 0) {
      return b;
    }
    if (!(fa < 0 && fb > 0) && !(fa > 0 && fb < 0)) {
      throw new IllegalArgumentException("no change of sign between " + low + " and " + high);
    }
    double c = a;
    double fc = fa;
    double step = b - a;
    double before = step;
    for (int i = 0; i < MOST_STEPS; i++) {
      if (Math.abs(fc) < Math.abs(fb)) {
        a = b;
        b = c;
        c = a;
        fa = fb;
        fb = fc;
        fc = fa;
      }
      double tolerance = 2 * Math.ulp(b) + Double.MIN_NORMAL;
      double half = 0.5 * (c - b);
      if (Math.abs(half) <= tolerance || fb == 0) {
        return b;
      }
      if (Math.abs(before) < tolerance || Math.abs(fa) <= Math.abs(fb)) {
        step = half;
        before = half;
      } else {
        double s = fb / fa;
        double p;
        double q;
        if (a == c) {
          p = 2 * half * s;
          q = 1 - s;
        } else {
          double u = fa / fc;
          double r = fb / fc;
          p = s * (2 * half * u * (u - r) - (b - a) * (r - 1));
          q = (u - 1) * (r - 1) * (s - 1);
        }
        if (p > 0) {
          q = -q;
        } else {
          p = -p;
        }
        if (2 * p < Math.min(3 * half * q - Math.abs(tolerance * q), Math.abs(before * q))) {
          before = step;
          step = p / q;
        } else {
          step = half;
          before = half;
        }
      }
      a = b;
      fa = fb;
      b += Math.abs(step) > tolerance ? step : Math.copySign(tolerance, half);
      fb = f.applyAsDouble(b);
      if ((fb > 0) == (fc > 0)) {
        c = a;
        fc = fa;
        step = b - a;
        before = step;
      }
    }
    return b;
  }
}
