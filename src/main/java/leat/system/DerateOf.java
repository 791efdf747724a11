package leat.system;

import leat.hydraulics.Derate;
import leat.hydraulics.MeasuredDerate;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.MeasuredFlow;

/**
 * The share of its printed head that a plan's pump has left. A measured flow is explained once, on
 * the tower as the plan file has it; the share stays with the pump when another riser, lift or
 * curve is tried.
 */
public final class DerateOf {
  /** What a verdict takes where the plan tells nothing, in the words of {@code Taken:}. */
  public static final String ASSUMED = "70 % of the printed head, as many pumps give";

  private DerateOf() {}

  /** Of a plan; the printed head, noted as taken, where it tells neither share nor flow. */
  public static Derate of(Plan plan, Taken taken) {
    return of(plan, null, null, taken);
  }

  /** The same for a verdict, which takes and notes 70 % where the plan tells neither. */
  public static Derate forVerdict(Plan plan, Taken taken) {
    Section pump = plan.section("pump");
    if (pump.has("measured") || pump.has("derate")) {
      return of(plan, taken);
    }
    taken.note(ASSUMED);
    return Derate.notNamed();
  }

  /** The same; temperature and lift of the user's tell of the trial only when there is no file. */
  static Derate of(Plan plan, Double celsius, Double lift, Taken taken) {
    Section pump = plan.section("pump");
    if (pump.has("measured")) {
      return Derate.of(trial(plan, celsius, lift, taken));
    }
    double share = pump.get("derate", taken);
    return pump.has("derate") ? Derate.named(share) : Derate.notNamed();
  }

  private static MeasuredDerate trial(Plan plan, Double celsius, Double lift, Taken taken) {
    if (!plan.isFromFile()) {
      return trialOn(plan, celsius, lift, taken);
    }
    try {
      // The file's own tower is another one than is asked for: what it takes is not told.
      return trialOn(plan.asWritten(), null, null, new Taken());
    } catch (Refused e) {
      // The file alone does not tell its tower; flags complete it.
      return trialOn(plan, celsius, lift, taken);
    }
  }

  private static MeasuredDerate trialOn(Plan plan, Double celsius, Double lift, Taken taken) {
    MeasuredFlow flow = (MeasuredFlow) plan.section("pump").needRaw("measured");
    Waterway way = Waterway.printed(plan, celsius, lift, taken);
    return lift == null ? way.measure(flow) : way.measureAtLift(flow);
  }
}
