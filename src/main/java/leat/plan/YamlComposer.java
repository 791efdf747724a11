package leat.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Composes the events of the YAML parser into {@link Node}s with places. Anchors and merge keys
 * work; aliases share nodes, so they cost no memory, and their number, the depth and the size are
 * limited. A mistake of syntax ends the reading of the file; duplicate keys do not.
 */
final class YamlComposer {
  private static final int DEEPEST = 20;
  private static final int MOST_ALIASES = 500;

  /** Values that a file may hold, those merged into maps counted each time. */
  static final int MOST_VALUES = 20_000;

  /** From so many keys on, a map is searched by hash. */
  private static final int MANY_KEYS = 40;

  private final Source source;
  private final List<Problem> problems;
  private final Parser parser;
  private final Map<String, Node> anchors = new HashMap<>();
  private int aliases;
  private int values;

  private YamlComposer(Source source, List<Problem> problems) {
    this.source = source;
    this.problems = problems;
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    this.parser = new ParserImpl(new StreamReader(source.text()), options);
  }

  /**
   * The one document of a source, or null when it is empty or broken (then a problem was added).
   */
  static Node compose(Source source, List<Problem> problems) {
    YamlComposer composer = null;
    try {
      composer = new YamlComposer(source, problems);
      return composer.document();
    } catch (MarkedYAMLException e) {
      boolean unclosed = "found unexpected end of stream".equals(e.getProblem());
      boolean byContext = e.getProblemMark() == null || unclosed && e.getContextMark() != null;
      Mark mark = byContext ? e.getContextMark() : e.getProblemMark();
      problems.add(
          PlanErrors.yamlSyntax(
              composer == null ? Origin.start(source) : at(source, mark, 1), e.getProblem()));
    } catch (YAMLException e) {
      problems.add(PlanErrors.yamlCharacters(badCharacter(source)));
    } catch (Stop e) {
      problems.add(e.problem);
    }
    return null;
  }

  private static Origin badCharacter(Source source) {
    String text = source.text();
    int line = 1;
    int start = 0;
    int i = 0;
    while (i < text.length() && StreamReader.isPrintable(text.codePointAt(i))) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r' && !text.startsWith("\n", i + 1)) {
        line++;
        start = i + 1;
      }
      i += Character.charCount(text.codePointAt(i));
    }
    int column = text.codePointCount(start, Math.min(i, text.length())) + 1;
    return new Origin(source, line, column, 1, null);
  }

  private void count(int more, Origin origin) {
    values += more;
    if (values > MOST_VALUES) {
      throw new Stop(PlanErrors.tooManyValues(origin, "", MOST_VALUES));
    }
  }

  private Node document() {
    parser.getEvent();
    if (parser.checkEvent(Event.ID.StreamEnd)) {
      return null;
    }
    parser.getEvent();
    Node root = node(0);
    parser.getEvent();
    if (!parser.checkEvent(Event.ID.StreamEnd)) {
      throw new Stop(PlanErrors.secondDocument(at(source, parser.peekEvent().getStartMark(), 3)));
    }
    return root;
  }

  private Node node(int depth) {
    Event event = parser.getEvent();
    Origin origin = origin(event);
    count(1, origin);
    if (depth > DEEPEST) {
      throw new Stop(PlanErrors.tooDeep(origin, DEEPEST));
    }
    if (event.is(Event.ID.Alias)) {
      return alias((AliasEvent) event, origin);
    }
    refuseTag(event, origin);
    String anchor = ((NodeEvent) event).getAnchor();
    if (anchor != null) {
      anchors.put(anchor, null);
    }
    Node result;
    if (event.is(Event.ID.Scalar)) {
      result = scalar((ScalarEvent) event, origin);
    } else if (event.is(Event.ID.SequenceStart)) {
      result = list(origin, depth);
    } else {
      result = map(origin, depth);
    }
    if (anchor != null) {
      anchors.put(anchor, result);
    }
    return result;
  }

  private Node alias(AliasEvent event, Origin origin) {
    if (++aliases > MOST_ALIASES) {
      throw new Stop(PlanErrors.tooManyAliases(origin, MOST_ALIASES));
    }
    Node target = anchors.get(event.getAnchor());
    if (target == null) {
      throw new Stop(PlanErrors.unknownAnchor(origin, event.getAnchor()));
    }
    return target;
  }

  private static void refuseTag(Event event, Origin origin) {
    String tag =
        event.is(Event.ID.Scalar)
            ? ((ScalarEvent) event).getTag()
            : ((CollectionStartEvent) event).getTag();
    if (tag != null) {
      throw new Stop(PlanErrors.yamlTag(origin));
    }
  }

  private Node scalar(ScalarEvent event, Origin origin) {
    boolean quoted = !event.isPlain();
    boolean inQuotes =
        event.getScalarStyle() == DumperOptions.ScalarStyle.SINGLE_QUOTED
            || event.getScalarStyle() == DumperOptions.ScalarStyle.DOUBLE_QUOTED;
    boolean inside = inQuotes && (origin.length == Origin.REST_OF_LINE || origin.length > 2);
    int length = origin.length == Origin.REST_OF_LINE ? origin.length : origin.length - 2;
    Origin place =
        inside
            ? new Origin(source, origin.line, origin.column + 1, length, event.getValue())
            : new Origin(source, origin.line, origin.column, origin.length, event.getValue());
    return Node.scalar(place, event.getValue(), quoted);
  }

  private Node list(Origin origin, int depth) {
    List<Node> items = new ArrayList<>();
    while (!parser.checkEvent(Event.ID.SequenceEnd)) {
      items.add(node(depth + 1));
    }
    parser.getEvent();
    return Node.list(origin, items);
  }

  private Node map(Origin origin, int depth) {
    List<String> names = new ArrayList<>();
    List<Origin> places = new ArrayList<>();
    List<Node> values = new ArrayList<>();
    List<Node> merged = new ArrayList<>();
    Map<String, Integer> index = null;
    while (!parser.checkEvent(Event.ID.MappingEnd)) {
      Node key = node(depth + 1);
      Node value = node(depth + 1);
      if (key.kind != Node.Kind.SCALAR) {
        problems.add(PlanErrors.keyNotAWord(key.origin));
        continue;
      }
      if ("<<".equals(key.text) && !key.quoted) {
        merge(value, key.origin, merged);
        continue;
      }
      index = index == null && names.size() > MANY_KEYS ? indexOf(names) : index;
      int at = find(key.text, names, index);
      if (at >= 0) {
        problems.add(PlanErrors.duplicateKey(key.origin, key.text, places.get(at).line));
      } else {
        add(key.text, names, index);
        places.add(key.origin);
        values.add(value);
      }
    }
    parser.getEvent();
    for (int m = 0; m < merged.size(); m++) {
      Node from = merged.get(m);
      count(from.names.size(), origin);
      for (int i = 0; i < from.names.size(); i++) {
        index = index == null && names.size() > MANY_KEYS ? indexOf(names) : index;
        if (find(from.names.get(i), names, index) < 0) {
          add(from.names.get(i), names, index);
          places.add(from.nameOrigins.get(i));
          values.add(from.children.get(i));
        }
      }
    }
    return Node.map(origin, names, places, values);
  }

  private static Map<String, Integer> indexOf(List<String> names) {
    Map<String, Integer> index = new HashMap<>();
    for (int i = 0; i < names.size(); i++) {
      index.put(names.get(i), i);
    }
    return index;
  }

  private static int find(String name, List<String> names, Map<String, Integer> index) {
    if (index == null) {
      return names.indexOf(name);
    }
    Integer at = index.get(name);
    return at == null ? -1 : at;
  }

  private static void add(String name, List<String> names, Map<String, Integer> index) {
    if (index != null) {
      index.put(name, names.size());
    }
    names.add(name);
  }

  private void merge(Node value, Origin place, List<Node> merged) {
    if (value.kind == Node.Kind.MAP) {
      merged.add(value);
      return;
    }
    if (value.kind == Node.Kind.LIST) {
      boolean allMaps = true;
      for (int i = 0; i < value.children.size(); i++) {
        allMaps &= value.children.get(i).kind == Node.Kind.MAP;
      }
      if (allMaps) {
        merged.addAll(value.children);
        return;
      }
    }
    problems.add(PlanErrors.mergeNeedsMap(place));
  }

  private Origin origin(Event event) {
    Mark start = event.getStartMark();
    Mark end = event.getEndMark();
    boolean oneLine = end.getLine() == start.getLine();
    boolean scalar = event.is(Event.ID.Scalar);
    int length = oneLine ? end.getColumn() - start.getColumn() : scalar ? Origin.REST_OF_LINE : 1;
    return at(source, start, length);
  }

  private static Origin at(Source source, Mark mark, int length) {
    if (mark == null) {
      return Origin.start(source);
    }
    return new Origin(source, mark.getLine() + 1, mark.getColumn() + 1, length, null);
  }

  /** Ends the reading of a file. */
  private static final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Problem problem;

    Stop(Problem problem) {
      super(null, null, false, false);
      this.problem = problem;
    }
  }
}
