package leat.plan;

import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * A value of a YAML text with the offsets at which it stands, aliases and merges as they are typed:
 * what {@link PlanEdit} writes over. Only for texts that {@link YamlComposer} took.
 */
final class YamlSpot {
  final Node.Kind kind;

  /** Offset of the value, behind its anchor. */
  final int start;

  /** Offset behind it; of a block of lines, where the next thing begins. */
  final int end;

  /** Whether a map or list stands in braces or brackets. */
  final boolean flow;

  /** Whether a scalar stands in lines of its own, behind {@code |} or {@code >}. */
  final boolean lines;

  /** The alias this is, or null. */
  final String alias;

  final String anchor;

  final List<String> names = new ArrayList<>();
  final List<Integer> nameStarts = new ArrayList<>();
  final List<Integer> nameEnds = new ArrayList<>();
  final List<YamlSpot> children = new ArrayList<>();

  private YamlSpot(
      Node.Kind kind,
      int start,
      int end,
      boolean flow,
      boolean lines,
      String alias,
      String anchor) {
    this.kind = kind;
    this.start = start;
    this.end = end;
    this.flow = flow;
    this.lines = lines;
    this.alias = alias;
    this.anchor = anchor;
  }

  /** The one document of a text. */
  static YamlSpot of(String text) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    Parser parser = new ParserImpl(new StreamReader(text), options);
    parser.getEvent();
    parser.getEvent();
    return read(text, parser);
  }

  private static YamlSpot read(String text, Parser parser) {
    Event event = parser.getEvent();
    int start = text.offsetByCodePoints(0, event.getStartMark().getIndex());
    int end = text.offsetByCodePoints(0, event.getEndMark().getIndex());
    if (event instanceof AliasEvent alias) {
      return new YamlSpot(Node.Kind.SCALAR, start, end, false, false, alias.getAnchor(), null);
    }
    String anchor = ((NodeEvent) event).getAnchor();
    int value = anchor == null ? start : behindAnchor(text, start, end);
    if (event instanceof ScalarEvent scalar) {
      boolean lines = !scalar.isPlain() && value < end && "|>".indexOf(text.charAt(value)) >= 0;
      return new YamlSpot(Node.Kind.SCALAR, value, end, false, lines, null, anchor);
    }
    boolean flow = ((CollectionStartEvent) event).isFlow();
    boolean map = event.is(Event.ID.MappingStart);
    List<String> names = new ArrayList<>();
    List<Integer> starts = new ArrayList<>();
    List<Integer> ends = new ArrayList<>();
    List<YamlSpot> children = new ArrayList<>();
    while (!parser.checkEvent(map ? Event.ID.MappingEnd : Event.ID.SequenceEnd)) {
      if (map) {
        Event key = parser.getEvent();
        names.add(((ScalarEvent) key).getValue());
        starts.add(text.offsetByCodePoints(0, key.getStartMark().getIndex()));
        ends.add(text.offsetByCodePoints(0, key.getEndMark().getIndex()));
      }
      children.add(read(text, parser));
    }
    int last = text.offsetByCodePoints(0, parser.getEvent().getEndMark().getIndex());
    YamlSpot spot =
        new YamlSpot(map ? Node.Kind.MAP : Node.Kind.LIST, value, last, flow, false, null, anchor);
    spot.names.addAll(names);
    spot.nameStarts.addAll(starts);
    spot.nameEnds.addAll(ends);
    spot.children.addAll(children);
    return spot;
  }

  private static int behindAnchor(String text, int start, int end) {
    int i = start;
    while (i < text.length() && text.charAt(i) > ' ') {
      i++;
    }
    int behind = i;
    while (i < text.length() && text.charAt(i) <= ' ') {
      i++;
    }
    return end > start && i < end || text.startsWith("{", i) || text.startsWith("[", i)
        ? i
        : behind;
  }

  /** Whether nothing stands there, or YAML's word for nothing. */
  boolean isNothing(String text) {
    if (kind != Node.Kind.SCALAR || alias != null) {
      return false;
    }
    String typed = text.substring(start, end);
    return typed.isEmpty() || "~".equals(typed) || "null".equals(typed);
  }

  /** Where its content begins: of a block of lines, its first name or item. */
  int contentStart() {
    if (kind == Node.Kind.SCALAR || flow || children.isEmpty()) {
      return start;
    }
    return kind == Node.Kind.MAP ? nameStarts.get(0) : children.get(0).contentStart();
  }

  /** Offset behind its last letter; remarks and blank lines behind it are not its own. */
  int contentEnd(String text) {
    if (kind == Node.Kind.SCALAR && !lines || flow || children.isEmpty() && !lines) {
      return end;
    }
    if (lines) {
      int i = end;
      while (i > start && text.charAt(i - 1) <= ' ') {
        i--;
      }
      return i;
    }
    return children.get(children.size() - 1).contentEnd(text);
  }

  /** The first value with this anchor, or null. */
  YamlSpot anchored(String name) {
    if (name.equals(anchor)) {
      return this;
    }
    YamlSpot found = null;
    for (int i = 0; i < children.size() && found == null; i++) {
      found = children.get(i).anchored(name);
    }
    return found;
  }

  /** How often an alias of this name stands in it. */
  int uses(String name) {
    int uses = name.equals(alias) ? 1 : 0;
    for (int i = 0; i < children.size(); i++) {
      uses += children.get(i).uses(name);
    }
    return uses;
  }
}
