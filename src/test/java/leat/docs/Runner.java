package leat.docs;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import leat.cli.Declared;
import leat.cli.Terminal;
import leat.command.Commands;

/** Runs command lines in this process, as the launcher would, and keeps what they said. */
public final class Runner {
  /** Today, as the tests have it. */
  public static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-06-12T10:00:00Z"), ZoneId.of("Europe/Vienna"));

  /** The folder of the example plans. */
  public static final Path EXAMPLES = Path.of("examples").toAbsolutePath();

  /** What a run said. */
  public record Said(String out, String err, int exit, List<String> codes) {
    /** Standard output, then standard error: what a terminal shows. */
    public String both() {
      return out + err;
    }
  }

  private final Path folder;
  private final Map<String, String> environment;
  private final byte[] input;
  private boolean screen;

  private Runner(Path folder, Map<String, String> environment, byte[] input) {
    this.folder = folder;
    this.environment = environment;
    this.input = input;
  }

  /** In a folder, with nothing set and nothing on standard input. */
  public static Runner in(Path folder) {
    return new Runner(folder, Map.of(), new byte[0]);
  }

  /** With somebody looking at standard output. */
  Runner onScreen() {
    Runner looked = new Runner(folder, environment, input);
    looked.screen = true;
    return looked;
  }

  /** With variables of the environment. */
  public Runner with(Map<String, String> variables) {
    return new Runner(folder, variables, input);
  }

  /** With something on standard input. */
  public Runner reading(byte[] bytes) {
    return new Runner(folder, environment, bytes);
  }

  /** With something on standard input. */
  public Runner reading(String text) {
    return reading(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Runs a command line. */
  public Said run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    return run(out, out, args);
  }

  /** Runs a command line whose standard output goes elsewhere; {@code kept} is what is read. */
  Said run(OutputStream out, ByteArrayOutputStream kept, String... args) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(new ByteArrayInputStream(input), out, err, environment, folder, CLOCK);
    int exit = Commands.run(args, screen ? terminal.onScreen() : terminal);
    return new Said(
        kept.toString(StandardCharsets.UTF_8),
        err.toString(StandardCharsets.UTF_8),
        exit,
        Declared.codes(terminal));
  }
}
