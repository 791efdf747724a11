package leat.system;

import java.util.List;
import leat.level.CapSensor;
import leat.level.Tank;
import leat.log.LogLimits;
import leat.log.LogSystem;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;

/** What the log of a plan's system is read against, and the thresholds it is judged by. */
public final class LogOf {
  private static final int MINUTE_S = 60;
  private static final int DAY_MIN = 1440;

  private LogOf() {}

  /**
   * The system.
   *
   * @param counts whether readings are counts of the ADC
   * @param taken notes the defaults that are taken
   */
  public static LogSystem of(Plan plan, boolean counts, Taken taken) {
    Section tank = plan.section("tank");
    Tank shape = TankOf.isKnown(tank) ? TankOf.of(tank, taken) : null;
    Double low = SenderOf.lowVolume(plan, taken);
    Section cap = plan.section("cap_sensor");
    boolean sees = cap.has("wet") && cap.has("dry");
    Section target = plan.section("target");
    double[] runs = runs(plan.root());
    return new LogSystem(
        SenderOf.of(plan, taken),
        counts ? SenderOf.divider(plan.section("sender"), taken) : null,
        ZoneOf.zone(plan, taken),
        known(low),
        volume(shape, tank, "intake"),
        volume(shape, tank, "rim_overflow"),
        rainArea(plan, tank),
        sees ? new CapSensor((int) cap.need("wet"), (int) cap.need("dry")) : null,
        sees ? dryLimit(plan, taken) : Double.NaN,
        longestRun(plan.root()),
        runs[0],
        runs[1],
        known(plan.root().maybe("hold_up")),
        known(target.maybe("ec_low")),
        known(target.maybe("ec_high")),
        plan.section("log").count("keeper", taken) * MINUTE_S);
  }

  /** All that falls on the area, unless the plan says which share of it arrives. */
  private static double rainArea(Plan plan, Section tank) {
    if (SiteOf.hasRoof(plan)) {
      return 0;
    }
    Double share = tank.maybe("rain_share");
    return share == null ? known(tank.maybe("rain_area")) : share * known(tank.maybe("rain_area"));
  }

  private static double known(Double value) {
    return value == null ? Double.NaN : value;
  }

  private static double volume(Tank shape, Section tank, String mark) {
    return shape == null || !tank.has(mark) ? Double.NaN : shape.volume(tank.need(mark));
  }

  /**
   * The alarm's own limit, else the longest rest of a night, or of the timing where it is longer.
   */
  private static double dryLimit(Plan plan, Taken taken) {
    Section limit = plan.section("dry_limit");
    return limit.has("alarm")
        ? limit.need("alarm")
        : Math.max(limit.get("night", taken), RunNeeds.longestRest(plan));
  }

  private static double longestRun(Section root) {
    double run = 0;
    for (Section one : root.sections("timing")) {
      run = Math.max(run, known(one.maybe("run")));
    }
    return run == run ? run : 0;
  }

  /**
   * Mean run, s, and the part of the day in which the pump runs: entries with hours have theirs,
   * those without share the rest.
   */
  private static double[] runs(Section root) {
    List<Section> entries = root.sections("timing");
    int taken = 0;
    for (int i = 0; i < entries.size(); i++) {
      taken += minutes(entries.get(i), 0);
    }
    double runs = 0;
    double running = 0;
    for (int i = 0; i < entries.size(); i++) {
      Section one = entries.get(i);
      double run = known(one.maybe("run"));
      double cycle = run + known(one.maybe("rest"));
      if (cycle > 0 && run > 0) {
        double count = MINUTE_S * minutes(one, Math.max(0, DAY_MIN - taken)) / cycle;
        runs += count;
        running += count * run;
      }
    }
    return new double[] {runs > 0 ? running / runs : 0, running / (MINUTE_S * DAY_MIN)};
  }

  private static int minutes(Section entry, int without) {
    if (!entry.has("from") || !entry.has("to")) {
      return without;
    }
    int length = (Integer) entry.needRaw("to") - (Integer) entry.needRaw("from");
    return length > 0 ? length : length + DAY_MIN;
  }

  /** Thresholds of the plan; the usual ones where it is silent. */
  public static LogLimits limits(Plan plan) {
    Section own = plan.section("log").section("thresholds");
    LogLimits d = LogLimits.DEFAULT;
    return new LogLimits(
        or(own, "disorder", d.disorderS()),
        or(own, "rest", d.restS()),
        or(own, "clock_jump", d.clockJumpS()),
        or(own, "gap", d.gapIntervals()),
        or(own, "fault", d.faultS()),
        own.countOr("refill_steps", d.refillSteps()),
        or(own, "refill_within", d.refillS()),
        or(own, "change_above", d.changeHigh()),
        or(own, "change_below", d.changeLow()),
        or(own, "change_fall", d.changeFallS()),
        or(own, "change_refill", d.changeRefillS()),
        or(own, "rain_join", d.rainJoinS()),
        or(own, "rain_least", d.rainLeastSteps()),
        or(own, "rain_ec", d.rainEcFall()),
        or(own, "leak_factor", d.leakFactor()),
        or(own, "leak_steps", d.leakSteps()),
        or(own, "leak_join", d.leakJoinS()),
        or(own, "dry", d.dryShare()),
        or(own, "dry_intervals", d.dryIntervals()),
        or(own, "stuck_steps", d.stuckSteps()),
        or(own, "stuck_jump_steps", d.stuckJumpSteps()),
        own.countOr("stuck_jump", d.stuckJump()),
        or(own, "wilt", d.wiltS()),
        own.countOr("use_days", d.useDays()),
        own.countOr("use_least_days", d.useLeastDays()),
        own.countOr("weekday_days", d.weekdayDays()),
        clock(own, "day_from", d.dayFromS()),
        clock(own, "day_to", d.dayToS()),
        or(own, "night", d.nightWeight()),
        own.countOr("ec_rows", d.ecRows()),
        or(own, "silent", d.silentIntervals()));
  }

  private static double or(Section own, String key, double usual) {
    return own.has(key) ? own.need(key) : usual;
  }

  private static double clock(Section own, String key, double usual) {
    return own.has(key) ? own.need(key) * MINUTE_S : usual;
  }
}
