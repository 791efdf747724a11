package leat.check;

import leat.hydraulics.Derate;
import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Slot;
import leat.plan.Taken;
import leat.system.DerateOf;
import leat.weather.WeatherFile;

/**
 * One plan judged again and again with numbers laid over it: bound once, its measured flow
 * explained once, on the tower as written.
 */
public final class Designs {
  private final Plan plan;
  private final Slot[] slots;
  private final Derate measured;
  private WeatherFile weather;
  private boolean weatherSought;

  /**
   * Designs of a plan.
   *
   * @param paths keys whose numbers are laid over, such as {@code towers[*].riser.bore}
   * @throws Refused when one is no number of this plan
   */
  public Designs(Plan plan, String... paths) {
    this.plan = plan;
    this.slots = new Slot[paths.length];
    for (int i = 0; i < slots.length; i++) {
      slots[i] = plan.slot(paths[i]);
    }
    this.measured = measured(plan);
  }

  private static Derate measured(Plan plan) {
    if (!plan.section("pump").has("measured")) {
      return null;
    }
    try {
      return DerateOf.of(plan, new Taken());
    } catch (Refused | Impossible e) {
      // Each design's rules say what is missing.
      return null;
    }
  }

  /**
   * The plan with numbers laid over, to be judged.
   *
   * @param numbers in base units, one for each path
   * @throws Refused when a number is out of range or does not go with the others
   */
  public Subject with(double... numbers) {
    Plan design = slots.length == 0 ? plan : plan.with(slots, numbers);
    Section pump = design.section("pump");
    return new Subject(design, pump.has("measured") ? measured : null, this);
  }

  /** The plan's weather file, read once for all designs; null without one that can be read. */
  WeatherFile weather() {
    if (!weatherSought && WeatherFile.isNamed(plan)) {
      try {
        weather = WeatherFile.of(plan);
      } catch (Refused e) {
        // each design's season says what is wrong with it
        weather = null;
      }
    }
    weatherSought = true;
    return weather;
  }
}
