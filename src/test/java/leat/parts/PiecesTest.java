package leat.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Small records of the build list, by hand. */
class PiecesTest {
  private static final Part RING = new Part("ring", 2, 0.1, 3600.0, 1);

  @Test
  void likePartsAreOneLine() {
    assertThat(RING.isLike(new Part("ring", 9, 0.1, 3600.0, 1))).isTrue();
    assertThat(RING.isLike(new Part("cap", 2, 0.1, 3600.0, 1))).isFalse();
    assertThat(RING.isLike(new Part("ring", 2, 0.2, 3600.0, 1))).isFalse();
    assertThat(RING.isLike(new Part("ring", 2, 0.1, 3601.0, 1))).isFalse();
    assertThat(RING.isLike(new Part("ring", 2, 0.1, null, 1))).isFalse();
    assertThat(RING.isLike(new Part("ring", 2, 0.1, 3600.0, 0))).isFalse();
    Part untimed = new Part("ring", 1, 0.1, null, 1);
    assertThat(untimed.isLike(RING)).isFalse();
    assertThat(untimed.isLike(new Part("ring", 4, 0.1, null, 1))).isTrue();
    assertThat(RING.plus(3)).isEqualTo(new Part("ring", 5, 0.1, 3600.0, 1));
    assertThat(RING.timeOfAll()).isEqualTo(7200);
    assertThat(untimed.timeOfAll()).isNull();
  }

  /** Largest remainders round up; without shares in equal parts. */
  @Test
  void hundredthsAddUp() {
    assertThat(Cents.split(100, new double[] {1, 1, 1})).containsExactly(34, 33, 33);
    assertThat(Cents.split(101, new double[] {1, 1, 1})).containsExactly(34, 34, 33);
    assertThat(Cents.split(10, new double[] {3, 1})).containsExactly(8, 2);
    assertThat(Cents.split(10, new double[] {1, 3})).containsExactly(3, 7);
    assertThat(Cents.split(7, new double[] {0, 0})).containsExactly(4, 3);
    assertThat(Cents.split(0, new double[] {2, 5})).containsExactly(0, 0);
  }

  /** A litre stands in 10 m of a bore of 11.284 mm (100 mm2). */
  @Test
  void waterInAPipe() {
    double bore = Math.sqrt(4e-4 / Math.PI);
    assertThat(WetMass.ofPipe(bore, 10, 1000)).isCloseTo(1, within(1e-12));
    WetMass sum = new WetMass(1, 2, 3, 4).and(new WetMass(10, 20, 30, 40));
    assertThat(sum).isEqualTo(new WetMass(11, 22, 33, 44));
    assertThat(sum.off()).isEqualTo(33);
    assertThat(sum.on()).isEqualTo(110);
  }

  /** Pots at 0.10 over each module's foot of 0.14 m: stand 0.2, base 0.3, then 0.6, 0.74, 0.88. */
  @Test
  void aReachExactlyAtAPotIsEnough() {
    Module three = new Module(3, 0.16, 0.02, 0.11, 4, 0.1, 0);
    Tower tower = new Tower(0.2, 0.3, List.of(three), 0.05);
    assertThat(tower.stackHeight()).isCloseTo(three.risesBy(), within(1e-12));
    double low = tower.withModules(1).topPot();
    double top = tower.topPot();
    assertThat(low).isCloseTo(0.5 + three.potAt(), within(1e-12));
    assertThat(top).isCloseTo(low + 2 * three.rise(), within(1e-12));
    assertThat(tower.inReach(top)).isTrue();
    assertThat(tower.inReach(top - 1e-6)).isFalse();
    assertThat(tower.modulesInReach(top)).isEqualTo(3);
    assertThat(tower.modulesInReach(top - 1e-6)).isEqualTo(2);
    assertThat(tower.modulesInReach(low - 1e-6)).isEqualTo(0);
  }
}
