package leat.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;

class NonNegativeLeastSquaresTest {
  private static double[][] columns(Random random, int n, int m) {
    double[][] columns = new double[n][m];
    for (double[] column : columns) {
      for (int i = 0; i < m; i++) {
        column[i] = random.nextGaussian();
      }
      double length = new ArrayRealVector(column).getNorm();
      for (int i = 0; i < m; i++) {
        column[i] /= length;
      }
    }
    return columns;
  }

  private static double[] right(Random random, int m) {
    return random.doubles(m, -1, 1).toArray();
  }

  private static Array2DRowRealMatrix matrix(double[][] columns) {
    return (Array2DRowRealMatrix) new Array2DRowRealMatrix(columns).transpose();
  }

  private static double missed(double[][] columns, double[] x, double[] b) {
    return matrix(columns)
        .operate(new ArrayRealVector(x))
        .subtract(new ArrayRealVector(b))
        .getNorm();
  }

  /** Least miss of every set of columns whose own least squares are not negative (SVD). */
  private static double bestOfAllSets(double[][] columns, double[] b) {
    double best = new ArrayRealVector(b).getNorm();
    for (int set = 1; set < 1 << columns.length; set++) {
      double[][] some = new double[Integer.bitCount(set)][];
      int k = 0;
      for (int j = 0; j < columns.length; j++) {
        if ((set >> j & 1) == 1) {
          some[k++] = columns[j];
        }
      }
      RealVector x =
          new SingularValueDecomposition(matrix(some)).getSolver().solve(new ArrayRealVector(b));
      if (x.getMinValue() >= -1e-12) {
        best = Math.min(best, missed(some, x.toArray(), b));
      }
    }
    return best;
  }

  /**
   * Columns of either sign, so that salts once taken must be given up again: the least miss of all
   * sets, and the conditions of Karush, Kuhn and Tucker.
   */
  @Test
  void asGoodAsTheBestOfAllSets() {
    for (int seed = 0; seed < 1000; seed++) {
      Random random = new Random(seed);
      int m = 1 + random.nextInt(6);
      double[][] columns = columns(random, 1 + random.nextInt(6), m);
      double[] b = right(random, m);
      double[] x = NonNegativeLeastSquares.solve(columns, b);
      assertThat(missed(columns, x, b))
          .as("seed " + seed)
          .isCloseTo(bestOfAllSets(columns, b), within(1e-9));
      double[] rest = matrix(columns).operate(new ArrayRealVector(x)).toArray();
      for (int j = 0; j < x.length; j++) {
        assertThat(x[j]).as("seed " + seed).isNotNegative();
        double gradient = 0;
        for (int i = 0; i < m; i++) {
          gradient += columns[j][i] * (b[i] - rest[i]);
        }
        assertThat(gradient).as("seed " + seed).isLessThan(1e-9);
        if (x[j] > 0) {
          assertThat(gradient).as("seed " + seed).isCloseTo(0, within(1e-9));
        }
      }
    }
  }

  /** What is met at all is met in full, though one of two equal columns is enough. */
  @Test
  void equalColumnsAreNoTrouble() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      double[][] three = columns(random, 3, 4);
      double[][] columns = {three[0], three[1], three[0].clone(), three[2], three[1].clone()};
      double[] b = new double[4];
      for (int i = 0; i < 4; i++) {
        b[i] = 2 * three[0][i] + 3 * three[1][i] + (seed % 2) * three[2][i];
      }
      double[] x = NonNegativeLeastSquares.solve(columns, b);
      assertThat(missed(columns, x, b)).as("seed " + seed).isLessThan(1e-9);
      assertThat(x[0] + x[2]).isCloseTo(2, within(1e-8));
      assertThat(x[1] + x[4]).isCloseTo(3, within(1e-8));
    }
  }

  /** In other units the answer is the same: what counts as nought goes with the right side. */
  @Test
  void theUnitsDoNotMatter() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      double[][] columns = columns(random, 4, 5);
      double[] b = right(random, 5);
      double[] x = NonNegativeLeastSquares.solve(columns, b);
      for (double unit : new double[] {1e-9, 1e9}) {
        double[] scaled = NonNegativeLeastSquares.solve(columns, times(b, unit));
        for (int j = 0; j < x.length; j++) {
          assertThat(scaled[j] / unit).as("seed " + seed).isCloseTo(x[j], within(1e-9));
        }
      }
    }
  }

  private static double[] times(double[] b, double unit) {
    return new ArrayRealVector(b).mapMultiply(unit).toArray();
  }

  /** Least squares on chosen columns against the QR decomposition of Hipparchus. */
  @Test
  void onSomeColumns() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      double[][] columns = columns(random, 5, 6);
      double[] b = right(random, 6);
      boolean[] chosen = {true, seed % 2 == 0, false, true, seed % 3 == 0};
      double[] x = LeastSquares.onSupport(columns, chosen, b);
      int n = 0;
      double[][] some = new double[5][];
      for (int j = 0; j < 5; j++) {
        if (chosen[j]) {
          some[n++] = columns[j];
        }
      }
      double[] want =
          new QRDecomposition(matrix(java.util.Arrays.copyOf(some, n)))
              .getSolver()
              .solve(new ArrayRealVector(b))
              .toArray();
      int k = 0;
      for (int j = 0; j < 5; j++) {
        assertThat(x[j]).as("seed " + seed).isCloseTo(chosen[j] ? want[k++] : 0, within(1e-9));
      }
    }
  }
}
