package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leat.Sheet;
import org.junit.jupiter.api.Test;

/** The table for a controller says what the sender says, for every code and many ohms. */
class LookupTest {
  private static Sender plan(String id) {
    return SenderSheetsTest.planSender(
        Sheet.of("level-plan-decode.csv").where(r -> r.id().equals(id)).rows().get(0));
  }

  @Test
  void everyCodeStandsInTheRowThatDecodesIt() {
    for (String id : List.of("PD01", "PD12", "PD13", "PD17")) {
      for (Divider.Side side : Divider.Side.values()) {
        for (double reference : new double[] {3.3, 1.1}) {
          Sender sender = plan(id);
          Divider d = LevelFixtures.divider(side, 3.3, 220, 12, reference);
          List<LookupTable.Row> rows = LookupTable.of(sender, d, Motion.UNKNOWN);
          int[] hits = new int[4096];
          for (LookupTable.Row row : rows) {
            for (int c = row.countsFrom(); c >= 0 && c <= row.countsTo(); c++) {
              hits[c]++;
              Reading out = sender.decodeCode(c, d, Motion.UNKNOWN, new Reading());
              assertThat(out.status()).as(id + side + c).isEqualTo(row.reading().status());
              assertThat(out.stepLow()).isEqualTo(row.reading().stepLow());
              assertThat(out.stepHigh()).isEqualTo(row.reading().stepHigh());
            }
          }
          for (int h : hits) {
            assertThat(h).isEqualTo(1);
          }
        }
      }
    }
  }

  @Test
  void rowsJoinAndMeanWhatDecodeMeans() {
    Sender sender = plan("PD12");
    List<LookupTable.Row> rows = LookupTable.of(sender, null, Motion.FALLING);
    assertThat(rows.get(0).ohmFrom()).isNull();
    assertThat(rows.get(rows.size() - 1).ohmTo()).isNull();
    for (int i = 0; i < rows.size(); i++) {
      LookupTable.Row row = rows.get(i);
      if (i > 0) {
        assertThat(row.ohmFrom()).isEqualTo(rows.get(i - 1).ohmTo());
        Reading out = sender.decode(row.ohmFrom() + 1e-7, Motion.FALLING, new Reading());
        assertThat(out.status()).isEqualTo(row.reading().status());
        if (out.hasBand()) {
          assertThat(out.volume()).isEqualTo(row.reading().volume());
        }
      }
    }
  }

  @Test
  void aClippedReferenceIsNotTakenForAStep() {
    // 1.1 V reference under a 3.3 V supply: the top code comes at 110 ohm, a healthy step
    Sender sender = plan("PD01");
    Divider d = LevelFixtures.divider(Divider.Side.LOW, 3.3, 220, 12, 1.1);
    Reading out = sender.decodeCode(4095, d, Motion.UNKNOWN, new Reading());
    assertThat(out.status()).isEqualTo(Status.OVER_RANGE);
    assertThat(out.hasBand()).isFalse();
    Divider whole = LevelFixtures.divider(Divider.Side.LOW, 3.3, 220, 12, 3.3);
    assertThat(sender.decodeCode(4095, whole, Motion.UNKNOWN, out).status()).isEqualTo(Status.OPEN);
  }

  @Test
  void interpolatedPassesThroughTheMiddles() {
    Sender sender = plan("PD13");
    List<LookupTable.Point> points = LookupTable.interpolated(sender, null, Motion.UNKNOWN, 10);
    assertThat(points.get(0).ohm()).isCloseTo(33.4, within(1e-9));
    assertThat(points.get(points.size() - 1).ohm()).isCloseTo(240.4, within(1e-9));
    Reading last = sender.decode(240.4, Motion.UNKNOWN, new Reading());
    assertThat(points.get(points.size() - 1).volume()).isCloseTo(last.volume(), within(1e-12));
    for (LookupTable.Point p : points) {
      assertThat(p.volume()).isBetween(p.volumeLow(), p.volumeHigh());
    }
  }

  @Test
  void ranges() {
    assertThat(TradeRange.like(2, 188)).isEqualTo(TradeRange.EUROPE_0_190);
    assertThat(TradeRange.like(239, 30)).isEqualTo(TradeRange.AMERICA_240_30);
    assertThat(TradeRange.like(33, 240)).isNull();
    assertThat(TradeRange.reversed(33, 240)).isEqualTo(TradeRange.AMERICA_240_33);
    assertThat(TradeRange.of("10-180")).isEqualTo(TradeRange.EUROPE_10_180);
  }

  /** A coarse guard only: the real measurement is a benchmark under scripts. */
  @Test
  void decodesMillionsWithoutAllocation() {
    Sender sender = plan("PD01");
    Reading out = new Reading();
    double sum = 0;
    for (int i = 0; i < 200_000; i++) {
      sum += sender.decode(i % 220, Motion.UNKNOWN, out).hasBand() ? out.volume() : 0;
    }
    com.sun.management.ThreadMXBean threads =
        (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    long from = System.nanoTime();
    for (int i = 0; i < 1_000_000; i++) {
      sum += sender.decode(i % 220, Motion.UNKNOWN, out).hasBand() ? out.volume() : 0;
    }
    long took = System.nanoTime() - from;
    assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(100_000);
    assertThat(took / 1e9).as("seconds a million, sum " + sum).isLessThan(1.0);
  }
}
