package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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

class PumpCurveTest {
  static Stream<Row> rows() {
    return Sheet.of("hydraulics-pump-curve.csv").atLeast(42);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    PumpCurve curve = Cases.running(r);
    double q = Math.min(r.num("flow_L_min") * L_MIN, curve.maxFlow());
    assertThat(curve.head(q))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("head_m"), within(r.num("tol_abs_m_same_algorithm")));
    assertThat(curve.slope(q) * L_MIN)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("slope_m_per_L_min"), within(r.num("tol_abs_m_same_algorithm")));
    if (r.has("head_m_piecewise_linear")) {
      // straight lines differ by more than other cubics: the column is there to show it
      assertThat(curve.head(q)).isCloseTo(r.num("head_m_piecewise_linear"), within(0.1));
    }
  }

  @Property
  void neverRises(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double share,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1.2) double speed) {
    PumpCurve curve =
        PumpCurve.points(new double[] {0, 1e-4, 3e-4, 4e-4}, new double[] {3, 3, 1, 0})
            .atSpeed(speed);
    double q = share * curve.maxFlow();
    assertThat(curve.slope(q)).isLessThanOrEqualTo(0);
    assertThat(curve.head(q)).isBetween(-1e-14, curve.shutoffHead() * (1 + 1e-14));
    assertThat(curve.derated(0.7).head(q)).isCloseTo(0.7 * curve.head(q), within(1e-15));
  }

  @Test
  void refusesCurvesThatAreNone() {
    refused(new double[] {0}, new double[] {1});
    refused(new double[] {0, 1, 1}, new double[] {3, 2, 1});
    refused(new double[] {0, 2, 1}, new double[] {3, 2, 1});
    refused(new double[] {0, 1}, new double[] {1, 2});
    refused(new double[] {1, 2}, new double[] {2, 1});
    refused(new double[] {0, 1}, new double[] {1, -1});
    refused(new double[] {0, 1}, new double[] {0, 0});
    refused(new double[] {0, Double.NaN}, new double[] {1, 0});
    assertThatThrownBy(() -> PumpCurve.parabola(0, 1)).isInstanceOf(Impossible.class);
    PumpCurve curve = PumpCurve.parabola(2, 1e-4);
    assertThatThrownBy(() -> curve.head(1.1e-4)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> curve.derated(0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> curve.atSpeed(-1)).isInstanceOf(Impossible.class);
  }

  private static void refused(double[] q, double[] h) {
    assertThatThrownBy(() -> PumpCurve.points(q, h))
        .isInstanceOfSatisfying(Impossible.class, e -> assertThat(e.quantity()).isEqualTo("curve"));
  }
}
