package leat.cli;

import java.io.Flushable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import leat.plan.Refused;

/** The bytes of an input around the line that is looked at: read on, moved up, never all of it. */
final class LineBuffer {
  /** Longest line; beyond it the input is no table of rows. */
  static final int LONGEST = 1 << 20;

  private final InputStream in;
  private final String source;
  private Flushable beforeWaiting;
  private boolean ended;

  byte[] bytes = new byte[1 << 16];

  /** Offset behind what was read. */
  int filled;

  /** Offset of what is not looked at yet. */
  int next;

  /** Stands behind a byte order mark, if there is one. */
  LineBuffer(InputStream in, String source) throws IOException {
    this.in = in;
    this.source = source;
    while (filled < 3 && fill()) {
      // a byte order mark is three bytes
    }
    boolean mark =
        filled >= 3
            && bytes[0] == (byte) 0xEF
            && bytes[1] == (byte) 0xBB
            && bytes[2] == (byte) 0xBF;
    next = mark ? 3 : 0;
  }

  /** What is flushed before the input is waited for. */
  void beforeWaiting(Flushable answers) {
    beforeWaiting = answers;
  }

  /** Reads more behind what is left; false at the end. */
  boolean fill() throws IOException {
    if (ended) {
      return false;
    }
    makeRoom();
    if (beforeWaiting != null && in.available() == 0) {
      beforeWaiting.flush();
    }
    int n = in.read(bytes, filled, bytes.length - filled);
    if (n < 0) {
      ended = true;
      return false;
    }
    filled += n;
    return true;
  }

  private void makeRoom() {
    if (next > 0 && filled == bytes.length) {
      System.arraycopy(bytes, next, bytes, 0, filled - next);
      filled -= next;
      next = 0;
    }
    if (filled == bytes.length) {
      if (bytes.length >= LONGEST) {
        throw new Refused(RowErrors.lineTooLong(source));
      }
      bytes = Arrays.copyOf(bytes, bytes.length * 2);
    }
  }

  /** The next line as text, without taking it; null when there is none. */
  String peek() throws IOException {
    int end = lineEnd();
    while (end < 0) {
      end = fill() ? lineEnd() : filled;
    }
    return end <= next && ended && next >= filled ? null : text(next, end);
  }

  private int lineEnd() {
    for (int i = next; i < filled; i++) {
      if (bytes[i] == '\n') {
        return i;
      }
    }
    return -1;
  }

  String text(int start, int end) {
    return new String(bytes, start, end - start, StandardCharsets.UTF_8);
  }

  /** Whether all was looked at, and the last line has no end. */
  boolean isUnfinished() {
    return ended && next >= filled && (filled == 0 || bytes[filled - 1] != '\n');
  }
}
