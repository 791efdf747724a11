package leat.plan;

import java.util.List;

/** Finds where a key stands in a plan's text, through aliases and merges. */
final class Spots {
  /**
   * Where a key stands, or would.
   *
   * @param line its line; for a key that is not there the last of its section; 0 for no section
   * @param section the section's path, empty for the whole plan
   * @param isThere whether the key itself is there
   * @param anchor the anchor that a change would reach others through, or null
   */
  record Where(int line, String section, boolean isThere, String anchor) {}

  private final EditedText text;

  Spots(EditedText text) {
    this.text = text;
  }

  /** Where a key stands. */
  Where where(String path) {
    List<Paths.Step> steps = Paths.steps(path, Origin.flag(path, path));
    YamlSpot here = text.root;
    String anchor = null;
    String section = "";
    for (int i = 0; i < steps.size(); i++) {
      if (here.alias != null) {
        anchor = here.alias;
        here = text.root.anchored(anchor);
      }
      int at = indexOf(here, steps.get(i));
      if (at < 0 && here.kind == Node.Kind.MAP && !merging(here, steps.get(i)).isEmpty()) {
        anchor = merging(here, steps.get(i));
        here = text.root.anchored(anchor);
        at = indexOf(here, steps.get(i));
      }
      if (at < 0) {
        return new Where(
            i == 0 ? 0 : text.lineAt(here.contentEnd(text.text)), section, false, anchor);
      }
      boolean last = i == steps.size() - 1;
      YamlSpot child = here.children.get(at);
      if (last) {
        int start = here.kind == Node.Kind.MAP ? here.nameStarts.get(at) : child.contentStart();
        return new Where(text.lineAt(start), section, true, anchor);
      }
      String word = steps.get(i).name();
      section += word == null ? "[" + at + "]" : section.isEmpty() ? word : "." + word;
      here = child;
    }
    throw new IllegalArgumentException(path);
  }

  int indexOf(YamlSpot here, Paths.Step step) {
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
      item = item.alias == null ? item : text.root.anchored(item.alias);
      int at = item.kind == Node.Kind.MAP ? item.names.indexOf("name") : -1;
      if (at >= 0 && step.item().equalsIgnoreCase(text.words(item.children.get(at)))) {
        return i;
      }
    }
    return -1;
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
      YamlSpot target = anchor == null ? null : text.root.anchored(anchor);
      if (target != null
          && (target.names.contains(step.name()) || !merging(target, step).isEmpty())) {
        return anchor;
      }
    }
    return "";
  }

  /** The value at the end of some steps, or null; refused when an alias leads there. */
  YamlSpot reach(List<Paths.Step> steps, String path, Origin at) {
    YamlSpot here = text.root;
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

  void refuseAlias(YamlSpot here, String path, Origin at) {
    if (here.alias != null) {
      int line = text.lineAt(text.root.anchored(here.alias).contentStart());
      throw new Refused(PlanErrors.throughAlias(at, path, here.alias, line));
    }
  }

  void refuseMerged(YamlSpot here, Paths.Step step, String path, Origin at) {
    String anchor = here.kind == Node.Kind.MAP ? merging(here, step) : "";
    if (!anchor.isEmpty()) {
      int line = text.lineAt(text.root.anchored(anchor).contentStart());
      throw new Refused(PlanErrors.throughAlias(at, path, anchor, line));
    }
  }
}
