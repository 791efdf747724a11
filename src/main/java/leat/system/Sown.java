package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.season.Batches;

/**
 * A crop of a plan as it is sown.
 *
 * @param index its place among the crops of the plan
 * @param name its name
 * @param tower the tower it grows in; null when the plan does not say
 * @param batches its batches
 */
public record Sown(int index, String name, String tower, Batches batches) {

  /** All crops of a plan; refused with the key that is missing. */
  public static List<Sown> of(Plan plan, Taken taken) {
    List<Section> entries = plan.root().sections("crops");
    if (entries.isEmpty()) {
      throw plan.root().missing("crops");
    }
    List<Sown> crops = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      Section crop = entries.get(i);
      crops.add(
          new Sown(
              i, (String) crop.needRaw("name"), crop.text("tower"), SowingOf.batches(crop, taken)));
    }
    return crops;
  }
}
