package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.answer.Column;
import leat.cli.Command;
import leat.cli.Declared;
import leat.cli.Flag;
import org.junit.jupiter.api.Test;

/**
 * The table of all flags and columns with what they mean: target/words.txt, for reading; and in
 * target/words-with-two-meanings.txt each word that has two.
 */
class WordsTest {
  private static final Path WORDS = Path.of("target/words.txt");
  private static final Path ALLOWED = Path.of("src/test/resources/words-with-two-meanings.txt");
  private static final Path TWO = Path.of("target/words-with-two-meanings.txt");

  /** Word, then each meaning with the places that use it so. */
  private final Map<String, Map<String, TreeSet<String>>> words = new TreeMap<>();

  private void word(String word, String meaning, String where) {
    words
        .computeIfAbsent(word, w -> new TreeMap<>())
        .computeIfAbsent(meaning, m -> new TreeSet<>())
        .add(where);
  }

  @Test
  void allFlagsAndColumnsAreInTheTable() throws Exception {
    int flags = 0;
    for (Command command : Declared.commands()) {
      for (Flag flag : command.flags()) {
        word(flag.name(), flag.meaning(), command.name());
        flags++;
      }
    }
    int columns = columns();
    List<String> table = new ArrayList<>();
    List<String> two = new ArrayList<>();
    words.forEach(
        (word, meanings) -> {
          List<String> into = new ArrayList<>();
          meanings.forEach(
              (m, where) -> into.add("  " + m + "  (" + String.join(", ", where) + ")"));
          table.add(word);
          table.addAll(into);
          if (isDouble(word, meanings)) {
            two.add(word);
            two.addAll(into);
          }
        });
    write(WORDS, table);
    write(TWO, two);
    two.removeIf(line -> line.startsWith("  "));
    assertThat(two)
        .as("each word with two meanings stands in %s with its reason, and no other", ALLOWED)
        .containsExactlyElementsOf(allowed());
    assertThat(flags).isGreaterThan(100);
    assertThat(columns).isGreaterThan(100);
    assertThat(table).contains("--bore", "column flow_L_min", "label speed");
  }

  /**
   * Units of keys that tell one thing twice: grams beside mL, litres beside mm, a share beside
   * mg/L.
   */
  private static final Set<String> UNITS =
      Set.of("g", "mL", "L", "mm", "pct", "mg_L", "meq_L", "mL_L", "V");

  /** A label has two meanings when one answer has it for two things. */
  private static boolean isDouble(String word, Map<String, TreeSet<String>> meanings) {
    if (!word.startsWith("label ")) {
      return meanings.size() > 1;
    }
    Map<String, String> thing = new TreeMap<>();
    boolean twice = false;
    for (Map.Entry<String, TreeSet<String>> meaning : meanings.entrySet()) {
      String told = told(word, meaning.getKey());
      for (String one : meaning.getValue()) {
        String other = thing.putIfAbsent(one, told);
        twice |= other != null && !other.equals(told);
      }
    }
    return twice;
  }

  /** What a key tells, its unit left off; ends of a band are one: the least, and the most. */
  private static String told(String label, String key) {
    if (label.equals("label at least") && key.contains("_low")
        || label.equals("label at most") && key.contains("_high")) {
      return label;
    }
    for (int at = key.indexOf('_'); at >= 0; at = key.indexOf('_', at + 1)) {
      if (UNITS.contains(key.substring(at + 1))) {
        return key.substring(0, at);
      }
    }
    return key;
  }

  /** The words that may have two: the word, two blanks, the reason. */
  private static List<String> allowed() throws IOException {
    List<String> words = new ArrayList<>();
    for (String line : Files.readAllLines(ALLOWED)) {
      String[] parts = line.split("  ", 2);
      assertThat(parts).as("%s wants a reason: %s", ALLOWED, line).hasSize(2);
      words.add(parts[0]);
    }
    return words;
  }

  /** A key has one label, and a label within one class of a command one key. */
  private int columns() throws IllegalAccessException {
    int columns = 0;
    for (Class<?> type : Declared.classesBelow("leat.command")) {
      for (Field field : type.getDeclaredFields()) {
        if (!Modifier.isStatic(field.getModifiers()) || field.getType() != Column.class) {
          continue;
        }
        field.setAccessible(true);
        Column column = (Column) field.get(null);
        word("column " + column.key(), column.label(), type.getSimpleName());
        word("label " + column.label(), column.key(), type.getSimpleName());
        columns++;
      }
    }
    return columns;
  }

  private static void write(Path file, List<String> lines) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, lines);
  }
}
