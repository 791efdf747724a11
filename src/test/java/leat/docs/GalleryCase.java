package leat.docs;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One entry of the error gallery. The file is named for the code of the message it shows (a plus
 * sign and a word may follow), and reads:
 *
 * <pre>
 * # why, in a line or more
 * $ leat head --flow "5,5 L/min"
 * == file plan.yaml          then its lines; " x 1000" behind the name repeats them, a second
 *                            part of the same name is put behind the first
 * == file plan.yaml escaped  takes \t \r \n \e (escape) \xFF (a byte) \\ and no line feeds of its own
 * == folder name
 * == stdin                   the same, for standard input
 * == env NAME=VALUE
 * == terminal full           or closed, or broken: what happens when standard output is written;
 *                            screen: somebody looks at it
 * == exit 2                  this and the rest is what must come out, to the letter
 * == stdout
 * == stderr
 * </pre>
 */
final class GalleryCase {
  static final Path FOLDER = Path.of("src/test/gallery");

  final Path file;
  final String code;
  String why = "";
  String line;
  final Map<String, String> environment = new LinkedHashMap<>();
  final Map<String, byte[]> files = new LinkedHashMap<>();
  final List<String> folders = new ArrayList<>();
  byte[] input = new byte[0];
  String terminal = "";
  int exit = -1;
  String out = "";
  String err = "";
  private final StringBuilder given = new StringBuilder();

  private GalleryCase(Path file) {
    this.file = file;
    String name = file.getFileName().toString();
    this.code = name.substring(0, name.lastIndexOf('.')).split("\\+")[0];
  }

  static List<GalleryCase> all() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<GalleryCase> cases = new ArrayList<>();
      files.filter(f -> f.toString().endsWith(".case")).sorted().forEach(f -> cases.add(read(f)));
      return cases;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static GalleryCase read(Path file) {
    GalleryCase result = new GalleryCase(file);
    String head = null;
    StringBuilder body = new StringBuilder();
    for (String line : Golden.read(file).split("\n", -1)) {
      if (line.startsWith("== ")) {
        result.take(head, body);
        head = line.substring(3);
      } else if (head == null && line.startsWith("# ")) {
        result.why += (result.why.isEmpty() ? "" : " ") + line.substring(2);
        result.given.append(line).append('\n');
      } else if (head == null && line.startsWith("$ ")) {
        result.line = line.substring(2);
        result.given.append(line).append('\n');
      } else {
        body.append(line).append('\n');
      }
    }
    if (body.length() > 0) {
      body.setLength(body.length() - 1);
    }
    result.take(head, body);
    return result;
  }

  private void take(String head, StringBuilder body) {
    String text = body.toString();
    body.setLength(0);
    if (head == null) {
      return;
    }
    String[] words = head.split(" ");
    switch (words[0]) {
      case "exit" -> exit = Integer.parseInt(words[1]);
      case "stdout" -> out = text;
      case "stderr" -> err = text;
      default -> {
        given.append("== ").append(head).append('\n').append(text);
        arrange(words, head, text);
      }
    }
  }

  private void arrange(String[] words, String head, String text) {
    switch (words[0]) {
      case "file" -> files.merge(words[1], bytes(words, text), GalleryCase::joined);
      case "stdin" -> input = bytes(words, text);
      case "folder" -> folders.add(words[1]);
      case "terminal" -> terminal = words[1];
      case "env" -> {
        String set = head.substring(4);
        environment.put(set.substring(0, set.indexOf('=')), set.substring(set.indexOf('=') + 1));
      }
      default -> throw new IllegalArgumentException(file + ": " + head);
    }
  }

  private static byte[] bytes(String[] words, String text) {
    byte[] once = text.getBytes(StandardCharsets.UTF_8);
    int times = 1;
    for (int i = 0; i < words.length; i++) {
      if (words[i].equals("escaped")) {
        once = unescaped(text.replace("\n", ""));
      }
      if (words[i].equals("x")) {
        times = Integer.parseInt(words[i + 1]);
      }
    }
    byte[] all = new byte[once.length * times];
    for (int i = 0; i < times; i++) {
      System.arraycopy(once, 0, all, i * once.length, once.length);
    }
    return all;
  }

  private static byte[] joined(byte[] first, byte[] second) {
    byte[] both = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, both, first.length, second.length);
    return both;
  }

  private static byte[] unescaped(String text) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != '\\') {
        out.writeBytes(String.valueOf(c).getBytes(StandardCharsets.UTF_8));
        continue;
      }
      i++;
      switch (text.charAt(i)) {
        case 't' -> out.write('\t');
        case 'r' -> out.write('\r');
        case 'n' -> out.write('\n');
        case 'e' -> out.write(27);
        case 'x' -> {
          out.write(Integer.parseInt(text.substring(i + 1, i + 3), 16));
          i += 2;
        }
        default -> out.write(text.charAt(i));
      }
    }
    return out.toByteArray();
  }

  /** Runs it in an empty folder. */
  Runner.Said run(Path folder) {
    try {
      for (Map.Entry<String, byte[]> one : files.entrySet()) {
        Files.write(folder.resolve(one.getKey()), one.getValue());
      }
      for (String name : folders) {
        Files.createDirectories(folder.resolve(name));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    List<String> words = Shell.words(line);
    if (words == null) {
      throw new IllegalArgumentException(file + ": quote this line: " + line);
    }
    String[] args = words.subList(1, words.size()).toArray(new String[0]);
    ByteArrayOutputStream kept = new ByteArrayOutputStream();
    Runner runner = Runner.in(folder).with(environment).reading(input);
    return (terminal.equals("screen") ? runner.onScreen() : runner).run(screen(kept), kept, args);
  }

  private OutputStream screen(ByteArrayOutputStream kept) {
    if (terminal.isEmpty() || terminal.equals("screen")) {
      return kept;
    }
    return new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        switch (terminal) {
          case "full" -> throw new IOException("No space left on device");
          case "closed" -> throw new IOException("Broken pipe");
          default -> {
            IllegalStateException bug = new IllegalStateException("broken on purpose");
            bug.setStackTrace(new StackTraceElement[0]);
            throw bug;
          }
        }
      }
    };
  }

  /** The text of the file with what a run said as what must come out. */
  String with(Runner.Said said) {
    StringBuilder text = new StringBuilder(given);
    text.append("== exit ").append(said.exit()).append('\n');
    if (!said.out().isEmpty()) {
      text.append("== stdout\n").append(said.out());
    }
    return text.append("== stderr\n").append(said.err()).toString();
  }

  @Override
  public String toString() {
    return file.getFileName().toString();
  }
}
