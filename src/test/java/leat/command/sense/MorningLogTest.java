package leat.command.sense;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The recipe examples/cron/morning-log, run by a shell as cron runs it. */
class MorningLogTest {
  private static final Path EXAMPLES = Path.of("examples").toAbsolutePath();

  @TempDir Path folder;

  private String leat() throws IOException {
    Path leat = folder.resolve("leat");
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Files.writeString(
        leat,
        "#!/bin/sh\nexec '"
            + java
            + "' -cp '"
            + System.getProperty("java.class.path")
            + "' leat.Main \"$@\"\n");
    Files.setPosixFilePermissions(leat, PosixFilePermissions.fromString("rwxr-xr-x"));
    return leat.toString();
  }

  private String run(int exit, String log, String now) throws Exception {
    ProcessBuilder line = new ProcessBuilder("sh", EXAMPLES.resolve("cron/morning-log").toString());
    line.environment().put("PLAN", EXAMPLES.resolve("logged-tub.yaml").toString());
    line.environment().put("LOG", log);
    line.environment().put("NOW", now);
    line.environment().put("LEAT", leat());
    line.environment().put("DAYS_LEFT", "0.2");
    Process shell = line.redirectErrorStream(true).start();
    String said = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(shell.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(shell.exitValue()).as(said).isEqualTo(exit);
    return said;
  }

  @Test
  void silentWhenAllIsWellAndOneLineOtherwise() throws Exception {
    assumeThat(System.getProperty("os.name")).contains("Linux");
    String log = EXAMPLES.resolve("week-log.csv").toString();
    assertThat(run(0, log, "2027-06-15T07:00:00+02:00")).isEmpty();
    assertThat(run(1, log, "2027-06-15T09:00:00+02:00")).startsWith("log-silent: ").hasLineCount(1);
    String all = Files.readString(Path.of(log));
    String cut = all.substring(0, all.indexOf("2027-06-11T16:30"));
    Path dry = Files.writeString(folder.resolve("dry.csv"), cut);
    assertThat(run(1, dry.toString(), "2027-06-11T16:30:00+02:00"))
        .startsWith("no-water-at-cap: ")
        .hasLineCount(1);
  }
}
