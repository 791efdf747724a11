package leat.plan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Plans for tests. */
final class Plans {
  private Plans() {}

  static final Path SKETCH = Path.of("src/test/resources/plans/sketch.yaml");

  static String sketch() {
    return read(SKETCH);
  }

  static String read(Path path) {
    try {
      return Files.readString(path, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Path> examples() {
    try (Stream<Path> files = Files.list(Path.of("examples"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The sketch, the examples and the starter, each whole. */
  static List<String> good() {
    List<String> all = new ArrayList<>();
    all.add(sketch());
    examples().forEach(e -> all.add(read(e)));
    all.add(Starter.text(null));
    return all;
  }

  static Plan plan(String yaml) {
    return Plan.Draft.of(Source.file("p.yaml", yaml)).read();
  }

  /** The whole message of a plan that cannot be. */
  static String refused(String yaml) {
    try {
      plan(yaml);
    } catch (Refused e) {
      return e.getMessage();
    }
    throw new AssertionError("accepted: " + yaml);
  }

  /** The first line of each message. */
  static List<String> told(String yaml) {
    List<String> lines = new ArrayList<>();
    for (String line : refused(yaml).split("\n")) {
      if (!line.startsWith("  ")) {
        lines.add(line);
      }
    }
    return lines;
  }

  static Object at(Section section, String path) {
    int i = 0;
    while (i < path.length() && path.charAt(i) != '.' && path.charAt(i) != '[') {
      i++;
    }
    String name = path.substring(0, i);
    if (i == path.length()) {
      return section.raw(name);
    }
    if (path.charAt(i) == '.') {
      Object value = section.raw(name);
      String rest = path.substring(i + 1);
      return value instanceof Named named ? named.get(rest) : at((Section) value, rest);
    }
    int end = path.indexOf(']', i);
    Object item = ((List<?>) section.raw(name)).get(Integer.parseInt(path.substring(i + 1, end)));
    return end == path.length() - 1 ? item : at((Section) item, path.substring(end + 2));
  }
}
