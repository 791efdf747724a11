package leat.stability;

import static leat.stability.Rows.same;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LinesTest {
  static Stream<Row> directions() {
    return Sheet.of("stability-guy-direction.csv").atLeast(9);
  }

  @ParameterizedTest
  @MethodSource("directions")
  void sharesAgreeWithTheSheet(Row r) {
    double[] t = shares((int) r.num("n_lines"), Math.toRadians(r.num("theta_deg")));
    assertThat(t[0]).isCloseTo(r.num("T1h_over_R"), within(1e-5));
    assertThat(t[1]).isCloseTo(r.num("T2h_over_R"), within(1e-5));
    same(r, t[0] + t[1], "sum_over_R");
    double worst = new GuyLines((int) r.num("n_lines"), 1, 1, true).sharing();
    assertThat(worst).isGreaterThanOrEqualTo(Math.max(t[0], t[1]) - 1e-9);
  }

  /** Level pull on the two lines beside a pull, over it, by the sheet's formula. */
  private static double[] shares(int lines, double heading) {
    double spacing = 2 * Math.PI / lines;
    double whole = Math.sin(spacing);
    return new double[] {Math.sin(spacing - heading) / whole, Math.sin(heading) / whole};
  }

  static Stream<Row> single() {
    return Sheet.of("stability-guy-line.csv").atLeast(6);
  }

  @ParameterizedTest
  @MethodSource("single")
  void oneLineAgreesWithTheSheet(Row r) {
    // One line in the wind's direction: k is 1, as of four lines.
    GuyLines lines = new GuyLines(4, r.num("ring_h_m"), r.num("run_m"), true);
    double moment = r.num("M_res_Nm");
    same(r, Math.toDegrees(lines.angle()), "alpha_deg");
    same(r, lines.under(moment).tension(), "T_simple_N");
    // The exact lever is about the foot's edge; the simple rule leaves it out and is higher.
    double lever = r.num("foot_along_wind_m") / 2;
    double exact = moment * lines.length() / (lines.ring() * (lines.run() + lever));
    same(r, exact, "T_exact_N");
    if (moment > 0) {
      assertThat(lines.under(moment).tension() / exact).isBetween(1.12, 1.334);
    }
    same(r, lines.length(), "line_length_m");
  }

  /**
   * Second route: over 3600 headings, non-negative least squares of the level pull on all lines,
   * every set of one or two lines tried; of equal misses the least pull altogether.
   */
  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 8})
  void worstLineAndFootAgreeWithLeastSquaresOverAllHeadings(int n) {
    GuyLines lines = new GuyLines(n, 1.6, 1.2, true);
    LineLoad load = lines.under(1.6); // a ring pull of 1 N
    double worst = 0;
    double pressed = 0;
    for (int step = 0; step < 3600; step++) {
      double[] t = leastSquares(n, 2 * Math.PI * step / 3600);
      double sum = 0;
      for (double one : t) {
        worst = Math.max(worst, one);
        sum += one;
      }
      pressed = Math.max(pressed, sum * 1.6 / 1.2);
    }
    assertThat(load.ringPull()).isCloseTo(1, within(1e-12));
    assertThat(load.pegLevel()).isCloseTo(worst, within(1e-6));
    assertThat(load.tension()).isCloseTo(worst / Math.cos(lines.angle()), within(1e-6));
    assertThat(load.pegUplift()).isCloseTo(worst * 1.6 / 1.2, within(1e-6));
    assertThat(load.footLoad()).isCloseTo(pressed, within(1e-3 * pressed));
  }

  private static double[] leastSquares(int n, double heading) {
    double x = Math.cos(heading);
    double y = Math.sin(heading);
    double[] best = null;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < n; i++) {
      for (int j = i; j < n; j++) {
        double[] t = onTwo(n, i, j, x, y);
        if (t != null) {
          double missX = x;
          double missY = y;
          double sum = 0;
          for (int k = 0; k < n; k++) {
            missX -= t[k] * Math.cos(2 * Math.PI * k / n);
            missY -= t[k] * Math.sin(2 * Math.PI * k / n);
            sum += t[k];
          }
          double miss = missX * missX + missY * missY + 1e-9 * sum;
          if (miss < least) {
            least = miss;
            best = t;
          }
        }
      }
    }
    return best;
  }

  /** Least squares with lines i and j only; null when one would push. */
  private static double[] onTwo(int n, int i, int j, double x, double y) {
    double ix = Math.cos(2 * Math.PI * i / n);
    double iy = Math.sin(2 * Math.PI * i / n);
    double jx = Math.cos(2 * Math.PI * j / n);
    double jy = Math.sin(2 * Math.PI * j / n);
    double[] t = new double[n];
    double det = ix * jy - iy * jx;
    if (Math.abs(det) < 1e-9) { // the same line, or two opposite ones
      t[i] = Math.max(0, ix * x + iy * y);
      return t;
    }
    t[i] = (x * jy - y * jx) / det;
    t[j] = (ix * y - iy * x) / det;
    return t[i] < -1e-12 || t[j] < -1e-12 ? null : t;
  }

  @Property
  void curesAreSolved(
      @ForAll @IntRange(min = 3, max = 8) int n,
      @ForAll @DoubleRange(min = 0.3, max = 3) double ring,
      @ForAll @DoubleRange(min = 0.3, max = 3) double run,
      @ForAll @DoubleRange(min = 1, max = 500) double moment,
      @ForAll @DoubleRange(min = 10, max = 2000) double tension) {
    // A cure may lie beyond what is built: a ring or run over a kilometre is refused.
    GuyLines lines = new GuyLines(n, ring, run, true);
    Double high = lines.leastRing(moment, tension);
    if (high != null && high < 1000) {
      LineLoad cured = new GuyLines(n, high, run, true).under(moment);
      assertThat(cured.tension()).isCloseTo(tension, within(1e-6 * tension));
    } else if (high == null) {
      assertThat(new GuyLines(n, 1000, run, true).under(moment).tension())
          .isGreaterThanOrEqualTo(tension);
    }
    Double far = lines.leastRun(moment, tension);
    if (far != null && far < 1000) {
      LineLoad cured = new GuyLines(n, ring, far, true).under(moment);
      assertThat(cured.tension()).isCloseTo(tension, within(1e-6 * tension));
    } else if (far == null) {
      assertThat(new GuyLines(n, ring, 1000, true).under(moment).tension())
          .isGreaterThanOrEqualTo(tension);
    }
  }

  /** Common practice: a fifth of breaking load. */
  @Test
  void aLineSeesAFifthOfItsBreakingLoad() {
    LineLoad load = new GuyLines(3, 1.6, 1.2, true).under(106.535);
    assertThat(load.breakingNeeded()).isCloseTo(5 * 128.142, within(0.01));
    assertThat(load.utilisation(1500)).isCloseTo(5 * 128.142 / 1500, within(1e-4));
  }

  @Test
  void refusesWhatHoldsNothing() {
    List<Runnable> wrong = new ArrayList<>();
    wrong.add(() -> new GuyLines(2, 1.6, 1.2, true));
    wrong.add(() -> new GuyLines(3, 0, 1.2, true));
    wrong.add(() -> new GuyLines(3, 1.6, 0, true));
    for (Runnable one : wrong) {
      assertThatThrownBy(one::run).isInstanceOf(Impossible.class);
    }
  }
}
