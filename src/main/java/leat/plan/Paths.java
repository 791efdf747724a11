package leat.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets values in a tree of nodes by key path: {@code pump.derate}, {@code towers[0].riser.bore},
 * {@code towers[*].riser.bore}.
 */
final class Paths {
  private Paths() {}

  /** One step of a path: a name, an index, every item (-1), or the item that has this name. */
  record Step(String name, int index, String item) {
    boolean isEvery() {
      return name == null && item == null && index < 0;
    }
  }

  /** The steps of a path whose names are keys. */
  static List<Step> steps(String path, Origin at) {
    List<Step> steps = parse(path, at);
    checkNames(steps, path, at);
    return steps;
  }

  /**
   * A changed copy of the tree.
   *
   * @param root the plan, or null for none yet
   * @param path key path
   * @param value the new value, or null to remove the key
   * @param at where the path was typed, for errors
   */
  static Node set(Node root, String path, Node value, Origin at) {
    List<Step> steps = parse(path, at);
    checkNames(steps, path, at);
    Node start = root == null ? Node.emptyMap(at) : root;
    return apply(start, steps, 0, value, at, path);
  }

  /** The tree without a key; when {@code onlyOfFile}, one that a flag has set stays. */
  static Node drop(Node root, String path, Origin at, boolean onlyOfFile) {
    return without(root, parse(path, at), 0, onlyOfFile);
  }

  private static Node without(Node node, List<Step> steps, int i, boolean onlyOfFile) {
    Step step = steps.get(i);
    boolean fits =
        node != null && node.kind == (step.name == null ? Node.Kind.LIST : Node.Kind.MAP);
    if (!fits) {
      return node;
    }
    if (step.name != null) {
      Node child = node.child(step.name);
      boolean last = i == steps.size() - 1;
      if (child == null || last && onlyOfFile && !child.origin.source.isFile()) {
        return node;
      }
      return node.with(
          step.name, node.place(step.name), last ? null : without(child, steps, i + 1, onlyOfFile));
    }
    Node result = node;
    for (int k = 0; k < node.children.size(); k++) {
      if (step.isEvery() || step.item == null && step.index == k || isNamed(node, k, step.item)) {
        result = result.with(k, without(node.children.get(k), steps, i + 1, onlyOfFile));
      }
    }
    return result;
  }

  /** A path whose items are named, with their places instead: towers[0] for towers[hallway]. */
  static String counted(Node root, String path, Origin at) {
    List<Step> steps = steps(path, at);
    StringBuilder out = new StringBuilder();
    Node here = root;
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      boolean isMap = here != null && here.kind == Node.Kind.MAP;
      boolean isList = here != null && here.kind == Node.Kind.LIST;
      if (step.name != null) {
        out.append(i == 0 ? "" : ".").append(step.name);
        here = isMap ? here.child(step.name) : null;
        continue;
      }
      int k = step.item == null ? step.index : isList ? named(here, step.item, at, path) : 0;
      out.append('[').append(k < 0 ? "*" : String.valueOf(k)).append(']');
      here = isList && k < here.children.size() ? here.children.get(Math.max(0, k)) : null;
    }
    return out.toString();
  }

  /**
   * The item that a path would add behind the last of a list, with one key of it, such as {@code
   * towers[2]}; null when it adds none, adds it whole, or begins it with its name.
   */
  static String begunItem(Node root, String path, Origin at) {
    List<Step> steps = steps(path, at);
    StringBuilder out = new StringBuilder();
    Node here = root;
    for (int i = 0; i < steps.size() && here != null; i++) {
      Step step = steps.get(i);
      if (step.name != null) {
        out.append(i == 0 ? "" : ".").append(step.name);
        here = here.kind == Node.Kind.MAP ? here.child(step.name) : null;
        continue;
      }
      if (step.item != null || step.index < 0 || here.kind != Node.Kind.LIST) {
        return null;
      }
      int size = here.children.size();
      out.append('[').append(step.index).append(']');
      if (step.index == size) {
        boolean lone = size > 0 && i < steps.size() - 1 && !"name".equals(steps.get(i + 1).name);
        return lone ? out.toString() : null;
      }
      here = step.index < size ? here.children.get(step.index) : null;
    }
    return null;
  }

  /** Refuses a path that would begin a new item with one key, and no other of several goes on. */
  static void refuseLone(Node root, List<String> paths, int which, Origin at) {
    String path = paths.get(which);
    String item = begunItem(root, path, at);
    if (item == null) {
      return;
    }
    for (int i = 0; i < paths.size(); i++) {
      if (i != which && paths.get(i).startsWith(item) && !paths.get(i).equals(path)) {
        return;
      }
    }
    int bracket = item.lastIndexOf('[');
    Node list = root;
    List<Step> steps = parse(item.substring(0, bracket), at);
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      list = step.name != null ? list.child(step.name) : list.children.get(step.index);
    }
    throw new Refused(PlanErrors.loneKey(at, path, item, list.children.size(), itemNames(list)));
  }

  /** How many steps the rest of a path has. */
  static int count(String rest) {
    return rest.isEmpty()
        ? 0
        : parse(rest.startsWith("[") ? "x" + rest : rest, null).size()
            - (rest.startsWith("[") ? 1 : 0);
  }

  private static Node apply(
      Node node, List<Step> steps, int i, Node value, Origin at, String path) {
    if (i == steps.size()) {
      return value;
    }
    Step step = steps.get(i);
    if (step.name != null) {
      Node map = node == null || node.isEmpty() ? Node.emptyMap(at) : node;
      if (map.kind != Node.Kind.MAP) {
        throw new Refused(PlanErrors.noSuchPath(at, path, step.name, null, null));
      }
      Node child = map.child(step.name);
      if (child == null && value == null) {
        return map;
      }
      return map.with(step.name, at, apply(child, steps, i + 1, value, at, path));
    }
    Node list = node == null || node.isEmpty() ? Node.list(at, new ArrayList<>()) : node;
    if (list.kind != Node.Kind.LIST) {
      throw new Refused(PlanErrors.noSuchPath(at, path, "[" + step.index + "]", null, null));
    }
    int size = list.children.size();
    if (step.isEvery()) {
      Node result = list;
      int last = size == 0 && value != null ? 1 : size;
      for (int k = last - 1; k >= 0; k--) {
        Node old = k < size ? list.children.get(k) : null;
        result = result.with(k, apply(old, steps, i + 1, value, at, path));
      }
      return result;
    }
    int index = step.item == null ? step.index : named(list, step.item, at, path);
    if (index > size || index == size && value == null) {
      throw new Refused(PlanErrors.noSuchIndex(at, path, size, itemNames(list)));
    }
    Node old = index < size ? list.children.get(index) : null;
    return list.with(index, apply(old, steps, i + 1, value, at, path));
  }

  /** Place of the item of a name in a list, upper and lower case alike. */
  private static int named(Node list, String item, Origin at, String path) {
    for (int k = 0; k < list.children.size(); k++) {
      if (isNamed(list, k, item)) {
        return k;
      }
    }
    throw new Refused(PlanErrors.noSuchItem(at, path, item, itemNames(list)));
  }

  private static boolean isNamed(Node list, int k, String item) {
    Node child = list.children.get(k);
    Node name = child.kind == Node.Kind.MAP ? child.child("name") : null;
    return item != null && name != null && item.equalsIgnoreCase(name.text);
  }

  /** The names of a list's items, those without left out. */
  private static List<String> itemNames(Node list) {
    List<String> names = new ArrayList<>();
    for (int k = 0; k < list.children.size(); k++) {
      Node child = list.children.get(k);
      Node name = child.kind == Node.Kind.MAP ? child.child("name") : null;
      if (name != null && name.text != null) {
        names.add(name.text);
      }
    }
    return names;
  }

  private static List<Step> parse(String path, Origin at) {
    List<Step> steps = new ArrayList<>();
    int i = 0;
    while (i < path.length()) {
      char c = path.charAt(i);
      if (c == '[' && !steps.isEmpty()) {
        int end = path.indexOf(']', i);
        if (end < 0) {
          throw new Refused(PlanErrors.badSet(at));
        }
        String inside = path.substring(i + 1, end).strip();
        boolean name = isName(inside);
        steps.add(new Step(null, name ? -2 : index(inside, at), name ? inside : null));
        i = end + 1;
      } else {
        if (c == '.' && !steps.isEmpty()) {
          i++;
        }
        int end = i;
        while (end < path.length() && path.charAt(end) != '.' && path.charAt(end) != '[') {
          end++;
        }
        if (end == i) {
          throw new Refused(PlanErrors.badSet(at));
        }
        steps.add(new Step(path.substring(i, end), 0, null));
        i = end;
      }
    }
    if (steps.isEmpty()) {
      throw new Refused(PlanErrors.badSet(at));
    }
    return steps;
  }

  private static boolean isName(String inside) {
    return !inside.isEmpty() && "*-.0123456789".indexOf(inside.charAt(0)) < 0;
  }

  private static int index(String text, Origin at) {
    if ("*".equals(text)) {
      return -1;
    }
    if (text.isEmpty() || text.length() > 4) {
      throw new Refused(PlanErrors.badIndex(at, text));
    }
    int value = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9') {
        throw new Refused(PlanErrors.badIndex(at, text));
      }
      value = 10 * value + (c - '0');
    }
    return value;
  }

  private static String inside(Step step) {
    return step.item != null ? step.item : step.index < 0 ? "*" : String.valueOf(step.index);
  }

  /** Follows the names through the declared keys, so that a typo is told with the nearest key. */
  private static void checkNames(List<Step> steps, String path, Origin at) {
    Key key = Keys.PLAN;
    boolean inList = false;
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      if (step.name == null) {
        if (!inList) {
          throw new Refused(PlanErrors.noSuchPath(at, path, "[" + inside(step) + "]", null, null));
        }
        inList = false;
        continue;
      }
      if (inList && key.shape == Key.Shape.SECTIONS) {
        throw new Refused(
            PlanErrors.noSuchPath(at, path, step.name, key.name + "[0]." + step.name, null));
      }
      if (key.shape == Key.Shape.NAMED) {
        return;
      }
      Key child = key.find(step.name);
      if (child == null) {
        throw new Refused(
            PlanErrors.noSuchPath(at, path, step.name, Binder.nearestKey(step.name, key), key));
      }
      key = child;
      inList = child.shape == Key.Shape.LIST || child.shape == Key.Shape.SECTIONS;
    }
  }
}
