package leat.system;

import java.util.List;
import leat.plan.Plan;
import leat.plan.Section;

/** What the plants of a plan drink. */
public final class DrinksOf {
  private DrinksOf() {}

  /**
   * Mean use of all plants when grown, m3/s: the plan's {@code drinks}, else pots times water of
   * the crops; either times the thirst that a log found against it.
   *
   * @throws leat.plan.Refused when the plan says neither
   */
  public static double perSecond(Plan plan) {
    Double known = plan.root().maybe("drinks");
    List<Section> crops = plan.root().sections("crops");
    if (known == null && crops.isEmpty()) {
      throw plan.root().missing("drinks");
    }
    double planned = known == null ? sum(crops) : known;
    Double thirst = plan.root().maybe("thirst");
    return thirst == null ? planned : planned * thirst;
  }

  /** The same without the thirst that a log found, m3/s; null when the plan says neither. */
  public static Double planned(Plan plan) {
    Double known = plan.root().maybe("drinks");
    List<Section> crops = plan.root().sections("crops");
    if (known != null || crops.isEmpty()) {
      return known;
    }
    for (int i = 0; i < crops.size(); i++) {
      if (!crops.get(i).has("pots") || !crops.get(i).has("water")) {
        return null;
      }
    }
    return sum(crops);
  }

  private static double sum(List<Section> crops) {
    double sum = 0;
    for (int i = 0; i < crops.size(); i++) {
      sum += crops.get(i).need("pots") * crops.get(i).need("water");
    }
    return sum;
  }
}
