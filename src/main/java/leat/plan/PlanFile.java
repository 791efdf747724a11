package leat.plan;

import java.io.File;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the bytes of a plan: at most a megabyte of UTF-8, with or without a byte order mark. */
public final class PlanFile {
  private static final int MOST_KILOBYTES = 1000;

  private PlanFile() {}

  /**
   * A draft of the plan in a file.
   *
   * @param name as the user named it
   * @param file the file
   * @param standardInput read instead of the file when not null
   */
  public static Plan.Draft read(String name, File file, InputStream standardInput) {
    return Plan.Draft.of(Source.file(name, text(name, file, standardInput)));
  }

  /** The text of a plan, without a byte order mark. */
  public static String text(String name, File file, InputStream standardInput) {
    if (standardInput == null && file.isDirectory()) {
      throw cannotRead(name, "this is a folder, not a plan");
    }
    if (standardInput == null && !file.exists()) {
      throw cannotRead(name, "no such file");
    }
    byte[] bytes;
    try (InputStream in = standardInput == null ? new FileInputStream(file) : standardInput) {
      bytes = upTo(in, MOST_KILOBYTES * 1000 + 1);
    } catch (IOException e) {
      throw cannotRead(
          name,
          standardInput == null && !file.canRead()
              ? "no permission to read it"
              : "it cannot be read");
    }
    if (bytes.length > MOST_KILOBYTES * 1000) {
      throw new Refused(PlanErrors.tooLarge(name, MOST_KILOBYTES));
    }
    return text(name, bytes);
  }

  /** Whether a file begins with a byte order mark. */
  public static boolean beginsWithMark(File file) {
    try (InputStream in = new FileInputStream(file)) {
      return in.read() == 0xEF && in.read() == 0xBB && in.read() == 0xBF;
    } catch (IOException e) {
      throw cannotRead(file.getName(), "it cannot be read");
    }
  }

  /** Reads by hand: readNBytes of a FileInputStream asks for the position, which a pipe has not. */
  private static byte[] upTo(InputStream in, int most) throws IOException {
    byte[] bytes = new byte[16_384];
    int size = 0;
    int read = in.read(bytes, 0, bytes.length);
    while (read > 0) {
      size += read;
      if (size == bytes.length && size < most) {
        bytes = java.util.Arrays.copyOf(bytes, Math.min(most, 4 * size));
      }
      read = size == bytes.length ? -1 : in.read(bytes, size, bytes.length - size);
    }
    return java.util.Arrays.copyOf(bytes, size);
  }

  private static Refused cannotRead(String name, String why) {
    return new Refused(List.of(PlanErrors.cannotRead(name, why)), 3);
  }

  private static String text(String name, byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    if (result.isError()) {
      int line = 1;
      for (int i = 0; i < in.position(); i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      throw new Refused(PlanErrors.notUtf8(name, line));
    }
    String text = out.flip().toString();
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }
}
