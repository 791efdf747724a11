package leat.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import leat.command.Commands;
import leat.plan.Refused;

/**
 * Rows of any bytes: cells lie inside their record, and an answer for each row comes out. Driven by
 * coverage with {@code mvn -Pjazzer}; the corpus is tried in every build.
 */
public final class RowsFuzz {
  private static final String[] ARGS = {
    "ec", "--column", "ec", "--unit", "mS/cm", "--prefix", "x_"
  };

  private RowsFuzz() {}

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    try {
      cells(data);
    } catch (Refused e) {
      if (e.getMessage().isBlank()) {
        throw new AssertionError("refused without a word");
      }
    }
    answers(data);
  }

  private static void cells(byte[] data) throws IOException {
    RowLines lines = new RowLines(new ByteArrayInputStream(data), "rows");
    int behind = 0;
    while (lines.advance()) {
      lines.split();
      int at = lines.from();
      if (at < behind) {
        throw new AssertionError("a record begins inside the one before");
      }
      for (int i = 0; i < lines.cells(); i++) {
        if (lines.start(i) < at || lines.end(i) < lines.start(i) || lines.end(i) > lines.to()) {
          throw new AssertionError("cell " + i + " lies outside its record");
        }
        at = lines.end(i);
        lines.text(i);
      }
      behind = lines.to();
    }
  }

  private static void answers(byte[] data) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exit =
        Commands.run(
            ARGS,
            new Terminal(
                new ByteArrayInputStream(data),
                out,
                err,
                Map.of(),
                Path.of(""),
                Clock.systemUTC()));
    if (exit < 0 || exit > 3 || exit >= 2 && err.size() == 0 || err.toString().contains("\tat ")) {
      throw new AssertionError("exit " + exit + ": " + err);
    }
  }
}
