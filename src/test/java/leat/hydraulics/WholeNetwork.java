package leat.hydraulics;

import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A second route: all flows and the head at the manifold at once, by Newton with Hipparchus' LU;
 * friction written out anew (64/Re, the straight line, Colebrook by Hipparchus' Brent). Nothing of
 * the main code but the numbers of pipes and pump. A tower that would run backwards is dropped.
 */
final class WholeNetwork {
  private static final double G = 9.80665;

  private final double shutoff;
  private final double most;
  private final Manifold towers;
  private final PipeSection common;
  private final double nu;

  /** A parabola's pump; {@code common} or null. */
  WholeNetwork(double shutoff, double most, PipeSection common, Manifold towers) {
    this.shutoff = shutoff;
    this.most = most;
    this.common = common;
    this.towers = towers;
    Line line = towers.riser(0).line();
    this.nu = line.velocity(0, 1e-4) * line.section(0).bore() / line.reynolds(0, 1e-4);
  }

  /** Flows, m3/s, 0 for a dry or closed tower. */
  double[] flows() {
    int n = towers.size();
    boolean[] off = new boolean[n];
    for (int i = 0; i < n; i++) {
      off[i] = towers.isClosed(i);
    }
    while (true) {
      double[] x = newton(off);
      int tallest = -1;
      for (int i = 0; i < n; i++) {
        boolean dry = !off[i] && x[n] <= towers.riser(i).lift();
        if (dry && (tallest < 0 || lift(i) > lift(tallest))) {
          tallest = i;
        }
      }
      if (tallest < 0) {
        return java.util.Arrays.copyOf(x, n);
      }
      off[tallest] = true;
    }
  }

  private double lift(int i) {
    return towers.riser(i).lift();
  }

  private double[] newton(boolean[] off) {
    int n = off.length;
    double[] x = new double[n + 1];
    for (int i = 0; i < n; i++) {
      x[i] = off[i] ? 0 : 0.2 * most / n;
    }
    x[n] = 0.6 * shutoff;
    double error = norm(residual(x, off));
    for (int step = 0; step < 200 && error > 1e-13; step++) {
      RealVector r = new ArrayRealVector(residual(x, off));
      RealVector move = new LUDecomposition(jacobian(x, off)).getSolver().solve(r);
      double damp = 1;
      double[] next = moved(x, move, damp);
      double then = norm(residual(next, off));
      while (then > error && damp > 1e-6) {
        damp /= 2;
        next = moved(x, move, damp);
        then = norm(residual(next, off));
      }
      if (then >= error) {
        break;
      }
      x = next;
      error = then;
    }
    return x;
  }

  private static double[] moved(double[] x, RealVector move, double damp) {
    double[] next = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      next[i] = x[i] - damp * move.getEntry(i);
    }
    return next;
  }

  private static double norm(double[] r) {
    double most = 0;
    for (double one : r) {
      most = Math.max(most, Math.abs(one));
    }
    return most;
  }

  private RealMatrix jacobian(double[] x, boolean[] off) {
    int n = x.length;
    RealMatrix m = MatrixUtils.createRealMatrix(n, n);
    for (int j = 0; j < n; j++) {
      double step = j == n - 1 ? 1e-6 : 1e-6 * Math.max(Math.abs(x[j]), 1e-3 * most);
      double[] up = x.clone();
      double[] down = x.clone();
      up[j] += step;
      down[j] -= step;
      double[] a = residual(up, off);
      double[] b = residual(down, off);
      for (int i = 0; i < n; i++) {
        m.setEntry(i, j, (a[i] - b[i]) / (2 * step));
      }
    }
    return m;
  }

  /** Heads, m; flow of a tower that is off is 0 (scaled to metres). */
  private double[] residual(double[] x, boolean[] off) {
    int n = off.length;
    double[] r = new double[n + 1];
    double total = 0;
    for (int i = 0; i < n; i++) {
      total += x[i];
      r[i] = off[i] ? x[i] / most * shutoff : loss(i, x[i]) - (x[n] - lift(i));
    }
    double pump = shutoff * (1 - Math.signum(total) * total * total / (most * most));
    double shared = common == null ? 0 : lossOf(common, total);
    r[n] = pump - shared - x[n];
    return r;
  }

  private double loss(int i, double flow) {
    double sum = 0;
    Line line = towers.riser(i).line();
    for (int s = 0; s < line.size(); s++) {
      sum += lossOf(line.section(s), flow);
    }
    return sum;
  }

  private double lossOf(PipeSection s, double flow) {
    if (flow == 0) {
      return 0;
    }
    double v = Math.abs(flow) / (Math.PI / 4 * s.bore() * s.bore());
    double f = friction(v * s.bore() / nu, s.roughness() / s.bore());
    return Math.signum(flow) * (f * s.length() / s.bore() + s.fittingsK()) * v * v / (2 * G);
  }

  static double friction(double re, double rough) {
    if (re <= 2000) {
      return 64 / re;
    }
    if (re < 4000) {
      return 0.032 + (re - 2000) / 2000 * (friction(4000, rough) - 0.032);
    }
    double x =
        new BrentSolver(1e-15, 1e-15)
            .solve(200, y -> y + 2 * Math.log10(rough / 3.7 + 2.51 * y / re), 1, 20);
    return 1 / (x * x);
  }
}
