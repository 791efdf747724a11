package leat.command.sense;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Logs that grow, break off or never end a line. */
class LogStreamsTest {
  private static final String[] ROWS = {"log", "-", "--plan", "logged-tub.yaml", "--rows"};
  private static final String[] JSON = {
    "log", "-", "--plan", "logged-tub.yaml", "--format", "json"
  };

  private static String week() {
    try {
      return Files.readString(Path.of("examples/week-log.csv"));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static InputStream bytes(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  /** As behind tail -f: what can be judged comes out while the input still waits. */
  @Test
  @Timeout(60)
  void aGrowingFile() throws Exception {
    String whole = week();
    int half = whole.indexOf("2027-06-08T00:00");
    PipedOutputStream writer = new PipedOutputStream();
    PipedInputStream in = new PipedInputStream(writer, 1 << 20);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CompletableFuture<Cli> run = CompletableFuture.supplyAsync(() -> Cli.fed(in, out, ROWS));
    writer.write(whole.substring(0, half).getBytes(StandardCharsets.UTF_8));
    writer.flush();
    // Three hours are held back: two for rows that come late, one for the step at rest.
    while (!out.toString(StandardCharsets.UTF_8).contains("2027-06-07T20:")) {
      assertThat(run).isNotDone();
      TimeUnit.MILLISECONDS.sleep(20);
    }
    writer.write(whole.substring(half).getBytes(StandardCharsets.UTF_8));
    writer.close();
    Cli grown = run.get();
    assertThat(grown.exit).isZero();
    assertThat(grown.out).isEqualTo(Cli.piped(whole, ROWS).out);
  }

  @Test
  void aReadErrorInTheMiddle() {
    InputStream broken =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("disk");
          }
        };
    String half = week().substring(0, week().length() / 2);
    Cli told = Cli.fed(new SequenceInputStream(bytes(half), broken), JSON);
    assertThat(told.exit).isEqualTo(3);
    assertThat(told.out).isEmpty();
    assertThat(told.err).contains("cannot be read");
  }

  @Test
  void aFileThatIsBeingWritten() {
    String whole = week();
    int lastLine = whole.lastIndexOf('\n', whole.length() - 2) + 1;
    String upTo = whole.substring(0, lastLine);
    assertThat(Cli.piped(whole.substring(0, lastLine + 30), JSON).out)
        .isEqualTo(Cli.piped(upTo, JSON).out);
  }

  @Test
  @Timeout(60)
  void aHundredMegabytesInOneLine() {
    InputStream long0 =
        new InputStream() {
          private long left = 100L << 20;

          @Override
          public int read() {
            return left-- > 0 ? '7' : -1;
          }

          @Override
          public int read(byte[] into, int at, int length) {
            if (left <= 0) {
              return -1;
            }
            int n = (int) Math.min(length, left);
            java.util.Arrays.fill(into, at, at + n, (byte) '7');
            left -= n;
            return n;
          }
        };
    Cli told = Cli.fed(new SequenceInputStream(bytes(week()), long0), JSON);
    assertThat(told.exit).isEqualTo(2);
    assertThat(told.err).contains("line");
  }

  /** The instants count: only the word about the zone differs. */
  @Test
  void aPlanInAnotherZoneThanTheLog() {
    StringBuilder west = new StringBuilder();
    week()
        .lines()
        .forEach(
            line -> {
              int comma = line.indexOf(',');
              String time = line.substring(0, comma);
              west.append(
                      time.startsWith("2")
                          ? OffsetDateTime.parse(time)
                              .withOffsetSameInstant(ZoneOffset.ofHours(-5))
                              .toString()
                          : time)
                  .append(line.substring(comma))
                  .append('\n');
            });
    Cli other = Cli.piped(west.toString(), JSON);
    Cli own = Cli.piped(week(), JSON);
    assertThat(other.number("volume_L")).isEqualTo(own.number("volume_L"));
    assertThat(other.number("use_L_day")).isEqualTo(own.number("use_L_day"));
    assertThat(other.word("last")).isEqualTo(own.word("last"));
    assertThat(other.out).contains("other-zone");
    assertThat(own.out).doesNotContain("other-zone");
  }
}
