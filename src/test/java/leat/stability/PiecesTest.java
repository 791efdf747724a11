package leat.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Small records, by hand. */
class PiecesTest {
  @Test
  void areas() {
    Foot foot = new Foot(0.6, 0.4);
    assertThat(foot.area(false)).isCloseTo(0.24, within(1e-12));
    assertThat(foot.area(true)).isCloseTo(Math.PI / 4 * 0.24, within(1e-12));
    assertThat(Foot.round(1).area(true)).isCloseTo(Math.PI / 4, within(1e-12));
  }

  @Test
  void solutionByVolume() {
    double mass = Situation.massOf(0.05);
    assertThat(mass).isBetween(49.5, 50.5);
    assertThat(Situation.full(mass).volume()).isCloseTo(0.05, within(1e-12));
  }

  @Test
  void aLineMayPullAShareOfWhereItBreaks() {
    assertThat(LineLoad.mayPull(1000)).isCloseTo(1000 * GuyLines.BREAKING_SHARE, within(1e-9));
  }

  @Test
  void wordsOfTerrain() {
    assertThat(Terrain.words()).doesNotContainNull().doesNotHaveDuplicates();
    for (String word : Terrain.words()) {
      assertThat(Terrain.named(word).word()).isEqualTo(word);
    }
    // EN 1991-1-4, table 4.1
    String[] categories = {"0", "I", "II", "III", "IV"};
    for (int i = 0; i < categories.length; i++) {
      assertThat(Terrain.named(categories[i])).isSameAs(Terrain.named(Terrain.words()[i]));
    }
  }
}
