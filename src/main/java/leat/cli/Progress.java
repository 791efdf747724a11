package leat.cli;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;

/** How far a long run is: one line on standard error, rewritten, where somebody watches it. */
public final class Progress {
  private static final Column DONE = Column.of("done_pct", "done", Show.PERCENT);
  private static final Column RATE = Column.number("per_s", "a second", 2);
  private static final Column LEFT = Column.of("left_s", "left", Show.S);
  private static final long NANOS = 1_000_000_000L;
  private static final long EVERY = NANOS / 4;

  /** Looked at the clock once in so many steps. */
  private static final int STEPS = 64;

  private final Terminal terminal;
  private final boolean shown;
  private final long all;
  private final long start = System.nanoTime();
  private long next = start + NANOS;
  private long done;
  private int written;

  Progress(Terminal terminal, boolean shown, long all) {
    this.terminal = terminal;
    this.shown = shown;
    this.all = all;
  }

  /** One more is done. */
  public void step() {
    done++;
    if (shown && done % STEPS == 0) {
      long now = System.nanoTime();
      if (now > next) {
        next = now + EVERY;
        write(now);
      }
    }
  }

  private void write(long now) {
    double seconds = (double) (now - start) / NANOS;
    double rate = done / seconds;
    Row row = Row.aside(DONE, RATE, LEFT);
    row.set(DONE, (double) done / all).set(RATE, rate).set(LEFT, (all - done) / rate);
    String words =
        Answer.filled(row, "{done_pct} done, {per_s} a second, {left_s:duration} left")
            .render(false);
    tell("\r" + words + " ".repeat(Math.max(0, written - words.length())));
    written = words.length();
  }

  /** Wipes the line. */
  public void end() {
    if (written > 0) {
      tell("\r" + " ".repeat(written) + "\r");
    }
  }

  private void tell(String text) {
    Run.tell(terminal, text);
  }
}
