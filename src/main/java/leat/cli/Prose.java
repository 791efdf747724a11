package leat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What is said about a command, from the text file beside its class: the summary in the first
 * lines, then paragraphs of the manual, then {@code examples:} and {@code see also:}, a line each.
 * Read for help and manual only.
 */
final class Prose {
  final String summary;
  final List<String> manual = new ArrayList<>();
  final List<String> examples = new ArrayList<>();
  final List<String> seeAlso = new ArrayList<>();

  private Prose(String text) {
    String[] lines = text.split("\n", -1);
    List<String> listed = null;
    StringBuilder paragraph = new StringBuilder();
    for (int i = 0; i <= lines.length; i++) {
      String line = i < lines.length ? lines[i] : "";
      if (line.equals("examples:") || line.equals("see also:")) {
        listed = line.equals("examples:") ? examples : seeAlso;
      } else if (listed != null) {
        if (!line.isEmpty()) {
          listed.add(line.strip());
        }
      } else if (line.isEmpty()) {
        if (paragraph.length() > 0) {
          manual.add(paragraph.toString());
        }
        paragraph.setLength(0);
      } else {
        paragraph.append(paragraph.length() == 0 ? "" : " ").append(line);
      }
    }
    summary = manual.remove(0);
  }

  /** The prose of a command. */
  static Prose of(Command command) {
    String name = command.name().replace(' ', '-') + ".txt";
    try (InputStream in = command.getClass().getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("no " + name + " beside " + command.getClass().getName());
      }
      return new Prose(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new IllegalStateException(name + ": " + e.getMessage(), e);
    }
  }
}
