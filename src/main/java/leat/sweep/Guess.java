package leat.sweep;

import java.util.ArrayList;
import java.util.List;
import leat.plan.Plan;
import leat.plan.Refused;

/**
 * A number of a plan that is guessed and the range it may have: its low and high end in the base
 * unit of its key.
 *
 * @param path key path
 * @param low low end
 * @param high high end
 * @param source where the range comes from
 */
public record Guess(String path, double low, double high, String source) {
  private static final String PRACTICE = "common practice, no source";

  /** Printed heads: sheet hydraulics.md, pumps as bought. */
  private static final double DERATE_LOW = 0.70;

  private static final double DERATE_HIGH = 0.85;

  /** Handbook K of fittings scatter by so much, -. */
  private static final double K_DOUBT = 0.30;

  /** Smooth tube new, and with a season's slime: factors on the wall's roughness, -. */
  private static final double ROUGHNESS_LOW = 0.5;

  private static final double ROUGHNESS_HIGH = 10;

  /** 80 % interval of a thirst that was not measured, and of one that was: season.md section 9. */
  private static final double[] THIRST = {0.66, 1.51};

  /** Lengths with a tape measure on a bent tube, -. */
  private static final double TAPE = 0.05;

  /** Bore of a tube against its print, -: sheet hydraulics-bores.md, tolerances of hoses. */
  private static final double BORE = 0.03;

  /** The guesses of a plan: what it states and has not measured. */
  public static List<Guess> of(Plan plan) {
    List<Guess> all = new ArrayList<>();
    if (!plan.section("pump").has("measured")) {
      String source = "70 to 85 % of the printed head, " + PRACTICE;
      all.add(new Guess("pump.derate", DERATE_LOW, DERATE_HIGH, source));
    }
    scaled(
        all, plan, "towers[*].riser.k", 1 - K_DOUBT, 1 + K_DOUBT, "handbook K of fittings, 30 %");
    scaled(
        all,
        plan,
        "towers[*].riser.roughness",
        ROUGHNESS_LOW,
        ROUGHNESS_HIGH,
        "slime, " + PRACTICE);
    scaled(all, plan, "towers[*].riser.length", 1 - TAPE, 1 + TAPE, "tape measure, " + PRACTICE);
    scaled(all, plan, "towers[*].riser.bore", 1 - BORE, 1 + BORE, "tolerance of hoses");
    scaled(all, plan, "thirst", THIRST[0], THIRST[1], "80 % of an unmeasured thirst");
    scaled(all, plan, "wetting", ROUGHNESS_LOW, 2, PRACTICE);
    return all;
  }

  private static void scaled(
      List<Guess> all, Plan plan, String path, double low, double high, String source) {
    Double value = value(plan, path);
    if (value != null && value > 0) {
      all.add(new Guess(path, value * low, value * high, source));
    }
  }

  /** The number at a path; for every tower the first one's. Null where the plan has none. */
  private static Double value(Plan plan, String path) {
    try {
      return plan.slot(path).value(plan);
    } catch (Refused e) {
      // a plan without towers has none of their guesses
      return null;
    }
  }
}
