package leat.plan;

import java.util.ArrayList;
import java.util.List;
import leat.quantity.Nearest;
import leat.quantity.Unreadable;

/** Reads nodes against the declared keys into sections, and gathers every mistake on the way. */
final class Binder {
  /** Values a plan may hold once its aliases are followed; a bomb of aliases stops here. */
  private static final int MOST_VALUES = 20_000;

  private final List<Problem> problems;
  private final Taken taken;
  private int seen;

  Binder(List<Problem> problems, Taken taken) {
    this.problems = problems;
    this.taken = taken;
  }

  Section bind(Node root, Key key) {
    return section(root, key, "");
  }

  private boolean full(Node node, String path) {
    seen++;
    if (seen == MOST_VALUES) {
      problems.add(PlanErrors.tooManyValues(node.origin, path, MOST_VALUES));
    }
    return seen >= MOST_VALUES;
  }

  private Section section(Node node, Key key, String path) {
    Section section = new Section(key, path, taken);
    if (node == null || node.isEmpty()) {
      return section;
    }
    if (node.kind != Node.Kind.MAP) {
      problems.add(PlanErrors.notAMap(node.origin, path, key));
      return section;
    }
    for (int i = 0; i < node.names.size(); i++) {
      String name = node.names.get(i);
      Key child = key.find(name);
      String childPath = path.isEmpty() ? name : path + "." + name;
      if (full(node, childPath)) {
        return section;
      }
      if (child == null) {
        problems.add(PlanErrors.unknownKey(node.nameOrigins.get(i), childPath, name, key));
        continue;
      }
      Node value = node.children.get(i);
      if (value.isEmpty()) {
        continue;
      }
      int at = indexOf(key, child);
      section.nodes[at] = value;
      section.values[at] = value(value, child, childPath);
    }
    return section;
  }

  private static int indexOf(Key key, Key child) {
    for (int i = 0; i < key.keys.length; i++) {
      if (key.keys[i] == child) {
        return i;
      }
    }
    throw new IllegalArgumentException(child.name);
  }

  private Object value(Node node, Key key, String path) {
    switch (key.shape) {
      case SECTION:
        return section(node, key, path);
      case SECTIONS:
        return sections(node, key, path);
      case LIST:
        return list(node, key, path);
      case NAMED:
        return named(node, key, path);
      default:
        return scalar(node, key, path);
    }
  }

  private List<Object> sections(Node node, Key key, String path) {
    List<Object> result = new ArrayList<>();
    if (node.kind != Node.Kind.LIST) {
      problems.add(PlanErrors.notAListOfMaps(node.origin, path, key));
      return result;
    }
    for (int i = 0; i < node.children.size(); i++) {
      Node item = node.children.get(i);
      String itemPath = path + "[" + i + "]";
      if (full(item, itemPath)) {
        return result;
      }
      result.add(section(item, key, itemPath));
    }
    return result;
  }

  private List<Object> list(Node node, Key key, String path) {
    List<Object> result = new ArrayList<>();
    if (node.kind != Node.Kind.LIST) {
      problems.add(PlanErrors.notAList(node.origin, path, key));
      return null;
    }
    for (int i = 0; i < node.children.size(); i++) {
      Node item = node.children.get(i);
      String itemPath = path + "[" + i + "]";
      if (full(item, itemPath)) {
        return result;
      }
      Object value = scalar(item, key, itemPath);
      if (value != null) {
        result.add(value);
      }
    }
    return result;
  }

  private Named named(Node node, Key key, String path) {
    if (node.kind != Node.Kind.MAP) {
      problems.add(PlanErrors.notNamed(node.origin, path, key));
      return null;
    }
    Named result = new Named();
    for (int i = 0; i < node.names.size(); i++) {
      String name = node.names.get(i);
      Node item = node.children.get(i);
      if (full(item, path + "." + name)) {
        return result;
      }
      Object value = scalar(item, key, path + "." + name);
      if (value != null) {
        result.add(name, node.nameOrigins.get(i), value, item.origin);
      }
    }
    return result;
  }

  private Object scalar(Node node, Key key, String path) {
    if (node.kind != Node.Kind.SCALAR) {
      problems.add(PlanErrors.notOneValue(node.origin, path, key));
      return null;
    }
    try {
      Object value = key.kind.read(node.text, node.quoted);
      if (value instanceof Number number && !inRange(number.doubleValue(), key)) {
        problems.add(PlanErrors.outOfRange(node.origin, path, key, node.text));
        return null;
      }
      return value;
    } catch (Unreadable e) {
      problems.add(PlanErrors.unreadable(node.origin, path, e));
      return null;
    }
  }

  private static boolean inRange(double value, Key key) {
    return (key.open ? value > key.least : value >= key.least) && value <= key.most;
  }

  /** The nearest name among the keys of a section, or null. */
  static String nearestKey(String name, Key key) {
    String[] names = new String[key.keys.length];
    for (int i = 0; i < names.length; i++) {
      names[i] = key.keys[i].name;
    }
    return Nearest.of(name, java.util.Arrays.asList(names));
  }
}
