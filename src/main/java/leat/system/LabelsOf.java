package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.plan.Named;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.ElementName;
import leat.solution.Label;
import leat.solution.recipes.LabelledBottle;

/** The figures of labels in a plan: of its bottles of feed, and of its own salts. */
public final class LabelsOf {
  private LabelsOf() {}

  /** Whether a bottle of {@code feed.parts} has a label. */
  public static boolean isKnown(Section feed) {
    List<Section> parts = feed.sections("parts");
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i).named("label").size() > 0) {
        return true;
      }
    }
    return false;
  }

  /** Every bottle of {@code feed.parts}; one without a label brings nothing that is known. */
  public static List<LabelledBottle> of(Section feed) {
    List<Section> parts = feed.sections("parts");
    List<LabelledBottle> bottles = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Section part = parts.get(i);
      String name = ConcentrateOf.name(feed, i);
      Double density = part.maybe("density");
      bottles.add(
          new LabelledBottle(
              name,
              label(part, "label", name),
              part.need("rate"),
              density == null ? null : (Double) Units.G_ML.fromBase(density)));
    }
    return bottles;
  }

  /** The figures of one key; refused at the figure that cannot be. */
  static Label label(Section section, String key, String name) {
    Named figures = section.named(key);
    Label label = Label.blank();
    for (int i = 0; i < figures.size(); i++) {
      try {
        double percent = Units.PERCENT.fromBase((Double) figures.value(i));
        label = label.with(ElementName.of(figures.name(i)), percent);
      } catch (Impossible e) {
        throw new Refused(LabelErrors.badFigure(section, key, figures, i, name, e.getMessage()));
      }
    }
    try {
      label.fractions();
    } catch (Impossible e) {
      throw new Refused(LabelErrors.badTogether(section, key, name, e.getMessage()));
    }
    return label;
  }
}
