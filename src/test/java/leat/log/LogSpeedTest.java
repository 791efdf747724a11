package leat.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/** The path of a row makes no waste; its time is printed. */
class LogSpeedTest {
  @Test
  void rowsWithoutWaste() {
    LogPass pass = new LogPass(ReferenceLogsTest.system("terrace"), LogLimits.DEFAULT);
    LogRow row = new LogRow();
    LogTimes times = new LogTimes(ReferenceLogsTest.system("terrace").zone(), "time");
    feed(pass, row, times, 0, 400_000);
    com.sun.management.ThreadMXBean threads =
        (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    long start = threads.getCurrentThreadCpuTime();
    int rows = 1_000_000;
    feed(pass, row, times, 400_000, rows);
    long nanos = threads.getCurrentThreadCpuTime() - start;
    double bytes = (double) (threads.getCurrentThreadAllocatedBytes() - before) / rows;
    System.out.println(nanos / rows + " ns a row, " + bytes + " bytes a row");
    // Days, spans of EC and events are kept: some kilobytes a day of 144 rows.
    assertThat(bytes).isLessThan(16);
    assertThat((double) nanos / rows).isLessThan(1000);
    assertThat(pass.finish().rows()).isEqualTo(1_400_000);
  }

  private static void feed(LogPass pass, LogRow row, LogTimes times, int from, int count) {
    byte[] text = "2027-06-04T00:00:01Z".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
    for (int i = from; i < from + count; i++) {
      times.read(text, 0, text.length);
      row.time = 1_800_000_000_000L + i * 600_000L;
      int phase = i % 1008;
      row.reading = 190.4 - 18 * (phase / 112);
      row.ec = 1.6 + 0.0003 * phase;
      row.celsius = 18;
      row.pump = i % 9 == 0 ? 1 : 0;
      row.cap = 1500;
      row.rain = 0;
      pass.accept(row);
    }
  }
}
