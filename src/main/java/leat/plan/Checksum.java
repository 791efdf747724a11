package leat.plan;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256 of a plan's text as it was read, which {@code sha256sum} gives of the file, too. */
public final class Checksum {
  private Checksum() {}

  /**
   * In hexadecimal digits; of nothing for a plan that is no file. A byte order mark is left out.
   */
  public static String of(Plan plan) {
    byte[] digest;
    try {
      digest =
          MessageDigest.getInstance("SHA-256")
              .digest(plan.writtenText().getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
    StringBuilder hex = new StringBuilder();
    for (byte b : digest) {
      hex.append(Character.forDigit(b >> 4 & 15, 16)).append(Character.forDigit(b & 15, 16));
    }
    return hex.toString();
  }
}
