package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Ends of tanks: what rounding may leave them by, what is refused, and with which words. */
class TankBoundsTest {
  private static final Tank BOX = LevelFixtures.BOX;
  private static final Tank TABLE =
      new StrappingTable(
          new double[] {0.05, 0.1, 0.5},
          new double[] {0.01, 0.02, 0.1},
          StrappingTable.Between.LINEAR);

  @Test
  void roundingIsHeldToTheEnds() {
    assertThat(BOX.volume(-5e-10)).isZero();
    assertThat(BOX.volume(0.5 + 5e-10)).isCloseTo(0.1, within(1e-15));
    assertThat(BOX.level(-5e-11)).isZero();
    assertThat(BOX.level(0.1 + 5e-11)).isCloseTo(0.5, within(1e-12));
    assertThat(TABLE.volume(0.05 - 5e-10)).isEqualTo(0.01);
  }

  @Test
  void whatLiesBeyondIsRefusedInItsOwnWords() {
    assertThatThrownBy(() -> BOX.volume(-2e-9)).hasMessageContaining("below the floor");
    assertThatThrownBy(() -> BOX.volume(0.5 + 2e-9)).hasMessageContaining("above the rim");
    assertThatThrownBy(() -> BOX.level(-5e-9)).hasMessageContaining("negative");
    assertThatThrownBy(() -> BOX.level(0.1 + 5e-9)).hasMessageContaining("more than the tank");
    assertThatThrownBy(() -> BOX.volume(Double.NaN)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> BOX.level(Double.NaN)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> TABLE.volume(0.02)).hasMessageContaining("does not reach down");
    assertThatThrownBy(() -> TABLE.volume(0)).hasMessageContaining("does not reach down");
    assertThatThrownBy(() -> TABLE.volume(-0.01)).hasMessageContaining("below the floor");
    assertThatThrownBy(() -> TABLE.level(0.005)).hasMessageContaining("does not reach down");
    assertThatThrownBy(() -> TABLE.level(0)).hasMessageContaining("does not reach down");
    assertThatThrownBy(() -> TABLE.level(-0.01)).hasMessageContaining("negative");
  }

  /** Boxes that taper in one way only: the level of a volume is that level again. */
  @Test
  void aBoxMayTaperInOneWayOnly() {
    for (Tank tank :
        new Tank[] {
          TaperedBox.of(0.4, 0.2, 0, 0.4, 0.3, 0, 0.5),
          TaperedBox.of(0.4, 0.2, 0, 0.5, 0.2, 0, 0.5),
          TaperedBox.of(0.4, 0.2, 0.02, 0.4, 0.2, 0.1, 0.5)
        }) {
      for (double z : new double[] {0.05, 0.2, 0.45}) {
        assertThat(tank.level(tank.volume(z))).isCloseTo(z, within(1e-9));
      }
    }
  }

  @Test
  void cornersUpToHalfTheSmallerSide() {
    // 0.4 x 0.2 with corners of 0.1 m: 0.08 less (4 - pi) 0.01.
    assertThat(TaperedBox.box(0.4, 0.2, 0.3, 0.1).area(0.1))
        .isCloseTo(0.08 - (4 - Math.PI) * 0.01, within(1e-12));
    assertThatThrownBy(() -> TaperedBox.box(0.4, 0.2, 0.3, 0.1001)).isInstanceOf(Impossible.class);
  }

  @Test
  void aConeOfTwoEqualEndsIsACylinder() {
    assertThat(Cone.of(0.3, 0.3, 0.4).capacity())
        .isCloseTo(Math.PI * 0.09 / 4 * 0.4, within(1e-12));
    assertThatThrownBy(() -> Cone.of(0, 0, 0.4)).isInstanceOf(Impossible.class);
    assertThat(Cone.of(0, 0.3, 0.4).capacity()).isCloseTo(Math.PI * 0.09 / 12 * 0.4, within(1e-12));
  }

  @Test
  void aFloorThatRisesStaysInTheBox() {
    assertThatThrownBy(() -> new SlopingFloorBox(0.5, 0.4, 0.3, 0.5, 0.1))
        .hasMessageContaining("flat");
    assertThatThrownBy(() -> new SlopingFloorBox(0.5, 0.4, 0.3, 0.1, 0.3))
        .hasMessageContaining("rim");
    // Flat 0.1 m, then up by 0.1 m over 0.4 m: 0.4 (0.5 x 0.3 - 0.4 x 0.1/2).
    assertThat(new SlopingFloorBox(0.5, 0.4, 0.3, 0.1, 0.1).capacity())
        .isCloseTo(0.052, within(1e-12));
  }

  @Test
  void sectionsAndTablesRiseByMoreThanASlip() {
    double[] areas = {0.1, 0.1, 0.2};
    Sections.Between straight = Sections.Between.STRAIGHT_AREA;
    for (double[] heights : new double[][] {{0, 0.1, 0.1}, {0, 0.1, 0.1000001}, {0.1, 0.2, 0.3}}) {
      assertThatThrownBy(() -> new Sections(heights, areas, straight))
          .isInstanceOf(Impossible.class);
    }
    assertThatThrownBy(
            () -> new Sections(new double[] {0, 0.1, 0.2}, new double[] {0.1, 0, 0.2}, straight))
        .hasMessageContaining("an area must be above 0");
    StrappingTable.Between linear = StrappingTable.Between.LINEAR;
    for (double[] levels : new double[][] {{0, 0.1, 0.1}, {0, 0.1, 0.1000001}}) {
      assertThatThrownBy(() -> new StrappingTable(levels, new double[] {0, 0.1, 0.2}, linear))
          .isInstanceOf(Impossible.class);
    }
    for (double[] volumes : new double[][] {{0, 0.1, 0.1}, {0, 0.1, 0.1 + 1e-13}}) {
      assertThatThrownBy(() -> new StrappingTable(new double[] {0, 0.1, 0.2}, volumes, linear))
          .isInstanceOf(Impossible.class);
    }
  }

  /** A brick of 0.05 m2 from 0.1 to 0.3 m in the box of 0.2 m2. */
  @Test
  void aBodyTakesItsSectionFromItsFootToItsTop() {
    Tank tank = new Displaced(BOX, new Body(0.05, 0.1, 0.3));
    assertThat(tank.area(0.0999)).isCloseTo(0.2, within(1e-12));
    assertThat(tank.area(0.1)).isCloseTo(0.15, within(1e-12));
    assertThat(tank.area(0.2999)).isCloseTo(0.15, within(1e-12));
    assertThat(tank.area(0.3)).isCloseTo(0.2, within(1e-12));
    assertThat(tank.capacity()).isCloseTo(0.09, within(1e-12));
    for (double z : new double[] {0.1, 0.2, 0.3, 0.5}) {
      assertThat(tank.level(tank.volume(z))).isCloseTo(z, within(1e-9));
    }
    assertThat(tank.volume(0.2)).isCloseTo(0.035, within(1e-12));
    assertThatThrownBy(() -> new Displaced(BOX, new Body(0.2, 0.1, 0.3)))
        .isInstanceOf(Impossible.class);
    assertThat(new Displaced(BOX, new Body(0.1999, 0.1, 0.3)).capacity())
        .isCloseTo(0.1 - 0.03998, within(1e-12));
  }

  @Test
  void aRoundBody() {
    Body pump = new Body(Math.PI * 0.01, 0.05, 0.35);
    assertThat(pump.area()).isCloseTo(Math.PI * 0.01, within(1e-12));
    assertThat(pump.taken(0.05)).isZero();
    assertThat(pump.taken(0.15)).isCloseTo(Math.PI * 0.001, within(1e-12));
    assertThat(pump.taken(0.5)).isCloseTo(Math.PI * 0.003, within(1e-12));
  }
}
