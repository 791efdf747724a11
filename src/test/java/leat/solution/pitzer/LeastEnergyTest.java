package leat.solution.pitzer;

import static leat.solution.pitzer.Species.COUNT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.MersenneTwister;
import org.junit.jupiter.api.Test;

/** The Gibbs energy, minimised, against what falls out. */
class LeastEnergyTest {
  private static double[] most(Brine brine, Contents contents) {
    double[] most = new double[brine.size()];
    for (int s = 0; s < most.length; s++) {
      most[s] = Double.MAX_VALUE;
      for (int i = 0; i < COUNT; i++) {
        if (brine.solid(s).count(i) > 0) {
          most[s] = Math.min(most[s], contents.moles()[i] / brine.solid(s).count(i));
        }
      }
    }
    return most;
  }

  /** Covariance matrix adaptation, a search by chance with a fixed seed; started anew thrice. */
  private static double[] minimised(GibbsEnergy energy, Brine brine, Contents contents) {
    int n = brine.size();
    double[] most = most(brine, contents);
    double ceiling = energy.withSolids(brine, contents, new double[n]) + 10;
    double[] guess = new double[n];
    double[] spread = new double[n];
    double[] upper = new double[n];
    java.util.Arrays.fill(guess, 0.05);
    java.util.Arrays.fill(upper, 1);
    ObjectiveFunction gibbs =
        new ObjectiveFunction(
            y -> Math.min(energy.withSolids(brine, contents, times(y, most)), ceiling));
    for (int again = 0; again < 3; again++) {
      java.util.Arrays.fill(spread, again == 0 ? 0.1 : 0.02);
      guess =
          new CMAESOptimizer(
                  20000,
                  0,
                  true,
                  0,
                  0,
                  new MersenneTwister(7),
                  false,
                  new SimpleValueChecker(-1, 1e-13))
              .optimize(
                  new MaxEval(200000),
                  gibbs,
                  GoalType.MINIMIZE,
                  new CMAESOptimizer.Sigma(spread),
                  new CMAESOptimizer.PopulationSize(8 + 2 * n),
                  new InitialGuess(guess),
                  new SimpleBounds(new double[n], upper))
              .getPoint();
    }
    return times(guess, most);
  }

  private static double[] times(double[] y, double[] most) {
    double[] x = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      x[i] = y[i] * most[i];
    }
    return x;
  }

  /**
   * What falls out by the sweeps against a search of the energy: a gram or 3 %, as the sheet says.
   */
  @Test
  void fallsOutAsTheLeastEnergySays() {
    int over = 0;
    for (long seed = 0; seed < 120; seed++) {
      double celsius = seed % 26;
      Contents contents = Contents.of(MixedBottle.poured(Bottles.random(seed, celsius)), 1, false);
      Brine brine = new Brine(contents.moles(), celsius);
      FallOut out = new FallOut(brine, contents);
      GibbsEnergy energy = new GibbsEnergy(celsius);
      double[] other = minimised(energy, brine, contents);
      double[] ours = new double[brine.size()];
      for (int s = 0; s < ours.length; s++) {
        ours[s] = out.moles(s);
        double grams = other[s] * brine.solid(s).molarMass();
        assertThat(out.grams(s))
            .as("seed " + seed + " " + brine.solid(s).name())
            .isCloseTo(grams, offset(Math.max(1, 0.03 * grams)));
        over += out.grams(s) > 1 ? 1 : 0;
      }
      // no other place lies lower
      assertThat(energy.withSolids(brine, contents, ours))
          .isLessThanOrEqualTo(energy.withSolids(brine, contents, other) + 1e-9);
    }
    assertThat(over).as("bottles in which something falls out").isGreaterThan(20);
  }
}
