package leat.system;

import java.util.List;
import leat.plan.Plan;
import leat.plan.Section;

/** What the plants of a plan drink. */
public final class DrinksOf {
  private DrinksOf() {}

  /**
   * Mean use of all plants when grown, m3/s: the plan's {@code drinks}, else pots times water of
   * the crops, times the thirst that a log found.
   *
   * @throws leat.plan.Refused when the plan says neither
   */
  public static double perSecond(Plan plan) {
    Double known = plan.root().maybe("drinks");
    if (known != null) {
      return known;
    }
    List<Section> crops = plan.root().sections("crops");
    if (crops.isEmpty()) {
      throw plan.root().missing("drinks");
    }
    double sum = sum(crops);
    Double thirst = plan.root().maybe("thirst");
    return thirst == null ? sum : sum * thirst;
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
