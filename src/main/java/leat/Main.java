package leat;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import leat.command.Run;
import leat.command.Terminal;

/** Starts the one command that was named. */
public final class Main {
  private Main() {}

  /** Runs a command line and ends the process with its exit code. */
  public static void main(String[] args) {
    // picocli's documented switch: converters nobody uses here are not loaded.
    System.setProperty("picocli.converters.excludes", "java.sql.*,java.time.*");
    Terminal terminal =
        new Terminal(
            new FileInputStream(FileDescriptor.in),
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err),
            System.getenv(),
            null,
            null);
    int code = Run.run(args, terminal);
    if (code != 0) {
      // System.exit looks up a logger on newer JVMs, which costs more than the whole answer.
      Runtime.getRuntime().halt(code);
    }
  }
}
