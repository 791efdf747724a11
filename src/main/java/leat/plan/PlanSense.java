package leat.plan;

import java.util.List;

/**
 * Mistakes that only two values together show: a level above the rim, low above full, a clog of
 * everything.
 */
final class PlanSense {
  private PlanSense() {}

  static void check(Section root, List<Problem> problems) {
    Section tank = root.section("tank");
    notOver(tank, "full", "height", "it lies above the rim", problems);
    notOver(tank, "low", "full", "the refill mark lies above full", problems);
    notOver(tank, "low", "height", "it lies above the rim", problems);
    notOver(tank, "intake", "height", "it lies above the rim", problems);
    notOver(tank, "rim_overflow", "height", "it lies above the rim", problems);
    notOver(
        root.section("target"),
        "ec_low",
        "ec_high",
        "the lowest EC is above the highest",
        problems);
    notOver(
        root.section("target"),
        "ph_low",
        "ph_high",
        "the lowest pH is above the highest",
        problems);
  }

  private static void notOver(
      Section section, String name, String other, String why, List<Problem> problems) {
    Double value = section.maybe(name);
    Double limit = section.maybe(other);
    if (value != null && limit != null && value > limit) {
      problems.add(PlanErrors.levelOver(section, name, other, why));
    }
  }
}
