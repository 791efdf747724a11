package leat.solution.pitzer;

import static leat.solution.pitzer.Species.COUNT;
import static leat.solution.pitzer.Species.MG;
import static leat.solution.pitzer.Species.SO4;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leat.solution.Salts;
import org.junit.jupiter.api.Test;

/** Salts that the model has no row for, by their formula; molar masses by hand (IUPAC weights). */
class OtherSaltTest {
  private static double others(BottleSalt salt, int... ions) {
    double sum = 0;
    for (int i = 0; i < COUNT; i++) {
      sum += salt.molPerGram(i);
    }
    for (int ion : ions) {
      sum -= salt.molPerGram(ion);
    }
    return sum;
  }

  /** ZnSO4 7H2O, 287.56 g/mol; MnSO4 H2O, 169.02: the metal counts as magnesium, by analogy. */
  @Test
  void aMetalCountsAsMagnesium() {
    BottleSalt zinc = OtherSalt.of(Salts.of("zinc-sulfate-7h2o"));
    assertThat(zinc.molPerGram(MG)).isCloseTo(1 / 287.56, within(1e-6));
    assertThat(zinc.molPerGram(SO4)).isCloseTo(1 / 287.56, within(1e-6));
    assertThat(others(zinc, MG, SO4)).isCloseTo(0, within(1e-12));
    assertThat(zinc.fit()).isEqualTo(BottleSalt.Fit.ANALOGY);
    // 24.305 + 96.06 g of each mole take room
    assertThat(zinc.mlPerGram()).isCloseTo(0.35 * 120.36 / 287.56, within(1e-4));
    BottleSalt manganese = OtherSalt.of(Salts.of("manganese-sulfate-1h2o"));
    assertThat(manganese.molPerGram(MG)).isCloseTo(1 / 169.02, within(1e-5));
    assertThat(manganese.fit()).isEqualTo(BottleSalt.Fit.ANALOGY);
  }

  /** Boric acid is grams in a bottle of hundreds: it takes room and meets nothing. */
  @Test
  void boricAcidIsInert() {
    BottleSalt boric = OtherSalt.of(Salts.of("boric-acid"));
    assertThat(others(boric)).isZero();
    assertThat(boric.fit()).isEqualTo(BottleSalt.Fit.INERT);
    assertThat(boric.hydrogenPhosphate()).isZero();
    assertThat(boric.mlPerGram()).isEqualTo(0.35);
  }

  /** K2HPO4, 174.18 g/mol: hydrogen phosphate is beyond the model. */
  @Test
  void hydrogenPhosphateIsBeyondTheModel() {
    BottleSalt salt = OtherSalt.of(Salts.of("dipotassium-phosphate"));
    assertThat(salt.hydrogenPhosphate()).isCloseTo(1 / 174.18, within(1e-5));
    assertThat(salt.molPerGram(Species.K)).isCloseTo(2 / 174.18, within(1e-5));
    assertThat(salt.fit()).isEqualTo(BottleSalt.Fit.BEYOND);
  }
}
