package leat.solution;

/**
 * Least squares on a chosen set of independent columns, by Householder reflections.
 *
 * <p>Source: G. H. Golub, Numer. Math. 7 (1965) 206.
 */
public final class LeastSquares {
  private LeastSquares() {}

  /**
   * The x that minimises |A x - b| with x = 0 off the chosen columns.
   *
   * @param columns of A
   * @param chosen columns to use, independent
   * @param b right side
   */
  public static double[] onSupport(double[][] columns, boolean[] chosen, double[] b) {
    int n = 0;
    for (boolean use : chosen) {
      n += use ? 1 : 0;
    }
    int[] index = new int[n];
    double[][] q = new double[n][];
    int k = 0;
    for (int j = 0; j < chosen.length; j++) {
      if (chosen[j]) {
        index[k] = j;
        q[k] = columns[j].clone();
        k++;
      }
    }
    double[] right = b.clone();
    double[] diagonal = new double[n];
    for (int j = 0; j < n; j++) {
      diagonal[j] = reflect(q, j, right);
    }
    double[] x = new double[columns.length];
    for (int j = n - 1; j >= 0; j--) {
      double sum = right[j];
      for (int l = j + 1; l < n; l++) {
        sum -= q[l][j] * x[index[l]];
      }
      x[index[j]] = diagonal[j] == 0 ? 0 : sum / diagonal[j];
    }
    return x;
  }

  /** Turns column j onto its axis, and the later columns and the right side with it. */
  private static double reflect(double[][] q, int j, double[] right) {
    double[] v = q[j];
    double square = 0;
    for (int i = j; i < v.length; i++) {
      square += v[i] * v[i];
    }
    if (square == 0) {
      return 0;
    }
    double alpha = v[j] > 0 ? -Math.sqrt(square) : Math.sqrt(square);
    double scale = square - alpha * v[j];
    v[j] -= alpha;
    for (int l = j + 1; l < q.length; l++) {
      turn(v, q[l], j, scale);
    }
    turn(v, right, j, scale);
    return alpha;
  }

  private static void turn(double[] v, double[] u, int from, double scale) {
    double sum = 0;
    for (int i = from; i < v.length; i++) {
      sum += v[i] * u[i];
    }
    double factor = sum / scale;
    for (int i = from; i < v.length; i++) {
      u[i] -= factor * v[i];
    }
  }
}
