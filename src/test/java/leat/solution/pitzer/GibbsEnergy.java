package leat.solution.pitzer;

import static leat.solution.pitzer.Species.CATIONS;
import static leat.solution.pitzer.Species.COUNT;

/**
 * The second route: the Gibbs energy of a bottle over RT, written down from Pitzer's excess energy
 * and not from activity coefficients.
 *
 * <pre>
 * G = sum n (ln m - 1) + w (-(4 A I/b) ln(1 + b sqrt I) + sum mc ma (2 B + Z C)
 *     + sum mi mj (2 Phi + sum mk psi)) + sum x ln K
 * </pre>
 *
 * <p>Source: K. S. Pitzer, J. Phys. Chem. 77 (1973) 268; the coefficients are the program's own.
 */
final class GibbsEnergy {
  private final double celsius;
  private final Coefficients coefficients;

  GibbsEnergy(double celsius) {
    this.celsius = celsius;
    this.coefficients = new Coefficients(celsius);
  }

  private static double g(double x) {
    return 2 * (1 - (1 + x) * Math.exp(-x)) / (x * x);
  }

  private static double j(double x) {
    return x / (4 + 4.581 * Math.pow(x, -0.7237) * Math.exp(-0.0120 * Math.pow(x, 0.528)));
  }

  /** Of the solution alone, with n mol of ions in w kg of water. */
  double solution(double[] n, double w) {
    double a = 0.37668 + 4.97e-4 * celsius + 3.80e-6 * celsius * celsius;
    double[] m = new double[COUNT];
    double strength = 0;
    double z = 0;
    double sum = 0;
    for (int i = 0; i < COUNT; i++) {
      m[i] = n[i] / w;
      strength += m[i] * Species.charge(i) * Species.charge(i) / 2;
      z += m[i] * Species.charge(i);
      sum += n[i] > 0 ? n[i] * (Math.log(m[i]) - 1) : 0;
    }
    double root = Math.sqrt(strength);
    double excess = -4 * a * strength / 1.2 * Math.log(1 + 1.2 * root);
    for (int c = 0; c < CATIONS; c++) {
      for (int x = CATIONS; x < COUNT; x++) {
        double alpha = Species.charge(c) * Species.charge(x) == 4 ? 1.4 : 2;
        double b =
            coefficients.b0(c, x)
                + coefficients.b1(c, x) * g(alpha * root)
                + coefficients.b2(c, x) * g(12 * root);
        excess += m[c] * m[x] * (2 * b + z * coefficients.c(c, x));
      }
    }
    for (int i = 0; i < COUNT; i++) {
      for (int k = i + 1; k < (i < CATIONS ? CATIONS : COUNT); k++) {
        double phi = Coefficients.theta(i, k);
        if (Species.charge(i) != Species.charge(k)) {
          double x = 6 * a * root;
          phi += (j(2 * x) - j(x) / 2 - j(4 * x) / 2) / (2 * strength);
        }
        double triple = 0;
        for (int o = i < CATIONS ? CATIONS : 0; o < (i < CATIONS ? COUNT : CATIONS); o++) {
          triple += m[o] * Coefficients.psi(i, k, o);
        }
        excess += m[i] * m[k] * (2 * phi + triple);
      }
    }
    return sum + w * excess;
  }

  /** Of the solution and x mol of each solid taken out of it; infinite where that cannot be. */
  double withSolids(Brine brine, Contents contents, double[] x) {
    double[] n = contents.moles().clone();
    double w = contents.waterKg();
    double g = 0;
    Pitzer model = new Pitzer(celsius);
    for (int s = 0; s < brine.size(); s++) {
      Solid solid = brine.solid(s);
      g += x[s] * solid.lnConstant(celsius, model);
      w -= x[s] * solid.crystalWater() * 0.018015;
      for (int i = 0; i < COUNT; i++) {
        n[i] -= x[s] * solid.count(i);
      }
    }
    for (int i = 0; i < COUNT; i++) {
      if (n[i] < 0 || n[i] == 0 && contents.moles()[i] > 0) {
        return Double.POSITIVE_INFINITY;
      }
    }
    return w > 0 ? g + solution(n, w) : Double.POSITIVE_INFINITY;
  }
}
