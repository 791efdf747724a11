package leat.hydraulics;

import java.util.function.DoubleUnaryOperator;

/**
 * An integral by the Gauss and Kronrod rule of 7 and 15 points, halved where the two differ.
 *
 * <p>Source: A. S. Kronrod 1965, nodes and weights as in QUADPACK (R. Piessens et al. 1983, qk15);
 * checked in the tests by powers of x.
 */
final class Quadrature {
  private static final double[] NODE = {
    0.991455371120812639206854697526329,
    0.949107912342758524526189684047851,
    0.864864423359769072789712788640926,
    0.741531185599394439863864773280788,
    0.586087235467691130294144691258459,
    0.405845151377397166906606412076961,
    0.207784955007898467600689403773245
  };
  private static final double[] KRONROD = {
    0.022935322010529224963732008058970,
    0.063092092629978553290700663189204,
    0.104790010322250183839876322541518,
    0.140653259715525918745189590510238,
    0.169004726639267902826583426598550,
    0.190350578064785409913256402421014,
    0.204432940075298892414161999234649
  };
  private static final double KRONROD_MIDDLE = 0.209482141084727828012999174891714;
  private static final double[] GAUSS = {
    0.129484966168869693270611432679082,
    0.279705391489276667901467771423780,
    0.381830050505118944950369775488975
  };
  private static final double GAUSS_MIDDLE = 0.417959183673469387755102040816327;
  private static final int MOST_HALVINGS = 14;

  private Quadrature() {}

  /** Integral of {@code f} from {@code low} to {@code high}; the ends are never asked for. */
  static double integral(DoubleUnaryOperator f, double low, double high, double relativeError) {
    double[] rules = new double[2];
    panel(f, low, high, rules);
    double allowed = relativeError * Math.abs(rules[0]);
    return halve(f, low, high, rules[0], rules[1], allowed, MOST_HALVINGS);
  }

  private static double halve(
      DoubleUnaryOperator f, double a, double b, double fine, double coarse, double off, int left) {
    if (Math.abs(fine - coarse) <= off || left == 0) {
      return fine;
    }
    double middle = 0.5 * (a + b);
    double[] rules = new double[2];
    panel(f, a, middle, rules);
    double lower = halve(f, a, middle, rules[0], rules[1], off / 2, left - 1);
    panel(f, middle, b, rules);
    return lower + halve(f, middle, b, rules[0], rules[1], off / 2, left - 1);
  }

  private static void panel(DoubleUnaryOperator f, double a, double b, double[] rules) {
    double centre = 0.5 * (a + b);
    double half = 0.5 * (b - a);
    double middle = f.applyAsDouble(centre);
    double fine = KRONROD_MIDDLE * middle;
    double coarse = GAUSS_MIDDLE * middle;
    for (int i = 0; i < NODE.length; i++) {
      double off = half * NODE[i];
      double pair = f.applyAsDouble(centre - off) + f.applyAsDouble(centre + off);
      fine += KRONROD[i] * pair;
      if ((i & 1) == 1) {
        coarse += GAUSS[i / 2] * pair;
      }
    }
    rules[0] = fine * half;
    rules[1] = coarse * half;
  }
}
