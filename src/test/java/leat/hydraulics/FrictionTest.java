package leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FrictionTest {
  static Stream<Row> rows() {
    return Sheet.of("hydraulics-friction.csv").atLeast(106);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    double re = r.num("reynolds");
    double rough = r.num("rel_roughness");
    check(r, FrictionFactor.of(re, rough), "f_blend_2000_4000");
    check(r, Churchill.factor(re, rough), "f_churchill1977");
    if (r.has("f_colebrook")) {
      check(r, Colebrook.frictionFactor(re, rough), "f_colebrook");
    }
    if (r.has("f_laminar_64_over_Re")) {
      check(r, 64 / re, "f_laminar_64_over_Re");
    }
    if (r.has("f_blasius")) {
      check(r, 0.3164 * Math.pow(re, -0.25), "f_blasius");
    }
  }

  private static void check(Row r, double ours, String column) {
    double tolerance = r.num("tol_rel_same_formula") * r.num(column);
    // printed to ten significant digits at least: half of the last one cannot be asked for
    assertThat(ours)
        .as(column + " " + r.idAndProvenance())
        .isCloseTo(r.num(column), within(tolerance));
  }

  /** Documented example of python-fluids: Colebrook(1E5, 1E-4) and Churchill_1977 (memory). */
  @Test
  void meetsTheDocumentedExamplesOfALibrary() {
    assertThat(Colebrook.frictionFactor(1e5, 1e-4)).isCloseTo(0.018513866077471648, within(1e-16));
    assertThat(Churchill.factor(1e5, 1e-4)).isCloseTo(0.018462624566280075, within(1e-16));
  }

  /**
   * F. M. White, Fluid Mechanics, example 6.7 (memory): oil of 900 kg/m3 and 1E-5 m2/s, 0.2 m3/s
   * through 500 m of 200 mm cast iron, roughness 0.26 mm: f 0.0225 from the chart, h_f 117 m. Chart
   * reading, rounded: 1 %, ours.
   */
  @Test
  void meetsWhitesCastIronExample() {
    Liquid oil = new Liquid(900, 0.009, 0.03);
    Line pipe = new Line(oil, new PipeSection(500, 0.2, 0.26e-3, 0));
    assertThat(pipe.frictionFactor(0, 0.2)).isCloseTo(0.0225, withPercentage(1));
    assertThat(pipe.loss(0.2)).isCloseTo(117, withPercentage(1));
  }

  /** Closed form of Colebrook's equation by Lambert's W, free of our iteration. */
  @Property
  void solvesColebrookToTheLastDigits(
      @ForAll @Scale(12) @DoubleRange(min = 3.6, max = 8) double logRe,
      @ForAll @Scale(12) @DoubleRange(min = 0, max = 0.05) double rough) {
    double re = Math.pow(10, logRe);
    double a = rough / 3.7;
    double b = 2.51 / re;
    double k = Math.log(10) / 2;
    double s = k * a / b - Math.log(b / k);
    double y = s > 1 ? s - Math.log(s) : 0.5;
    for (int i = 0; i < 60; i++) {
      y -= (y + Math.log(y) - s) / (1 + 1 / y);
    }
    double x = y / k - a / b;
    // the closed form loses a/b : x digits by cancellation
    double tolerance = 1e-14 * (1 + a / b / x);
    assertThat(Colebrook.frictionFactor(re, rough))
        .isCloseTo(1 / (x * x), within(4 * tolerance / (x * x)));
  }

  @Property
  void laminarFactorTimesReIs64(@ForAll @Scale(12) @DoubleRange(min = 1e-3, max = 2000) double re) {
    assertThat(FrictionFactor.of(re, 0.01) * re).isCloseTo(64, within(1e-12));
  }

  @Property
  void factorDoesNotJump(@ForAll @Scale(12) @DoubleRange(min = 0, max = 0.05) double rough) {
    for (double re : new double[] {2000, 4000}) {
      double below = FrictionFactor.of(re * (1 - 1e-12), rough);
      assertThat(FrictionFactor.of(re * (1 + 1e-12), rough)).isCloseTo(below, within(1e-11));
    }
  }

  @Test
  void refusesNonsense() {
    assertThatThrownBy(() -> FrictionFactor.of(0, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> FrictionFactor.of(1e4, 0.051)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Colebrook.frictionFactor(1000, 0)).isInstanceOf(Impossible.class);
  }
}
