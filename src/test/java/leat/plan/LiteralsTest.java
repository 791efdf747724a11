package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Keys that the code asks for by name are declared ones; a typo would be found by a user only. */
class LiteralsTest {
  /** One question to a section, or a chain of them: {@code section("pump").need("power")}. */
  private static final Pattern CHAIN =
      Pattern.compile(
          "(\\w+(?:\\(\\))?)?((?:\\s*\\.section\\(\"[a-z_0-9]+\"\\))*)"
              + "\\s*\\.(need|get|maybe|has|needRaw|getOr|yes|word|sections|value|orDefault|missing|typed|named)"
              + "\\(\\s*\"([a-z][a-z_0-9]*)\"");

  private static final Pattern SECTION = Pattern.compile("\\.section\\(\"([a-z_0-9]+)\"\\)");

  private final Set<String> names = new HashSet<>();
  private final Set<String> paths = new HashSet<>();

  @Test
  void everyLiteralIsADeclaredKey() throws IOException {
    for (KeyPath path : KeyPath.all()) {
      names.add(path.key().name());
      paths.add("." + path.path().replace("[]", ""));
    }
    Set<String> unknown = new TreeSet<>();
    int[] seen = new int[1];
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/leat"))) {
      for (Path file :
          (Iterable<Path>) files.filter(f -> f.toString().endsWith(".java"))::iterator) {
        walk(file, unknown, seen);
      }
    }
    assertThat(unknown).as("keys that are asked for and are not declared").isEmpty();
    assertThat(seen[0]).as("literals looked at").isGreaterThan(250);
  }

  private void walk(Path file, Set<String> unknown, int[] seen) throws IOException {
    String text = Files.readString(file);
    if (!text.contains("leat.plan") || file.toString().contains("/quantity/")) {
      return;
    }
    Matcher chain = CHAIN.matcher(text);
    while (chain.find()) {
      seen[0]++;
      StringBuilder path = new StringBuilder();
      Matcher section = SECTION.matcher(chain.group(2));
      while (section.find()) {
        path.append('.').append(section.group(1));
      }
      path.append('.').append(chain.group(4));
      boolean known =
          names.contains(chain.group(4))
              && paths.stream().anyMatch(p -> p.endsWith(path.toString()));
      if (!known) {
        unknown.add(file.getFileName() + ": " + path.substring(1));
      }
    }
  }

  /** The walk itself finds a typo, alone and in a chain. */
  @Test
  void aTypoIsFound() {
    Matcher chain = CHAIN.matcher("plan.section(\"pump\").section(\"supply\")\n  .need(\"dcc\")");
    assertThat(chain.find()).isTrue();
    assertThat(List.of(chain.group(2), chain.group(4)))
        .containsExactly(".section(\"pump\").section(\"supply\")", "dcc");
  }
}
