package leat.system;

import leat.plan.Named;
import leat.plan.Problem;
import leat.plan.Section;

/**
 * Messages about the figures of labels, one named method each; the error gallery holds an entry for
 * each.
 */
public final class LabelErrors {
  private LabelErrors() {}

  /** A figure that cannot stand on this label. */
  public static Problem badFigure(
      Section section, String key, Named figures, int i, String name, String reason) {
    return figures.problem(i, section.path(key), "bad-label", name + ": " + reason);
  }

  /** Figures that cannot stand together. */
  public static Problem badTogether(Section section, String key, String name, String reason) {
    return section.problem(key, "bad-label", name + ": " + reason);
  }
}
