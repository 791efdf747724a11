package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** Laws every tank obeys, over random shapes. */
class TankLawsTest {
  private static double between(Random r, double low, double high) {
    return low + (high - low) * r.nextDouble();
  }

  /** A random tank of every shape, sometimes with bodies in it. */
  static Tank random(long seed) {
    Random r = new Random(seed);
    Tank shell = shell(r);
    if (r.nextInt(3) > 0) {
      return shell;
    }
    double least = Double.POSITIVE_INFINITY;
    double from = Math.max(between(r, 0.3, 0.5) * shell.height(), shell.lowestLevel());
    for (int i = 0; i <= 100; i++) {
      least = Math.min(least, shell.area(from + (shell.height() - from) * i / 100));
    }
    for (double kink : shell.kinks()) {
      least = Math.min(least, kink < from ? least : shell.area(kink));
    }
    if (!(least > 1e-6)) {
      return shell;
    }
    double to = Math.max(between(r, 0.6, 1.2) * shell.height(), 1.2 * from);
    return new Displaced(
        shell, new Body(least * 0.4, from, to), new Body(least * 0.3, from * 1.1, to * 0.99));
  }

  private static Tank shell(Random r) {
    double l = between(r, 0.2, 1);
    double w = between(r, 0.2, 1);
    double h = between(r, 0.1, 1);
    switch (r.nextInt(8)) {
      case 0:
        return TaperedBox.box(l, w, h, between(r, 0, 0.1));
      case 1:
        return TaperedBox.of(
            l,
            w,
            between(r, 0, 0.1),
            between(r, 0.2, 1),
            between(r, 0.2, 1),
            between(r, 0, 0.1),
            h);
      case 2:
        return Cone.cylinder(l, h);
      case 3:
        return Cone.of(r.nextBoolean() ? 0 : l, w, h);
      case 4:
        return new LyingCylinder(l, w);
      case 5:
        return new SlopingFloorBox(
            l, w, h, r.nextBoolean() ? 0 : 0.5 * l, between(r, 0.05, 0.9) * h);
      case 6:
        {
          int n = 2 + r.nextInt(5);
          double[] z = new double[n];
          double[] a = new double[n];
          for (int i = 0; i < n; i++) {
            z[i] = i == 0 ? 0 : z[i - 1] + between(r, 0.001, 0.2);
            a[i] = between(r, 0.05, 0.5);
          }
          return new Sections(z, a, Sections.Between.values()[r.nextInt(2)]);
        }
      default:
        {
          int n = 2 + r.nextInt(6);
          double[] z = new double[n];
          double[] v = new double[n];
          for (int i = 0; i < n; i++) {
            z[i] = i == 0 ? (r.nextBoolean() ? 0 : 0.02) : z[i - 1] + between(r, 0.01, 0.1);
            v[i] = i == 0 ? (z[0] == 0 ? 0 : 0.001) : v[i - 1] + between(r, 0.001, 0.01);
          }
          return new StrappingTable(z, v, StrappingTable.Between.values()[r.nextInt(2)]);
        }
    }
  }

  @Property(tries = 20000)
  void levelUndoesVolume(
      @ForAll @LongRange(min = 0, max = 1L << 40) long seed,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Tank tank = random(seed);
    double v = tank.lowestVolume() + share * (tank.capacity() - tank.lowestVolume());
    double z = tank.level(v);
    assertThat(z).isBetween(tank.lowestLevel(), tank.height());
    assertThat(tank.volume(z)).isCloseTo(v, within(1e-12 * tank.capacity()));
  }

  @Property(tries = 20000)
  void volumeIsTheIntegralOfTheSurface(
      @ForAll @LongRange(min = 0, max = 1L << 40) long seed,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    Tank tank = random(seed);
    double low = tank.lowestLevel();
    double z = low + share * (tank.height() - low);
    // midpoint rule over a thin slice: the slice's volume is its middle area times its height
    double dz = 1e-6 * tank.height();
    double slice = tank.volume(z + dz / 2) - tank.volume(z - dz / 2);
    double thin = Math.min(tank.area(z - dz / 2), tank.area(z + dz / 2));
    double wide = Math.max(tank.area(z - dz / 2), tank.area(z + dz / 2));
    assertThat(slice / dz).isBetween(thin - 1e-6 * wide, wide + 1e-6 * wide);
  }

  @Property(tries = 20000)
  void risesStrictly(@ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
    Tank tank = random(seed);
    double before = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= 200; i++) {
      double z = tank.lowestLevel() + (tank.height() - tank.lowestLevel()) * i / 200;
      assertThat(tank.volume(z)).isGreaterThan(before);
      before = tank.volume(z);
    }
  }

  @Test
  void aTypedFullTankIsNotRefused() {
    Tank tank = TaperedBox.box(600 * 0.001, 400 * 0.001, 300 * 0.001, 0);
    assertThat(tank.level(72 * 0.001)).isCloseTo(0.3, within(1e-12));
    assertThat(tank.volume(30 * 0.01)).isCloseTo(0.072, within(1e-15));
  }

  @Test
  void bodiesThatFillTheSectionAreRefused() {
    Tank tank = TaperedBox.of(0.4, 0.3, 0, 0.2, 0.1, 0, 0.3);
    new Displaced(tank, new Body(0.019, 0, 0.3));
    assertThatThrownBy(() -> new Displaced(tank, new Body(0.0201, 0, 0.3)))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("whole section");
    assertThatThrownBy(() -> new Displaced(Cone.of(0, 0.3, 0.3), new Body(1e-4, 0, 0.1)))
        .isInstanceOf(Impossible.class);
  }

  /** A waist of a hundred square centimetres between two sections 1 mm under and over it. */
  @Test
  void aBodyThatFillsANarrowWaistIsRefused() {
    Tank tank =
        new Sections(
            new double[] {0, 0.5, 0.501, 0.502, 1},
            new double[] {0.2, 0.2, 0.01, 0.2, 0.2},
            Sections.Between.STRAIGHT_AREA);
    new Displaced(tank, new Body(0.0099, 0, 1));
    assertThatThrownBy(() -> new Displaced(tank, new Body(0.0101, 0, 1)))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("whole section");
  }

  /** Once drawn with a body wider than a narrow ledge of it. */
  @Test
  void risesStrictlyWithALedge() {
    risesStrictly(363244421631L);
  }

  @Test
  void nanAndInfinityAreRefused() {
    Tank tank = new LyingCylinder(0.4, 0.7);
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1}) {
      assertThatThrownBy(() -> tank.volume(bad)).isInstanceOf(Impossible.class);
      assertThatThrownBy(() -> tank.level(bad)).isInstanceOf(Impossible.class);
      assertThatThrownBy(() -> tank.area(bad)).isInstanceOf(Impossible.class);
      assertThatThrownBy(() -> TaperedBox.box(0.4, bad, 0.3, 0)).isInstanceOf(Impossible.class);
    }
  }

  @Test
  void dipstickCountsFromTheLowMark() {
    Tank tank = TaperedBox.box(0.5, 0.4, 0.305, 0);
    List<Dipstick.Mark> marks = Dipstick.marks(tank, 0.01, 0.08);
    assertThat(marks).hasSize(32);
    assertThat(marks.get(8).level()).isEqualTo(0.08, within(1e-12));
    assertThat(marks.get(8).aboveLow()).isEqualTo(0, within(1e-15));
    assertThat(marks.get(9).aboveLow()).isEqualTo(0.002, within(1e-12));
    assertThat(marks.get(31).level()).isEqualTo(0.305);
    assertThat(marks.get(3).levelPerVolume()).isEqualTo(5, within(1e-12));
    assertThat(Dipstick.at(Cone.of(0, 0.3, 0.3), 0, null).levelPerVolume()).isNull();
  }

  @Test
  void aScaledTankHasJustEnough() {
    Tank tank = TaperedBox.of(0.48, 0.3, 0, 0.54, 0.36, 0, 0.33);
    Dipstick.Need need = Dipstick.need(tank, 0.08, 0.28, 8e-3 / 86400, 7 * 86400.0);
    assertThat(need.fits()).isFalse();
    double k = need.scale();
    Tank scaled = TaperedBox.of(0.48 * k, 0.3 * k, 0, 0.54 * k, 0.36 * k, 0, 0.33 * k);
    assertThat(scaled.volume(0.28 * k) - scaled.volume(0.08 * k)).isCloseTo(0.056, within(1e-12));
  }
}
