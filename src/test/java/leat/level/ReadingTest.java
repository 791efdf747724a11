package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** What a reading says of marks, and where windows end; by hand on the box of LevelFixtures. */
class ReadingTest {
  @Test
  void againstAMark() {
    Reading second = LevelFixtures.read(60);
    assertThat(second.volumeLow()).isCloseTo(0.018, within(1e-12));
    assertThat(second.volumeHigh()).isCloseTo(0.04, within(1e-12));
    assertThat(second.aboveMark(0.02)).isCloseTo(0.009, within(1e-12));
    assertThat(second.aboveMark(0.04)).isCloseTo(-0.011, within(1e-12));
    assertThat(second.mayBeBelow(second.volumeLow())).isFalse();
    assertThat(second.mayBeBelow(0.0181)).isTrue();
    assertThat(second.isBelow(second.volumeHigh())).as("no more than the mark").isTrue();
    assertThat(second.isBelow(0.0399)).isFalse();
    assertThat(second.stepLowOhm()).isEqualTo(60);
    assertThat(second.stepHighOhm()).isEqualTo(60);
    Reading between = LevelFixtures.read(85);
    assertThat(between.status()).isEqualTo(Status.BETWEEN_STEPS);
    assertThat(between.stepLowOhm()).isEqualTo(60);
    assertThat(between.stepHighOhm()).isEqualTo(110);
  }

  @Test
  void floorAndRim() {
    assertThat(LevelFixtures.read(10).reachesFloor()).isTrue();
    assertThat(LevelFixtures.read(60).reachesFloor()).isFalse();
    assertThat(LevelFixtures.read(160).reachesRim()).isTrue();
    assertThat(LevelFixtures.read(110).reachesRim()).isFalse();
  }

  @Test
  void aFaultHasNoBand() {
    Reading open = LevelFixtures.read(2000);
    assertThat(open.status()).isEqualTo(Status.OPEN);
    assertThatThrownBy(() -> open.mayBeBelow(0.02)).isInstanceOf(Impossible.class);
    assertThat(new Reading().staircase()).isNull();
    assertThat(open.staircase().size()).isEqualTo(4);
    EnumSet<Status> faults = EnumSet.noneOf(Status.class);
    for (Status one : Status.values()) {
      if (one.isFault()) {
        faults.add(one);
      }
    }
    assertThat(faults)
        .containsExactly(Status.OPEN, Status.SHORT, Status.UNDER_RANGE, Status.OVER_RANGE);
  }

  /** 160 ohm: its window ends at 160 + 1.5 + 3.2; 60 ohm is the second lowest. */
  @Test
  void openAndShortKeepClearOfTheSteps() {
    Staircase stairs = LevelFixtures.stairs(false);
    assertThat(new Sender(stairs, new Limits(1.5, 0.02, 0, 164.8, 2), 0.08).fullVolume())
        .isEqualTo(0.08);
    assertThatThrownBy(() -> new Sender(stairs, new Limits(1.5, 0.02, 0, 164.7, 2), 0.08))
        .isInstanceOf(Impossible.class);
    assertThat(new Sender(stairs, new Limits(1.5, 0.02, 0, 1000, 60), 0.08).overlaps()).isZero();
    assertThatThrownBy(() -> new Sender(stairs, new Limits(1.5, 0.02, 0, 1000, 60.1), 0.08))
        .isInstanceOf(Impossible.class);
  }

  /** Windows of 10 and 13 ohm reach 1.7 and 1.76 ohm: 3.46 over a gap of 3. */
  @Test
  void overlapsAreCounted() {
    Staircase near =
        Staircase.bySteps(
            LevelFixtures.BOX, new double[] {0, 0.1, 0.2}, new double[] {10, 13, 60}, 0.01);
    assertThat(new Sender(near, Limits.DEFAULT, 0.08).overlaps()).isEqualTo(1);
    assertThat(LevelFixtures.sender(true).overlaps()).isZero();
  }

  /** Each count inside a step's worst case is that step, or that step among others. */
  @Test
  void readByADividerAStepKeepsItsWorstCounts() {
    for (Divider.Side side : Divider.Side.values()) {
      for (int bits : new int[] {12, 7}) {
        Divider d = new Divider(side, 3.3, 0.02, 220, 0.01, bits, 3.3, 0, true, 3);
        for (boolean falls : new boolean[] {false, true}) {
          Sender read = LevelFixtures.sender(falls).readBy(d);
          for (int i = 0; i < 4; i++) {
            Divider.Step worst = d.step(read.staircase().ohm(i), 0, Limits.DEFAULT_TOLERANCE, 0);
            for (int code = worst.codeLow(); code <= worst.codeHigh(); code++) {
              Reading r = read.decodeCode(code, d, Motion.UNKNOWN, new Reading());
              assertThat(r.hasBand())
                  .as("%s %d bits step %d code %d", side, bits, i, code)
                  .isTrue();
              assertThat(r.stepLow()).isLessThanOrEqualTo(i);
              assertThat(r.stepHigh()).isGreaterThanOrEqualTo(i);
            }
          }
        }
      }
    }
  }

  /** A step that the worst case takes for anything: its window ends under what is open. */
  @Test
  void aWindowWithoutEndStopsUnderOpen() {
    Divider d = LevelFixtures.divider(Divider.Side.HIGH, 3.3, 5, 6, 3.3);
    assertThat(d.step(160, 0, 0.02, 0).ohmHigh()).isNull();
    Sender read = LevelFixtures.sender(false).readBy(d);
    assertThat(read.decode(999, Motion.UNKNOWN, new Reading()).stepHigh()).isEqualTo(3);
    assertThat(read.decode(1000, Motion.UNKNOWN, new Reading()).status()).isEqualTo(Status.OPEN);
  }

  /**
   * Sure of 20 L: steps three and four; 110 ohm less its window of 3.7 is the last sure reading.
   */
  @Test
  void theCutOffIsTheLastSureReading() {
    for (boolean falls : new boolean[] {false, true}) {
      Sender sender = LevelFixtures.sender(falls);
      List<LookupTable.Row> rows = LookupTable.of(sender, null, Motion.UNKNOWN);
      Cutoff cut = Cutoff.of(rows, falls, null, 0.02);
      assertThat(cut.ohm()).isCloseTo(falls ? 60 + 2.7 : 110 - 3.7, within(1e-6));
      assertThat(cut.fromBelow()).isEqualTo(!falls);
      assertThat(cut.counts()).isEqualTo(-1);
      assertThat(cut.sureVolume()).isCloseTo(0.038, within(1e-12));
      assertThat(Cutoff.of(rows, falls, null, 0.06)).as("no reading is sure of 60 L").isNull();
      double top = sender.decode(falls ? 10 : 160, Motion.UNKNOWN, new Reading()).volumeLow();
      assertThat(Cutoff.of(rows, falls, null, top).sureVolume()).isEqualTo(top);
    }
  }

  /** In counts: of all that have a band, those on the sure side hold the mark and no others. */
  @Test
  void theCutOffPartsTheCounts() {
    for (Divider.Side side : Divider.Side.values()) {
      Divider d = LevelFixtures.divider(side, 3.3, 220, 10, 3.3);
      for (boolean falls : new boolean[] {false, true}) {
        Sender sender = LevelFixtures.sender(falls);
        Cutoff cut = Cutoff.of(LookupTable.of(sender, d, Motion.UNKNOWN), falls, d, 0.02);
        assertThat(cut.countsFromBelow()).isEqualTo((side == Divider.Side.LOW) != falls);
        for (int code = 0; code < 1024; code++) {
          Reading r = sender.decodeCode(code, d, Motion.UNKNOWN, new Reading());
          if (r.hasBand()) {
            assertThat(cut.countsFromBelow() ? code >= cut.counts() : code <= cut.counts())
                .as("%s falls %s code %d", side, falls, code)
                .isEqualTo(!r.mayBeBelow(0.02));
          }
        }
      }
    }
  }
}
