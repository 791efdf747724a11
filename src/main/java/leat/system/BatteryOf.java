package leat.system;

import leat.energy.Battery;
import leat.energy.Inverter;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;

/** The battery for a power cut, and what stands between it and the pump. */
public final class BatteryOf {
  private BatteryOf() {}

  /** The battery's figures. */
  public static Battery of(Plan plan, Taken taken) {
    Section backup = plan.section("backup");
    double volts = backup.need("battery");
    boolean lead = "lead".equals(backup.word("chemistry", taken));
    double depth =
        lead
            ? backup.getOr("depth", Battery.LEAD_DEPTH, "50 % of the battery used", taken)
            : backup.get("depth", taken);
    return new Battery(
        volts,
        depth,
        backup.get("reserve", taken),
        lead ? Battery.FLOODED_PEUKERT : Battery.LITHIUM_PEUKERT,
        lead ? Battery.LEAD_RATED_S : Battery.LITHIUM_RATED_S);
  }

  /** Share of a charge that the battery gives back. */
  public static double efficiency(Plan plan, Taken taken) {
    return "lead".equals(plan.section("backup").word("chemistry", taken))
        ? leat.energy.Solar.LEAD_EFFICIENCY
        : leat.energy.Solar.LITHIUM_EFFICIENCY;
  }

  /** The inverter of a mains pump; nothing for a pump on direct current. */
  public static Inverter inverter(Plan plan, Taken taken) {
    if (DrawOf.isDirect(plan)) {
      return Inverter.none();
    }
    Section backup = plan.section("backup");
    return new Inverter(
        backup.getOr("inverter", Inverter.USUAL_EFFICIENCY, "inverter 85 %", taken),
        backup.getOr("idle", Inverter.USUAL_IDLE_W, "inverter idle 4 W", taken));
  }

  /** Charge of a battery as the plan has it (Ah), in C. */
  public static double coulombs(double ampereHours) {
    return Units.H.toBase(ampereHours);
  }

  /** Charge in C as a battery's label has it, Ah. */
  public static double ampereHours(double coulombs) {
    return Units.H.fromBase(coulombs);
  }
}
