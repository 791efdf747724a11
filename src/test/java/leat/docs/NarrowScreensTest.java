package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leat.quantity.Dimension;
import leat.quantity.Units;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every answer of src/test/answers on screens of several widths, against itself on a wide one: no
 * number is parted from its unit, no sentence is wider than the screen, and no word is lost.
 */
class NarrowScreensTest {
  private static final int[] WIDTHS = {40, 44, 49, 57, 66, 72, 80, 91, 100};

  static List<Path> sessions() {
    return GalleryAnswersTest.sessions();
  }

  private static Set<String> units() {
    Set<String> symbols = new HashSet<>(List.of("%", "EUR", "USD", "ohm", "counts"));
    for (Dimension dimension : Dimension.values()) {
      Units.of(dimension).forEach(unit -> symbols.add(unit.symbol()));
    }
    return symbols;
  }

  @ParameterizedTest
  @MethodSource("sessions")
  void keepNumbersAndUnitsTogether(Path session, @TempDir Path folder) throws IOException {
    List<String> wrong = new ArrayList<>();
    Set<String> units = units();
    Path file = null;
    int lines = 0;
    for (String line : Golden.read(session).split("\n")) {
      if (!line.startsWith("$ ")) {
        file = lines == 0 ? GalleryAnswersTest.given(line, file, folder) : file;
        continue;
      }
      lines++;
      List<String> words = Shell.words(line.substring(2));
      String[] args = words.subList(1, words.size()).toArray(new String[0]);
      String whole = Runner.in(folder).run(args).out();
      if (args[0].equals("plan") || words.contains("--column") || words.contains("--format")) {
        continue;
      }
      for (int width : WIDTHS) {
        Runner narrow = Runner.in(folder).with(Map.of("COLUMNS", String.valueOf(width)));
        compare(line, whole, narrow.run(args).out(), width, units, wrong);
      }
    }
    assertThat(lines).isPositive();
    assertThat(wrong).as(session.toString()).isEmpty();
  }

  private static void compare(
      String line, String whole, String out, int width, Set<String> units, List<String> wrong) {
    String[] rows = out.split("\n");
    for (int i = 0; i < rows.length; i++) {
      String row = rows[i];
      boolean command = row.contains("leat ") || row.startsWith("Next: ");
      if (!row.startsWith("  ") && !command && row.codePointCount(0, row.length()) > width) {
        wrong.add(line + " [" + width + "] too wide: " + row);
      }
      String last = row.substring(row.lastIndexOf(' ') + 1);
      String next = i + 1 < rows.length ? rows[i + 1].strip().split("[ ,.;:)]")[0] : "";
      if (last.matches("[-(]?[0-9][0-9.]*")
          && units.contains(next)
          && whole.contains(last + " " + next)) {
        wrong.add(line + " [" + width + "] parted: " + row + " / " + rows[i + 1]);
      }
    }
    assertThat(words(out)).as("%s at %s", line, width).isEqualTo(words(whole));
  }

  /** Each word once: columns that go on below repeat the first. */
  private static Set<String> words(String text) {
    return new HashSet<>(List.of(text.split("\\s+")));
  }
}
