package leat.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
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

  private final Source source;
  private final List<Problem> problems;
  private final Parser parser;
  private final Map<String, Node> anchors = new HashMap<>();
  private int aliases;

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
      Mark mark = e.getProblemMark() == null ? e.getContextMark() : e.getProblemMark();
      problems.add(
          PlanErrors.yamlSyntax(
              composer == null ? Origin.start(source) : at(source, mark, 1), e.getProblem()));
    } catch (YAMLException e) {
      problems.add(PlanErrors.yamlCharacters(Origin.start(source)));
    } catch (Stop e) {
      problems.add(e.problem);
    }
    return null;
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
    if (depth > DEEPEST) {
      throw new Stop(PlanErrors.tooDeep(origin, DEEPEST));
    }
    if (event.is(Event.ID.Alias)) {
      return alias((AliasEvent) event, origin);
    }
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

  private static Node scalar(ScalarEvent event, Origin origin) {
    boolean quoted = !event.isPlain();
    Origin inside =
        quoted && origin.length > 2
            ? new Origin(origin.source, origin.line, origin.column + 1, origin.length - 2)
            : origin;
    return Node.scalar(inside, event.getValue(), quoted);
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
    while (!parser.checkEvent(Event.ID.MappingEnd)) {
      Node key = node(depth + 1);
      Node value = node(depth + 1);
      if (key.kind != Node.Kind.SCALAR) {
        problems.add(PlanErrors.keyNotAWord(key.origin));
      } else if ("<<".equals(key.text) && !key.quoted) {
        merge(value, key.origin, merged);
      } else if (names.contains(key.text)) {
        Origin first = places.get(names.indexOf(key.text));
        problems.add(PlanErrors.duplicateKey(key.origin, key.text, first.line));
      } else {
        names.add(key.text);
        places.add(key.origin);
        values.add(value);
      }
    }
    parser.getEvent();
    for (int m = 0; m < merged.size(); m++) {
      Node from = merged.get(m);
      for (int i = 0; i < from.names.size(); i++) {
        if (!names.contains(from.names.get(i))) {
          names.add(from.names.get(i));
          places.add(from.nameOrigins.get(i));
          values.add(from.children.get(i));
        }
      }
    }
    return Node.map(origin, names, places, values);
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
    int length = end.getLine() == start.getLine() ? end.getColumn() - start.getColumn() : 1;
    return at(source, start, length);
  }

  private static Origin at(Source source, Mark mark, int length) {
    if (mark == null) {
      return Origin.start(source);
    }
    return new Origin(source, mark.getLine() + 1, mark.getColumn() + 1, length);
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
