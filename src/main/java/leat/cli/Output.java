package leat.cli;

import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Set;
import leat.plan.Refused;

/**
 * Where an answer goes: standard output, or a file that is written beside its place and then
 * renamed. Links are followed first; devices, pipes and descriptors are written through.
 */
public final class Output {
  /** A draft that a killed run left is swept away after so long, ms: a day. */
  private static final long STALE_MS = 86_400_000L;

  /** Longest start of a file's name that a draft repeats. */
  private static final int DRAFT_NAME = 120;

  /** Longest chain of links that is followed. */
  private static final int MOST_LINKS = 40;

  private final Terminal terminal;
  private final String fileName;
  private File target;
  private File draft;
  private Thread sweeper;

  Output(Terminal terminal, String fileName) {
    this.terminal = terminal;
    this.fileName = isStandardOutput(fileName) ? null : fileName;
  }

  private static boolean isStandardOutput(String name) {
    return "/dev/stdout".equals(name) || "/dev/fd/1".equals(name) || "/proc/self/fd/1".equals(name);
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
      close(out);
      done = true;
    } catch (IOException e) {
      throw failed(e);
    } finally {
      finish(done);
    }
  }

  /** Closes what {@link #open} opened; the process's own streams are only flushed. */
  void close(OutputStream out) throws IOException {
    out.flush();
    if (out != terminal.out && out != terminal.err) {
      out.close();
    }
  }

  /** Opens the draft beside the file, what is written through, or standard output. */
  OutputStream open() {
    if (fileName == null) {
      return terminal.out;
    }
    if (fileName.isEmpty()) {
      throw refused("a file name is needed");
    }
    if ("/dev/stderr".equals(fileName) || "/dev/fd/2".equals(fileName)) {
      return terminal.err;
    }
    if (fileName.startsWith("/dev/fd/") || fileName.startsWith("/proc/self/fd/")) {
      // opened behind what is there: a descriptor's file is not the answer's own
      return stream(terminal.file(fileName), true);
    }
    target = followed(terminal.file(fileName));
    if (target.isDirectory()) {
      throw refused("this is a folder");
    }
    if (target.exists() && !target.isFile()) {
      return stream(target, false);
    }
    return stream(newDraft(), false);
  }

  private File newDraft() {
    File folder = target.getAbsoluteFile().getParentFile();
    if (!folder.isDirectory()) {
      throw refused("there is no folder " + new File(fileName).getParent());
    }
    if (target.exists() && !canBeWritten(target)) {
      throw refused("it is write-protected");
    }
    String name = target.getName();
    String start = "." + name.substring(0, Math.min(name.length(), DRAFT_NAME)) + ".";
    sweep(folder, start);
    draft = new File(folder, start + ProcessHandle.current().pid() + ".part");
    sweeper = new Sweeper(draft);
    Runtime.getRuntime().addShutdownHook(sweeper);
    return draft;
  }

  /** Removes the draft when a signal ends the run. */
  private static final class Sweeper extends Thread {
    private final File draft;

    Sweeper(File draft) {
      this.draft = draft;
    }

    @Override
    public void run() {
      draft.delete();
    }
  }

  /** Drafts of the same file that killed runs left. */
  private void sweep(File folder, String start) {
    String[] names = folder.list();
    long now = terminal.clock().millis();
    for (int i = 0; names != null && i < names.length; i++) {
      if (names[i].startsWith(start) && names[i].endsWith(".part")) {
        File old = new File(folder, names[i]);
        if (now - old.lastModified() > STALE_MS) {
          old.delete();
        }
      }
    }
  }

  /** What a link points to in the end, which need not be there yet. */
  private File followed(File file) {
    Path path = file.toPath();
    try {
      for (int i = 0; Files.isSymbolicLink(path); i++) {
        if (i == MOST_LINKS) {
          throw refused("its links go round in a circle");
        }
        path = path.resolveSibling(Files.readSymbolicLink(path));
      }
    } catch (IOException e) {
      throw refused("its link cannot be followed");
    }
    return path.toFile();
  }

  /** Write-protected files are kept from everybody, whom the system would let write them, too. */
  private static boolean canBeWritten(File file) {
    Set<PosixFilePermission> mode = mode(file);
    boolean bit =
        mode == null
            || mode.contains(PosixFilePermission.OWNER_WRITE)
            || mode.contains(PosixFilePermission.GROUP_WRITE)
            || mode.contains(PosixFilePermission.OTHERS_WRITE);
    return bit && file.canWrite();
  }

  /** Permissions of a file; null where the file system has none. */
  private static Set<PosixFilePermission> mode(File file) {
    try {
      return Files.getPosixFilePermissions(file.toPath());
    } catch (IOException | UnsupportedOperationException e) {
      return null;
    }
  }

  private OutputStream stream(File file, boolean append) {
    try {
      return new FileOutputStream(file, append);
    } catch (IOException e) {
      draft = null;
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
    try {
      if (done) {
        keepMode(from);
        Files.move(
            from.toPath(),
            target.toPath(),
            StandardCopyOption.REPLACE_EXISTING,
            StandardCopyOption.ATOMIC_MOVE);
      } else {
        from.delete();
      }
    } catch (IOException e) {
      from.delete();
      throw refused("it cannot be written there");
    } finally {
      try {
        Runtime.getRuntime().removeShutdownHook(sweeper);
      } catch (IllegalStateException e) {
        // A signal is ending the run already; the hook does its work.
        sweeper = null;
      }
    }
  }

  private void keepMode(File from) throws IOException {
    Set<PosixFilePermission> mode = target.exists() ? mode(target) : null;
    if (mode != null) {
      Files.setPosixFilePermissions(from.toPath(), mode);
    }
  }

  private Refused refused(String why) {
    return new Refused(
        List.of(OutputErrors.cannotWrite(fileName.isEmpty() ? "--output" : fileName, why)), 3);
  }

  /** A closed pipe ends quietly; anything else is told. */
  RuntimeException failed(IOException e) {
    String message = String.valueOf(e.getMessage());
    if (fileName == null && (message.contains("Broken pipe") || isPipe())) {
      return new ClosedPipe();
    }
    String why =
        message.contains("No space") ? "the disk is full" : "it cannot be written: " + message;
    return new Refused(
        List.of(OutputErrors.cannotWrite(fileName == null ? "standard output" : fileName, why)), 3);
  }

  /**
   * Whether standard output is a pipe, asked of the system: the words of an error may be
   * translated.
   */
  private boolean isPipe() {
    Path descriptor = Path.of("/proc/self/fd/1");
    try {
      return terminal.isProcess()
          && Files.readSymbolicLink(descriptor).toString().startsWith("pipe:");
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }

  /** The reader of standard output went away. */
  static final class ClosedPipe extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ClosedPipe() {
      super(null, null, false, false);
    }
  }
}
