package leat.command.sense;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leat.cli.Cli;

/**
 * Logs of the sheet in a folder, in their own and other shapes, and what the command says of them.
 */
final class LogFiles {
  final Path folder;

  LogFiles(Path folder) {
    this.folder = folder;
  }

  static String text(String name) {
    try (InputStream in = LogFiles.class.getResourceAsStream("/reference/logs/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  static JsonNode json(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (IOException e) {
      throw new IllegalStateException(text, e);
    }
  }

  String write(String name, String text) {
    try {
      Path file = folder.resolve(name);
      Files.writeString(file, text);
      return file.toString();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A run over a log's text with the plan of the sheet's log of that name. */
  Cli run(String plan, String log, String... more) {
    return run(plan, List.of(write("log.csv", log)), more);
  }

  Cli run(String plan, List<String> files, String... more) {
    List<String> args = new ArrayList<>(List.of("log"));
    args.addAll(files);
    args.addAll(List.of("--plan", write("plan.yaml", text(plan + ".plan.yaml"))));
    args.addAll(List.of(more));
    return Cli.run(args.toArray(new String[0]));
  }

  JsonNode told(String plan, String log, String... more) {
    return told(plan, List.of(write("log.csv", log)), more);
  }

  JsonNode told(String plan, List<String> files, String... more) {
    String[] all = java.util.Arrays.copyOf(more, more.length + 2);
    all[more.length] = "--format";
    all[more.length + 1] = "json";
    return json(run(plan, files, all).out);
  }
}
