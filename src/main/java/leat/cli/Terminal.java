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
  private static final int MOST_DIGITS = 4;

  /** Narrower screens are not wrapped for: nothing would be readable. */
  private static final int LEAST_COLUMNS = 30;

  private Clock clock;
  private boolean screen;
  private boolean boxes;
  private boolean watched;
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

  /** Standard output is a screen that somebody looks at. */
  public Terminal onScreen() {
    screen = true;
    return this;
  }

  /** Box characters come through: the locale's character set is UTF-8. */
  public Terminal inUtf8() {
    boxes = true;
    return this;
  }

  /** Whether charts may be drawn with box characters. */
  boolean takesBoxes() {
    return boxes;
  }

  /** Whether somebody looks at standard output. */
  boolean isScreen() {
    return screen;
  }

  /** Standard error is a screen that somebody looks at. */
  public Terminal watched() {
    watched = true;
    return this;
  }

  /** Standard error is looked at, and rows on standard output would not be mixed with it. */
  boolean isWatched(boolean rows) {
    return watched && !(rows && screen);
  }

  /** Width that text is wrapped to; 0 for lines that stay whole. */
  int columns() {
    String columns = environment.get("COLUMNS");
    int width = 0;
    for (int i = 0; columns != null && i < columns.length() && i < MOST_DIGITS; i++) {
      char c = columns.charAt(i);
      if (c < '0' || c > '9') {
        return 0;
      }
      width = 10 * width + (c - '0');
    }
    return width < LEAST_COLUMNS ? 0 : width;
  }

  /** Whether words may be coloured: on a screen, unless NO_COLOR says no. */
  boolean wantsColor() {
    String no = environment.get("NO_COLOR");
    return screen && (no == null || no.isEmpty());
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
  public InputStream takeInput() {
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
