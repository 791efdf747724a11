package leat.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * One value of a YAML text with its place: a map, a list or a scalar. Unchanging; {@link Paths}
 * makes changed copies.
 */
final class Node {
  enum Kind {
    MAP,
    LIST,
    SCALAR
  }

  final Kind kind;
  final Origin origin;

  /** Text of a scalar, null otherwise. */
  final String text;

  /** Whether a scalar stood in quotes. */
  final boolean quoted;

  /** Names of a map's entries, in order; null otherwise. */
  final List<String> names;

  /** Places of a map's names. */
  final List<Origin> nameOrigins;

  /** Values of a map or items of a list. */
  final List<Node> children;

  private Node(
      Kind kind,
      Origin origin,
      String text,
      boolean quoted,
      List<String> names,
      List<Origin> nameOrigins,
      List<Node> children) {
    this.kind = kind;
    this.origin = origin;
    this.text = text;
    this.quoted = quoted;
    this.names = names;
    this.nameOrigins = nameOrigins;
    this.children = children;
  }

  static Node scalar(Origin origin, String text, boolean quoted) {
    return new Node(Kind.SCALAR, origin, text, quoted, null, null, null);
  }

  static Node list(Origin origin, List<Node> items) {
    return new Node(Kind.LIST, origin, null, false, null, null, items);
  }

  static Node map(Origin origin, List<String> names, List<Origin> places, List<Node> values) {
    return new Node(Kind.MAP, origin, null, false, names, places, values);
  }

  static Node emptyMap(Origin origin) {
    return map(origin, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
  }

  /** Whether it is an empty plain scalar, as in {@code pump:} with nothing behind. */
  boolean isEmpty() {
    return kind == Kind.SCALAR
        && !quoted
        && (text.isEmpty() || "~".equals(text) || "null".equals(text));
  }

  /** Value of a name, or null. */
  Node child(String name) {
    int i = names.indexOf(name);
    return i < 0 ? null : children.get(i);
  }

  /** Place of a name. */
  Origin place(String name) {
    return nameOrigins.get(names.indexOf(name));
  }

  /** A copy of this map with one entry set; a null value removes it. */
  Node with(String name, Origin place, Node value) {
    List<String> newNames = new ArrayList<>(names);
    List<Origin> newPlaces = new ArrayList<>(nameOrigins);
    List<Node> newValues = new ArrayList<>(children);
    int i = names.indexOf(name);
    if (value == null) {
      if (i >= 0) {
        newNames.remove(i);
        newPlaces.remove(i);
        newValues.remove(i);
      }
    } else if (i >= 0) {
      newValues.set(i, value);
      newPlaces.set(i, place);
    } else {
      newNames.add(name);
      newPlaces.add(place);
      newValues.add(value);
    }
    return map(origin, newNames, newPlaces, newValues);
  }

  /** A copy of this list with item {@code i} set (or appended at the end); null removes it. */
  Node with(int i, Node value) {
    List<Node> items = new ArrayList<>(children);
    if (value == null) {
      items.remove(i);
    } else if (i == items.size()) {
      items.add(value);
    } else {
      items.set(i, value);
    }
    return list(origin, items);
  }
}
