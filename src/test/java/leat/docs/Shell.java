package leat.docs;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Runs the command lines that documents show, in a copy of the example folder. A plain {@code leat}
 * line runs in this process; one with pipes or redirection runs in a shell that finds {@code leat}.
 */
final class Shell {
  /** What a terminal shows after a command line, and its exit code. */
  record Shown(String text, int exit) {}

  private final Path folder;
  private Path bin;

  Shell(Path folder) {
    this.folder = folder;
    copy(Runner.EXAMPLES, folder);
  }

  private static void copy(Path from, Path to) {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : (Iterable<Path>) all::iterator) {
        Path target = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(target);
        } else {
          Files.copy(path, target);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Runs a line; one that begins with another word than {@code leat} needs a shell. */
  Shown run(String line) {
    List<String> words = words(line);
    if (words == null || !words.get(0).equals("leat")) {
      return inShell(line);
    }
    String[] args = words.subList(1, words.size()).toArray(new String[0]);
    Runner.Said said = Runner.in(folder).run(args);
    return new Shown(said.both(), said.exit());
  }

  /** The words of a plain line, quotes taken off; null when it needs a shell. */
  static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    StringBuilder word = null;
    char quote = 0;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (quote != 0) {
        if (c == quote) {
          quote = 0;
        } else if (quote == '"' && (c == '$' || c == '`' || c == '\\')) {
          return null;
        } else {
          word.append(c);
        }
      } else if (c == '"' || c == '\'') {
        quote = c;
        word = word == null ? new StringBuilder() : word;
      } else if (c == ' ') {
        if (word != null) {
          words.add(word.toString());
        }
        word = null;
      } else if ("|<>&;$`\\*?(){}#~".indexOf(c) >= 0) {
        return null;
      } else {
        word = word == null ? new StringBuilder() : word;
        word.append(c);
      }
    }
    if (quote != 0) {
      throw new IllegalArgumentException("a quote is not closed: " + line);
    }
    if (word != null) {
      words.add(word.toString());
    }
    return words;
  }

  private Shown inShell(String line) {
    try {
      ProcessBuilder builder = new ProcessBuilder("sh", "-c", line);
      Path err = Files.createTempFile("leat", ".err");
      // Kept apart and put behind, so that what is shown does not hang on who was faster.
      builder.redirectError(err.toFile());
      builder.directory(folder.toFile());
      for (String set : new String[] {"LEAT_PLAN", "LEAT_UNITS", "COLUMNS", "NO_COLOR"}) {
        builder.environment().remove(set);
      }
      builder.environment().put("LC_ALL", "C.UTF-8");
      builder.environment().put("PATH", bin() + File.pathSeparator + System.getenv("PATH"));
      Process process = builder.start();
      process.getOutputStream().close();
      String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (!process.waitFor(60, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new AssertionError("does not end: " + line);
      }
      String notes = Files.readString(err);
      Files.delete(err);
      return new Shown(text + notes, process.exitValue());
    } catch (IOException | InterruptedException e) {
      throw new AssertionError(line, e);
    }
  }

  /** A folder that holds a {@code leat} made of the classes under test. */
  private Path bin() throws IOException {
    if (bin == null) {
      bin = Files.createTempDirectory("leat-bin");
      Path leat = bin.resolve("leat");
      Files.writeString(
          leat,
          "#!/bin/sh\nexec '"
              + Path.of(System.getProperty("java.home"), "bin", "java")
              + "' -XX:TieredStopAtLevel=1 -cp '"
              + System.getProperty("java.class.path")
              + "' leat.Main \"$@\"\n");
      Files.setPosixFilePermissions(leat, PosixFilePermissions.fromString("rwxr-xr-x"));
      leat.toFile().deleteOnExit();
      bin.toFile().deleteOnExit();
    }
    return bin;
  }
}
