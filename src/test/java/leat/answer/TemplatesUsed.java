package leat.answer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Keeps the templates that all tests of a run filled, and in the end lists those of the source that
 * none of them reached in target/templates-unreached.txt. A whole run of the build (which sets
 * {@code leat.templates} to check, and no {@code -Dtest}) fails for each that
 * src/test/resources/templates-not-reached.txt does not hold.
 */
public final class TemplatesUsed implements BeforeAllCallback {
  private static final Path UNREACHED = Path.of("target/templates-unreached.txt");
  private static final Path EXCUSED = Path.of("src/test/resources/templates-not-reached.txt");
  private static final Set<String> USED = ConcurrentHashMap.newKeySet();

  /** Loaded by JUnit for every run, see META-INF/services. */
  public TemplatesUsed() {
    Template.keep(USED);
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    context
        .getRoot()
        .getStore(ExtensionContext.Namespace.GLOBAL)
        .getOrComputeIfAbsent(End.class, c -> new End(), End.class);
  }

  /** Whether it was filled, alone or as a part of a longer sentence that begins or ends with it. */
  private static boolean isUsed(String text) {
    return USED.contains(text)
        || text.replaceAll("\\{[^}]*}", "").matches("(?s).*[A-Za-z]{3}.*")
            && USED.stream().anyMatch(used -> used.contains(text));
  }

  /** Closed by JUnit when all tests are over. */
  static final class End implements ExtensionContext.Store.CloseableResource, AutoCloseable {
    @Override
    public void close() throws IOException {
      List<String> unreached = new ArrayList<>();
      List<Templates.Found> all = Templates.all();
      for (Templates.Found found : all) {
        if (!isUsed(found.text())) {
          unreached.add(found.place() + ": " + found.text());
        }
      }
      Files.createDirectories(UNREACHED.getParent());
      Files.write(UNREACHED, unreached);
      if ("check".equals(System.getProperty("leat.templates"))
          && System.getProperty("test") == null) {
        List<String> excused = Files.readAllLines(EXCUSED);
        unreached.removeIf(line -> excused.contains(line.substring(line.indexOf(": ") + 2)));
        if (!unreached.isEmpty()) {
          throw new AssertionError(
              "no test fills these templates:\n" + String.join("\n", unreached));
        }
      }
    }
  }
}
