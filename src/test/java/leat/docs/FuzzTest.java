package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing that is typed gives a stack trace, NaN or Infinity, or an exit code beyond the agreed
 * ones. Seeded, so that a failure comes again; more cases with {@code -Dleat.fuzz.cases=1000000},
 * another seed with {@code -Dleat.fuzz.seed=7}.
 */
class FuzzTest {
  private static final long SEED = Long.getLong("leat.fuzz.seed", 20270612);
  private static final int CASES = Integer.getInteger("leat.fuzz.cases", 100_000);

  /** No command line of this test may take longer, s. */
  private static final int LONGEST = 30;

  private static final Pattern NO_NUMBER = Pattern.compile("\\bNaN\\b|Infinity|\u221e|\u2426");
  private static final JsonFactory JSON = new JsonFactory();

  /** One command line with what stands on its standard input. */
  private record Case(List<String> args, String plan) {}

  private volatile Case now;
  private volatile long started;
  private volatile String failed;
  private volatile int done;
  private final int[] exits = new int[256];

  @Test
  void nothingTypedBreaksIt(@TempDir Path folder) throws Exception {
    List<String> plans = new ArrayList<>();
    try (Stream<Path> files = Files.list(Runner.EXAMPLES)) {
      for (Path file : (Iterable<Path>) files.sorted()::iterator) {
        Files.copy(file, folder.resolve(file.getFileName()));
        if (file.toString().endsWith(".yaml")) {
          plans.add(Files.readString(file));
        }
      }
    }
    Files.createDirectory(folder.resolve("folder"));
    Files.writeString(folder.resolve("broken.yaml"), "tank: {height: 330 mm\n");
    Thread worker = new Thread(() -> work(folder, plans), "fuzz");
    worker.setDaemon(true);
    worker.start();
    while (worker.isAlive()) {
      worker.join(1000);
      Case running = now;
      if (running != null && (System.nanoTime() - started) / 1e9 > LONGEST) {
        throw new AssertionError("does not end: " + reproduced(running));
      }
    }
    assertThat(failed).isNull();
    assertThat(done).isEqualTo(CASES);
    if (CASES >= 10_000) {
      // A test that only ever sees refusals tests little.
      assertThat(exits[0]).as("answers among %s cases", CASES).isGreaterThan(CASES / 20);
      assertThat(exits[1]).as("answers of no").isPositive();
      assertThat(exits[2]).as("refusals").isPositive();
      assertThat(exits[3]).as("troubles with files").isPositive();
    }
  }

  private void work(Path folder, List<String> plans) {
    try {
      Random random = new Random(SEED);
      Lines lines = new Lines(random);
      for (int i = 0; i < CASES && failed == null; i++) {
        String plan = plans.get(random.nextInt(plans.size()));
        String damaged = random.nextInt(4) == 0 ? plan : Mutations.ofPlan(random, plan);
        Case one = new Case(lines.next("-"), damaged);
        if (complaint(folder, one) != null) {
          Case least = shrunk(folder, one);
          failed = "case " + i + ": " + complaint(folder, least) + "\n" + reproduced(least);
        }
        done = i + 1;
      }
    } catch (RuntimeException | Error e) {
      failed =
          e
              + " at "
              + List.of(e.getStackTrace()).subList(0, Math.min(8, e.getStackTrace().length))
              + "\n"
              + (now == null ? "" : reproduced(now));
    }
  }

  /** What is wrong with a run, or null. */
  private String complaint(Path folder, Case one) {
    started = System.nanoTime();
    now = one;
    Runner.Said said = Runner.in(folder).reading(one.plan()).run(one.args().toArray(new String[0]));
    now = null;
    if (said.exit() < 0 || said.exit() > 3) {
      return "exit " + said.exit() + ": " + said.err();
    }
    exits[said.exit()]++;
    if (said.err().contains("bug in leat") || said.err().contains("\tat ")) {
      return said.err();
    }
    if (NO_NUMBER.matcher(withoutNames(said.out(), one.args())).find()
        && !repeatsTheTyped(one.args())) {
      return "no number in: " + said.out();
    }
    if (said.exit() >= 2 && said.err().isBlank()) {
      return "exit " + said.exit() + " without a word";
    }
    return said.exit() <= 1 && wantsJson(one.args()) && !writesText(one.args())
        ? badJson(said.out())
        : null;
  }

  private static boolean wantsJson(List<String> args) {
    for (String arg : args) {
      if (arg.matches("help|--version|-V")) {
        return false;
      }
    }
    for (int i = 0; i < args.size(); i++) {
      if (args.get(i).matches("--format=json|-f=?json")) {
        return true;
      }
      if (args.get(i).matches("--format|-f")
          && i + 1 < args.size()
          && args.get(i + 1).equals("json")) {
        // A value of the flag before it may look like this flag.
        return i == 0 || !args.get(i - 1).startsWith("-");
      }
    }
    return false;
  }

  /** Commands that write a text to keep, whatever the format. */
  private static boolean writesText(List<String> args) {
    return args.size() > 1 && args.get(0).equals("plan") && args.get(1).matches("new|set|card")
        || args.contains("--paste")
        || args.contains("--c");
  }

  /** `plan show` and `plan new` repeat what was typed, also where somebody typed NaN as a name. */
  private static boolean repeatsTheTyped(List<String> args) {
    return args.size() > 1 && args.get(0).equals("plan") && args.get(1).matches("show|new|set");
  }

  /** `check` begins a block with the name of its plan, also of one that is named Infinity. */
  private static String withoutNames(String out, List<String> args) {
    String rest = out;
    for (String arg : !args.isEmpty() && args.get(0).equals("check") ? args : List.<String>of()) {
      // as a heading, and in the column "plan" of csv and json
      rest = rest.replace(arg + ": ", "").replace(arg + ",", "").replace('"' + arg + '"', "");
    }
    return rest;
  }

  private static String badJson(String out) {
    if (out.isEmpty() || out.contains("\nUsage: leat ") || out.startsWith("leat ")) {
      // Written to a file, or help after all.
      return null;
    }
    try (JsonParser parser = JSON.createParser(out)) {
      int values = 0;
      int depth = 0;
      while (parser.nextToken() != null) {
        if (parser.currentToken().isStructStart()) {
          values += depth++ == 0 ? 1 : 0;
        } else if (parser.currentToken().isStructEnd()) {
          depth--;
        }
      }
      return values == 1 ? null : values + " JSON values in: " + out;
    } catch (IOException e) {
      return "no JSON (" + e.getMessage() + ") in: " + out;
    }
  }

  /** The same complaint with fewer words and fewer lines of plan. */
  private Case shrunk(Path folder, Case one) {
    Case least = one;
    for (boolean again = true; again; ) {
      again = false;
      for (int i = least.args().size() - 1; i >= 0; i--) {
        for (int n = 2; n >= 1 && i + n <= least.args().size(); n--) {
          List<String> fewer = new ArrayList<>(least.args());
          fewer.subList(i, i + n).clear();
          Case smaller = new Case(fewer, least.plan());
          if (complaint(folder, smaller) != null) {
            least = smaller;
            again = true;
            break;
          }
        }
      }
      String[] lines = least.plan().split("\n", -1);
      for (int i = lines.length - 1; i >= 0 && lines.length > 1; i--) {
        List<String> fewer = new ArrayList<>(List.of(least.plan().split("\n", -1)));
        if (i < fewer.size()) {
          fewer.remove(i);
          Case smaller = new Case(least.args(), String.join("\n", fewer));
          if (complaint(folder, smaller) != null) {
            least = smaller;
            again = true;
          }
        }
      }
    }
    return least;
  }

  /** A line for a shell that does it again, run in examples/. */
  private static String reproduced(Case one) {
    StringBuilder out = new StringBuilder();
    if (one.args().toString().contains("-,") || one.args().contains("-")) {
      out.append("printf '%b' '").append(escaped(one.plan())).append("' | ");
    }
    out.append("leat");
    for (String arg : one.args()) {
      out.append(arg.matches("[\\w./=-]+") ? " " + arg : " $'" + escaped(arg) + "'");
    }
    return out.toString();
  }

  private static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
      if (b == '\n') {
        out.append("\\n");
      } else if (b < 32 || b == '\'' || b == '\\' || b == '%') {
        out.append(String.format("\\x%02x", b & 0xff));
      } else {
        out.append((char) b);
      }
    }
    return out.toString();
  }
}
