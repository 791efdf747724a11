package leat.plan;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import leat.cli.Terminal;
import leat.command.Commands;

/** One command line, run in this JVM from examples/ or another folder. */
final class Leat {
  final String out;
  final String err;
  final int code;

  private Leat(String out, String err, int code) {
    this.out = out;
    this.err = err;
    this.code = code;
  }

  static Leat run(String... args) {
    return in(Path.of("examples"), "", Map.of(), args);
  }

  static Leat in(Path folder, String input, Map<String, String> environment, String... args) {
    Map<String, String> all = new HashMap<>(environment);
    all.put("LEAT_DEBUG", "1");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    ByteArrayInputStream in = new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8));
    int code = Commands.run(args, new Terminal(in, out, err, all, folder, null));
    return new Leat(
        out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8), code);
  }
}
