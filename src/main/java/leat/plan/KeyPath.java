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
    under(Keys.PLAN, "", all);
    return all;
  }

  /** Those that some command reads, or that are for the reader of the plan; for the manuals. */
  public static List<KeyPath> shown() {
    List<KeyPath> all = all();
    List<KeyPath> shown = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).isShown()) {
        shown.add(all.get(i));
      }
    }
    return shown;
  }

  private static String under(Key section, String path, List<KeyPath> all) {
    String sum = "";
    for (int i = 0; i < section.keys.length; i++) {
      Key key = section.keys[i];
      String own = path.isEmpty() ? key.name : path + "." + key.name;
      int at = all.size();
      String readBy = ReadBy.of(own);
      if (key.keys.length > 0) {
        readBy = under(key, key.shape == Key.Shape.SECTIONS ? own + "[]" : own, all);
      }
      all.add(at, new KeyPath(own, key, readBy));
      sum = joined(sum, readBy);
    }
    return sum;
  }

  /** Both lists of commands, each command once. */
  private static String joined(String some, String more) {
    String all = some;
    int start = 0;
    while (start < more.length()) {
      int end = more.indexOf(' ', start);
      end = end < 0 ? more.length() : end;
      String command = more.substring(start, end);
      if ((" " + all + " ").indexOf(" " + command + " ") < 0) {
        all = all.isEmpty() ? command : all + " " + command;
      }
      start = end + 1;
    }
    return all;
  }

  /** Whether some command reads it, or it is for the reader of the plan. */
  public boolean isShown() {
    return !readBy.isEmpty() || "name".equals(path) || "about".equals(path);
  }

  /** The whole path, lists of sections marked by {@code []}. */
  public String path() {
    return path;
  }

  /** The declaration. */
  public Key key() {
    return key;
  }

  /**
   * The commands that read it, as measured, separated by spaces; of a section those of its keys.
   */
  public String readBy() {
    return readBy;
  }
}
