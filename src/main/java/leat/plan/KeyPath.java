package leat.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * A declared key with its whole path, such as {@code towers[].riser.bore}; the walk over all of
 * them feeds {@code plan keys} and leat-plan(5).
 */
public final class KeyPath {
  private final String path;
  private final Key key;
  private final String readBy;

  private KeyPath(String path, Key key, String readBy) {
    this.path = path;
    this.key = key;
    this.readBy = readBy;
  }

  /** Every key of a plan in the order of the declaration, a section before its keys. */
  public static List<KeyPath> all() {
    List<KeyPath> all = new ArrayList<>();
    under(Keys.PLAN, "", "", all);
    return all;
  }

  private static void under(Key section, String path, String readBy, List<KeyPath> all) {
    for (int i = 0; i < section.keys.length; i++) {
      Key key = section.keys[i];
      String own = path.isEmpty() ? key.name : path + "." + key.name;
      String reads = key.readBy.isEmpty() ? readBy : key.readBy;
      all.add(new KeyPath(own, key, reads.isEmpty() ? ofKeys(key) : reads));
      under(key, key.shape == Key.Shape.SECTIONS ? own + "[]" : own, reads, all);
    }
  }

  /** The commands that read the keys of a section which names none itself. */
  private static String ofKeys(Key section) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < section.keys.length; i++) {
      Key key = section.keys[i];
      String own = key.readBy.isEmpty() ? ofKeys(key) : key.readBy;
      int start = 0;
      while (start < own.length()) {
        int end = own.indexOf(' ', start);
        end = end < 0 ? own.length() : end;
        String command = own.substring(start, end);
        if ((" " + all + " ").indexOf(" " + command + " ") < 0) {
          all.append(all.length() == 0 ? "" : " ").append(command);
        }
        start = end + 1;
      }
    }
    return all.toString();
  }

  /** The whole path, lists of sections marked by {@code []}. */
  public String path() {
    return path;
  }

  /** The declaration. */
  public Key key() {
    return key;
  }

  /** The commands that read it, separated by spaces; those of its section when it names none. */
  public String readBy() {
    return readBy;
  }
}
