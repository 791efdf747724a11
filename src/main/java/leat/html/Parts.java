package leat.html;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Files of a page that lie beside the classes: style, script, the plotting library. */
public final class Parts {
  private Parts() {}

  /** The text of a file of the jar, with line feeds alone at the ends of its lines. */
  public static String read(String name) {
    try (InputStream in = Parts.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing: the build puts it into the jar");
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.replace("\r\n", "\n");
    } catch (IOException e) {
      throw new IllegalStateException(name + " cannot be read", e);
    }
  }
}
