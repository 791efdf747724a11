package leat.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leat.plan.Problem;

/** The world around one run: streams, environment, clock and zone. Tests make their own. */
public final class Terminal {
  final InputStream in;
  final OutputStream out;
  final OutputStream err;
  final Map<String, String> environment;
  final java.nio.file.Path folder;
  private Clock clock;
  private boolean stdinTaken;
  private final List<Problem> told = new ArrayList<>();

  /**
   * All of it at once; {@code folder} is what relative paths start from, and {@code clock} null
   * means the system's.
   */
  public Terminal(
      InputStream in,
      OutputStream out,
      OutputStream err,
      Map<String, String> environment,
      java.nio.file.Path folder,
      Clock clock) {
    this.in = in;
    this.out = out;
    this.err = err;
    this.environment = environment;
    this.folder = folder;
    this.clock = clock;
  }

  /** Whether the streams are this process's own, not a test's. */
  boolean isProcess() {
    return out instanceof java.io.FileOutputStream;
  }

  /** The clock, with the zone of the place. */
  public Clock clock() {
    if (clock == null) {
      clock = Clock.systemDefaultZone();
    }
    return clock;
  }

  /** A file of the user's, from the folder the command runs in. */
  public java.io.File file(String name) {
    java.io.File file = new java.io.File(name);
    return file.isAbsolute() || folder == null ? file : new java.io.File(folder.toFile(), name);
  }

  /** Standard input, which can be taken once. */
  InputStream takeInput() {
    if (stdinTaken) {
      throw new leat.plan.Refused(leat.plan.PlanErrors.stdinTwice());
    }
    stdinTaken = true;
    return new Inlet(in, "standard input");
  }

  /** The problems that were told on standard error so far; the error gallery asks for them. */
  List<Problem> told() {
    return told;
  }
}
