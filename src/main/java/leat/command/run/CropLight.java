package leat.command.run;

import java.util.ArrayList;
import java.util.List;
import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.climate.LightNeed;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Nearest;

/** The light that is wanted: typed, of the crop that is named, or of each crop of the plan. */
final class CropLight {
  private CropLight() {}

  static List<LightNeed> needs(Call call) {
    Double typed = (Double) call.value("--need");
    if (typed != null && call.has("--crop")) {
      throw new Refused(CommandErrors.notBoth(call.command, "--need", "--crop"));
    }
    if (typed != null) {
      return List.of(LightNeed.typed(typed));
    }
    String named = call.text("--crop");
    return named == null ? ofPlan(call) : List.of(named(named));
  }

  private static LightNeed named(String name) {
    LightNeed need = LightNeed.find(name);
    if (need != null) {
      return need;
    }
    List<String> known = new ArrayList<>();
    for (LightNeed one : LightNeed.all()) {
      known.add(one.name());
    }
    throw new Refused(CommandErrors.unknownWord("crop", name, Nearest.of(name, known), known));
  }

  private static List<LightNeed> ofPlan(Call call) {
    List<LightNeed> needs = new ArrayList<>();
    for (Section crop : call.plan().root().sections("crops")) {
      LightNeed need = crop.has("name") ? LightNeed.find(crop.text("name")) : null;
      if (need != null) {
        needs.add(need);
      }
    }
    return needs;
  }
}
