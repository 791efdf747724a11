package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Files of the repository that are made from declarations and real runs. The build compares them;
 * with {@code -Dleat.docs=write} it writes them anew.
 */
final class Golden {
  private Golden() {}

  static boolean writes() {
    return "write".equals(System.getProperty("leat.docs"));
  }

  static String read(Path file) {
    try {
      return Files.exists(file) ? Files.readString(file) : "";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Compares a file with what it should hold, or writes it. */
  static void check(Path file, String expected) {
    if (writes()) {
      write(file, expected);
      return;
    }
    assertThat(read(file))
        .as("%s is out of date; mvn -B -q test -Dtest='*Docs*,*Gallery*' -Dleat.docs=write", file)
        .isEqualTo(expected);
  }

  static void write(Path file, String text) {
    try {
      if (!read(file).equals(text) || !Files.exists(file)) {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, text);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
