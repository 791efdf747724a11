package leat.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;

/**
 * Second route: the least of all corners, each found by the singular values of Hipparchus. (Not its
 * simplex solver: of 4000 such programmes it gave two answers dearer than ours, which were
 * feasible.)
 */
class LeastMassTest {
  private static double least(double[][] a, double[] b, double[] cost) {
    double least = new ArrayRealVector(b).getNorm() == 0 ? 0 : Double.MAX_VALUE;
    for (int set = 1; set < 1 << a.length; set++) {
      if (Integer.bitCount(set) <= b.length) {
        double[][] some = new double[Integer.bitCount(set)][];
        double[] price = new double[some.length];
        int k = 0;
        for (int j = 0; j < a.length; j++) {
          if ((set >> j & 1) == 1) {
            some[k] = a[j];
            price[k++] = cost[j];
          }
        }
        RealMatrix matrix = new Array2DRowRealMatrix(some).transpose();
        RealVector right = new ArrayRealVector(b);
        RealVector x = new SingularValueDecomposition(matrix).getSolver().solve(right);
        if (x.getMinValue() >= -1e-10 && matrix.operate(x).getDistance(right) < 1e-9) {
          least = Math.min(least, x.dotProduct(new ArrayRealVector(price)));
        }
      }
    }
    return least;
  }

  private static void holds(double[][] a, double[] b, double[] cost, String as) {
    double[] x = LeastMass.solve(a, b, cost);
    double sum = 0;
    int used = 0;
    for (int j = 0; j < x.length; j++) {
      assertThat(x[j]).as(as).isFinite().isNotNegative();
      sum += cost[j] * x[j];
      used += x[j] > 1e-9 ? 1 : 0;
    }
    for (int i = 0; i < b.length; i++) {
      double got = 0;
      for (int j = 0; j < x.length; j++) {
        got += a[j][i] * x[j];
      }
      assertThat(got).as(as + ", row " + i).isCloseTo(b[i], within(1e-8));
    }
    assertThat(used).as(as + ", a corner").isLessThanOrEqualTo(b.length);
    assertThat(sum).as(as).isCloseTo(least(a, b, cost), within(1e-7));
  }

  /**
   * Whole numbers of either sign, right sides made of an answer with noughts in it: many corners
   * coincide, and in every third programme the last row repeats the first.
   */
  @Test
  void theLeastOfManyProgrammes() {
    for (int seed = 0; seed < 600; seed++) {
      Random random = new Random(seed);
      int m = 1 + random.nextInt(4);
      int n = 1 + random.nextInt(6);
      double[][] a = new double[n][m];
      double[] b = new double[m];
      double[] cost = new double[n];
      for (int j = 0; j < n; j++) {
        cost[j] = random.nextInt(6);
        double x = Math.max(0, random.nextInt(7) - 3);
        for (int i = 0; i < m; i++) {
          boolean again = i > 0 && i == m - 1 && seed % 3 == 0;
          a[j][i] = again ? 2 * a[j][0] : random.nextInt(7) - 3;
          b[i] += a[j][i] * x;
        }
      }
      holds(a, b, cost, "seed " + seed);
    }
  }

  /** Salts bring no less than nothing; what one of them can be at most is a cost of -1. */
  @Test
  void theMostOfOneSalt() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      int m = 1 + random.nextInt(4);
      int n = 1 + random.nextInt(6);
      double[][] a = new double[n][m];
      double[] b = new double[m];
      for (int j = 0; j < n; j++) {
        double x = Math.max(0, random.nextInt(7) - 3);
        a[j][random.nextInt(m)] = 0.5; // none brings nothing: the answers are bounded
        for (int i = 0; i < m; i++) {
          a[j][i] += random.nextInt(3) == 0 ? random.nextDouble() : 0;
          b[i] += a[j][i] * x;
        }
      }
      double[] cost = new double[n];
      cost[random.nextInt(n)] = -1;
      holds(a, b, cost, "seed " + seed);
    }
  }

  /**
   * Beale 1955, on which the first rule of the simplex method goes round for ever: the least is
   * -1/20, at x1 = 1/25, x3 = 1 (from memory, with slacks written out).
   */
  @Test
  void bealesProgrammeEnds() {
    double[][] a = {
      {0.25, 0.5, 0},
      {-60, -90, 0},
      {-1 / 25.0, -1 / 50.0, 1},
      {9, 3, 0},
      {1, 0, 0},
      {0, 1, 0},
      {0, 0, 1}
    };
    double[] b = {0, 0, 1};
    double[] cost = {-0.75, 150, -0.02, 6, 0, 0, 0};
    double[] x = LeastMass.solve(a, b, cost);
    assertThat(x[0]).isCloseTo(0.04, within(1e-9));
    assertThat(x[2]).isCloseTo(1, within(1e-9));
    holds(a, b, cost, "Beale");
  }
}
