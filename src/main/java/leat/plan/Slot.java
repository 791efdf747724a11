package leat.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * A number of a plan that is laid over again and again: found once by its path, such as {@code
 * towers[*].riser.bore}, and then set without reading any text.
 */
public final class Slot {
  private static final int NONE = -2;
  private static final int EVERY = -1;

  private final String path;
  private final Key key;
  private final int[] at;
  private final int[] items;

  private Slot(String path, Key key, int[] at, int[] items) {
    this.path = path;
    this.key = key;
    this.at = at;
    this.items = items;
  }

  /** The number of a path; refused when the path is no key, or its value is no number. */
  static Slot of(String path) {
    Origin typed = Origin.flag(path, path);
    List<Paths.Step> steps = Paths.steps(path, typed);
    Key key = Keys.PLAN;
    int[] at = new int[steps.size()];
    int[] items = new int[steps.size()];
    int n = 0;
    for (int i = 0; i < steps.size(); i++) {
      Paths.Step step = steps.get(i);
      if (step.name() == null) {
        items[n - 1] = step.isEvery() ? EVERY : step.index();
        continue;
      }
      at[n] = key.indexOf(step.name());
      items[n] = NONE;
      key = key.keys[at[n]];
      n++;
    }
    if (key.shape != Key.Shape.ONE || !key.kind.isNumber()) {
      throw new Refused(PlanErrors.noNumber(typed, path, key));
    }
    return new Slot(path, key, java.util.Arrays.copyOf(at, n), items);
  }

  /** Its path. */
  public String path() {
    return path;
  }

  /**
   * A copy of a section with the number set, in the base unit; what is not on the way is shared.
   */
  Section lay(Section root, double value) {
    if (!(key.open ? value > key.least : value >= key.least) || !(value <= key.most)) {
      throw new Refused(
          PlanErrors.outOfRange(Origin.flag(path, ""), path, key, value, String.valueOf(value)));
    }
    return lay(root, 0, value);
  }

  private Section lay(Section section, int step, double value) {
    Section copy = section.copy();
    int i = at[step];
    if (step == at.length - 1) {
      copy.lay(i, key.kind.ofNumber(value));
    } else if (items[step] == NONE) {
      Object old = section.values[i];
      Section inner = old == null ? section.section(section.key.keys[i].name) : (Section) old;
      copy.values[i] = lay(inner, step + 1, value);
    } else {
      copy.values[i] = layItems((List<?>) section.values[i], step, value);
    }
    return copy;
  }

  private List<Object> layItems(List<?> old, int step, double value) {
    List<Object> items = new ArrayList<>(old);
    for (int i = 0; i < items.size(); i++) {
      if (this.items[step] == EVERY || this.items[step] == i) {
        items.set(i, lay((Section) items.get(i), step + 1, value));
      }
    }
    return items;
  }

  /** Refuses a plan that has no such item, with how many there are. */
  void check(Section root) {
    Section section = root;
    for (int step = 0; step < at.length - 1; step++) {
      Object value = section.values[at[step]];
      if (items[step] == NONE) {
        section =
            value == null ? section.section(section.key.keys[at[step]].name) : (Section) value;
        continue;
      }
      List<?> list = value == null ? List.of() : (List<?>) value;
      if (list.isEmpty() || items[step] >= list.size()) {
        throw new Refused(PlanErrors.noSuchIndex(Origin.flag(path, path), path, list.size()));
      }
      section = (Section) list.get(Math.max(0, items[step]));
    }
  }
}
