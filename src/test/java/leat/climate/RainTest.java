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

class RainTest {
  static Stream<Row> rows() {
    return Sheet.of("season-rain.csv").atLeast(7);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void asTheSheet(Row r) {
    double litres = RainCatch.litres(r.num("rain_mm"), r.num("area_m2"), r.num("catch"));
    RainInTank after =
        RainInTank.of(
            r.num("volume_before_L"),
            r.num("ec_before_mS_cm"),
            litres,
            r.num("rim_L"),
            r.num("rain_ec_mS_cm"));
    close(r, "rain_L", after.rainL());
    close(r, "overflow_L", after.overflowL());
    close(r, "volume_after_L", after.volumeL());
    close(r, "ec_after_mS_cm", after.ecMsCm());
    close(r, "salt_lost_mS_cm_L", after.saltLostMsCmL());
  }

  private static void close(Row r, String column, double value) {
    assertThat(value)
        .as(r.idAndProvenance())
        .isCloseTo(r.num(column), within(1e-12 + r.num("tol_rel") * r.num(column)));
  }

  /** Water and salt are kept; more rain never runs over less; the mix lies between its parts. */
  @Property
  void laws(
      @ForAll @DoubleRange(min = 0, max = 60) double volume,
      @ForAll @DoubleRange(min = 0, max = 4) double ec,
      @ForAll @DoubleRange(min = 0, max = 100) double rain,
      @ForAll @DoubleRange(min = 0, max = 50) double more,
      @ForAll @DoubleRange(min = 1, max = 60) double rim) {
    RainInTank one = RainInTank.of(volume, ec, rain, rim, 0.02);
    RainInTank two = RainInTank.of(volume, ec, rain + more, rim, 0.02);
    assertThat(one.volumeL() + one.overflowL()).isCloseTo(volume + rain, within(1e-9));
    assertThat(one.volumeL() * one.ecMsCm() + one.saltLostMsCmL())
        .isCloseTo(volume * ec + rain * 0.02, within(1e-9));
    assertThat(two.overflowL()).isGreaterThanOrEqualTo(one.overflowL());
    if (volume + rain > 0) {
      assertThat(one.ecMsCm()).isBetween(Math.min(ec, 0.02) - 1e-12, Math.max(ec, 0.02) + 1e-12);
    }
  }

  @Test
  void refusals() {
    assertThatThrownBy(() -> RainCatch.litres(-1, 1, 0.5)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> RainCatch.litres(1, 1, 1.1)).isInstanceOf(Impossible.class);
    assertThat(RainCatch.litres(10, 0.21, RainCatch.LID)).isCloseTo(1.68, within(1e-12));
  }
}
