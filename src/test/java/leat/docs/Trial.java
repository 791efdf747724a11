package leat.docs;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One command line with what stands on its standard input, or in the file {@link #FILE} where it
 * names that. Texts hold a byte in each char, so that any bytes can be cut and joined.
 */
record Trial(List<String> args, String input) {
  /** A file that holds the input. */
  static final String FILE = "damaged.csv";

  private static final Pattern NO_NUMBER = Pattern.compile("\\bNaN\\b|Infinity|\u221e|\u2426");
  private static final JsonFactory JSON = new JsonFactory();

  Trial {
    // no argument of a process can hold a NUL
    args = args.stream().map(arg -> arg.replace("\0", "")).toList();
  }

  static Trial ofText(List<String> args, String text) {
    return new Trial(args, latin(text.getBytes(StandardCharsets.UTF_8)));
  }

  static String latin(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private byte[] bytes() {
    return input.getBytes(StandardCharsets.ISO_8859_1);
  }

  boolean named() {
    return args.toString().contains(FILE);
  }

  Runner.Said run(Path folder) {
    if (!named()) {
      return Runner.in(folder).reading(bytes()).run(args.toArray(new String[0]));
    }
    try {
      Files.write(folder.resolve(FILE), bytes());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return Runner.in(folder).run(args.toArray(new String[0]));
  }

  /** What is wrong with what a run said, or null. */
  String complaint(Runner.Said said) {
    if (said.exit() < 0 || said.exit() > 3) {
      return "exit " + said.exit() + ": " + said.err();
    }
    if (said.err().contains("bug in leat") || said.err().contains("\tat ")) {
      return said.err();
    }
    boolean page = said.out().startsWith("<!DOCTYPE html>");
    if (!page && NO_NUMBER.matcher(withoutInput(said.out())).find() && !repeatsTheTyped()) {
      return "no number in: " + said.out();
    }
    if (said.exit() >= 2 && said.err().isBlank()) {
      return "exit " + said.exit() + " without a word";
    }
    return said.exit() <= 1 && wantsJson() && !writesText() ? badJson(said.out()) : null;
  }

  private boolean wantsJson() {
    for (String arg : args) {
      if (arg.matches("help|--version|-V")) {
        return false;
      }
    }
    for (int i = 0; i < args.size(); i++) {
      if (args.get(i).matches("--format=json|-f=?json")) {
        return true;
      }
      if (args.get(i).matches("--format|-f")
          && i + 1 < args.size()
          && args.get(i + 1).equals("json")) {
        // A value of the flag before it may look like this flag.
        return i == 0 || !args.get(i - 1).startsWith("-");
      }
    }
    return false;
  }

  /** Commands that write a text to keep, whatever the format. */
  private boolean writesText() {
    return args.size() > 1 && args.get(0).equals("plan") && args.get(1).matches("new|set|card")
        || args.contains("--paste")
        || args.contains("--c");
  }

  /**
   * `plan show` and `plan new` repeat what was typed, also where somebody typed NaN as a name; rows
   * come out as they went in.
   */
  private boolean repeatsTheTyped() {
    return args.size() > 1 && args.get(0).equals("plan") && args.get(1).matches("show|new|set")
        || NO_NUMBER.matcher(input).find();
  }

  /** `check` begins a block with the name of its plan, also of one that is named Infinity. */
  private String withoutInput(String out) {
    // a line to type next keeps the flags as typed
    String rest = out.replaceAll("(?m)^Next: .*", "");
    for (String arg : !args.isEmpty() && args.get(0).equals("check") ? args : List.<String>of()) {
      // as a heading, and in the column "plan" of csv and json
      rest = rest.replace(arg + ": ", "").replace(arg + ",", "").replace('"' + arg + '"', "");
      // as the head of its column
      rest = rest.replaceAll("(?m)^ .*" + Pattern.quote(arg) + "( .*)?$", "");
    }
    return rest;
  }

  private static String badJson(String out) {
    if (out.isEmpty() || out.contains("\nUsage: leat ") || out.startsWith("leat ")) {
      // Written to a file, or help after all.
      return null;
    }
    try (JsonParser parser = JSON.createParser(out)) {
      int values = 0;
      int depth = 0;
      while (parser.nextToken() != null) {
        if (parser.currentToken().isStructStart()) {
          values += depth++ == 0 ? 1 : 0;
        } else if (parser.currentToken().isStructEnd()) {
          depth--;
        }
      }
      return values == 1 ? null : values + " JSON values in: " + out;
    } catch (IOException e) {
      return "no JSON (" + e.getMessage() + ") in: " + out;
    }
  }

  /** The same complaint with fewer words and fewer lines of input. */
  Trial shrunk(Path folder) {
    Trial least = this;
    for (boolean again = true; again; ) {
      again = false;
      for (int i = least.args.size() - 1; i >= 0; i--) {
        for (int n = 2; n >= 1 && i + n <= least.args.size(); n--) {
          List<String> fewer = new ArrayList<>(least.args);
          fewer.subList(i, i + n).clear();
          Trial smaller = new Trial(fewer, least.input);
          if (smaller.complaint(smaller.run(folder)) != null) {
            least = smaller;
            again = true;
            break;
          }
        }
      }
      String[] lines = least.input.split("\n", -1);
      for (int n = Math.max(1, lines.length / 2); n >= 1; n = n / 2) {
        for (int i = lines.length - n; i >= 0 && lines.length > 1; i--) {
          List<String> fewer = new ArrayList<>(List.of(least.input.split("\n", -1)));
          if (i + n <= fewer.size()) {
            fewer.subList(i, i + n).clear();
            Trial smaller = new Trial(least.args, String.join("\n", fewer));
            if (smaller.complaint(smaller.run(folder)) != null) {
              least = smaller;
              again = true;
            }
          }
        }
        lines = least.input.split("\n", -1);
      }
    }
    return least;
  }

  /** A line for a shell that does it again, run in examples/. */
  String reproduced() {
    StringBuilder out = new StringBuilder();
    if (named()) {
      out.append("printf '%b' '").append(escaped(input)).append("' > " + FILE + "; ");
    } else if (!input.isEmpty()) {
      out.append("printf '%b' '").append(escaped(input)).append("' | ");
    }
    out.append("leat");
    for (String arg : args) {
      String word = latin(arg.getBytes(StandardCharsets.UTF_8));
      out.append(arg.matches("[\\w./=-]+") ? " " + arg : " $'" + escaped(word) + "'");
    }
    return out.toString();
  }

  private static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    for (char b : text.toCharArray()) {
      if (b == '\n') {
        out.append("\\n");
      } else if (b < 32 || b > 126 || b == '\'' || b == '\\' || b == '%') {
        out.append(String.format("\\x%02x", (int) b));
      } else {
        out.append(b);
      }
    }
    return out.toString();
  }
}
