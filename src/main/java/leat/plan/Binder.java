package leat.plan;

import java.util.ArrayList;
import java.util.List;
import leat.quantity.Dimension;
import leat.quantity.Nearest;
import leat.quantity.Quantity;
import leat.quantity.QuantityReader;
import leat.quantity.Unreadable;

/** Reads nodes against the declared keys into sections, and gathers every mistake on the way. */
final class Binder {
  /** Values a plan may hold once its aliases are followed; a bomb of aliases stops here. */
  private static final int MOST_VALUES = YamlComposer.MOST_VALUES;

  private static final int MOST_COMPARED = 500;

  private final List<Problem> problems;
  private final Asker asker;
  private final List<Price> prices = new ArrayList<>();
  private int seen;

  Binder(List<Problem> problems, Asker asker) {
    this.problems = problems;
    this.asker = asker;
  }

  Section bind(Node root, Key key) {
    return section(root, key, "");
  }

  /** A mistake under an anchor is one mistake, however many aliases lead to it. */
  private void report(Problem problem) {
    int looked = Math.min(problems.size(), MOST_COMPARED);
    for (int i = 0; i < looked; i++) {
      if (problems.get(i).isSameAs(problem)) {
        return;
      }
    }
    problems.add(problem);
  }

  private boolean full(Node node, String path) {
    seen++;
    if (seen == MOST_VALUES) {
      report(PlanErrors.tooManyValues(node.origin, path, MOST_VALUES));
    }
    return seen >= MOST_VALUES;
  }

  private Section section(Node node, Key key, String path) {
    Section section = new Section(key, path, asker);
    if (node == null || node.isEmpty()) {
      return section;
    }
    if (node.kind != Node.Kind.MAP) {
      report(PlanErrors.notAMap(node.origin, path, key));
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
        report(PlanErrors.unknownKey(node.nameOrigins.get(i), childPath, name, key));
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
      report(PlanErrors.notAListOfMaps(node.origin, path, key));
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
      report(PlanErrors.notAList(node.origin, path, key));
      return null;
    }
    if (node.children.size() < key.fewest) {
      report(PlanErrors.tooFew(node.origin, path, key));
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
      report(PlanErrors.notNamed(node.origin, path, key));
      return null;
    }
    Named result = new Named();
    for (int i = 0; i < node.names.size(); i++) {
      String name = node.names.get(i);
      Node item = node.children.get(i);
      if (full(item, path + "." + name)) {
        return result;
      }
      if (key.allowedNames != null && !java.util.Arrays.asList(key.allowedNames).contains(name)) {
        report(PlanErrors.unknownName(node.nameOrigins.get(i), path, name, key));
        continue;
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
      report(PlanErrors.notOneValue(node.origin, path, key));
      return null;
    }
    try {
      Object value = read(node, key, path);
      if (value instanceof Number number && !inRange(number.doubleValue(), key)) {
        report(PlanErrors.outOfRange(node.origin, path, key, number.doubleValue(), node.text));
        return null;
      }
      return value;
    } catch (Unreadable e) {
      String other = problems.size() < MOST_COMPARED ? Rivals.thatReads(key, node.text) : null;
      report(
          other == null
              ? PlanErrors.unreadable(node.origin, path, e)
              : PlanErrors.forOtherKey(node.origin, path, e, other));
      return null;
    }
  }

  private Object read(Node node, Key key, String path) {
    Dimension dimension = key.kind.dimension();
    if (dimension != null && dimension.isMoney()) {
      Quantity money = QuantityReader.read(node.text, dimension);
      prices.add(new Price(money, node, path));
      return money.value();
    }
    // Only a file may be read by another YAML reader; a flag is read by us alone.
    return key.kind.read(node.text, node.quoted || !node.origin.source.isFile());
  }

  /** A price, kept to see that a plan has one currency. */
  private record Price(Quantity money, Node node, String path) {}

  /** The currency of the plan: the one that is declared, else that of its first price, or null. */
  String currency(String declared) {
    String currency = declared;
    Price first = null;
    for (int i = 0; i < prices.size(); i++) {
      Price price = prices.get(i);
      if (currency == null) {
        currency = price.money.currency();
        first = price;
      } else if (!currency.equals(price.money.currency())) {
        report(
            PlanErrors.otherCurrency(
                price.node.origin,
                price.path,
                price.money.currency(),
                currency,
                first == null ? null : first.path));
      }
    }
    return currency;
  }

  private static boolean inRange(double value, Key key) {
    return (key.open ? value > key.least : value >= key.least) && value <= key.most;
  }

  /** What a yes or no in other words means, as YAML wants it; null when it is neither. */
  static String truthValue(String typed) {
    switch (typed.toLowerCase(java.util.Locale.ROOT)) {
      case "yes", "y", "on", "true", "1":
        return "true";
      case "no", "n", "off", "false", "0":
        return "false";
      default:
        return null;
    }
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
