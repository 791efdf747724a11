package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Bands of a staircase by hand, on the box of LevelFixtures. */
class StaircaseTest {
  private static Staircase two() {
    return Staircase.bySteps(
        LevelFixtures.BOX, new double[] {0, 0.3}, new double[] {10, 160}, 0.01);
  }

  @Test
  void theWidestStepBetweenTheEnds() {
    Staircase four = LevelFixtures.stairs(false);
    // 0.09 to 0.2 m; the top step is wider and does not count.
    assertThat(four.highestMiddleStep()).isCloseTo(0.11, within(1e-12));
    assertThat(four.widestMiddleBand()).isCloseTo(0.022, within(1e-12));
    // Of two steps both count: 0 to 0.3 and 0.29 to 0.5 m.
    assertThat(two().highestMiddleStep()).isCloseTo(0.3, within(1e-12));
    assertThat(two().widestMiddleBand()).isCloseTo(0.06, within(1e-12));
    assertThat(four.capacity()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void withoutAShapeThereAreNoLevels() {
    Staircase alone =
        Staircase.byEdgesAlone(0.1, new double[] {0.02, 0.06}, new double[] {60, 110}, 10, 0.002);
    assertThat(alone.capacity()).isEqualTo(0.1);
    assertThatThrownBy(alone::highestMiddleStep).isInstanceOf(Impossible.class);
    assertThat(alone.widestMiddleBand()).isCloseTo(0.042, within(1e-12));
    Staircase wider = alone.withEdgeError(0.001);
    assertThat(wider.hasLevels()).isFalse();
    assertThat(wider.volumeLow(1, Motion.UNKNOWN)).isCloseTo(0.017, within(1e-12));
  }

  /** 2 L either way are 0.01 m in the box; floor and rim stay. */
  @Test
  void anEdgeErrorWidensLevelsToo() {
    Staircase wider = LevelFixtures.stairs(false).withEdgeError(0.002);
    assertThat(wider.levelLow(0, Motion.UNKNOWN)).isZero();
    assertThat(wider.levelHigh(0, Motion.UNKNOWN)).isCloseTo(0.11, within(1e-12));
    assertThat(wider.levelLow(1, Motion.UNKNOWN)).isCloseTo(0.08, within(1e-12));
    assertThat(wider.levelHigh(1, Motion.UNKNOWN)).isCloseTo(0.21, within(1e-12));
    assertThat(wider.levelLow(3, Motion.UNKNOWN)).isCloseTo(0.28, within(1e-12));
    assertThat(wider.levelHigh(3, Motion.UNKNOWN)).isEqualTo(0.5);
  }

  /** A table that begins at 1/16 m and 12.5 L: under its first point only the floor is sure. */
  @Test
  void underATablesFirstPointOnlyTheFloorIsSure() {
    Tank table =
        new StrappingTable(
            new double[] {0.0625, 0.125, 0.5},
            new double[] {0.0125, 0.025, 0.1},
            StrappingTable.Between.LINEAR);
    double[] ohms = {10, 60, 110};
    Staircase s = Staircase.bySteps(table, new double[] {0, 0.125, 0.3}, ohms, 0.0625);
    assertThat(s.volumeLow(1, Motion.UNKNOWN)).isCloseTo(0.0125, within(1e-12));
    assertThat(s.withEdgeError(0.001).volumeLow(1, Motion.UNKNOWN))
        .isCloseTo(0.0115, within(1e-12));
    assertThat(s.withEdgeError(0.001).levelLow(1, Motion.UNKNOWN)).isZero();
    assertThat(s.withEdgeError(0.001).levelHigh(1, Motion.UNKNOWN)).isCloseTo(0.305, within(1e-12));
    Staircase lower = Staircase.bySteps(table, new double[] {0, 0.125, 0.3}, ohms, 0.07);
    assertThat(lower.volumeLow(1, Motion.UNKNOWN)).isZero();
  }

  /** The level of a volume is found by a root; the volume that was typed is kept as it is. */
  @Test
  void typedEdgesKeepTheirVolumes() {
    Tank lying = new LyingCylinder(0.3, 0.7);
    double[] edges = {0.0031, 0.0107, 0.0223, 0.0334, 0.0417};
    double[] ohms = {20, 30, 40, 50, 60};
    Staircase s = Staircase.byEdges(lying, edges, ohms, 10, 0.001);
    for (int i = 0; i < edges.length; i++) {
      assertThat(s.volumeLow(i + 1, Motion.RISING)).isEqualTo(edges[i]);
      assertThat(s.volumeHigh(i, Motion.RISING)).isEqualTo(edges[i]);
      assertThat(s.volumeHigh(i, Motion.UNKNOWN)).isEqualTo(edges[i]);
      assertThat(s.levelLow(i + 1, Motion.RISING)).isCloseTo(lying.level(edges[i]), within(1e-9));
    }
  }

  @Test
  void theHysteresisMayReachTheFloorAndNotBelow() {
    double[] levels = {0, 0.125, 0.25};
    double[] ohms = {10, 60, 110};
    assertThat(
            Staircase.bySteps(LevelFixtures.BOX, levels, ohms, 0.125).levelLow(1, Motion.FALLING))
        .isZero();
    assertThatThrownBy(() -> Staircase.bySteps(LevelFixtures.BOX, levels, ohms, 0.126))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("floor");
  }

  @Test
  void stepsMustRise() {
    double[] ohms = {10, 60, 110};
    for (double[] levels : new double[][] {{0.1, 0.1, 0.2}, {0, 0.2, 0.2}, {0.2, 0.1, 0.3}}) {
      assertThatThrownBy(() -> Staircase.bySteps(LevelFixtures.BOX, levels, ohms, 0.01))
          .isInstanceOf(Impossible.class);
    }
    assertThatThrownBy(
            () ->
                Staircase.byEdges(
                    LevelFixtures.BOX, new double[] {0.101}, new double[] {60}, 10, 0.01))
        .hasMessageContaining("rim");
  }

  /** Windows so wide that two, three, two steps follow each other: each stretch has its own row. */
  @Test
  void neighbouringAmbiguousStretchesAreRowsOfTheirOwn() {
    Staircase near =
        Staircase.bySteps(
            LevelFixtures.BOX, new double[] {0, 0.1, 0.2}, new double[] {10, 13, 16}, 0.01);
    Sender sender = new Sender(near, new Limits(3.5, 0.02, 0.4, 1000, 2), 0.08);
    java.util.List<LookupTable.Row> rows = LookupTable.of(sender, null, Motion.UNKNOWN);
    assertThat(rows).filteredOn(r -> r.reading().status() == Status.AMBIGUOUS).hasSize(3);
    for (LookupTable.Row row : rows) {
      for (Double ohm :
          new Double[] {row.ohmFrom(), row.ohmTo() == null ? null : row.ohmTo() - 1e-7}) {
        if (ohm != null) {
          Reading r = sender.decode(ohm, Motion.UNKNOWN, new Reading());
          assertThat(r.status()).isEqualTo(row.reading().status());
          assertThat(r.stepLow()).isEqualTo(row.reading().stepLow());
          assertThat(r.stepHigh()).isEqualTo(row.reading().stepHigh());
        }
      }
      double said = row.reading().ohm() + 0.4;
      assertThat(row.ohmFrom() == null || said >= row.ohmFrom() - 1e-12).isTrue();
      assertThat(row.ohmTo() == null || said < row.ohmTo()).isTrue();
    }
  }

  /** Middles 10, 29, 49, 79 L at 10, 60, 110, 160 ohm, straight between; a lead of 5 ohm. */
  @Test
  void interpolatedByHand() {
    double[] litres = {10, 19.5, 29, 39, 49, 64, 79};
    for (boolean falls : new boolean[] {false, true}) {
      Sender sender =
          new Sender(LevelFixtures.stairs(falls), new Limits(1.5, 0.02, 5, 1000, 2), 0.08);
      java.util.List<LookupTable.Point> points =
          LookupTable.interpolated(sender, null, Motion.UNKNOWN, 25);
      assertThat(points).hasSize(7);
      for (int i = 0; i < 7; i++) {
        LookupTable.Point p = points.get(falls ? 6 - i : i);
        assertThat(p.ohm()).isEqualTo(15 + 25 * (falls ? 6 - i : i));
        assertThat(1000 * p.volume()).as("point " + i).isCloseTo(litres[i], within(1e-9));
        assertThat(p.counts()).isEqualTo(-1);
      }
      java.util.List<LookupTable.Point> odd =
          LookupTable.interpolated(sender, null, Motion.UNKNOWN, 40);
      assertThat(odd)
          .extracting(LookupTable.Point::ohm)
          .containsExactly(15.0, 55.0, 95.0, 135.0, 165.0);
      assertThat(LookupTable.interpolated(sender, null, Motion.UNKNOWN, 0.01)).hasSize(15_001);
      assertThatThrownBy(() -> LookupTable.interpolated(sender, null, Motion.UNKNOWN, 0.001))
          .isInstanceOf(Impossible.class)
          .hasMessageContaining("100,000");
    }
  }

  @Test
  void wholeMillilitresHoldTheBand() {
    Tank lying = new LyingCylinder(0.3, 0.7);
    Staircase s =
        Staircase.bySteps(lying, new double[] {0, 0.11, 0.21}, new double[] {10, 60, 110}, 0.01);
    Reading r = new Sender(s, Limits.DEFAULT, 0.04).decode(60, Motion.UNKNOWN, new Reading());
    assertThat(LookupTable.millilitresLow(r) / 1e6)
        .isLessThan(r.volumeLow())
        .isGreaterThan(r.volumeLow() - 1e-6);
    assertThat(LookupTable.millilitresHigh(r) / 1e6)
        .isGreaterThan(r.volumeHigh())
        .isLessThan(r.volumeHigh() + 1e-6);
  }
}
