package leat.system;

import leat.climate.DailyLight;
import leat.climate.Lamp;
import leat.climate.LightMeter;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;

/** What is between sky and plants in a plan, and its lamp. */
public final class LightOf {
  private LightOf() {}

  /** Light at the plants of so much in the open, mol/m2 a day. */
  public static double inside(Plan plan, double molM2, Taken taken) {
    Section light = plan.section("site").section("light");
    return DailyLight.shadedMolM2(
        molM2, light.get("transmission", taken), light.get("shade", taken));
  }

  /** Whether the plan has a lamp. */
  public static boolean hasLamp(Plan plan) {
    return plan.section("lamp").isGiven();
  }

  /** The lamp; its power is NaN when its size is asked for. */
  public static Lamp lamp(Plan plan, Taken taken) {
    Section lamp = plan.section("lamp");
    Double watts = lamp.maybe("power");
    return new Lamp(
        watts == null ? Double.NaN : watts,
        efficacy(lamp, taken),
        lamp.getOr(
            "share", Lamp.ROUND_TOWER, "half of the lamp's light lands on the plants", taken),
        lamp.need("area"));
  }

  private static double efficacy(Section lamp, Taken taken) {
    Double lumens = lamp.maybe("lumens");
    if (lumens == null) {
      return lamp.get("efficacy", taken);
    }
    taken.note("70 lx of a white lamp are 1 umol/m2 s");
    return Lamp.ofLumenUmolJ(lumens, LightMeter.WHITE_LED);
  }

  /** Longest time it may burn a day, h; the crop's usual when the plan does not say. */
  public static double hours(Plan plan, double usual) {
    Double hours = plan.section("lamp").maybe("hours");
    return hours == null ? usual : Units.H.fromBase(hours);
  }
}
