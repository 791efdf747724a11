package leat.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Changes keys of a plan in its text: values are written over where they stand, remarks and order
 * stay, a new key goes to the end of its section.
 */
public final class PlanEdit {
  /**
   * What was changed.
   *
   * @param path the key
   * @param line its line, counted from 1; where it stood when it was removed
   * @param before the text before, or null for none
   * @param after the text now, or null for none
   * @param anchor anchor that other places share with this value, or null
   */
  public record Done(String path, int line, String before, String after, String anchor) {}

  private final String name;
  private final String lineEnd;
  private EditedText now;

  private PlanEdit(String name, String text) {
    this.name = name;
    this.now = new EditedText(text);
    this.lineEnd = now.lineEnd();
  }

  /** An edit of a plan's text, which must be a plan without mistakes of YAML. */
  public static PlanEdit of(String name, String text) {
    Plan.Draft.of(Source.file(name, text)).refuseBroken();
    return new PlanEdit(name, text);
  }

  /** Name of its file. */
  String name() {
    return name;
  }

  /** The text as it stands now. */
  public String text() {
    return now.text;
  }

  /**
   * Refuses a now.text that is no plan any more; called when all changes are made, before it is
   * written.
   */
  public void check() {
    Plan.Draft.of(Source.file(name, now.text)).read();
  }

  /**
   * Refuses a key that alone would begin a new item of a list; {@code paths} are all that are set.
   */
  public void refuseLone(List<String> paths, int which, String value) {
    Origin at = Origin.flag(paths.get(which), value);
    Plan.Draft.of(Source.file(name, now.text)).refuseLone(paths, which, at);
  }

  /** Where a key stands. */
  Spots.Where where(String path) {
    return spots().where(path);
  }

  private Spots spots() {
    return new Spots(now);
  }

  /**
   * Sets a key; the value is YAML as typed; an empty one removes the key. {@code [*]} sets it in
   * every item, each told by its own.
   *
   * @throws Refused when the key is none, the value is wrong, or an alias leads to the key
   */
  public List<Done> set(String path, String value) {
    Origin at = Origin.flag(path, value);
    Plan.Draft.of(Source.file(name, now.text)).set(path, Source.flag(path, value)).refuseBroken();
    List<Paths.Step> steps = Paths.steps(path, at);
    int star = path.indexOf("[*]");
    if (star >= 0) {
      YamlSpot list = spots().reach(steps.subList(0, stepsTo(steps)), path, at);
      List<Done> done = new ArrayList<>();
      int size = list == null ? 1 : list.children.size();
      for (int i = size - 1; i >= 0; i--) {
        String one = path.substring(0, star) + "[" + i + "]" + path.substring(star + 3);
        done.addAll(0, set(one, value));
      }
      return done;
    }
    return List.of(
        value.isBlank() ? remove(steps, path, at) : write(steps, path, value.strip(), at));
  }

  /** The same with its line as the text stands now: lines that came later moved it. */
  public Done now(Done done) {
    Spots.Where where = done.after() == null ? null : where(done.path());
    return where == null || !where.isThere()
        ? done
        : new Done(done.path(), where.line(), done.before(), done.after(), done.anchor());
  }

  private static int stepsTo(List<Paths.Step> steps) {
    int i = 0;
    while (!steps.get(i).isEvery()) {
      i++;
    }
    return i;
  }

  private Done remove(List<Paths.Step> steps, String path, Origin at) {
    YamlSpot parent = spots().reach(steps.subList(0, steps.size() - 1), path, at);
    if (parent != null) {
      spots().refuseAlias(parent, path, at);
    }
    int k = parent == null ? -1 : spots().indexOf(parent, steps.get(steps.size() - 1));
    if (k < 0) {
      if (parent != null) {
        spots().refuseMerged(parent, steps.get(steps.size() - 1), path, at);
      }
      return new Done(path, 0, null, null, null);
    }
    YamlSpot child = parent.children.get(k);
    boolean map = parent.kind == Node.Kind.MAP;
    int start = map ? parent.nameStarts.get(k) : child.contentStart();
    final Done done = new Done(path, now.lineAt(start), now.shown(child), null, null);
    int end = child.contentEnd(now.text);
    if (parent.flow) {
      cutFlow(start, end, k == 0);
    } else if (map && !now.isFirstInLine(start)) {
      // the first key of an item stands behind its dash
      boolean only = parent.children.size() == 1;
      replace(start, only ? end : parent.nameStarts.get(1), only ? "{}" : "");
    } else {
      int from = now.lineStart(start);
      int to = now.lineEndAt(end);
      replace(
          from,
          Math.min(now.text.length(), to + (to < now.text.length() ? now.endLength(to) : 0)),
          "");
    }
    return done;
  }

  private void cutFlow(int start, int end, boolean first) {
    int to = end;
    while (to < now.text.length() && now.text.charAt(to) <= ' ') {
      to++;
    }
    if (now.text.startsWith(",", to)) {
      to++;
      while (to < now.text.length() && now.text.charAt(to) == ' ') {
        to++;
      }
      replace(start, to, "");
      return;
    }
    int from = start;
    while (!first && from > 0 && now.text.charAt(from - 1) != ',') {
      from--;
    }
    replace(first ? start : from - 1, end, "");
  }

  private Done write(List<Paths.Step> steps, String path, String value, Origin at) {
    YamlSpot here = now.root;
    for (int i = 0; i < steps.size(); i++) {
      spots().refuseAlias(here, path, at);
      int k = spots().indexOf(here, steps.get(i));
      boolean last = i == steps.size() - 1;
      if (k >= 0 && last) {
        return over(here, k, steps, path, value);
      }
      boolean nothing = k >= 0 && here.children.get(k).isNothing(now.text);
      if (k < 0 || nothing) {
        if (!last) {
          spots().refuseMerged(here, steps.get(i), path, at);
        }
        Written written = new Written(steps, value, at);
        int offset =
            nothing
                ? fill(here, k, written, i + 1)
                : here.kind == Node.Kind.LIST ? append(here, written, i) : add(here, written, i);
        return new Done(path, now.lineAt(offset), null, written.leaf(false), null);
      }
      here = here.children.get(k);
    }
    throw new IllegalArgumentException(path);
  }

  /** Writes over a value. */
  private Done over(YamlSpot parent, int k, List<Paths.Step> steps, String path, String value) {
    YamlSpot child = parent.children.get(k);
    String word = new Written(steps, value, Origin.flag(path, value)).leaf(parent.flow);
    String before = child.isNothing(now.text) ? null : now.shown(child);
    String anchor = child.anchor != null && now.root.uses(child.anchor) > 0 ? child.anchor : null;
    int start = child.contentStart();
    int end = child.contentEnd(now.text);
    int key = parent.kind == Node.Kind.MAP ? parent.nameStarts.get(k) : start;
    int line = now.lineAt(key);
    boolean lines = !child.flow && child.kind != Node.Kind.SCALAR && now.lineAt(start) > line;
    if (start == end) {
      replace(start, end, " " + word);
    } else if (lines) {
      int to = now.lineEndAt(end);
      int behind = child.anchor == null ? colon(parent.nameEnds.get(k)) + 1 : child.start;
      replace(now.lineStart(start) - now.endBefore(now.lineStart(start)), to, "");
      replace(behind, behind, " " + word);
    } else {
      replace(start, end, word);
    }
    return new Done(path, line, before, word, anchor);
  }

  private int colon(int from) {
    return now.text.indexOf(':', from);
  }

  /**
   * Puts a key into a section of which only the name stands there; the offset of the new now.text.
   */
  private int fill(YamlSpot parent, int k, Written written, int from) {
    YamlSpot child = parent.children.get(k);
    if (child.start < child.end || parent.flow || written.isIndex(from)) {
      String inner = written.flow(from);
      replace(child.start, child.end, (child.start < child.end ? "" : " ") + inner);
      return child.start;
    }
    if (parent.kind == Node.Kind.LIST) {
      replace(child.start, child.end, " " + written.lines(from, 0, lineEnd));
      return child.start;
    }
    int indent = now.column(parent.nameStarts.get(k)) + 2;
    return lineBehind(child.start, indent, written.lines(from, indent, lineEnd));
  }

  /** Puts a new key at the end of a map. */
  private int add(YamlSpot map, Written written, int from) {
    if (map.flow) {
      return intoFlow(map, written.entry(from));
    }
    int indent = now.column(map.nameStarts.get(0));
    return lineBehind(map.contentEnd(now.text), indent, written.lines(from, indent, lineEnd));
  }

  /** Puts a new item at the end of a list. */
  private int append(YamlSpot list, Written written, int from) {
    boolean leaf = from == written.size() - 1;
    if (list.flow) {
      return intoFlow(list, leaf ? written.leaf(true) : written.flow(from + 1));
    }
    int indent = list.children.get(0).contentStart();
    indent = now.text.lastIndexOf('-', indent - 1) < now.lineStart(indent) ? indent : dash(indent);
    int column = now.column(indent);
    String item = leaf ? written.leaf(false) : written.lines(from + 1, column + 2, lineEnd);
    return lineBehind(list.contentEnd(now.text), column, "- " + item);
  }

  private int dash(int start) {
    return now.text.lastIndexOf('-', start - 1);
  }

  private int intoFlow(YamlSpot spot, String entry) {
    int close = spot.end - 1;
    if (spot.children.isEmpty()) {
      replace(close, close, entry);
      return close;
    }
    int behind = spot.children.get(spot.children.size() - 1).contentEnd(now.text);
    int i = behind;
    while (i < close && now.text.charAt(i) != ',') {
      i = now.text.charAt(i) == '#' ? now.lineEndAt(i) : i + 1;
    }
    boolean comma = i < close;
    int at = comma ? i + 1 : behind;
    replace(at, at, (comma ? " " : ", ") + entry);
    return at;
  }

  private int lineBehind(int offset, int indent, String line) {
    int at = now.lineEndAt(offset);
    replace(at, at, lineEnd + " ".repeat(indent) + line);
    return at + lineEnd.length();
  }

  private void replace(int from, int to, String word) {
    now = now.with(from, to, word);
  }
}
