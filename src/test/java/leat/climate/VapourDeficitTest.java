package leat.climate;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class VapourDeficitTest {
  static Stream<Row> rows() {
    return Sheet.of("season-vpd.csv").atLeast(7);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void asTheSheet(Row r) {
    double t = r.num("t_air_C");
    double rh = r.num("rh_pct");
    double ea = SaturationVapour.kPa(t) * rh / 100;
    close(r, "vpd_air_kPa", SaturationVapour.kPa(t) * (1 - rh / 100));
    if (r.has("t_leaf_C")) {
      close(r, "vpd_leaf_kPa", SaturationVapour.kPa(r.num("t_leaf_C")) - ea);
    }
    close(r, "dew_point_C", DewPoint.celsius(ea));
  }

  private static void close(Row r, String column, double value) {
    assertThat(value)
        .as(r.idAndProvenance())
        .isCloseTo(r.num(column), within(1e-12 + r.num("tol_rel") * Math.abs(r.num(column))));
  }

  @Property
  void dewPointTurnsSaturationRound(@ForAll @DoubleRange(min = -40, max = 50) double t) {
    assertThat(DewPoint.celsius(SaturationVapour.kPa(t))).isCloseTo(t, within(1e-9));
    double h = 1e-4;
    double slope = (SaturationVapour.kPa(t + h) - SaturationVapour.kPa(t - h)) / (2 * h);
    // The book rounds 17.27 x 237.3 = 4098.17 to 4098.
    assertThat(SaturationVapour.slopeKPaPerC(t)).isCloseTo(slope, within(5e-5 * slope));
  }

  @Test
  void words() {
    assertThat(VapourDeficit.word(0.1)).isEqualTo("damp");
    assertThat(VapourDeficit.word(0.8)).isEqualTo("good");
    assertThat(VapourDeficit.word(1.5)).isEqualTo("dry");
    assertThatThrownBy(() -> DewPoint.celsius(0)).isInstanceOf(Impossible.class);
  }

  /** The study's marks themselves are still good air. */
  @Test
  void theMarksThemselvesAreGood() {
    assertThat(VapourDeficit.word(0.2)).isEqualTo("good");
    assertThat(VapourDeficit.word(0.199)).isEqualTo("damp");
    assertThat(VapourDeficit.word(1.4)).isEqualTo("good");
    assertThat(VapourDeficit.word(1.401)).isEqualTo("dry");
  }
}
