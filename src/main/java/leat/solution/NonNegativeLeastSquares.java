package leat.solution;

import java.util.Arrays;

/**
 * Least squares with no unknown below nought: minimise |A x - b| over x >= 0.
 *
 * <p>The active-set method, with a Householder solution of each passive set. Our own because the
 * matrices are of ten columns and a general library's start-up would cost a one-off sum more than
 * the sum; tests compare it with that library and with a search of every support set.
 *
 * <p>Source: C. L. Lawson and R. J. Hanson, Solving Least Squares Problems, 1974, chapter 23. Check
 * values: sheet solution-recipe-inverse.csv.
 */
public final class NonNegativeLeastSquares {
  /** Gradient, relative to |column| |b|, that counts as nought. */
  static final double NOUGHT = 1e-10;

  private static final int ROUNDS_PER_COLUMN = 10;

  private final double[][] columns;
  private final double[] b;
  private final double size;
  private final boolean[] passive;
  private final boolean[] barred;
  private double[] x;

  private NonNegativeLeastSquares(double[][] columns, double[] b) {
    this.columns = columns;
    this.b = b;
    this.size = norm(b);
    this.passive = new boolean[columns.length];
    this.barred = new boolean[columns.length];
    this.x = new double[columns.length];
  }

  /**
   * The answer; its passive set has independent columns.
   *
   * @param columns of A, each of length 1 or 0
   * @param b right side
   */
  public static double[] solve(double[][] columns, double[] b) {
    NonNegativeLeastSquares problem = new NonNegativeLeastSquares(columns, b);
    problem.run();
    return problem.x;
  }

  private void run() {
    int rounds = ROUNDS_PER_COLUMN * (columns.length + 1);
    for (int round = 0; round < rounds; round++) {
      int next = steepest();
      if (next < 0) {
        return;
      }
      passive[next] = true;
      double[] tried = solvePassive();
      if (tried[next] <= 0) { // rounding: the column cannot help after all
        passive[next] = false;
        barred[next] = true;
        continue;
      }
      Arrays.fill(barred, false);
      while (step(tried)) {
        tried = solvePassive();
      }
    }
    throw new IllegalStateException("no end to the active sets");
  }

  private int steepest() {
    double[] r = residual(columns, x, b);
    int best = -1;
    double most = NOUGHT * size;
    for (int j = 0; j < columns.length; j++) {
      if (!passive[j] && !barred[j]) {
        double gradient = dot(columns[j], r);
        if (gradient > most) {
          most = gradient;
          best = j;
        }
      }
    }
    return best;
  }

  /** Goes towards the tried answer as far as it stays non-negative; true if it had to stop. */
  private boolean step(double[] tried) {
    double share = 1;
    int stops = -1;
    for (int j = 0; j < x.length; j++) {
      if (passive[j] && tried[j] <= 0) {
        double reach = x[j] / (x[j] - tried[j]);
        if (stops < 0 || reach < share) {
          share = reach;
          stops = j;
        }
      }
    }
    if (stops < 0) {
      x = tried;
      return false;
    }
    for (int j = 0; j < x.length; j++) {
      x[j] = passive[j] ? x[j] + share * (tried[j] - x[j]) : 0;
      if (passive[j] && (j == stops || x[j] <= 0)) {
        passive[j] = false;
        x[j] = 0;
      }
    }
    return true;
  }

  private double[] solvePassive() {
    return LeastSquares.onSupport(columns, passive, b);
  }

  /**
   * What a solution leaves unmet.
   *
   * @param columns columns of the matrix, -
   * @param x the solution, -
   * @param b the right side, -
   * @return b less the matrix times x, -
   */
  public static double[] residual(double[][] columns, double[] x, double[] b) {
    double[] r = b.clone();
    for (int j = 0; j < x.length; j++) {
      for (int i = 0; i < r.length; i++) {
        r[i] -= columns[j][i] * x[j];
      }
    }
    return r;
  }

  /**
   * Scalar product.
   *
   * @param u one vector, -
   * @param v the other, of the same length, -
   * @return sum of the products, -
   */
  public static double dot(double[] u, double[] v) {
    double sum = 0;
    for (int i = 0; i < u.length; i++) {
      sum += u[i] * v[i];
    }
    return sum;
  }

  /**
   * Length of a vector.
   *
   * @param v the vector, -
   * @return root of the sum of squares, -
   */
  public static double norm(double[] v) {
    return Math.sqrt(dot(v, v));
  }
}
