package leat.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The values of a plan as they stand after anchors, merges, {@code --set} and flags, with the
 * defaults of the sections that are given; as rows, and as YAML that can be pasted back.
 */
public final class PlanShow {
  /** One key: its path, the value as typed (null for none), where it comes from, and its line. */
  public static final class Entry {
    final String path;
    final String value;
    final String from;
    final int line;

    Entry(String path, String value, String from, int line) {
      this.path = path;
      this.value = value;
      this.from = from;
      this.line = line;
    }

    /** Key path. */
    public String path() {
      return path;
    }

    /** Value as typed, lists and maps in flow style; null when there is none. */
    public String value() {
      return value;
    }

    /** "plan", "--set", the flag, "default", or "nothing". */
    public String from() {
      return from;
    }

    /** Line in the plan, 0 for none. */
    public int line() {
      return line;
    }
  }

  private static final int REMARK = 40;
  private static final String DEFAULT = "default";

  private final List<String> asked;
  private final List<Entry> entries = new ArrayList<>();
  private final StringBuilder yaml = new StringBuilder();

  private PlanShow(List<String> asked) {
    this.asked = asked;
  }

  /**
   * The values of a plan.
   *
   * @param plan the plan
   * @param asked key paths to show, {@code towers[*].riser} too; empty for all
   * @throws Refused when a path is no key
   */
  public static PlanShow of(Plan plan, List<String> asked) {
    List<String> counted = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      Origin typed = Origin.flag("leat plan show", asked.get(i));
      counted.add(Paths.counted(plan.node(), asked.get(i), typed));
    }
    PlanShow show = new PlanShow(counted);
    show.section(plan.root(), "", "");
    for (int i = 0; i < counted.size(); i++) {
      show.checkFound(counted.get(i));
    }
    return show;
  }

  /** The rows, in the order that keys were asked for. */
  public List<Entry> entries() {
    List<Entry> ordered = new ArrayList<>();
    for (int k = 0; k < asked.size(); k++) {
      for (int i = 0; i < entries.size(); i++) {
        Entry entry = entries.get(i);
        if (compare(asked.get(k), entry.path) == 2 && !ordered.contains(entry)) {
          ordered.add(entry);
        }
      }
    }
    return asked.isEmpty() ? entries : ordered;
  }

  /** The YAML, each value that is not the plan's own with a remark. */
  public String yaml() {
    return yaml.toString();
  }

  private void section(Section section, String indent, String firstIndent) {
    String before = firstIndent;
    for (int i = 0; i < section.key.keys.length; i++) {
      Key key = section.key.keys[i];
      String path = section.path(key.name);
      int covered = covered(path);
      if (covered == 0) {
        continue;
      }
      int length = yaml.length();
      key(section, i, path, before, indent, covered == 2);
      before = yaml.length() > length ? indent : before;
    }
  }

  private void key(
      Section section, int i, String path, String before, String indent, boolean whole) {
    Key key = section.key.keys[i];
    Node node = section.nodes[i];
    switch (key.shape) {
      case SECTION:
        boolean given = section.values[i] != null;
        if (given || standsByDefaults(key) || isAsked(path)) {
          inner(section.section(key.name), key.name, before, indent);
        }
        break;
      case SECTIONS:
        if (node != null) {
          items(section.sections(key.name), key.name, before, indent);
        }
        break;
      default:
        if (whole && node != null) {
          leaf(path, key, flow(node, key.kind, false), node.origin, before);
        } else if (whole && key.byDefault != null && !Rivals.isLaidAside(section, key.name)) {
          entries.add(new Entry(path, key.byDefault, DEFAULT, 0));
          String typed = YamlText.scalar(key.byDefault, key.kind, false);
          line(before + key.name + ": " + typed, "default: " + key.takenAs);
        } else if (isExactlyAsked(path)) {
          entries.add(new Entry(path, null, "nothing", 0));
          yaml.append("# ").append(path).append(": not in the plan, and no default\n");
        }
    }
  }

  private void inner(Section section, String name, String before, String indent) {
    int start = yaml.length();
    yaml.append(before).append(name).append(":\n");
    int body = yaml.length();
    section(section, indent + "  ", indent + "  ");
    if (yaml.length() == body) {
      yaml.setLength(start);
    }
  }

  private void items(List<Section> items, String name, String before, String indent) {
    int start = yaml.length();
    yaml.append(before).append(name).append(":\n");
    int body = yaml.length();
    for (int i = 0; i < items.size(); i++) {
      section(items.get(i), indent + "    ", indent + "  - ");
    }
    if (yaml.length() == body) {
      yaml.setLength(start);
    }
  }

  private void leaf(String path, Key key, String text, Origin origin, String before) {
    boolean fromFile = origin.source.isFile();
    String flag = origin.source.name();
    int space = flag.indexOf(' ');
    String from = fromFile ? "plan" : space < 0 ? flag : flag.substring(0, space);
    entries.add(new Entry(path, plain(text), from, fromFile ? origin.line : 0));
    line(before + key.name + ": " + text, fromFile ? null : from);
  }

  private void line(String text, String remark) {
    yaml.append(text);
    if (remark != null) {
      yaml.append(" ".repeat(Math.max(3, REMARK - text.length()))).append("# ").append(remark);
    }
    yaml.append('\n');
  }

  /** A scalar's quotes belong to YAML, not to the value. */
  private static String plain(String text) {
    boolean quoted = text.length() > 1 && text.charAt(0) == '"' && text.endsWith("\"");
    return quoted && text.indexOf('\\') < 0 ? text.substring(1, text.length() - 1) : text;
  }

  static String flow(Node node, Kind kind, boolean inFlow) {
    if (node.kind == Node.Kind.SCALAR) {
      return YamlText.scalar(node.text, kind, inFlow);
    }
    boolean map = node.kind == Node.Kind.MAP;
    StringBuilder out = new StringBuilder(map ? "{" : "[");
    for (int i = 0; i < node.children.size(); i++) {
      out.append(i == 0 ? "" : ", ");
      if (map) {
        out.append(YamlText.text(node.names.get(i), true)).append(": ");
      }
      out.append(flow(node.children.get(i), kind, true));
    }
    return out.append(map ? '}' : ']').toString();
  }

  /** A section that is in force though nobody names it: its first key has a default. */
  private static boolean standsByDefaults(Key section) {
    return section.keys[0].byDefault != null;
  }

  private boolean isAsked(String path) {
    return !asked.isEmpty() && covered(path) > 0;
  }

  private boolean isExactlyAsked(String path) {
    for (int i = 0; i < asked.size(); i++) {
      if (compare(asked.get(i), path) == 2 && !hasMore(asked.get(i), path)) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasMore(String question, String path) {
    int dots = 0;
    for (int i = 0; i < question.length(); i++) {
      dots += question.charAt(i) == '.' ? 1 : 0;
    }
    for (int i = 0; i < path.length(); i++) {
      dots -= path.charAt(i) == '.' ? 1 : 0;
    }
    return dots != 0;
  }

  /** 2 when a path is asked for, 1 when something under it is, 0 otherwise. */
  private int covered(String path) {
    if (asked.isEmpty()) {
      return 2;
    }
    int best = 0;
    for (int i = 0; i < asked.size(); i++) {
      best = Math.max(best, compare(asked.get(i), path));
    }
    return best;
  }

  private static int compare(String question, String path) {
    int q = 0;
    int p = 0;
    while (q < question.length() && p < path.length()) {
      if (question.startsWith("[*]", q) && path.charAt(p) == '[') {
        q += 3;
        p = path.indexOf(']', p) + 1;
      } else if (question.charAt(q) == path.charAt(p)) {
        q++;
        p++;
      } else {
        return 0;
      }
    }
    if (q == question.length()) {
      return p == path.length() || path.charAt(p) == '.' || path.charAt(p) == '[' ? 2 : 0;
    }
    return question.charAt(q) == '.' || question.charAt(q) == '[' ? 1 : 0;
  }

  private void checkFound(String question) {
    for (int i = 0; i < entries.size(); i++) {
      if (compare(question, entries.get(i).path) == 2) {
        return;
      }
    }
    entries.add(new Entry(question, null, "nothing", 0));
    yaml.append("# ").append(question).append(": not in the plan\n");
  }
}
