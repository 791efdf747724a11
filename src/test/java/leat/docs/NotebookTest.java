package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs every line of the notebook and compares what it shows. A line with a program that is not
 * installed is left as it stands, and a line of output says so.
 */
class NotebookTest {
  private static final Path NOTEBOOK = Path.of("examples", "notebook.md");
  private static final Pattern OTHERS =
      Pattern.compile("(?m)(?:^(?:\\$ )?|[|;&(] *)(mlr|jq|sqlite3) ");

  @TempDir Path folder;
  private final Set<String> missing = new TreeSet<>();

  @Test
  void everyLine() {
    String document = Golden.read(NOTEBOOK);
    assertThat(document.lines().filter(line -> line.startsWith("$ "))).hasSizeGreaterThan(12);
    Golden.check(NOTEBOOK, DocsTest.executed(document, new Shell(folder), this::runs));
    if (!missing.isEmpty()) {
      System.out.println("lines of " + NOTEBOOK + " not run, as not installed: " + missing);
    }
  }

  /** The programs are found in the lines: a test that saw none would run nothing. */
  @Test
  void othersAreSeen() {
    Matcher matcher = OTHERS.matcher(Golden.read(NOTEBOOK));
    Set<String> seen = new TreeSet<>();
    while (matcher.find()) {
      seen.add(matcher.group(1));
    }
    assertThat(seen).containsExactly("jq", "mlr", "sqlite3");
  }

  private boolean runs(String line) {
    boolean all = true;
    Matcher matcher = OTHERS.matcher(line);
    while (matcher.find()) {
      if (!installed(matcher.group(1))) {
        missing.add(matcher.group(1));
        all = false;
      }
    }
    return all;
  }

  private static boolean installed(String program) {
    for (String place : System.getenv("PATH").split(File.pathSeparator)) {
      if (Files.isExecutable(Path.of(place, program))) {
        return true;
      }
    }
    return false;
  }
}
