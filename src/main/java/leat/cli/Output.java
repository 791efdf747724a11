package leat.cli;

import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import leat.plan.Refused;

/**
 * Where an answer goes: standard output, or a file that is written beside its place and then
 * renamed.
 */
public final class Output {
  private final Terminal terminal;
  private final String fileName;

  Output(Terminal terminal, String fileName) {
    this.terminal = terminal;
    this.fileName = fileName;
  }

  /** Writes all of it. */
  void write(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (fileName == null) {
      try {
        terminal.out.write(bytes);
        terminal.out.flush();
      } catch (IOException e) {
        throw failed(e);
      }
      return;
    }
    OutputStream out = open();
    boolean done = false;
    try {
      out.write(bytes);
      out.close();
      done = true;
    } catch (IOException e) {
      throw failed(e);
    } finally {
      finish(done);
    }
  }

  private File target;
  private File draft;

  /** Opens the draft beside the file, or standard output. */
  OutputStream open() {
    if (fileName == null) {
      return terminal.out;
    }
    target = terminal.file(fileName);
    if (target.isDirectory()) {
      throw refused("this is a folder");
    }
    File folder = target.getAbsoluteFile().getParentFile();
    if (target.exists() && !target.isFile()) {
      draft = null;
      return stream(target);
    }
    if (!folder.isDirectory()) {
      throw refused("there is no folder " + new File(fileName).getParent());
    }
    draft =
        new File(folder, "." + target.getName() + "." + ProcessHandle.current().pid() + ".part");
    return stream(draft);
  }

  private OutputStream stream(File file) {
    try {
      return new FileOutputStream(file);
    } catch (IOException e) {
      throw refused("it cannot be written there");
    }
  }

  /** Renames the draft, or removes it. */
  void finish(boolean done) {
    if (draft == null) {
      return;
    }
    File from = draft;
    draft = null;
    if (!done) {
      from.delete();
    } else {
      try {
        java.nio.file.Files.move(
            from.toPath(),
            target.toPath(),
            java.nio.file.StandardCopyOption.REPLACE_EXISTING,
            java.nio.file.StandardCopyOption.ATOMIC_MOVE);
      } catch (IOException e) {
        from.delete();
        throw refused("it cannot be written there");
      }
    }
  }

  private Refused refused(String why) {
    return new Refused(List.of(CommandErrors.cannotWrite(fileName, why)), 3);
  }

  /** A closed pipe ends quietly; anything else is told. */
  RuntimeException failed(IOException e) {
    String message = String.valueOf(e.getMessage());
    if (fileName == null && message.contains("Broken pipe")) {
      return new ClosedPipe();
    }
    String why =
        message.contains("No space") ? "the disk is full" : "it cannot be written: " + message;
    return new Refused(
        List.of(CommandErrors.cannotWrite(fileName == null ? "standard output" : fileName, why)),
        3);
  }

  /** The reader of standard output went away. */
  static final class ClosedPipe extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ClosedPipe() {
      super(null, null, false, false);
    }
  }
}
