package leat.solution.recipes;

import java.util.Arrays;
import java.util.List;
import leat.solution.Element;
import leat.solution.Elements;
import leat.solution.LeastMass;
import leat.solution.LeastSquares;
import leat.solution.NonNegativeLeastSquares;
import leat.solution.Salt;

/**
 * The arithmetic of {@link RecipeFit}: asked elements and salts as a scaled matrix, the
 * non-negative answer, and the lightest one when there are several.
 *
 * <p>Several answers exist only when columns at nought gradient are dependent. The lightest is a
 * corner of the set of answers; another answer exists when a column outside that corner can be
 * above nought in the set.
 *
 * <p>Source: as {@link RecipeFit}.
 *
 * @param grams of each salt, g
 * @param alternative salts at 0 g that take part in other answers
 * @param idle salts that bring nothing asked
 */
record Weighing(double[] grams, boolean[] alternative, boolean[] idle) {
  private static final double ON_THE_FACE = 1e-9; // gradient relative to |b|
  private static final double SOME = 1e-7; // share of the answer that counts as above nought

  static Weighing lightest(List<Asked> asked, List<Salt> salts, double litres, Elements water) {
    int m = asked.size();
    int n = salts.size();
    double[] b = new double[m];
    double[][] columns = new double[n][m];
    for (int i = 0; i < m; i++) {
      Element element = asked.get(i).element();
      double scale = Missed.scale(asked.get(i).mgPerL());
      b[i] = (asked.get(i).mgPerL() - water.of(element)) / scale;
      for (int j = 0; j < n; j++) {
        columns[j][i] = 1000 * salts.get(j).fraction(element) / litres / scale;
      }
    }
    double[] lengths = new double[n];
    boolean[] idle = new boolean[n];
    for (int j = 0; j < n; j++) {
      lengths[j] = NonNegativeLeastSquares.norm(columns[j]);
      idle[j] = lengths[j] == 0;
      for (int i = 0; i < m && !idle[j]; i++) {
        columns[j][i] /= lengths[j];
      }
    }
    return solve(columns, b, lengths, idle);
  }

  private static Weighing solve(double[][] columns, double[] b, double[] lengths, boolean[] idle) {
    double[] x = NonNegativeLeastSquares.solve(columns, b);
    boolean[] alternative = new boolean[x.length];
    int[] face = face(columns, b, x, idle);
    if (face.length > count(x, 0)) {
      x = lighten(columns, b, x, lengths, face);
      alternative = alternatives(columns, b, x, face);
    }
    double[] grams = new double[x.length];
    for (int j = 0; j < x.length; j++) {
      grams[j] = idle[j] ? 0 : x[j] / lengths[j];
    }
    return new Weighing(grams, alternative, idle);
  }

  /** Columns that may be above nought in some answer: those of nought gradient. */
  private static int[] face(double[][] columns, double[] b, double[] x, boolean[] idle) {
    double[] r = NonNegativeLeastSquares.residual(columns, x, b);
    double nought = ON_THE_FACE * NonNegativeLeastSquares.norm(b);
    int[] face = new int[x.length];
    int k = 0;
    for (int j = 0; j < x.length; j++) {
      boolean flat = Math.abs(NonNegativeLeastSquares.dot(columns[j], r)) <= nought;
      if (x[j] > 0 || flat && !idle[j]) {
        face[k] = j;
        k++;
      }
    }
    return Arrays.copyOf(face, k);
  }

  private static double[] lighten(
      double[][] columns, double[] b, double[] x, double[] lengths, int[] face) {
    double lightest = Double.MAX_VALUE;
    for (int j : face) {
      lightest = Math.min(lightest, lengths[j]);
    }
    double[] mass = new double[face.length];
    for (int k = 0; k < face.length; k++) {
      mass[k] = lightest / lengths[face[k]];
    }
    double[] corner = LeastMass.solve(columnsOf(columns, face), brought(columns, b, x), mass);
    boolean[] support = new boolean[x.length];
    double some = SOME * SOME * largest(corner);
    for (int k = 0; k < face.length; k++) {
      support[face[k]] = corner[k] > some;
    }
    double[] polished = LeastSquares.onSupport(columns, support, b);
    for (int j = 0; j < x.length; j++) {
      polished[j] = Math.max(0, polished[j]); // rounding only: the corner has it above nought
    }
    return polished;
  }

  /** Salts at nought that can be above it with the same elements brought. */
  private static boolean[] alternatives(double[][] columns, double[] b, double[] x, int[] face) {
    boolean[] can = new boolean[x.length];
    double[] brought = brought(columns, b, x);
    double[][] own = columnsOf(columns, face);
    for (int k = 0; k < face.length; k++) {
      if (x[face[k]] == 0) {
        double[] most = new double[face.length];
        most[k] = -1;
        can[face[k]] = LeastMass.solve(own, brought, most)[k] > SOME * largest(x);
      }
    }
    return can;
  }

  private static double[] brought(double[][] columns, double[] b, double[] x) {
    double[] left = NonNegativeLeastSquares.residual(columns, x, b);
    double[] brought = new double[b.length];
    for (int i = 0; i < b.length; i++) {
      brought[i] = b[i] - left[i];
    }
    return brought;
  }

  private static double[][] columnsOf(double[][] columns, int[] face) {
    double[][] some = new double[face.length][];
    for (int k = 0; k < face.length; k++) {
      some[k] = columns[face[k]];
    }
    return some;
  }

  private static int count(double[] x, double above) {
    int n = 0;
    for (double value : x) {
      n += value > above ? 1 : 0;
    }
    return n;
  }

  private static double largest(double[] x) {
    double largest = 0;
    for (double value : x) {
      largest = Math.max(largest, value);
    }
    return largest;
  }
}
