package leat.plan;

/** How a change is made with an editor: the file, the line, and what to write there. */
final class ByHand {
  private ByHand() {}

  /** How a value is written by hand: the line, its section, and the words; empty removes it. */
  static String line(PlanEdit plan, String path, String value) {
    Spots.Where where = plan.where(path);
    String name = plan.name();
    String section = where.section().isEmpty() ? "" : ", under " + where.section();
    String line = where.line() == 0 ? "" : ", line " + where.line();
    if (where.anchor() != null) {
      line += " (the anchor &" + where.anchor() + ", which other places share)";
    }
    if (value.isEmpty()) {
      return "in "
          + name
          + line
          + section
          + ", remove  "
          + path.substring(path.lastIndexOf('.') + 1);
    }
    String words = written(path, value, where.section());
    if (where.isThere()) {
      return "in " + name + line + section + ", write  " + words;
    }
    return where.line() == 0
        ? "at the end of " + name + " write  " + words
        : "in " + name + ", below line " + where.line() + section + ", write  " + words;
  }

  /** What is written under a section. */
  private static String written(String path, String value, String section) {
    Origin at = Origin.flag(path, value);
    String rest = section.isEmpty() ? path : path.substring(section.length() + 1);
    int known = Paths.steps(path, at).size() - Paths.count(rest);
    return new Written(Paths.steps(path, at), value, at).asLine(known);
  }

  /** A key and its value as they stand in one line of a plan. */
  static String asLine(String path, String value) {
    Origin at = Origin.flag(path, value);
    return new Written(Paths.steps(path, at), value, at).asLine(0);
  }
}
