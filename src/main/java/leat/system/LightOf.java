package leat.system;

import leat.climate.DailyLight;
import leat.climate.Lamp;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Units;

/** What is between sky and plants in a plan, and its lamp. */
public final class LightOf {
  private LightOf() {}

  /** Light at the plants of so much in the open, mol/m2 a day. */
  public static double inside(Plan plan, double molM2) {
    Section light = plan.section("site").section("light");
    return DailyLight.shadedMolM2(molM2, light.get("transmission"), light.get("shade"));
  }

  /** Whether the plan has a lamp. */
  public static boolean hasLamp(Plan plan) {
    return plan.section("lamp").isGiven();
  }

  /** The lamp; its power is NaN when its size is asked for. */
  public static Lamp lamp(Plan plan) {
    Section lamp = plan.section("lamp");
    Double watts = lamp.maybe("power");
    plan.taken().note("half of the lamp's light lands on the plants");
    return new Lamp(
        watts == null ? Double.NaN : watts,
        lamp.get("efficacy"),
        Lamp.ROUND_TOWER,
        lamp.need("area"));
  }

  /** Longest time it may burn a day, h; the crop's usual when the plan does not say. */
  public static double hours(Plan plan, double usual) {
    Double hours = plan.section("lamp").maybe("hours");
    return hours == null ? usual : Units.H.fromBase(hours);
  }
}
