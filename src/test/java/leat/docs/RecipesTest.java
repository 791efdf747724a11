package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The recipes of examples/cron, each run in an environment as bare as cron's, by a given clock. */
class RecipesTest {
  private static final Path EXAMPLES = Path.of("examples").toAbsolutePath();

  @TempDir Path folder;

  private String leat() throws IOException {
    Path leat = folder.resolve("leat");
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String jars = System.getProperty("java.class.path");
    Files.writeString(leat, "#!/bin/sh\nexec '" + java + "' -cp '" + jars + "' leat.Main \"$@\"\n");
    Files.setPosixFilePermissions(leat, PosixFilePermissions.fromString("rwxr-xr-x"));
    return leat.toString();
  }

  private static String said(Process process, int exit) throws Exception {
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(said).isEqualTo(exit);
    return said;
  }

  /** PATH, HOME and SHELL are what crontab(5) gives; the rest stands on the line. */
  private String run(int exit, String recipe, Map<String, String> line) throws Exception {
    assumeThat(System.getProperty("os.name")).contains("Linux");
    Path file = EXAMPLES.resolve("cron").resolve(recipe);
    assertThat(Files.isExecutable(file)).as(recipe).isTrue();
    ProcessBuilder shell = new ProcessBuilder(file.toString());
    shell.directory(folder.toFile()).redirectErrorStream(true);
    shell.environment().clear();
    shell
        .environment()
        .putAll(Map.of("PATH", "/usr/bin:/bin", "HOME", folder.toString(), "SHELL", "/bin/sh"));
    shell.environment().put("LEAT", leat());
    shell.environment().putAll(line);
    return said(shell.start(), exit);
  }

  private static String example(String name) {
    return EXAMPLES.resolve(name).toString();
  }

  /** Tomorrow of the last day of a month, at an hour that is another day elsewhere. */
  @Test
  void tomorrow() throws Exception {
    String plan = example("balcony.yaml");
    for (String now : List.of("2027-06-30T18:00:00-07:00", "2027-06-30T23:30:00+02:00")) {
      Map<String, String> line = Map.of("PLAN", plan, "NOW", now, "TMIN", "-1", "TMAX", "27.5");
      assertThat(run(0, "tomorrow", line)).startsWith("On 1 Jul the towers want ");
    }
    assertThat(run(2, "tomorrow", Map.of("PLAN", plan, "TMIN", "1"))).contains("TMAX");
  }

  @Test
  void morningLog() throws Exception {
    Map<String, String> quiet =
        Map.of(
            "PLAN",
            example("logged-tub.yaml"),
            "LOG",
            example("week-log.csv"),
            "DAYS_LEFT",
            "0.2",
            "NOW",
            "2027-06-15T07:00:00+02:00");
    assertThat(run(0, "morning-log", quiet)).isEmpty();
  }

  @Test
  void eveningTopup() throws Exception {
    Map<String, String> line =
        Map.of(
            "PLAN",
            example("hard-water.yaml"),
            "LOG",
            example("week-log.csv"),
            "NOW",
            "2027-06-15T07:00:00+02:00",
            "EC",
            "1.9 mS/cm");
    assertThat(run(0, "evening-topup", line)).contains("of water", "of feed", "EC 1.90 mS/cm");
    Map<String, String> silent = new HashMap<>(line);
    silent.put("NOW", "2027-06-17T18:30:00+02:00");
    assertThat(run(2, "evening-topup", silent)).contains("log-silent since 15 June");
  }

  @Test
  void weeklyCheck() throws Exception {
    String plan = example("balcony.yaml");
    assertThat(run(0, "weekly-check", Map.of("PLANS", plan))).isEmpty();
    String both = plan + " " + example("proud-tower.yaml");
    assertThat(run(1, "weekly-check", Map.of("PLANS", both))).contains("proud-tower", "fail");
  }

  /** Each timer starts a recipe that is there, and systemd reads it where it is installed. */
  @ParameterizedTest
  @ValueSource(strings = {"morning-log", "tomorrow", "evening-topup", "weekly-check"})
  void timers(String recipe) throws Exception {
    Path units = EXAMPLES.resolve("systemd");
    String timer = Files.readString(units.resolve("leat-" + recipe + ".timer"));
    assertThat(timer).contains("Unit=leat@" + recipe + ".service");
    assertThat(EXAMPLES.resolve("cron").resolve(recipe)).exists();
    assumeThat(Path.of("/usr/bin/systemd-analyze")).exists();
    String when = timer.lines().filter(l -> l.startsWith("OnCalendar=")).findFirst().orElseThrow();
    ProcessBuilder analyze =
        new ProcessBuilder("systemd-analyze", "calendar", when.substring(when.indexOf('=') + 1));
    assertThat(said(analyze.redirectErrorStream(true).start(), 0)).contains("Next elapse");
  }
}
