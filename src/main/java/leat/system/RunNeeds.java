package leat.system;

import java.util.List;
import leat.energy.DryLimit;
import leat.energy.LeastRun;
import leat.energy.Timing;
import leat.hydraulics.Derate;
import leat.hydraulics.Film;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.PumpCurve;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;

/**
 * The least run of a plan: at the refill mark, for the tower that takes longest, the time to fill
 * its riser, for the film to come down its modules among pots and roots, and to wet the lowest pot.
 */
public final class RunNeeds {
  private final Waterway way;
  private final ManifoldFlow low;
  private final double wetting;
  private int slowest = -1;
  private int dry = -1;
  private LeastRun least;
  private boolean filmDoubtful;

  private RunNeeds(Plan plan, Waterway way, ManifoldFlow low, Taken taken) {
    this.way = way;
    this.low = low;
    this.wetting = plan.root().get("wetting", taken);
    taken.note("film 3 times slower among pots and roots");
    for (int t = 0; t < way.towers(); t++) {
      TowerAt tower = new TowerAt(way, t, low);
      if (!tower.reaches()) {
        dry = dry < 0 ? t : dry;
        continue;
      }
      LeastRun own = least(tower);
      if (least == null || own.seconds() > least.seconds()) {
        least = own;
        slowest = t;
      }
    }
  }

  /** The needs of a plan's towers; refused with the key that is missing. */
  public static RunNeeds of(Plan plan, Taken taken) {
    Waterway way = Waterway.judged(plan, taken);
    return of(plan, way, set(way, taken), taken);
  }

  /** Flows at the refill mark, the plan's valves set to what is wanted. */
  private static ManifoldFlow set(Waterway way, Taken taken) {
    return SetValves.of(way, taken).low(way);
  }

  /**
   * The same for a proposal, which shall still water the towers when the pump turns out weaker than
   * its plan says: one that nobody measured is taken at {@link PumpCurve#USUAL_DERATE_WORN} of its
   * printed head, where that reaches every top.
   */
  public static RunNeeds forProposal(Plan plan, Taken taken) {
    Waterway way = Waterway.judged(plan, taken);
    Derate believed = way.believed();
    if (believed.kind() == Derate.Kind.NAMED && believed.share() > PumpCurve.USUAL_DERATE_WORN) {
      Waterway worn = Waterway.judged(plan, Derate.named(PumpCurve.USUAL_DERATE_WORN), taken);
      RunNeeds needs = of(plan, worn, set(worn, taken), taken);
      if (needs.dryTower() == null) {
        taken.note(DerateOf.ASSUMED);
        return needs;
      }
    }
    return of(plan, way, set(way, taken), taken);
  }

  /** The same with the flows at the refill mark solved before. */
  public static RunNeeds of(Plan plan, Waterway way, ManifoldFlow low, Taken taken) {
    return new RunNeeds(plan, way, low, taken);
  }

  /** Whether the plan says enough of pump, tank and towers. */
  public static boolean isKnown(Plan plan) {
    List<Section> towers = plan.root().sections("towers");
    boolean known =
        PumpOf.isKnown(plan.section("pump"))
            && plan.section("tank").has("low")
            && !towers.isEmpty();
    for (int t = 0; t < towers.size(); t++) {
      Section tower = towers.get(t);
      known &=
          tower.has("outlet")
              && tower.section("riser").has("bore")
              && tower.section("riser").has("length")
              && modulesKnown(tower.sections("modules"));
    }
    return known;
  }

  private static boolean modulesKnown(List<Section> modules) {
    boolean known = !modules.isEmpty() && modules.get(0).has("diameter");
    for (int m = 0; m < modules.size(); m++) {
      known &= modules.get(m).has("height");
    }
    return known;
  }

  private LeastRun least(TowerAt tower) {
    tower.stack().diameter().need();
    Film film = tower.film();
    filmDoubtful |= film.indicationOnly();
    return LeastRun.of(
        tower.fillTime().getAsDouble(),
        film.height(),
        film.meanSpeed(),
        LeastRun.USUAL_DELAY_FACTOR,
        wetting);
  }

  /** The least run; null when no tower gets water. */
  public LeastRun least() {
    return least;
  }

  /** Name of the tower it comes from. */
  public String tower() {
    return way.name(slowest);
  }

  /** Flow of that tower at the refill mark, m3/s. */
  public double flow() {
    return low.flow(way.riserOf(slowest));
  }

  /** Name of a tower that gets no water at the refill mark, or null. */
  public String dryTower() {
    return dry < 0 ? null : way.name(dry);
  }

  /** Whether a film is so fast that its time is an indication only. */
  public boolean filmDoubtful() {
    return filmDoubtful;
  }

  /** How much of the pump's printed head is believed, and why. */
  public Derate believed() {
    return way.believed();
  }

  /** Whether a bucket has found the share of the printed head. */
  public boolean isMeasured() {
    return way.believed().kind() == Derate.Kind.MEASURED;
  }

  /** Share of the printed head by which the flow is solved, -. */
  public double share() {
    return way.believed().shareForVerdict();
  }

  /** The longest rest by day, s: the plan's, else common practice, which is noted. */
  public static double dryDay(Plan plan, Taken taken) {
    return plan.section("dry_limit").get("day", taken);
  }

  /** Whether a single timing rests longer than the plan, or common practice, allows by day. */
  public static boolean restsTooLong(Plan plan, Timing timing) {
    Double own = plan.section("dry_limit").maybe("day");
    return timing.restS() > (own == null ? DryLimit.USUAL_DAY_S : own);
  }

  /** The longest rests of a plan. */
  public static DryLimit dryLimit(Plan plan, Taken taken) {
    Section limit = plan.section("dry_limit");
    Double alarm = limit.maybe("alarm");
    return new DryLimit(
        limit.get("day", taken),
        limit.get("night", taken),
        alarm == null ? DryLimit.usualAlarmS(longestRest(plan)) : alarm);
  }

  /** Longest rest of the plan's timings, s; 0 without one. */
  public static double longestRest(Plan plan) {
    double longest = 0;
    for (Section one : plan.root().sections("timing")) {
      Double rest = one.maybe("rest");
      longest = rest == null ? longest : Math.max(longest, rest);
    }
    return longest;
  }
}
