package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.cli.Cli;
import leat.command.Commands;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example of the mixing commands runs as printed. */
class FeedExamplesTest {
  static Stream<String> examples() {
    List<String> all = new ArrayList<>();
    for (String name : List.of("topup", "acid", "stock", "clean")) {
      all.addAll(List.of(new Commands().of(name).examples()));
    }
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void runs(String example) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    boolean quoted = false;
    for (char c : (example + " ").toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ' ' && !quoted) {
        words.add(word.toString());
        word.setLength(0);
      } else {
        word.append(c);
      }
    }
    Cli cli = Cli.run(words.toArray(new String[0]));
    assertThat(cli.exit).as(example + "\n" + cli.err).isZero();
    assertThat(cli.out).doesNotContain("NaN").doesNotContain("Infinity");
  }
}
