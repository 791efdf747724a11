package leat.plan;

/**
 * Keys that say the same thing in two ways. In a file two of them are a mistake, unless one is
 * known to win; a flag or --set for one lays aside the file's other.
 */
final class Rivals {
  /** Section, one way, the other way, whether both may stand in a file. */
  private static final String[][] PAIRS = {
    {"pump", "curve", "shutoff_head", ""},
    {"pump", "curve", "max_flow", ""},
    {"pump", "derate", "measured", "both"},
    {"supply", "mains", "dc", ""},
    {"riser", "roughness", "material", "both"},
    {"pipe", "roughness", "material", "both"},
    {"riser", "k", "fittings", ""},
    {"pipe", "k", "fittings", ""},
    {"crops", "water", "area", ""},
    {"lamp", "efficacy", "lumens", ""},
    {"sender", "steps", "edges", ""},
    {"sender", "steps", "ladder", ""},
    {"sender", "edges", "ladder", ""},
  };

  private Rivals() {}

  /** The other way of a key in a section, number {@code n} of several; null when there is none. */
  static String other(String section, String key, int n) {
    int found = 0;
    for (int i = 0; i < PAIRS.length; i++) {
      String[] pair = PAIRS[i];
      if (!pair[0].equals(section)) {
        continue;
      }
      String other = pair[1].equals(key) ? pair[2] : pair[2].equals(key) ? pair[1] : null;
      if (other != null && found++ == n) {
        return other;
      }
    }
    return null;
  }

  /** The other ways of a key that must not stand beside it in a file. */
  static java.util.List<String> thatForbid(String section, String key) {
    java.util.List<String> others = new java.util.ArrayList<>();
    for (int i = 0; i < PAIRS.length; i++) {
      String[] pair = PAIRS[i];
      boolean first = pair[1].equals(key);
      if (pair[0].equals(section) && pair[3].isEmpty() && (first || pair[2].equals(key))) {
        others.add(first ? pair[2] : pair[1]);
      }
    }
    return others;
  }

  /** Whether a default of a key is out of force because the other way is given. */
  static boolean isLaidAside(Section section, String key) {
    for (int n = 0; other(section.key.name, key, n) != null; n++) {
      if (section.has(other(section.key.name, key, n))) {
        return true;
      }
    }
    return false;
  }

  /** Tells two ways that stand side by side in a section. */
  static void check(Section section, java.util.List<Problem> problems) {
    for (int i = 0; i < PAIRS.length; i++) {
      String[] pair = PAIRS[i];
      if (pair[0].equals(section.key.name)
          && pair[3].isEmpty()
          && section.has(pair[1])
          && section.has(pair[2])) {
        problems.add(PlanErrors.oneOfTwo(section, pair[1], pair[2]));
        return;
      }
    }
  }

  /** What a flag aims at is for this once: the file's band about its own aim does not judge it. */
  static Node dropBand(Node root, String path, Origin at) {
    if (!path.equals("target.ph") && !path.equals("target.ec")) {
      return root;
    }
    Node result = Paths.drop(root, path + "_low", at, true);
    return Paths.drop(result, path + "_high", at, true);
  }

  /** The tree without the other ways of a key that was just set. */
  static Node drop(Node root, String path, Origin at, boolean onlyOfFile) {
    int dot = path.lastIndexOf('.');
    if (dot < 0) {
      return root;
    }
    String parent = path.substring(0, dot);
    String section = parent.substring(parent.lastIndexOf('.') + 1);
    Node result = root;
    String key = path.substring(dot + 1);
    int bracket = key.indexOf('[');
    key = bracket < 0 ? key : key.substring(0, bracket);
    for (int n = 0; other(section, key, n) != null; n++) {
      result = Paths.drop(result, parent + "." + other(section, key, n), at, onlyOfFile);
    }
    return result;
  }

  /** The key beside this one that can read a text which it cannot itself; null when none can. */
  static String thatReads(Key key, String typed) {
    boolean steps = key.kind == Kind.STEP;
    boolean edges = key.kind == Kind.EDGE;
    boolean table = key.kind == Kind.STRAP;
    if (steps || edges) {
      return reads(steps ? Kind.EDGE : Kind.STEP, typed) ? steps ? "edges" : "steps" : null;
    }
    if (table || key.kind == Kind.AREA_AT) {
      return reads(table ? Kind.AREA_AT : Kind.STRAP, typed) ? table ? "sections" : "table" : null;
    }
    return null;
  }

  private static boolean reads(Kind kind, String typed) {
    try {
      kind.read(typed, true);
      return true;
    } catch (leat.quantity.Unreadable e) {
      // then neither key is meant
      return false;
    }
  }
}
