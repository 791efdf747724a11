package leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** Runs every example of a command's manual. */
public final class Examples {
  private Examples() {}

  public static void run(Command command) {
    String[] examples = command.examples();
    assertThat(examples).isNotEmpty();
    for (String example : examples) {
      Cli cli = Cli.run(words(example));
      assertThat(cli.exit).as(example + "\n" + cli.err).isBetween(0, 1);
      assertThat(cli.out).as(example).isNotEmpty();
    }
  }

  /** Words of a line, with double quotes around those that hold spaces. */
  public static String[] words(String line) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    boolean quoted = false;
    for (char c : line.toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ' ' && !quoted) {
        words.add(word.toString());
        word.setLength(0);
      } else {
        word.append(c);
      }
    }
    words.add(word.toString());
    return words.toArray(new String[0]);
  }
}
