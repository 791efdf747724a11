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
    double sum = 0;
    for (int i = 0; i < crops.size(); i++) {
      sum += crops.get(i).need("pots") * crops.get(i).need("water");
    }
    Double thirst = plan.root().maybe("thirst");
    return thirst == null ? sum : sum * thirst;
  }
}
