package leat.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import leat.command.Commands;

/** A command line run in this process, in the folder of the examples. */
public record Ran(int exit, String out, String err) {
  public static Ran run(String... args) {
    return withInput(new byte[0], args);
  }

  public static Ran withInput(String input, String... args) {
    return withInput(input.getBytes(StandardCharsets.UTF_8), args);
  }

  public static Ran withInput(byte[] input, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exit =
        Commands.run(
            args,
            new Terminal(
                new ByteArrayInputStream(input),
                out,
                err,
                Map.of("LEAT_DEBUG", "1"),
                Path.of("examples").toAbsolutePath(),
                null));
    return new Ran(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  public JsonNode json() {
    try {
      return new ObjectMapper().readTree(out);
    } catch (IOException e) {
      throw new AssertionError(out + err, e);
    }
  }

  public String[] lines() {
    return out.split("\n", -1);
  }
}
