package leat;

import java.io.File;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import leat.cli.Terminal;
import leat.command.Commands;

/** Starts the one command that was named. */
public final class Main {
  private Main() {}

  /** Runs a command line and ends the process with its exit code. */
  public static void main(String[] args) {
    int code;
    try {
      code = run(args);
    } catch (LinkageError e) {
      code = unfit(e);
    }
    if (code == 70) {
      dropped();
    }
    code += Integer.getInteger("leat.exit", 0);
    if (code != 0) {
      // System.exit looks up a logger on newer JVMs, which costs more than the whole answer.
      Runtime.getRuntime().halt(code);
    }
  }

  private static int run(String[] args) {
    return Commands.run(
        args,
        onScreen(
            terminal(
                new FileOutputStream(FileDescriptor.out),
                new FileOutputStream(FileDescriptor.err),
                folder())));
  }

  /** Classes that do not fit together: of an archive with wrong bytes, or of a cut-off jar. */
  private static int unfit(LinkageError e) {
    String words =
        dropped()
            ? "leat: its class-data archive was damaged and is dropped; run it again\n"
            : "leat: it cannot start: " + e + "\n";
    try (FileOutputStream err = new FileOutputStream(FileDescriptor.err)) {
      err.write(words.getBytes(StandardCharsets.UTF_8));
      return 3;
    } catch (IOException closed) {
      // nobody reads it
      return 3;
    }
  }

  /** Drops the archive that the launcher named, which the next run makes anew. */
  private static boolean dropped() {
    String archive = System.getenv("LEAT_ARCHIVE");
    return archive != null && new File(archive).delete();
  }

  /** The launcher knows which streams are screens, and the character set. */
  private static Terminal onScreen(Terminal terminal) {
    if (Boolean.getBoolean("leat.utf8")) {
      terminal.inUtf8();
    }
    if (Boolean.getBoolean("leat.watched")) {
      terminal.watched();
    }
    return Boolean.getBoolean("leat.screen") ? terminal.onScreen() : terminal;
  }

  /** Where the launcher was called, when it had to go elsewhere. */
  private static Path folder() {
    String folder = System.getProperty("leat.folder");
    return folder == null ? null : Path.of(folder);
  }

  /** The real world around a run, but for where its words go. */
  static Terminal terminal(OutputStream out, OutputStream err, Path folder) {
    // picocli's documented switch: converters nobody uses here are not loaded.
    System.setProperty("picocli.converters.excludes", "java.sql.*,java.time.*");
    return new Terminal(
        new FileInputStream(FileDescriptor.in), out, err, System.getenv(), folder, null);
  }
}
