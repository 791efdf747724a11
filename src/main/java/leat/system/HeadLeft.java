package leat.system;

import java.util.OptionalDouble;
import leat.hydraulics.MeasuredDerate;
import leat.hydraulics.PumpCurve;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.MeasuredFlow;

/**
 * The share of its printed head that a plan's pump has left. A measured flow is explained once, on
 * the tower as the plan file has it; the share stays with the pump when another riser, lift or
 * curve is tried.
 *
 * @param share by which the figures are made, -
 * @param from where it comes from
 * @param measured what the bucket says; null without one
 */
public record HeadLeft(double share, From from, MeasuredDerate measured) {
  /** What many pumps give: verdicts take it where nothing is known. */
  public static final double USUAL = PumpCurve.USUAL_DERATE_WORN;

  /** The same in the words of {@code Taken:}. */
  public static final String ASSUMED = "70 % of the printed head, as many pumps give";

  /** Where a share comes from. */
  public enum From {
    /** A measured flow. */
    MEASURED,
    /** A measured flow that no share of 100 % or less explains: the printed head stands. */
    UNEXPLAINED,
    /** Nothing came out of the bucket: the share is a ceiling. */
    NOTHING_CAME,
    /** The plan's {@code derate}. */
    GIVEN,
    /** Neither is told: the printed head. */
    PRINTED,
    /** Neither is told, and a verdict hangs on it: {@link #USUAL}. */
    ASSUMED
  }

  /** Of a plan; the printed head, noted as taken, where it tells neither share nor flow. */
  public static HeadLeft of(Plan plan) {
    return of(plan, null, null);
  }

  /** The same for a verdict, which takes {@link #USUAL} where the plan tells neither. */
  public static HeadLeft judged(Plan plan) {
    Section pump = plan.section("pump");
    if (pump.has("measured") || pump.has("derate")) {
      return of(plan);
    }
    pump.took(ASSUMED);
    return new HeadLeft(USUAL, From.ASSUMED, null);
  }

  /** The same; temperature and lift of the user's tell of the trial only when there is no file. */
  static HeadLeft of(Plan plan, Double celsius, Double lift) {
    Section pump = plan.section("pump");
    if (pump.has("measured")) {
      return explained(trial(plan, celsius, lift));
    }
    boolean given = pump.has("derate");
    return new HeadLeft(pump.get("derate"), given ? From.GIVEN : From.PRINTED, null);
  }

  private static MeasuredDerate trial(Plan plan, Double celsius, Double lift) {
    if (!plan.isFromFile()) {
      return trialOn(plan, celsius, lift);
    }
    try {
      return trialOn(plan.asWritten(), null, null);
    } catch (Refused e) {
      // The file alone does not tell its tower; flags complete it.
      return trialOn(plan, celsius, lift);
    }
  }

  private static MeasuredDerate trialOn(Plan plan, Double celsius, Double lift) {
    MeasuredFlow flow = (MeasuredFlow) plan.section("pump").needRaw("measured");
    Waterway way = Waterway.printed(plan, celsius, lift);
    return lift == null ? way.measure(flow) : way.measureAtLift(flow);
  }

  private static HeadLeft explained(MeasuredDerate found) {
    switch (found.status()) {
      case VALUE:
        return new HeadLeft(found.derate().getAsDouble(), From.MEASURED, found);
      case NO_FLOW:
        double ceiling = found.high().getAsDouble();
        return new HeadLeft(ceiling > 0 ? Math.min(1, ceiling) : 1, From.NOTHING_CAME, found);
      default:
        return new HeadLeft(1, From.UNEXPLAINED, found);
    }
  }

  /** The share, or empty when only a ceiling is known. */
  public OptionalDouble known() {
    return from == From.NOTHING_CAME ? OptionalDouble.empty() : OptionalDouble.of(share);
  }

  /** The ceiling over the share when nothing came, or empty. */
  public OptionalDouble ceiling() {
    return from == From.NOTHING_CAME ? measured.high() : OptionalDouble.empty();
  }

  /** Whether a measured flow explains it. */
  public boolean isMeasured() {
    return from == From.MEASURED;
  }

  /** Whether neither share nor flow is told. */
  public boolean isUntold() {
    return from == From.PRINTED || from == From.ASSUMED;
  }
}
