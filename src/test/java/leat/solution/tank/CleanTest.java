package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import leat.numeric.Roots;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CleanTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-clean.csv").atLeast(7);
  }

  static Clean.Basis basis(String text) {
    return switch (text) {
      case "w/v available chlorine", "w/v" -> Clean.Basis.WEIGHT_IN_VOLUME;
      case "w/w available chlorine", "w/w" -> Clean.Basis.WEIGHT_IN_WEIGHT;
      case "w/v NaOCl" -> Clean.Basis.HYPOCHLORITE_IN_VOLUME;
      case "w/w NaOCl" -> Clean.Basis.HYPOCHLORITE_IN_WEIGHT;
      default -> throw new IllegalStateException(text);
    };
  }

  static void close(Row r, String column, Double got) {
    if (!r.has(column)) {
      assertThat(got).as(r.idAndProvenance() + " " + column).isNull();
      return;
    }
    double want = r.num(column);
    assertThat(got)
        .as(r.idAndProvenance() + " " + column)
        .isCloseTo(want, within(r.num("tol_rel") * Math.abs(want)));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    double volume = r.num("final_volume_L");
    double strength = r.num("strength_pct");
    Clean.Basis basis = basis(r.text("strength_basis"));
    double density = r.numOr("density_kg_L", 0);
    double target = r.num("target");
    Clean.Answer a =
        r.text("agent").equals("peroxide")
            ? Clean.peroxide(volume, strength, basis, density, target)
            : Clean.hypochlorite(volume, strength, basis, density, target);
    assertThat(a.status().word).isEqualTo(r.text("status"));
    close(r, "bottle_g_L", a.bottleGPerL());
    close(r, "bottle_mL", a.bottleMl());
    close(r, "water_L", a.waterL());
    close(r, "bottle_mL_per_L", a.bottleMlPerL());
    close(r, "times_diluted", a.timesDiluted());
  }

  /** Second route: the mass balance solved by root finding. */
  @Test
  void theMassBalanceCloses() {
    Clean.Answer a = Clean.hypochlorite(25, 4.5, Clean.Basis.HYPOCHLORITE_IN_VOLUME, 0, 150);
    double perMl = 4.5 / 100 * 70.906 / 74.442;
    double root = Roots.bracketed(ml -> ml * perMl / 25 - 0.150, 0, 25_000);
    assertThat(a.bottleMl()).isCloseTo(root, withPercentage(1e-9));
    assertThat(a.waterL() + a.bottleMl() / 1000).isCloseTo(25, within(1e-12));
    assertThat(a.bottleMlIfOld()).isCloseTo(root / 0.8, withPercentage(1e-9));
  }

  @Test
  void oldBleachMayNotDo() {
    Clean.Answer a = Clean.hypochlorite(25, 0.5, Clean.Basis.WEIGHT_IN_VOLUME, 0, 4_500);
    assertThat(a.reached()).isTrue();
    assertThat(a.bottleMlIfOld()).isNull();
  }

  /** Handbook densities of the sheet's section 7. */
  @Test
  void peroxideDensityPassesThroughTheHandbook() {
    assertThat(Clean.peroxideDensity(3)).isEqualTo(1.0095);
    assertThat(Clean.peroxideDensity(12)).isEqualTo(1.042);
    assertThat(Clean.peroxideDensity(35)).isEqualTo(1.132);
    // 30 % laboratory peroxide: 1.11 kg/L
    assertThat(Clean.peroxideDensity(30)).isCloseTo(1.11, within(0.005));
    assertThatThrownBy(() -> Clean.peroxideDensity(50)).isInstanceOf(Impossible.class);
  }

  @Test
  void refusesWhatCannotBe() {
    Clean.Basis v = Clean.Basis.WEIGHT_IN_VOLUME;
    assertThatThrownBy(() -> Clean.hypochlorite(25, 101, v, 0, 200)).hasMessageContaining("100 %");
    assertThatThrownBy(() -> Clean.hypochlorite(25, 40, v, 0, 200)).hasMessageContaining("20 %");
    assertThatThrownBy(() -> Clean.hypochlorite(25, 5, v, 0, 20_000)).hasMessageContaining("5000");
    assertThatThrownBy(() -> Clean.hypochlorite(25, 5, v, 0, 4)).hasMessageContaining("5 and");
    assertThatThrownBy(() -> Clean.peroxide(25, 40, v, 0, 0.3)).hasMessageContaining("35 %");
    assertThatThrownBy(() -> Clean.peroxide(25, 3, v, 0, 30)).hasMessageContaining("10 %");
    assertThatThrownBy(() -> Clean.hypochlorite(25, 0, v, 0, 200)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Clean.hypochlorite(0, 5, v, 0, 200)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Clean.hypochlorite(25, 5, v, 0, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Clean.hypochlorite(25, 5, Clean.Basis.WEIGHT_IN_WEIGHT, 0, 200))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Clean.peroxide(25, 5, Clean.Basis.HYPOCHLORITE_IN_VOLUME, 0, 0.3))
        .isInstanceOf(Impossible.class);
  }

  /** Regulation (EU) 2019/1148: peroxide over 12 % is restricted; 12 % itself is not. */
  @Test
  void peroxideOverTwelvePerCentIsRestricted() {
    assertThat(Clean.isRestricted(12)).isFalse();
    assertThat(Clean.isRestricted(12.1)).isTrue();
  }

  /** One per cent by volume is 10 g in a litre, 10 000 mg/L. */
  @Test
  void aPerCentIsTenThousandMilligramsALitre() {
    assertThat(Clean.mgLOfPct(0.5)).isEqualTo(5000);
    assertThat(Clean.pctOfMgL(200)).isCloseTo(0.02, within(1e-15));
    assertThat(Clean.Basis.usual(true)).isEqualTo(Clean.Basis.WEIGHT_IN_VOLUME);
    assertThat(Clean.Basis.usual(false)).isEqualTo(Clean.Basis.WEIGHT_IN_WEIGHT);
    assertThat(Clean.Basis.WEIGHT_IN_WEIGHT.byWeight()).isTrue();
    assertThat(Clean.Basis.HYPOCHLORITE_IN_WEIGHT.byWeight()).isTrue();
    assertThat(Clean.Basis.WEIGHT_IN_VOLUME.byWeight()).isFalse();
    assertThat(Clean.Basis.HYPOCHLORITE_IN_VOLUME.byWeight()).isFalse();
  }

  /** A bottle of 2 g/L is no stronger than 2 g/L; old bleach of 2.4 has 1.92 left, too little. */
  @Test
  void aBottleAsStrongAsTheAimIsTooWeak() {
    Clean.Basis volume = Clean.Basis.WEIGHT_IN_VOLUME;
    assertThat(Clean.hypochlorite(10, 0.2, volume, 0, 2000).reached()).isFalse();
    assertThat(Clean.hypochlorite(10, 0.24, volume, 0, 2000).reached()).isTrue();
    assertThat(Clean.hypochlorite(10, 0.24, volume, 0, 2000).bottleMlIfOld()).isNull();
    // 2.5 g/L, 2 when old
    assertThat(Clean.hypochlorite(10, 0.25, volume, 0, 2000).bottleMlIfOld()).isNull();
    // 5 g/L, 4 when old: 10 L x 2/4
    assertThat(Clean.hypochlorite(10, 0.5, volume, 0, 2000).bottleMlIfOld())
        .isCloseTo(5000, within(1e-9));
  }
}
