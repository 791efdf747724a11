package leat.cli;

import java.io.Flushable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Bytes on their way out, in large pieces. */
final class RowSink implements Flushable {
  private final OutputStream out;
  private final byte[] buffer = new byte[1 << 16];
  private int filled;

  RowSink(OutputStream out) {
    this.out = out;
  }

  void put(byte[] bytes, int from, int length) throws IOException {
    if (length > buffer.length - filled) {
      flush();
      if (length > buffer.length) {
        out.write(bytes, from, length);
        return;
      }
    }
    System.arraycopy(bytes, from, buffer, filled, length);
    filled += length;
  }

  void put(byte one) throws IOException {
    if (filled == buffer.length) {
      flush();
    }
    buffer[filled++] = one;
  }

  void put(StringBuilder text) throws IOException {
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    put(bytes, 0, bytes.length);
  }

  @Override
  public void flush() throws IOException {
    out.write(buffer, 0, filled);
    filled = 0;
    out.flush();
  }
}
