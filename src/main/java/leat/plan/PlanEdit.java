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

  /**
   * Where a key stands, or would.
   *
   * @param line its line; for a key that is not there the last of its section; 0 for no section
   * @param section the section's path, empty for the whole plan
   * @param isThere whether the key itself is there
   * @param anchor the anchor that a change would reach others through, or null
   */
  public record Where(int line, String section, boolean isThere, String anchor) {}

  private final String name;
  private String text;
  private final String lineEnd;
  private YamlSpot root;

  private PlanEdit(String name, String text) {
    this.name = name;
    this.text = text;
    this.lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
    this.root = YamlSpot.of(text);
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
    return text;
  }

  /**
   * Refuses a text that is no plan any more; called when all changes are made, before it is
   * written.
   */
  public void check() {
    Plan.Draft.of(Source.file(name, text)).read();
  }

  /**
   * Refuses a key that alone would begin a new item of a list; {@code paths} are all that are set.
   */
  public void refuseLone(List<String> paths, int which, String value) {
    Origin at = Origin.flag(paths.get(which), value);
    Plan.Draft.of(Source.file(name, text)).refuseLone(paths, which, at);
  }

  /** Where a key stands. */
  public Where where(String path) {
    List<Paths.Step> steps = Paths.steps(path, Origin.flag(path, path));
    YamlSpot here = root;
    String anchor = null;
    String section = "";
    for (int i = 0; i < steps.size(); i++) {
      if (here.alias != null) {
        anchor = here.alias;
        here = root.anchored(anchor);
      }
      int at = indexOf(here, steps.get(i));
      if (at < 0 && here.kind == Node.Kind.MAP && !merging(here, steps.get(i)).isEmpty()) {
        anchor = merging(here, steps.get(i));
        here = root.anchored(anchor);
        at = indexOf(here, steps.get(i));
      }
      if (at < 0) {
        return new Where(i == 0 ? 0 : lineAt(here.contentEnd(text)), section, false, anchor);
      }
      boolean last = i == steps.size() - 1;
      YamlSpot child = here.children.get(at);
      if (last) {
        int start = here.kind == Node.Kind.MAP ? here.nameStarts.get(at) : child.contentStart();
        return new Where(lineAt(start), section, true, anchor);
      }
      String word = steps.get(i).name();
      section += word == null ? "[" + at + "]" : section.isEmpty() ? word : "." + word;
      here = child;
    }
    throw new IllegalArgumentException(path);
  }

  /** How a value is written by hand: the line, its section, and the words; empty removes it. */
  String byHand(String path, String value) {
    Where where = where(path);
    String section = where.section().isEmpty() ? "" : ", under " + where.section();
    String line = where.line() == 0 ? "" : ", line " + where.line();
    if (where.anchor() != null) {
      line += " (the anchor &" + where.anchor() + ", which other places share)";
    }
    if (value.isEmpty()) {
      return "in "
          + name
          + line
          + section
          + ", remove  "
          + path.substring(path.lastIndexOf('.') + 1);
    }
    String words = written(path, value, where.section());
    if (where.isThere()) {
      return "in " + name + line + section + ", write  " + words;
    }
    return where.line() == 0
        ? "at the end of " + name + " write  " + words
        : "in " + name + ", below line " + where.line() + section + ", write  " + words;
  }

  /** What is written under a section. */
  private static String written(String path, String value, String section) {
    Origin at = Origin.flag(path, value);
    String rest = section.isEmpty() ? path : path.substring(section.length() + 1);
    int known = Paths.steps(path, at).size() - Paths.count(rest);
    return new Written(Paths.steps(path, at), value, at).asLine(known);
  }

  /** A key and its value as they stand in one line of a plan. */
  static String asLine(String path, String value) {
    Origin at = Origin.flag(path, value);
    return new Written(Paths.steps(path, at), value, at).asLine(0);
  }

  private int indexOf(YamlSpot here, Paths.Step step) {
    if (step.name() != null) {
      return here.kind == Node.Kind.MAP ? here.names.indexOf(step.name()) : -1;
    }
    if (here.kind != Node.Kind.LIST) {
      return -1;
    }
    if (step.item() == null) {
      return step.index() < here.children.size() ? step.index() : -1;
    }
    for (int i = 0; i < here.children.size(); i++) {
      YamlSpot item = here.children.get(i);
      item = item.alias == null ? item : root.anchored(item.alias);
      int at = item.kind == Node.Kind.MAP ? item.names.indexOf("name") : -1;
      if (at >= 0 && step.item().equalsIgnoreCase(words(item.children.get(at)))) {
        return i;
      }
    }
    return -1;
  }

  /** A scalar's text without quotes. */
  private String words(YamlSpot spot) {
    String typed = text.substring(spot.start, spot.end);
    boolean quoted = typed.length() > 1 && "\"'".indexOf(typed.charAt(0)) >= 0;
    return quoted ? typed.substring(1, typed.length() - 1) : typed;
  }

  /** The anchor through which a map gets a key by a merge, or "". */
  private String merging(YamlSpot map, Paths.Step step) {
    int at = map.names.indexOf("<<");
    if (at < 0 || step.name() == null) {
      return "";
    }
    YamlSpot from = map.children.get(at);
    for (int i = from.alias == null ? from.children.size() - 1 : 0; i >= 0; i--) {
      String anchor = from.alias == null ? from.children.get(i).alias : from.alias;
      YamlSpot target = anchor == null ? null : root.anchored(anchor);
      if (target != null
          && (target.names.contains(step.name()) || !merging(target, step).isEmpty())) {
        return anchor;
      }
    }
    return "";
  }

  /**
   * Sets a key; the value is YAML as typed; an empty one removes the key. {@code [*]} sets it in
   * every item, each told by its own.
   *
   * @throws Refused when the key is none, the value is wrong, or an alias leads to the key
   */
  public List<Done> set(String path, String value) {
    Origin at = Origin.flag(path, value);
    Plan.Draft.of(Source.file(name, text)).set(path, Source.flag(path, value)).refuseBroken();
    List<Paths.Step> steps = Paths.steps(path, at);
    int star = path.indexOf("[*]");
    if (star >= 0) {
      YamlSpot list = reach(steps.subList(0, stepsTo(steps)), path, at);
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
    Where where = done.after() == null ? null : where(done.path());
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

  /** The value at the end of some steps, or null; refused when an alias leads there. */
  private YamlSpot reach(List<Paths.Step> steps, String path, Origin at) {
    YamlSpot here = root;
    for (int i = 0; i < steps.size(); i++) {
      refuseAlias(here, path, at);
      int k = indexOf(here, steps.get(i));
      if (k < 0) {
        refuseMerged(here, steps.get(i), path, at);
        return null;
      }
      here = here.children.get(k);
    }
    return here;
  }

  private void refuseAlias(YamlSpot here, String path, Origin at) {
    if (here.alias != null) {
      int line = lineAt(root.anchored(here.alias).contentStart());
      throw new Refused(PlanErrors.throughAlias(at, path, here.alias, line));
    }
  }

  private void refuseMerged(YamlSpot here, Paths.Step step, String path, Origin at) {
    String anchor = here.kind == Node.Kind.MAP ? merging(here, step) : "";
    if (!anchor.isEmpty()) {
      int line = lineAt(root.anchored(anchor).contentStart());
      throw new Refused(PlanErrors.throughAlias(at, path, anchor, line));
    }
  }

  private Done remove(List<Paths.Step> steps, String path, Origin at) {
    YamlSpot parent = reach(steps.subList(0, steps.size() - 1), path, at);
    if (parent != null) {
      refuseAlias(parent, path, at);
    }
    int k = parent == null ? -1 : indexOf(parent, steps.get(steps.size() - 1));
    if (k < 0) {
      if (parent != null) {
        refuseMerged(parent, steps.get(steps.size() - 1), path, at);
      }
      return new Done(path, 0, null, null, null);
    }
    YamlSpot child = parent.children.get(k);
    boolean map = parent.kind == Node.Kind.MAP;
    int start = map ? parent.nameStarts.get(k) : child.contentStart();
    final Done done = new Done(path, lineAt(start), shown(child), null, null);
    int end = child.contentEnd(text);
    if (parent.flow) {
      cutFlow(start, end, k == 0);
    } else if (map && !isFirstInLine(start)) {
      // the first key of an item stands behind its dash
      boolean only = parent.children.size() == 1;
      replace(start, only ? end : parent.nameStarts.get(1), only ? "{}" : "");
    } else {
      int from = lineStart(start);
      int to = lineEndAt(end);
      replace(from, Math.min(text.length(), to + (to < text.length() ? endLength(to) : 0)), "");
    }
    return done;
  }

  private boolean isFirstInLine(int offset) {
    return text.substring(lineStart(offset), offset).isBlank();
  }

  private void cutFlow(int start, int end, boolean first) {
    int to = end;
    while (to < text.length() && text.charAt(to) <= ' ') {
      to++;
    }
    if (text.startsWith(",", to)) {
      to++;
      while (to < text.length() && text.charAt(to) == ' ') {
        to++;
      }
      replace(start, to, "");
      return;
    }
    int from = start;
    while (!first && from > 0 && text.charAt(from - 1) != ',') {
      from--;
    }
    replace(first ? start : from - 1, end, "");
  }

  private Done write(List<Paths.Step> steps, String path, String value, Origin at) {
    YamlSpot here = root;
    for (int i = 0; i < steps.size(); i++) {
      refuseAlias(here, path, at);
      int k = indexOf(here, steps.get(i));
      boolean last = i == steps.size() - 1;
      if (k >= 0 && last) {
        return over(here, k, steps, path, value);
      }
      boolean nothing = k >= 0 && here.children.get(k).isNothing(text);
      if (k < 0 || nothing) {
        if (!last) {
          refuseMerged(here, steps.get(i), path, at);
        }
        Written written = new Written(steps, value, at);
        int offset =
            nothing
                ? fill(here, k, written, i + 1)
                : here.kind == Node.Kind.LIST ? append(here, written, i) : add(here, written, i);
        return new Done(path, lineAt(offset), null, written.leaf(false), null);
      }
      here = here.children.get(k);
    }
    throw new IllegalArgumentException(path);
  }

  /** Writes over a value. */
  private Done over(YamlSpot parent, int k, List<Paths.Step> steps, String path, String value) {
    YamlSpot child = parent.children.get(k);
    String word = new Written(steps, value, Origin.flag(path, value)).leaf(parent.flow);
    String before = child.isNothing(text) ? null : shown(child);
    String anchor = child.anchor != null && root.uses(child.anchor) > 0 ? child.anchor : null;
    int start = child.contentStart();
    int end = child.contentEnd(text);
    int key = parent.kind == Node.Kind.MAP ? parent.nameStarts.get(k) : start;
    int line = lineAt(key);
    boolean lines = !child.flow && child.kind != Node.Kind.SCALAR && lineAt(start) > line;
    if (start == end) {
      replace(start, end, " " + word);
    } else if (lines) {
      int to = lineEndAt(end);
      int behind = child.anchor == null ? colon(parent.nameEnds.get(k)) + 1 : child.start;
      replace(lineStart(start) - endBefore(lineStart(start)), to, "");
      replace(behind, behind, " " + word);
    } else {
      replace(start, end, word);
    }
    return new Done(path, line, before, word, anchor);
  }

  private int colon(int from) {
    return text.indexOf(':', from);
  }

  /** Puts a key into a section of which only the name stands there; the offset of the new text. */
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
    int indent = column(parent.nameStarts.get(k)) + 2;
    return lineBehind(child.start, indent, written.lines(from, indent, lineEnd));
  }

  /** Puts a new key at the end of a map. */
  private int add(YamlSpot map, Written written, int from) {
    if (map.flow) {
      return intoFlow(map, written.entry(from));
    }
    int indent = column(map.nameStarts.get(0));
    return lineBehind(map.contentEnd(text), indent, written.lines(from, indent, lineEnd));
  }

  /** Puts a new item at the end of a list. */
  private int append(YamlSpot list, Written written, int from) {
    boolean leaf = from == written.size() - 1;
    if (list.flow) {
      return intoFlow(list, leaf ? written.leaf(true) : written.flow(from + 1));
    }
    int indent = list.children.get(0).contentStart();
    indent = text.lastIndexOf('-', indent - 1) < lineStart(indent) ? indent : dash(indent);
    int column = column(indent);
    String item = leaf ? written.leaf(false) : written.lines(from + 1, column + 2, lineEnd);
    return lineBehind(list.contentEnd(text), column, "- " + item);
  }

  private int dash(int start) {
    return text.lastIndexOf('-', start - 1);
  }

  private int intoFlow(YamlSpot spot, String entry) {
    int close = spot.end - 1;
    if (spot.children.isEmpty()) {
      replace(close, close, entry);
      return close;
    }
    int behind = spot.children.get(spot.children.size() - 1).contentEnd(text);
    int i = behind;
    while (i < close && text.charAt(i) != ',') {
      i = text.charAt(i) == '#' ? lineEndAt(i) : i + 1;
    }
    boolean comma = i < close;
    int at = comma ? i + 1 : behind;
    replace(at, at, (comma ? " " : ", ") + entry);
    return at;
  }

  private int lineBehind(int offset, int indent, String line) {
    int at = lineEndAt(offset);
    replace(at, at, lineEnd + " ".repeat(indent) + line);
    return at + lineEnd.length();
  }

  private String shown(YamlSpot spot) {
    String typed = text.substring(spot.contentStart(), spot.contentEnd(text));
    return typed.indexOf('\n') < 0 ? typed : "several lines";
  }

  private void replace(int from, int to, String word) {
    text = text.substring(0, from) + word + text.substring(to);
    root = YamlSpot.of(text);
  }

  private int lineAt(int offset) {
    int line = 1;
    for (int i = 0; i < offset && i < text.length(); i++) {
      line += text.charAt(i) == '\n' ? 1 : 0;
    }
    return line;
  }

  private int lineStart(int offset) {
    return text.lastIndexOf('\n', offset - 1) + 1;
  }

  /** Offset of the end of a line, before its line feed. */
  private int lineEndAt(int offset) {
    int end = text.indexOf('\n', offset);
    if (end < 0) {
      return text.length();
    }
    return end > 0 && text.charAt(end - 1) == '\r' ? end - 1 : end;
  }

  private int endLength(int lineEnd) {
    return text.startsWith("\r\n", lineEnd) ? 2 : 1;
  }

  private int endBefore(int lineStart) {
    return lineStart > 1 && text.charAt(lineStart - 2) == '\r' ? 2 : 1;
  }

  private int column(int offset) {
    return offset - lineStart(offset);
  }
}
