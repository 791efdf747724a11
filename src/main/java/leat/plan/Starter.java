package leat.plan;

/**
 * The plan that {@code plan new} writes: the keys most towers need, each with the example and the
 * meaning of its declaration, and a mark at each line that wants measuring.
 */
public final class Starter {
  private static final int REMARK = 34;

  /** Indent, head of a section (or null), its keys; "<" before a key asks to measure it. */
  private static final String[][] PARTS = {
    {
      "",
      "tank",
      "shape <bottom <top <height <corner <full <low <intake <rim_overflow",
      "tape measure, inside; levels count from the floor"
    },
    {
      "",
      "pump",
      "<shutoff_head <max_flow derate <power",
      "from its box; 70 % until you have held a bucket under it, see pump.measured"
    },
    {"", "towers", null, "one item each; a second tower begins with a second \"- name\""},
    {"  ", "-", "name", null},
    {"    ", "riser", "<bore <length material fittings", "the tube up the middle"},
    {"    ", null, "<outlet wanted", null},
    {"    ", "base", "<height", null},
    {"    ", "modules", null, "pot modules, from the bottom; one item a kind"},
    {"      ", "-", "name <count <height overlap diameter wall <pots pot", null},
    {"    ", "cap", "<mass spreader <gap <grip", "where the water spreads over the wall"},
    {"", "strainer", "<aperture wire <diameter <freeboard", "delete it when there is none"},
    {"", "timing", null, null},
    {"  ", "-", "<run <rest", null},
  };

  private Starter() {}

  /** The text of a starter plan in metric units. */
  public static String text(String name) {
    return text(name, null, false);
  }

  /**
   * The text of a starter plan.
   *
   * @param name of the plan, or null for the declared example
   * @param money code of its currency, or null for the declared example
   * @param us whether its values are in US customary units
   */
  public static String text(String name, String money, boolean us) {
    StringBuilder out = new StringBuilder();
    out.append("# A tower plan. Change what is marked <-, delete what you do not know;");
    out.append(" `leat check` says what is missed.\n");
    out.append("# Every value carries its unit (leat units); more keys: leat plan keys.\n");
    out.append("name: ");
    out.append(YamlText.text(name == null ? Keys.PLAN.find("name").example : name, false));
    out.append('\n');
    Key currency = Keys.PLAN.find("currency");
    line(out, "currency: " + (money == null ? currency.example : money), currency.meaning);
    Key units = Keys.PLAN.find("units");
    if (us) {
      line(out, "units: us", units.meaning);
    }
    Key list = null;
    for (int i = 0; i < PARTS.length; i++) {
      String head = PARTS[i][1];
      Key section;
      if (head == null) {
        section = Keys.PLAN.find("towers");
      } else if ("-".equals(head)) {
        section = list;
      } else {
        section = (PARTS[i][0].isEmpty() ? Keys.PLAN : Keys.PLAN.find("towers")).find(head);
        list = section;
      }
      part(out, PARTS[i], section, us);
    }
    return out.toString();
  }

  private static void part(StringBuilder out, String[] part, Key section, boolean us) {
    String indent = part[0];
    String head = part[1];
    boolean item = "-".equals(head);
    if (head != null && !item) {
      out.append(indent.isEmpty() ? "\n" : "");
      line(out, indent + head + ":", part[3]);
    }
    if (part[2] == null) {
      return;
    }
    String first = indent + (item ? "- " : head == null ? "" : "  ");
    String next = indent + (head == null ? "" : "  ");
    int start = 0;
    while (start < part[2].length()) {
      int end = part[2].indexOf(' ', start);
      end = end < 0 ? part[2].length() : end;
      boolean measure = part[2].charAt(start) == '<';
      Key key = section.find(part[2].substring(measure ? start + 1 : start, end));
      String text =
          (start == 0 ? first : next)
              + key.name
              + ": "
              + (us ? UsExample.of(key.example) : key.example);
      line(out, text, (measure ? "<- " : "") + remark(key));
      start = end + 1;
    }
  }

  private static String remark(Key key) {
    String[] words = key.kind.words();
    return words == null ? key.meaning : key.meaning + ": " + String.join(", ", words);
  }

  private static void line(StringBuilder out, String text, String remark) {
    out.append(text);
    if (remark != null) {
      out.append(" ".repeat(Math.max(3, REMARK - text.length()))).append("# ").append(remark);
    }
    out.append('\n');
  }
}
