package leat.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TowerTest {
  private static final double HALF = Math.toRadians(45);
  private static final Module LEAF = Module.of(7, 0.16, 0.02, 0.11, 4, HALF);
  private static final Module HERB = Module.of(2, 0.18, 0.02, 0.11, 3, Math.toRadians(60));

  /** Every pot placed one by one, from the bottom. */
  private static List<double[]> pots(Tower tower) {
    List<double[]> pots = new ArrayList<>();
    double z = tower.stand() + tower.base();
    double heading = 0;
    for (Module module : tower.modules()) {
      for (int i = 0; i < module.count(); i++) {
        for (int p = 0; p < module.pots(); p++) {
          pots.add(new double[] {z + module.potAt(), heading + 2 * Math.PI * p / module.pots()});
        }
        z += module.rise();
        heading += module.turn();
      }
    }
    return pots;
  }

  /** Second route: all pots placed one by one; heights and lines looked up. */
  @Property
  void countsAgreeWithPotsPlacedOneByOne(
      @ForAll @IntRange(min = 1, max = 9) int lower,
      @ForAll @IntRange(min = 1, max = 9) int upper,
      @ForAll @IntRange(min = 1, max = 8) int pots,
      @ForAll @IntRange(min = 0, max = 24) int turn,
      @ForAll @DoubleRange(min = 0.3, max = 3) double reach) {
    Module a = Module.of(lower, 0.16, 0.02, 0.11, pots, Math.toRadians(15 * turn));
    Module b = new Module(upper, 0.2, 0, 0.15, 3, 0.05, Math.toRadians(60));
    Tower tower = new Tower(0.1, 0.35, List.of(a, b), 0.06);
    List<double[]> placed = pots(tower);
    assertThat(tower.pots()).isEqualTo(placed.size());
    double top = placed.stream().mapToDouble(p -> p[0]).max().orElseThrow();
    double low = placed.stream().mapToDouble(p -> p[0]).min().orElseThrow();
    assertThat(tower.topPot()).isCloseTo(top, within(1e-12));
    assertThat(tower.withModules(1).topPot()).isCloseTo(low, within(1e-12));
    int fits = tower.modulesInReach(reach);
    if (fits > 0) {
      assertThat(tower.withModules(fits).inReach(reach)).isTrue();
    }
    assertThat(tower.withModules(fits + 1).inReach(reach)).isFalse();
    double spacing = sameLine(pots(new Tower(0, 0, List.of(a), 0)));
    Double told = new Tower(0, 0, List.of(a), 0).sameColumnSpacing();
    if (Double.isInfinite(spacing)) {
      assertThat(told).isNull();
    } else {
      assertThat(told).isCloseTo(spacing, within(1e-9));
    }
  }

  private static double sameLine(List<double[]> pots) {
    double least = Double.POSITIVE_INFINITY;
    for (double[] one : pots) {
      for (double[] other : pots) {
        double apart = Math.IEEEremainder(one[1] - other[1], 2 * Math.PI);
        if (other[0] > one[0] + 1e-9 && Math.abs(apart) < 1e-6) {
          least = Math.min(least, other[0] - one[0]);
        }
      }
    }
    return least;
  }

  /** The sketch of a roof tower: 0.42 + 7 x 0.14 + 2 x 0.16 + 0 = 1.72 m, 34 pots, by hand. */
  @Test
  void twoKindsOfModules() {
    Tower tower = new Tower(0, 0.42, List.of(LEAF, HERB), 0);
    assertThat(tower.height()).isCloseTo(1.72, within(1e-12));
    assertThat(tower.count()).isEqualTo(9);
    assertThat(tower.pots()).isEqualTo(34);
    assertThat(tower.topPot()).isCloseTo(0.42 + 0.98 + 0.16 + 0.09, within(1e-12));
    assertThat(tower.withModules(8).pots()).isEqualTo(31);
    assertThat(tower.withModules(11).pots()).isEqualTo(40);
    assertThat(tower.withModules(3).modules()).hasSize(1);
    assertThat(tower.sameColumnSpacing()).isCloseTo(0.28, within(1e-12));
  }

  /** Half the pitch is 60, 45, 36 degrees for 3, 4, 5 pots, and repeats every second module. */
  @Test
  void halfAPitchSpreadsBest() {
    double[] degrees = {60, 45, 36};
    for (int p = 3; p <= 5; p++) {
      PotRing ring = new PotRing(0.15, p, 0);
      assertThat(Math.toDegrees(ring.bestTurn())).isCloseTo(degrees[p - 3], within(1e-9));
      assertThat(new PotRing(0.15, p, ring.bestTurn()).repeat()).isEqualTo(2);
    }
    assertThat(new PotRing(0.15, 3, 1).repeat()).isNull();
  }

  @Property
  void theDiameterForPotsFitsAndAHairLessDoesNot(
      @ForAll @IntRange(min = 1, max = 12) int pots,
      @ForAll @DoubleRange(min = 0.03, max = 0.12) double pot) {
    double diameter = new PotRing(1, pots, 0).diameterFor(pot);
    assertThat(new PotRing(diameter * 1.00001, pots, 0).fits(pot)).isTrue();
    assertThat(new PotRing(diameter * 0.9999, pots, 0).fits(pot)).isFalse();
    assertThat(new PotRing(diameter * 1.00001, pots, 0).mostPots(pot)).isGreaterThanOrEqualTo(pots);
  }

  /** Sheet: five 75 mm pots do not fit round 110 mm, nor do four. */
  @Test
  void mostPotsRoundAModule() {
    assertThat(new PotRing(0.11, 5, 0).mostPots(0.075)).isEqualTo(3);
    assertThat(new PotRing(0.15, 5, 0).mostPots(0.2)).isZero();
    assertThat(new PotRing(0.15, 0, 0).fits(0.2)).isTrue();
    assertThat(new PotRing(0.15, 0, 0).pitch()).isNull();
    assertThat(new PotRing(0.15, 0, 0).repeat()).isNull();
    assertThat(new PotRing(0.15, 0, 0).bestTurn()).isNull();
  }

  @Test
  void towersWithoutPots() {
    Tower bare = new Tower(0, 0.4, List.of(Module.of(3, 0.16, 0, 0.11, 0, 0)), 0);
    assertThat(bare.topPot()).isNull();
    assertThat(bare.inReach(0.1)).isTrue();
    assertThat(bare.sameColumnSpacing()).isNull();
  }

  @Test
  void refusesWhatIsNoTower() {
    refused(() -> Module.of(1, 0.16, 0.16, 0.11, 4, 0), "overlap");
    refused(() -> Module.of(1, 0.16, 0, 0, 4, 0), "module diameter");
    refused(() -> Module.of(0, 0.16, 0, 0.11, 4, 0), "modules");
    refused(() -> new Module(1, 0.16, 0, 0.11, 4, 0.17, 0), "pot height");
    refused(() -> new Tower(0, 0, List.of(), 0), "modules");
    refused(() -> new Tower(0, 0, List.of(LEAF), 0).withModules(0), "modules");
    refused(() -> LEAF.ring().room(0), "pot");
  }

  private static void refused(Runnable what, String quantity) {
    assertThatThrownBy(what::run)
        .isInstanceOfSatisfying(
            Impossible.class, e -> assertThat(e.quantity()).isEqualTo(quantity));
  }
}
