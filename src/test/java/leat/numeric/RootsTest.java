package leat.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

class RootsTest {
  /** Second route: the Brent solver of Hipparchus. */
  @Property
  void agreesWithHipparchus(
      @ForAll @DoubleRange(min = 0.1, max = 20) double a,
      @ForAll @DoubleRange(min = -3, max = 3) double b) {
    double high = 5;
    double ours = Roots.bracketed(x -> a * x * x * x + x - b, -high, high);
    double theirs =
        new BrentSolver(1e-14, 1e-15).solve(500, x -> a * x * x * x + x - b, -high, high);
    assertThat(ours).isCloseTo(theirs, within(1e-12));
  }

  @Test
  void anEndMayBeTheRoot() {
    assertThat(Roots.bracketed(x -> x - 1, 1, 2)).isEqualTo(1);
    assertThat(Roots.bracketed(x -> x - 2, 1, 2)).isEqualTo(2);
  }

  @Test
  void refusesABracketWithoutChangeOfSign() {
    assertThatThrownBy(() -> Roots.bracketed(x -> 1 + x * x, -1, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
