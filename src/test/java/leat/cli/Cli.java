package leat.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import leat.command.Commands;

/** One command line run in this process, from the folder of the examples. */
public final class Cli {
  public final int exit;
  public final String out;
  public final String err;

  private Cli(int exit, String out, String err) {
    this.exit = exit;
    this.out = out;
    this.err = err;
  }

  public static Cli run(String... args) {
    return piped("", args);
  }

  public static Cli piped(String in, String... args) {
    return fed(new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)), args);
  }

  /** With any stream as its standard input. */
  public static Cli fed(InputStream in, String... args) {
    return fed(in, new ByteArrayOutputStream(), args);
  }

  /** The same with an output that can be looked at meanwhile. */
  public static Cli fed(InputStream in, ByteArrayOutputStream out, String... args) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(in, out, err, Map.of("LEAT_DEBUG", "1"), Path.of("examples"), null);
    int exit = Commands.run(args, terminal);
    return new Cli(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** The number of a key of a JSON object; null for null. Fails when the key is missing. */
  public Double number(String key) {
    String value = value(key);
    return "null".equals(value) ? null : Double.valueOf(value);
  }

  /** The text of a key of a JSON object. */
  public String word(String key) {
    String value = value(key);
    return value.substring(1, value.length() - 1);
  }

  private String value(String key) {
    String start = "\n  \"" + key + "\": ";
    int at = out.indexOf(start);
    if (at < 0) {
      throw new AssertionError("no key " + key + " in\n" + out + err);
    }
    int from = at + start.length();
    int end = out.indexOf('\n', from);
    String value = out.substring(from, end);
    return value.endsWith(",") ? value.substring(0, value.length() - 1) : value;
  }
}
