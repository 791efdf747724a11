package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Answers as a grower reads them, to the letter: each file of src/test/answers holds its files
 * ({@code == file NAME}, {@code == example NAME} of examples/), then command lines and what comes
 * out, errors included, with the exit code where it is not 0.
 */
class GalleryAnswersTest {
  private static final Path FOLDER = Path.of("src/test/answers");

  static List<Path> sessions() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".txt")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("sessions")
  void reads(Path session, @TempDir Path folder) throws IOException {
    String text = Golden.read(session);
    String now = replay(text, folder);
    if (Golden.writes()) {
      Golden.write(session, now);
      return;
    }
    assertThat(now).as(session.toString()).isEqualTo(text);
  }

  private static String replay(String text, Path folder) throws IOException {
    StringBuilder out = new StringBuilder();
    Path file = null;
    boolean answers = false;
    for (String line : text.split("\n", -1)) {
      boolean command = line.startsWith("$ ");
      answers |= command;
      if (command) {
        out.append(out.toString().endsWith("\n\n") ? "" : "\n")
            .append(line)
            .append('\n')
            .append(said(line, folder));
      } else if (answers && line.startsWith("## ")) {
        out.append('\n').append(line);
      } else if (!answers) {
        out.append(line).append('\n');
        file = given(line, file, folder);
      }
    }
    return out.toString();
  }

  /** Lays out the files that stand before the first command line. */
  static Path given(String line, Path file, Path folder) throws IOException {
    if (line.startsWith("== example ")) {
      Path name = Path.of(line.substring(11));
      Files.copy(Path.of("examples").resolve(name), folder.resolve(name));
      return null;
    }
    if (line.startsWith("== file ")) {
      Path next = folder.resolve(line.substring(8));
      Files.writeString(next, "");
      return next;
    }
    if (file != null && !line.isEmpty()) {
      Files.writeString(file, Files.readString(file) + line + "\n");
    }
    return file;
  }

  private static String said(String line, Path folder) {
    List<String> words = Shell.words(line.substring(2));
    assertThat(words).as("quote this line: %s", line).isNotNull();
    Runner.Said said = Runner.in(folder).run(words.subList(1, words.size()).toArray(new String[0]));
    String out = said.out() + said.err();
    return out
        + (out.isEmpty() || out.endsWith("\n") ? "" : "\n")
        + (said.exit() == 0 ? "" : "[exit " + said.exit() + "]\n");
  }
}
