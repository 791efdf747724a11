package leat.plan;

import java.util.ArrayList;
import java.util.List;

/** How values get into a plan: the changes for {@code leat plan set}, and the lines by hand. */
public final class PlanHint {
  /** More keys than so are not told one by one. */
  private static final int MANY = 2;

  private final List<String> paths = new ArrayList<>();
  private final List<String> values = new ArrayList<>();

  private PlanHint() {}

  /** Keys and their values as one would type them, in turn. */
  public static PlanHint of(String... keysAndValues) {
    PlanHint hint = new PlanHint();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      hint.paths.add(keysAndValues[i]);
      hint.values.add(keysAndValues[i + 1]);
    }
    return hint;
  }

  /**
   * The changes as {@code leat plan set} takes them, those first that take away what says the same
   * in another way; none when it would refuse them, as for a key that an anchor shares.
   */
  public List<String> sets(PlanEdit plan) {
    List<String> sets = new ArrayList<>();
    PlanEdit trial = PlanEdit.of(plan.name(), plan.text());
    try {
      for (int i = 0; i < paths.size(); i++) {
        for (String rival : rivals(plan, paths.get(i))) {
          sets.add(rival + "=");
          trial.set(rival, "");
        }
        sets.add(paths.get(i) + "=" + values.get(i));
        trial.set(paths.get(i), values.get(i));
      }
      trial.check();
    } catch (Refused e) {
      return List.of();
    }
    return sets;
  }

  /**
   * What to do by hand in a plan, a line each.
   *
   * @param isTold whether the keys and values stand in the command before: of many keys the place
   *     alone is told then
   */
  public List<String> byHand(PlanEdit plan, boolean isTold) {
    List<String> lines = new ArrayList<>();
    String section = parent(0);
    if (isTold && paths.size() > MANY && lastUnder(section, 0) == paths.size() - 1) {
      Spots.Where where = plan.where(section);
      if (where.isThere()) {
        lines.add(
            "in "
                + plan.name()
                + ", under "
                + section
                + " in line "
                + where.line()
                + ", write the same keys");
        return lines;
      }
    }
    for (int i = 0; i < paths.size(); i++) {
      for (String rival : rivals(plan, paths.get(i))) {
        lines.add(ByHand.line(plan, rival, ""));
      }
      String parent = parent(i);
      boolean isNew = !parent.isEmpty() && !plan.where(parent).isThere();
      int last = isNew ? lastUnder(parent, i) : i;
      lines.add(
          last > i
              ? ByHand.line(plan, parent, map(i, last))
              : ByHand.line(plan, at(i), values.get(i)));
      i = last;
    }
    return lines;
  }

  /** What to write when there is no plan yet, a line each. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < paths.size(); i++) {
      String parent = parent(i);
      int last = parent.isEmpty() ? i : lastUnder(parent, i);
      String words = last > i ? map(i, last) : values.get(i);
      lines.add(ByHand.asLine(last > i ? parent : at(i), words));
      i = last;
    }
    return lines;
  }

  private String at(int i) {
    return paths.get(i);
  }

  /** The section of a key, empty for one of the whole plan. */
  private String parent(int i) {
    int dot = at(i).lastIndexOf('.');
    return dot < 0 ? "" : at(i).substring(0, dot);
  }

  /** The last of the keys that follow each other in one section. */
  private int lastUnder(String parent, int from) {
    int last = from;
    while (last + 1 < paths.size() && parent(last + 1).equals(parent)) {
      last++;
    }
    return last;
  }

  /** Keys of one section in braces. */
  private String map(int from, int last) {
    StringBuilder out = new StringBuilder("{");
    for (int i = from; i <= last; i++) {
      out.append(i == from ? "" : ", ");
      out.append(at(i).substring(parent(i).length() + 1)).append(": ").append(values.get(i));
    }
    return out.append('}').toString();
  }

  /** Keys of the plan that say the same as this one, of which only one may stand there. */
  private static List<String> rivals(PlanEdit plan, String path) {
    List<String> found = new ArrayList<>();
    int dot = path.lastIndexOf('.');
    String parent = dot < 0 ? "" : path.substring(0, dot);
    String section = parent.substring(parent.lastIndexOf('.') + 1);
    List<String> others = Rivals.thatForbid(section, path.substring(dot + 1));
    for (int i = 0; i < others.size(); i++) {
      if (plan.where(parent + "." + others.get(i)).isThere()) {
        found.add(parent + "." + others.get(i));
      }
    }
    return found;
  }
}
