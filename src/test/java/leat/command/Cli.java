package leat.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;

/** One command line run in this process, from the folder of the example plans. */
record Cli(int exit, String out, String err) {
  static Cli run(String... args) {
    return fed("", args);
  }

  /** With this text on standard input. */
  static Cli fed(String input, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exit =
        Run.run(
            args,
            new Terminal(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                out,
                err,
                Map.of("LEAT_DEBUG", "1"),
                Path.of("examples"),
                Clock.fixed(Instant.parse("2027-04-02T08:00:00Z"), ZoneOffset.UTC)));
    return new Cli(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** The number of a JSON key, of its first occurrence. */
  double number(String key) {
    int at = out.indexOf("\"" + key + "\": ");
    if (at < 0) {
      throw new AssertionError("no " + key + " in " + out);
    }
    int from = at + key.length() + 4;
    int to = from;
    while (",}\n".indexOf(out.charAt(to)) < 0) {
      to++;
    }
    return Double.parseDouble(out.substring(from, to));
  }
}
