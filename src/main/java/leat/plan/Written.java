package leat.plan;

import java.util.ArrayList;
import java.util.List;

/** A new value as it is written into a plan, with the sections that have to come with it. */
final class Written {
  private final List<Paths.Step> steps;
  private final String typed;
  private final Node node;
  private final Kind kind;

  /**
   * @param steps the whole path
   * @param typed the value as typed, in one line
   * @param at where it was typed
   */
  Written(List<Paths.Step> steps, String typed, Origin at) {
    this.steps = steps;
    this.typed = typed;
    List<Problem> found = new ArrayList<>();
    node = YamlComposer.compose(at.source, found);
    boolean flow = typed.startsWith("{") || typed.startsWith("[");
    boolean block = node != null && node.kind != Node.Kind.SCALAR && !flow;
    if (block || typed.indexOf('\n') >= 0 || typed.indexOf('\r') >= 0) {
      throw new Refused(PlanErrors.oneLineWanted(at));
    }
    kind = kind(steps);
  }

  private static Kind kind(List<Paths.Step> steps) {
    Key key = Keys.PLAN;
    for (int i = 0; i < steps.size(); i++) {
      String name = steps.get(i).name();
      if (name != null && key.shape != Key.Shape.NAMED) {
        key = key.find(name);
      }
    }
    return key.kind == null ? Kind.TEXT : key.kind;
  }

  int size() {
    return steps.size();
  }

  boolean isIndex(int i) {
    return steps.get(i).name() == null;
  }

  /** The value alone. */
  String leaf(boolean inFlow) {
    if (node.kind != Node.Kind.SCALAR) {
      YamlSpot spot = YamlSpot.of(typed);
      return typed.substring(spot.start, spot.end);
    }
    if (!node.quoted) {
      return YamlText.scalar(node.text, kind, inFlow);
    }
    YamlSpot spot = YamlSpot.of(typed);
    return typed.substring(spot.start, spot.end);
  }

  /** {@code name: value} or {@code name: {other: value}} for a map in braces. */
  String entry(int from) {
    String inner = from == size() - 1 ? leaf(true) : flow(from + 1);
    return YamlText.text(steps.get(from).name(), true) + ": " + inner;
  }

  /** What comes from a name on, as it stands in one line. */
  String asLine(int from) {
    String name = isIndex(from) ? "- " : YamlText.text(steps.get(from).name(), false) + ": ";
    return name + (from == size() - 1 ? leaf(false) : flow(from + 1));
  }

  /** What comes from a step on, in braces and brackets. */
  String flow(int from) {
    if (!isIndex(from)) {
      return "{" + entry(from) + "}";
    }
    return "[" + (from == size() - 1 ? leaf(true) : flow(from + 1)) + "]";
  }

  /** What comes from a name on, a section a line; the first line without its indent. */
  String lines(int from, int indent, String lineEnd) {
    String name = YamlText.text(steps.get(from).name(), false) + ":";
    if (from == size() - 1) {
      return name + " " + leaf(false);
    }
    if (isIndex(from + 1)) {
      return name + " " + flow(from + 1);
    }
    return name + lineEnd + " ".repeat(indent + 2) + lines(from + 1, indent + 2, lineEnd);
  }
}
