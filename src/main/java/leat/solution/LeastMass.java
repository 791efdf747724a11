package leat.solution;

/**
 * A small linear programme: minimise c x over A x = b, x >= 0, where a feasible x exists and the
 * minimum is bounded. Two-phase simplex with Bland's rule, which cannot cycle.
 *
 * <p>Recipes use it when several weighings bring the same elements: the lightest is taken.
 *
 * <p>Source: R. G. Bland, Math. Oper. Res. 2 (1977) 103.
 */
public final class LeastMass {
  private static final double NOUGHT = 1e-10;
  private static final int MOST_ROUNDS = 10_000;

  private final int rows;
  private final int columns;
  private final double[][] table; // rows x (columns + rows artificial + right side)
  private final int[] basis;

  private LeastMass(double[][] a, double[] b) {
    rows = b.length;
    columns = a.length;
    table = new double[rows][columns + rows + 1];
    basis = new int[rows];
    for (int i = 0; i < rows; i++) {
      double sign = b[i] < 0 ? -1 : 1;
      for (int j = 0; j < columns; j++) {
        table[i][j] = sign * a[j][i];
      }
      table[i][columns + i] = 1;
      table[i][columns + rows] = sign * b[i];
      basis[i] = columns + i;
    }
  }

  /**
   * The minimiser, at a corner.
   *
   * @param a columns of A, at least one
   * @param b right side
   * @param cost one for each column
   */
  public static double[] solve(double[][] a, double[] b, double[] cost) {
    LeastMass programme = new LeastMass(a, b);
    double[] artificial = new double[programme.columns + programme.rows];
    java.util.Arrays.fill(artificial, programme.columns, artificial.length, 1);
    programme.minimise(artificial, artificial.length);
    programme.driveOut();
    double[] real = java.util.Arrays.copyOf(cost, artificial.length);
    programme.minimise(real, programme.columns);
    return programme.corner();
  }

  private void minimise(double[] cost, int width) {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      int enter = -1;
      for (int j = 0; j < width && enter < 0; j++) {
        if (reduced(cost, j) < -NOUGHT) {
          enter = j;
        }
      }
      int leave = enter < 0 ? -1 : leaving(enter);
      if (leave < 0) {
        return;
      }
      pivot(leave, enter);
    }
    throw new IllegalStateException("no end to the corners");
  }

  private double reduced(double[] cost, int j) {
    double sum = cost[j];
    for (int i = 0; i < rows; i++) {
      sum -= cost[basis[i]] * table[i][j];
    }
    return sum;
  }

  private int leaving(int enter) {
    int leave = -1;
    double least = 0;
    for (int i = 0; i < rows; i++) {
      if (table[i][enter] > NOUGHT) {
        double ratio = table[i][columns + rows] / table[i][enter];
        boolean ties = leave >= 0 && ratio == least && basis[i] < basis[leave];
        if (leave < 0 || ratio < least || ties) {
          leave = i;
          least = ratio;
        }
      }
    }
    return leave;
  }

  /** Artificial unknowns left in the basis at nought give way, or their row says nothing new. */
  private void driveOut() {
    for (int i = 0; i < rows; i++) {
      if (basis[i] >= columns) {
        int enter = 0;
        for (int j = 1; j < columns; j++) {
          if (Math.abs(table[i][j]) > Math.abs(table[i][enter])) {
            enter = j;
          }
        }
        if (Math.abs(table[i][enter]) > NOUGHT) {
          pivot(i, enter);
        } else {
          java.util.Arrays.fill(table[i], 0, columns, 0);
        }
      }
    }
  }

  private void pivot(int row, int column) {
    double by = table[row][column];
    for (int j = 0; j < table[row].length; j++) {
      table[row][j] /= by;
    }
    for (int i = 0; i < rows; i++) {
      double factor = table[i][column];
      if (i != row && factor != 0) {
        for (int j = 0; j < table[i].length; j++) {
          table[i][j] -= factor * table[row][j];
        }
      }
    }
    basis[row] = column;
  }

  private double[] corner() {
    double[] x = new double[columns];
    for (int i = 0; i < rows; i++) {
      if (basis[i] < columns) {
        x[basis[i]] = Math.max(0, table[i][columns + rows]);
      }
    }
    return x;
  }
}
