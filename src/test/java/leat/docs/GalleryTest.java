package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The error gallery: every message the program can give, shown by a broken input, to the letter.
 */
class GalleryTest {
  /** Messages that no command line can bring about, each with the reason: code, then why. */
  private static final Path NOT_YET = GalleryCase.FOLDER.resolve("not-by-command-line.txt");

  static List<GalleryCase> cases() {
    return GalleryCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void says(GalleryCase one, @TempDir Path folder) {
    Runner.Said said = one.run(folder);
    assertThat(said.codes()).as("%s shows its message", one).contains(one.code);
    if (Golden.writes()) {
      Golden.write(one.file, one.with(said));
      return;
    }
    assertThat(said.err()).isEqualTo(one.err);
    assertThat(said.out()).isEqualTo(one.out);
    assertThat(said.exit()).isEqualTo(one.exit);
    assertThat(one.with(said)).as("laid out as it would be written").isEqualTo(raw(one));
  }

  private static String raw(GalleryCase one) {
    return Golden.read(one.file);
  }

  @Test
  void everyMessageIsShown() {
    Set<String> shown = new TreeSet<>();
    for (GalleryCase one : cases()) {
      shown.add(one.code);
    }
    Set<String> excused = excused().keySet();
    List<String> missing = new ArrayList<>();
    Map<String, List<String>> messages = Messages.byCode();
    messages.forEach(
        (code, methods) -> {
          if (!shown.contains(code) && !excused.contains(code)) {
            missing.add(code + " of " + methods);
          }
        });
    assertThat(missing).as("messages without an entry in %s", GalleryCase.FOLDER).isEmpty();
    assertThat(messages.keySet()).as("entries of messages that are gone").containsAll(shown);
    assertThat(messages.keySet())
        .as("%s names messages that are gone", NOT_YET)
        .containsAll(excused);
    assertThat(shown)
        .as("shown after all: take it out of %s", NOT_YET)
        .doesNotContainAnyElementsOf(excused);
  }

  private static Map<String, String> excused() {
    Map<String, String> excused = new TreeMap<>();
    for (String line : Golden.read(NOT_YET).split("\n")) {
      if (!line.isBlank() && !line.startsWith("#")) {
        String[] parts = line.split(" +", 2);
        assertThat(parts).as("%s wants a reason: %s", NOT_YET, line).hasSize(2);
        excused.put(parts[0], parts[1]);
      }
    }
    return excused;
  }

  /** One code, one message; variants of one stand side by side, each with an entry of its own. */
  @Test
  void everyCodeBelongsToOneMessage() {
    Messages.byCode()
        .forEach(
            (code, methods) -> {
              Set<String> classes = new TreeSet<>();
              methods.forEach(m -> classes.add(m.substring(0, m.indexOf('.'))));
              assertThat(classes).as("the code %s of %s", code, methods).hasSize(1);
              long entries = cases().stream().filter(c -> c.code.equals(code)).count();
              assertThat(entries >= methods.size() || excused().containsKey(code))
                  .as("%s has %s entries for %s", code, entries, methods)
                  .isTrue();
            });
  }
}
