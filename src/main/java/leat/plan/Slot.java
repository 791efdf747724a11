package leat.plan;

import java.util.ArrayList;
import java.util.List;
import leat.quantity.NumberText;

/**
 * A number of a plan that is laid over again and again: found once by its path, such as {@code
 * towers[*].riser.bore}, and then set without reading any text.
 */
public final class Slot {
  private static final int NONE = -2;
  private static final int EVERY = -1;

  /** The item is sought by its name. */
  private static final int BY_NAME = -3;

  private final String path;
  private final Key key;
  private final int[] at;
  private final int[] items;
  private final String[] names;

  /** Keys beside it that say the same thing in another way, and are laid aside. */
  private final int[] rivals;

  private Slot(String path, Key key, int[] at, int[] items, String[] names, int[] rivals) {
    this.rivals = rivals;
    this.names = names;
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
    Key parent = key;
    int[] at = new int[steps.size()];
    int[] items = new int[steps.size()];
    String[] names = new String[steps.size()];
    int n = 0;
    for (int i = 0; i < steps.size(); i++) {
      Paths.Step step = steps.get(i);
      if (step.name() == null) {
        names[n - 1] = step.item();
        items[n - 1] = step.isEvery() ? EVERY : step.item() != null ? BY_NAME : step.index();
        continue;
      }
      at[n] = key.indexOf(step.name());
      items[n] = NONE;
      parent = key;
      key = key.keys[at[n]];
      n++;
    }
    if (key.shape != Key.Shape.ONE || !key.kind.isNumber()) {
      throw new Refused(PlanErrors.noNumber(typed, path, key));
    }
    return new Slot(
        path, key, java.util.Arrays.copyOf(at, n), items, names, rivals(parent, key.name));
  }

  private static int[] rivals(Key section, String name) {
    int[] found = new int[section.keys.length];
    int n = 0;
    while (Rivals.other(section.name, name, n) != null) {
      found[n] = section.indexOf(Rivals.other(section.name, name, n));
      n++;
    }
    return java.util.Arrays.copyOf(found, n);
  }

  /** What its number is. */
  public Kind kind() {
    return key.kind;
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
          PlanErrors.outOfRange(Origin.flag(path, ""), path, key, value, inBaseUnit(value)));
    }
    return lay(root, 0, value);
  }

  private String inBaseUnit(double value) {
    String number = NumberText.shortest(value);
    boolean bare = key.kind.dimension() == null || key.kind.dimension().base().isEmpty();
    return bare ? number : number + " " + key.kind.dimension().base();
  }

  private Section lay(Section section, int step, double value) {
    Section copy = section.copy();
    int i = at[step];
    if (step == at.length - 1) {
      copy.lay(i, key.kind.ofNumber(value));
      for (int r = 0; r < rivals.length; r++) {
        copy.lay(rivals[r], null);
      }
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
      boolean named = this.items[step] == BY_NAME && isNamed(items.get(i), names[step]);
      if (this.items[step] == EVERY || this.items[step] == i || named) {
        items.set(i, lay((Section) items.get(i), step + 1, value));
      }
    }
    return items;
  }

  private static boolean isNamed(Object item, String name) {
    return name.equalsIgnoreCase(((Section) item).text("name"));
  }

  /** The first item of that name, or the list's length. */
  private static int named(List<?> list, String name) {
    int i = 0;
    while (i < list.size() && !isNamed(list.get(i), name)) {
      i++;
    }
    return i;
  }

  private static List<String> itemNames(List<?> list) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      String name = ((Section) list.get(i)).text("name");
      if (name != null) {
        names.add(name);
      }
    }
    return names;
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
      Origin typed = Origin.flag(path, path);
      int item = items[step] == BY_NAME ? named(list, names[step]) : Math.max(0, items[step]);
      if (items[step] == BY_NAME && item == list.size()) {
        throw new Refused(PlanErrors.noSuchItem(typed, path, names[step], itemNames(list)));
      }
      if (item >= list.size()) {
        throw new Refused(PlanErrors.noSuchIndex(typed, path, list.size(), itemNames(list)));
      }
      section = (Section) list.get(item);
    }
  }
}
