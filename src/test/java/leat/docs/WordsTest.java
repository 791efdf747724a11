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
          if (meanings.size() > 1) {
            two.add(word);
            two.addAll(into);
          }
        });
    write(WORDS, table);
    write(TWO, two);
    assertThat(flags).isGreaterThan(100);
    assertThat(columns).isGreaterThan(100);
    assertThat(table).contains("--bore", "column flow_L_min", "label speed");
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
