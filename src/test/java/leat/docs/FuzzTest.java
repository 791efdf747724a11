package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing that is typed, no plan and no table gives a stack trace, NaN or Infinity, or an exit code
 * beyond the agreed ones; and the same question asked in another way gets the same answer ({@link
 * Laws}). Seeded, so that a failure comes again; more cases with {@code -Dleat.fuzz.cases=1000000},
 * another seed with {@code -Dleat.fuzz.seed=7}.
 */
class FuzzTest {
  private static final long SEED = Long.getLong("leat.fuzz.seed", 20270612);
  private static final int CASES = Integer.getInteger("leat.fuzz.cases", 100_000);

  /** No command line of this test may take more of a processor's time, s. */
  private static final int LONGEST = 30;

  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private volatile String now;
  private volatile long started;
  private volatile String failed;
  private volatile int done;
  private final int[] exits = new int[256];
  private final Map<String, Integer> kinds = new TreeMap<>();

  @Test
  void nothingTypedBreaksIt(@TempDir Path folder) throws Exception {
    Map<String, String> files = copied(folder);
    Thread worker = new Thread(() -> work(folder, files), "fuzz");
    worker.setDaemon(true);
    worker.start();
    while (worker.isAlive()) {
      worker.join(1000);
      String running = now;
      if (running != null && (CLOCK.getThreadCpuTime(worker.getId()) - started) / 1e9 > LONGEST) {
        throw new AssertionError("does not end: " + running);
      }
    }
    System.out.println("random cases by kind: " + kinds);
    assertThat(failed).isNull();
    assertThat(done).isEqualTo(CASES);
    if (CASES >= 10_000) {
      // A test that only ever sees refusals tests little.
      assertThat(exits[0]).as("answers among %s cases", CASES).isGreaterThan(CASES / 20);
      assertThat(exits[1]).as("answers of no").isPositive();
      assertThat(exits[2]).as("refusals").isPositive();
      assertThat(exits[3]).as("troubles with files").isPositive();
      for (String law : Laws.NAMES) {
        assertThat(kinds.getOrDefault(law, 0)).as(law).isGreaterThan(CASES / 1000);
      }
    }
  }

  /** What random lines found broken, once. */
  @Test
  void staysMended(@TempDir Path folder) throws IOException {
    Map<String, String> files = copied(folder);
    String dry = files.get("balcony.yaml").replace("rim_overflow: 310 mm", "rim_overflow: 3 mm");
    List<Trial> found =
        List.of(
            trial(
                "dose --volume 45L --from 0.3mS/cm --to 1.6mS/cm --rate 5mL/L --rate-ec 1.9mS/cm --water-ec 300ppm",
                ""),
            trial("season -", dry.replace("low: 120 mm", "low: 151 mm")),
            trial("sweep - --nudge --units us", "site:\n"),
            trial(
                "sow balcony.yaml --set site.weather=" + Trial.FILE,
                "date,tmin_C,tmax_C,rain_mm\n2013-03-02,1e999,13.9,0.8\n"),
            trial(
                "log week-log.csv --plan -",
                files
                    .get("logged-tub.yaml")
                    .replaceAll("cap_sensor:.*", "cap_sensor: {wet: 9000, dry: 2750}")));
    for (Trial one : found) {
      Runner.Said said = one.run(folder);
      assertThat(one.complaint(said)).as(one.reproduced()).isNull();
    }
  }

  private static Trial trial(String line, String input) {
    return new Trial(List.of(line.split(" ")), input);
  }

  /** The examples, copied; the texts of those that are read. */
  private static Map<String, String> copied(Path folder) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(Runner.EXAMPLES)) {
      for (Path file : (Iterable<Path>) files.sorted()::iterator) {
        Files.copy(file, folder.resolve(file.getFileName()));
        if (Files.isRegularFile(file)) {
          texts.put(file.getFileName().toString(), Trial.latin(Files.readAllBytes(file)));
        }
      }
    }
    Files.createDirectory(folder.resolve("folder"));
    Files.writeString(folder.resolve("broken.yaml"), "tank: {height: 330 mm\n");
    return texts;
  }

  private void work(Path folder, Map<String, String> files) {
    try {
      Random random = new Random(SEED);
      Lines lines = new Lines(random);
      Tables tables = new Tables(random, files);
      Laws laws = new Laws(random, folder);
      List<String> plans = new ArrayList<>();
      files.forEach(
          (name, text) -> {
            if (name.endsWith(".yaml")) {
              plans.add(text);
            }
          });
      for (int i = 0; i < CASES && failed == null; i++) {
        int dice = random.nextInt(100);
        if (dice < 5) {
          law(laws, i);
        } else {
          one(folder, i, dice < 10 ? tables.next() : planned(random, lines, plans, dice));
        }
        done = i + 1;
      }
    } catch (RuntimeException | Error e) {
      List<StackTraceElement> trace = List.of(e.getStackTrace());
      failed = e + " at " + trace.subList(0, Math.min(8, trace.size())) + "\n" + now;
    }
  }

  private static Trial planned(Random random, Lines lines, List<String> plans, int dice) {
    String plan =
        new String(
            plans.get(random.nextInt(plans.size())).getBytes(StandardCharsets.ISO_8859_1),
            StandardCharsets.UTF_8);
    if (dice < 25) {
      return Trial.ofText(lines.ofPlan("-"), Mutations.ofNumbers(random, plan));
    }
    String damaged = random.nextInt(4) == 0 ? plan : Mutations.ofPlan(random, plan);
    return Trial.ofText(lines.next("-"), damaged);
  }

  private void one(Path folder, int i, Trial one) {
    begin(one.reproduced());
    Runner.Said said = one.run(folder);
    now = null;
    kinds.merge(one.named() ? "tables" : "lines and plans", 1, Integer::sum);
    if (said.exit() >= 0) {
      exits[said.exit()]++;
    }
    if (one.complaint(said) != null) {
      Trial least = one.shrunk(folder);
      failed = "case " + i + ": " + least.complaint(least.run(folder)) + "\n" + least.reproduced();
    }
  }

  private void law(Laws laws, int i) {
    Laws.Tried tried = laws.next(this::begin);
    now = null;
    kinds.merge(tried.name(), 1, Integer::sum);
    if (tried.complaint() != null) {
      failed = "case " + i + ", " + tried.name() + ": " + tried.complaint();
    }
  }

  private void begin(String line) {
    started = CLOCK.getCurrentThreadCpuTime();
    now = line;
  }
}
