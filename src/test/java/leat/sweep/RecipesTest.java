package leat.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import leat.cli.Ran;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The recipes in examples/sweep, run by a shell. */
class RecipesTest {
  private static final Path SWEEP = Path.of("examples", "sweep").toAbsolutePath();

  @TempDir Path folder;
  private Path leat;

  @BeforeEach
  void launcher() throws IOException {
    assumeTrue(System.getProperty("os.name").contains("Linux"));
    leat = folder.resolve("leat");
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String classes =
        Arrays.stream(System.getProperty("java.class.path").split(":"))
            .map(part -> Path.of(part).toAbsolutePath().toString())
            .collect(Collectors.joining(":"));
    Files.writeString(
        leat,
        "#!/bin/sh\nexec '" + java + "' -XX:+UseSerialGC -cp '" + classes + "' leat.Main \"$@\"\n");
    Files.setPosixFilePermissions(leat, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private String run(String recipe, Map<String, String> environment, String... more)
      throws Exception {
    ProcessBuilder line = new ProcessBuilder("sh", SWEEP.resolve(recipe).toString());
    line.command().addAll(List.of(more));
    line.environment().put("LEAT", leat.toString());
    line.environment().putAll(environment);
    Process shell = line.redirectErrorStream(true).start();
    String said = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(shell.waitFor(120, TimeUnit.SECONDS)).isTrue();
    assertThat(shell.exitValue()).as(said).isZero();
    return said;
  }

  /** The pump at hand is not among those that pass, which is why the tower is proud. */
  @Test
  void pump() throws Exception {
    List<String> rows = run("pump-for-proud-tower", Map.of(), "--format", "csv").lines().toList();
    assertThat(rows).hasSize(7);
    assertThat(rows.get(1)).startsWith("sweep/pumps/listed.yaml,10mm,");
    assertThat(rows).noneMatch(row -> row.contains("small.yaml") || row.contains("middle.yaml"));
  }

  @Test
  void leastRun() throws Exception {
    List<String> rows = run("least-run-and-watts", Map.of(), "--format", "csv").lines().toList();
    assertThat(rows).hasSizeGreaterThan(2);
    String[] keys = rows.get(0).split(",");
    assertThat(keys).contains("least_run_s", "kwh_day", "flow_low_L_min");
  }

  @Test
  void tallest() throws Exception {
    List<String> rows = run("tallest-that-stands", Map.of(), "--format", "csv").lines().toList();
    assertThat(rows.get(1)).startsWith("6,");
    assertThat(rows).hasSize(5);
  }

  private static String whole() {
    return Ran.run(
            "sweep",
            "proud-tower.yaml",
            "--vary",
            "towers[*].riser.bore=8..20 mm step 1 mm",
            "--vary",
            "pump.shutoff_head=2.4..4.4 m step 0.2 m",
            "--vary",
            "pump.derate=70%,85%",
            "--all",
            "--measure",
            "margin_pct",
            "--measure",
            "flow_low_L_min",
            "--measure",
            "least_run_s",
            "--format",
            "csv")
        .out();
  }

  /** Jobs of a scheduler, numbered from 1 or from 0, make the parts of the whole. */
  @Test
  void jobs() throws Exception {
    Map<String, String> job = Map.of("N", "3", "PARTS", folder.toString());
    for (String[] number :
        new String[][] {
          {"SLURM_ARRAY_TASK_ID", "1"}, {"JOB_COMPLETION_INDEX", "1"}, {"INDEX", "3"}
        }) {
      Map<String, String> own = new java.util.HashMap<>(job);
      own.put(number[0], number[1]);
      run("slice-job", own);
    }
    StringBuilder joined = new StringBuilder();
    for (int i = 1; i <= 3; i++) {
      joined.append(Files.readString(folder.resolve("part-" + i + ".csv")));
    }
    assertThat(joined).hasToString(whole());
  }

  @Test
  void gnuParallel() throws Exception {
    boolean there;
    try {
      Process ask = new ProcessBuilder("parallel", "--version").start();
      String version = new String(ask.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      there = ask.waitFor() == 0 && version.startsWith("GNU parallel");
    } catch (IOException e) {
      there = false;
    }
    assumeTrue(there, "GNU parallel is not installed");
    Path out = folder.resolve("whole.csv");
    run("slices", Map.of("OUT", out.toString(), "N", "4"));
    assertThat(Files.readString(out)).isEqualTo(whole());
  }
}
