package leat.solution.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import leat.Sheet;
import leat.numeric.Impossible;
import leat.solution.Ion;
import leat.solution.Ions;
import leat.solution.Salts;
import org.junit.jupiter.api.Test;

/**
 * Published conductivities of potassium chloride at 25 C, of solution-ec-ions.csv: 5 mmol/L (IS02)
 * and 20 mmol/L (IS04).
 */
class MixEcTest {
  private static final double FIVE = published("IS02");
  private static final double TWENTY = published("IS04");

  /** Stated for single salts of one charge: -1 to +1.3 %. */
  private static final double MODEL = 0.013 * (TWENTY + FIVE);

  private static double published(String id) {
    return Sheet.of("solution-ec-ions.csv")
            .where(r -> r.id().equals(id))
            .atLeast(1)
            .findFirst()
            .get()
            .num("published_uS_cm")
        / 1000;
  }

  private static final Ions WATER = Ions.NONE.and(Ion.K, 5).and(Ion.CL, 5);

  private static Recipe chloride(double mmolL, Ions water) {
    double grams = mmolL * 74.548 / 1000;
    return Recipe.mix(List.of(new Weighed(Salts.of("potassium-chloride"), grams)), 1, water);
  }

  @Test
  void inPureWaterItIsTheSaltsAlone() {
    MixEc mix = MixEc.of(chloride(20, Ions.NONE), Ions.NONE, null);
    assertThat(mix.ec25()).isCloseTo(TWENTY, withinPercentage(1.3));
    // stated error: 5 % for salts in pure water
    assertThat(mix.low()).isCloseTo(0.95 * mix.ec25(), within(1e-12));
    assertThat(mix.high()).isCloseTo(1.05 * mix.ec25(), within(1e-12));
    assertThat(mix.waterEc()).isNull();
  }

  /** Without an analysis the meter's 0.30 mS/cm stand under the salts. */
  @Test
  void aWaterKnownByItsMeterAloneAddsItsReading() {
    MixEc mix = MixEc.of(chloride(20, Ions.NONE), Ions.NONE, 0.30);
    assertThat(mix.ec25()).isCloseTo(TWENTY + 0.30, withinPercentage(1.3));
    // stated error with tap water: 8 %
    assertThat(mix.low()).isCloseTo(0.92 * mix.ec25(), within(1e-12));
    assertThat(mix.high()).isCloseTo(1.08 * mix.ec25(), within(1e-12));
    assertThat(mix.waterEc()).isEqualTo(0.30);
  }

  /**
   * Water of 5 mmol/L of potassium chloride by its analysis; 15 mmol/L more are weighed in. The
   * meter showed 0.80 for the water, 0.083 more than the analysis makes: so much is lacking there.
   */
  @Test
  void whatTheAnalysisLacksCountsByTheMeter() {
    Recipe recipe = chloride(15, WATER);
    assertThat(MixEc.of(recipe, WATER, 0.80).ec25()).isCloseTo(TWENTY + 0.80 - FIVE, within(MODEL));
    assertThat(MixEc.of(recipe, WATER, 0.60).ec25())
        .as("a meter that shows less than the analysis")
        .isCloseTo(TWENTY + 0.60 - FIVE, within(MODEL));
    MixEc unmeasured = MixEc.of(recipe, WATER, null);
    assertThat(unmeasured.ec25()).isCloseTo(TWENTY, withinPercentage(1.3));
    assertThat(unmeasured.low())
        .as("tap water by its analysis: 8 % as well")
        .isCloseTo(0.92 * unmeasured.ec25(), within(1e-12));
  }

  /** With nothing weighed in, the water keeps its measured EC, whatever its analysis says. */
  @Test
  void waterAloneKeepsItsReading() {
    assertThat(MixEc.of(chloride(0, WATER), WATER, 0.75).ec25()).isCloseTo(0.75, within(1e-12));
  }

  @Test
  void aStockBottleHasNone() {
    assertThat(MixEc.of(chloride(2000, Ions.NONE), Ions.NONE, 0.3)).isNull();
    assertThatThrownBy(() -> MixEc.of(chloride(20, Ions.NONE), Ions.NONE, -0.1))
        .isInstanceOf(Impossible.class);
  }
}
