package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Marks and sizes on the box of LevelFixtures, 0.1 m being 20 L; by hand. */
class DipstickTest {
  private static final Tank BOX = LevelFixtures.BOX;
  private static final Offset<Double> NEAR = within(1e-12);

  /** A table that begins at 0.05 m and 10 L and goes on as the box. */
  private static final Tank TABLE =
      new StrappingTable(
          new double[] {0.05, 0.1, 0.5},
          new double[] {0.01, 0.02, 0.1},
          StrappingTable.Between.LINEAR);

  private static double[] levels(java.util.List<Dipstick.Mark> marks) {
    return marks.stream().mapToDouble(Dipstick.Mark::level).toArray();
  }

  @Test
  void marksAtEvenLevels() {
    assertThat(levels(Dipstick.marks(BOX, 0.125, 0.1))).containsExactly(0, 0.125, 0.25, 0.375, 0.5);
    assertThat(levels(Dipstick.marks(TABLE, 0.1, null)))
        .containsExactly(new double[] {0.05, 0.1, 0.2, 0.3, 0.4, 0.5}, within(1e-9));
    assertThat(Dipstick.marks(BOX, 0.125, 0.1).get(1).aboveLow()).isCloseTo(0.005, NEAR);
    assertThat(Dipstick.marks(BOX, 0.125, null).get(1).aboveLow()).isNull();
    assertThat(Dipstick.marks(TABLE, 0.05, null)).as("no mark twice").hasSize(10);
    assertThat(Dipstick.marks(BOX, 0.5 / 19_999, null)).hasSize(20_000);
    assertThatThrownBy(() -> Dipstick.marks(BOX, 0.5 / 20_001, null))
        .isInstanceOf(Impossible.class);
    assertThat(Dipstick.marks(TABLE, 0.45 / 19_999, null)).hasSizeBetween(20_000, 20_001);
  }

  @Test
  void marksAtEvenVolumes() {
    double[] even = {0, 0.1, 0.2, 0.3, 0.4, 0.5};
    assertThat(levels(Dipstick.marksByVolume(BOX, 0.02, 0.1))).containsExactly(even, within(1e-9));
    assertThat(Dipstick.marksByVolume(BOX, 0.02, 0.1).get(3).aboveLow()).isCloseTo(0.04, NEAR);
    assertThat(levels(Dipstick.marksByVolume(TABLE, 0.04, null)))
        .containsExactly(new double[] {0.05, 0.2, 0.4, 0.5}, within(1e-9));
    assertThat(Dipstick.marksByVolume(TABLE, 0.01, null)).as("no mark twice").hasSize(10);
    assertThat(Dipstick.marksByVolume(BOX, 0.1 / 19_999, null)).hasSize(20_000);
    assertThatThrownBy(() -> Dipstick.marksByVolume(BOX, 0.1 / 20_001, null))
        .isInstanceOf(Impossible.class);
    assertThat(Dipstick.marksByVolume(TABLE, 0.09 / 19_999, null)).hasSizeBetween(20_000, 20_001);
    assertThatThrownBy(() -> Dipstick.marksByVolume(BOX, 0, null)).isInstanceOf(Impossible.class);
  }

  /** 1, 2 or 5 mm times ten, the finest that makes 40 marks at most. */
  @Test
  void theFinestEvenStep() {
    assertThat(Dipstick.evenStep(0.4, 40, 0.001)).isCloseTo(0.01, NEAR);
    assertThat(Dipstick.evenStep(0.5, 40, 0.001)).isCloseTo(0.02, NEAR);
    assertThat(Dipstick.evenStep(0.9, 40, 0.001)).isCloseTo(0.05, NEAR);
    assertThat(Dipstick.evenStep(2.0, 40, 0.001)).isCloseTo(0.05, NEAR);
    assertThat(Dipstick.evenStep(2.1, 40, 0.001)).isCloseTo(0.1, NEAR);
    for (Runnable wrong :
        new Runnable[] {
          () -> Dipstick.evenStep(0, 40, 0.001),
          () -> Dipstick.evenStep(1, 0, 0.001),
          () -> Dipstick.evenStep(1, 40, 0)
        }) {
      assertThatThrownBy(wrong::run).isInstanceOf(Impossible.class);
    }
  }

  @Test
  void betweenTwoLevels() {
    assertThat(Dipstick.between(BOX, 0.1, 0.3)).isCloseTo(0.04, NEAR);
    assertThat(Dipstick.between(BOX, 0.3, 0.1)).isCloseTo(-0.04, NEAR);
    // A litre in 0.2 m2 is 5 mm.
    assertThat(Dipstick.rise(Dipstick.at(BOX, 0.1, null).levelPerVolume(), Dipstick.POURED))
        .isCloseTo(0.005, NEAR);
    assertThat(Dipstick.at(Cone.of(0, 0.3, 0.4), 0, null).levelPerVolume()).isNull();
  }

  /** 60 L between 0.1 and 0.4 m; a mL a second drinks them in 60 000 s. */
  @Test
  void whatAThirstAsksOfTheTank() {
    Dipstick.Need just = Dipstick.need(BOX, 0.1, 0.4, 1e-6, 60_000);
    assertThat(just.drunk()).isCloseTo(0.06, NEAR);
    assertThat(just.unusable()).isCloseTo(0.02, NEAR);
    assertThat(just.needed()).isCloseTo(0.08, NEAR);
    assertThat(just.fits()).isTrue();
    assertThat(just.level()).isCloseTo(0.4, NEAR);
    assertThat(just.lasts()).isCloseTo(60_000, within(1e-6));
    assertThat(just.scale()).isCloseTo(1, NEAR);
    Dipstick.Need more = Dipstick.need(BOX, 0.1, 0.4, 1e-6, 61_000);
    assertThat(more.fits()).isFalse();
    assertThat(more.level()).isCloseTo(0.405, NEAR);
    assertThat(Dipstick.need(BOX, 0.1, 0.4, 1e-6, 79_999).level()).isCloseTo(0.5, within(1e-5));
    assertThat(Dipstick.need(BOX, 0.1, 0.4, 1e-6, 80_001).level()).isNull();
    assertThat(Dipstick.need(BOX, 0.1, 0.4, 1e-6, 480_000).scale()).isCloseTo(2, NEAR);
    Dipstick.Need none = Dipstick.need(BOX, 0.1, 0.4, 0, 60_000);
    assertThat(none.lasts()).isNull();
    assertThat(none.scale()).isZero();
    assertThatThrownBy(() -> Dipstick.need(BOX, 0.4, 0.4, 1e-6, 1)).isInstanceOf(Impossible.class);
  }

  /** A capacitive sensor: 301 counts wet, 800 dry, half way 550.5; and one the other way round. */
  @Test
  void theCapsCountsAreRoundedToTheSafeSide() {
    CapSensor few = new CapSensor(301, 800);
    assertThat(few.dryness(301)).isZero();
    assertThat(few.dryness(800)).isEqualTo(1);
    assertThat(few.dryness(1299)).isEqualTo(2);
    assertThat(few.fewerIsWet()).isTrue();
    assertThat(few.wetAt()).isEqualTo(550);
    assertThat(few.dryAt()).as("700.2").isEqualTo(701);
    CapSensor many = new CapSensor(800, 301);
    assertThat(many.fewerIsWet()).isFalse();
    assertThat(many.wetAt()).isEqualTo(551);
    assertThat(many.dryAt()).as("400.8").isEqualTo(400);
    assertThat(new CapSensor(100, 120).dryness(110)).isEqualTo(0.5);
    assertThatThrownBy(() -> new CapSensor(100, 119.9)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new CapSensor(119.9, 100)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new CapSensor(-1, 100)).isInstanceOf(Impossible.class);
  }

  @Test
  void aControllerWaitsTwiceWhatWaterNeeds() {
    assertThat(CapSensor.judgeAfter(10)).isEqualTo(20);
    assertThat(CapSensor.judgeAfter(10.1)).isEqualTo(21);
    assertThat(CapSensor.judgeAfter(0.5)).isEqualTo(1);
    assertThat(CapSensor.judgeAfter(0)).isEqualTo(1);
    assertThatThrownBy(() -> CapSensor.judgeAfter(-1)).isInstanceOf(Impossible.class);
  }
}
