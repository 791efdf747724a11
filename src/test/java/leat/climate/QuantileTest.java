package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class QuantileTest {
  static Stream<Row> rows() {
    return Sheet.of("season-quantile.csv").atLeast(12);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void asTheSheet(Row r) {
    assertThat(Quantile.of(r.list("values", " "), r.num("q")))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("quantile"), within(r.num("tol_rel") * r.num("quantile")));
  }

  /** Second route: the linear interpolator of Hipparchus through the ordered values. */
  @Property
  void asHipparchus(
      @ForAll @Size(min = 2, max = 40) List<@DoubleRange(min = -1e3, max = 1e3) Double> given,
      @ForAll @DoubleRange(min = 0, max = 1) double q) {
    double[] values = new double[given.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = given.get(i);
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double[] place = new double[sorted.length];
    for (int i = 0; i < place.length; i++) {
      place[i] = i;
    }
    double expected =
        new LinearInterpolator().interpolate(place, sorted).value(q * (place.length - 1));
    double[] before = values.clone();
    assertThat(Quantile.of(values, q)).isCloseTo(expected, within(1e-9));
    assertThat(values).containsExactly(before);
  }

  @Test
  void endsAndRefusals() {
    assertThat(Quantile.of(new double[] {7}, 0.3)).isEqualTo(7);
    assertThat(Quantile.of(new double[] {3, 1, 2}, 0)).isEqualTo(1);
    assertThat(Quantile.of(new double[] {3, 1, 2}, 1)).isEqualTo(3);
    assertThatThrownBy(() -> Quantile.of(new double[0], 0.5)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Quantile.of(new double[] {1}, 1.5)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Quantile.of(new double[] {1, Double.NaN}, 0.5))
        .isInstanceOf(Impossible.class);
  }

  /** 1.2815515655 is the 90 % point of the normal distribution (any table). */
  @Test
  void spreadFollowsFromItsParts() {
    double sigma =
        Math.sqrt(
            ThirstSpread.SIGMA_METHOD * ThirstSpread.SIGMA_METHOD
                + ThirstSpread.SIGMA_PLANT * ThirstSpread.SIGMA_PLANT
                + ThirstSpread.SIGMA_EXPOSURE * ThirstSpread.SIGMA_EXPOSURE);
    assertThat(sigma).isCloseTo(0.32, within(0.005));
    double z = 1.2815515655;
    double after = ThirstSpread.SIGMA_CALIBRATED;
    assertThat(ThirstSpread.LOW).isCloseTo(Math.exp(-z * 0.32), within(0.005));
    assertThat(ThirstSpread.HIGH).isCloseTo(Math.exp(z * 0.32), within(0.005));
    assertThat(ThirstSpread.LOW_CALIBRATED).isCloseTo(Math.exp(-z * after), within(0.005));
    assertThat(ThirstSpread.HIGH_CALIBRATED).isCloseTo(Math.exp(z * after), within(0.005));
  }
}
