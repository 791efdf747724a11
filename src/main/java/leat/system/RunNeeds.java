package leat.system;

import java.util.List;
import leat.energy.DryLimit;
import leat.energy.LeastRun;
import leat.energy.Timing;
import leat.hydraulics.Fill;
import leat.hydraulics.Film;
import leat.hydraulics.ManifoldFlow;
import leat.plan.Plan;
import leat.plan.Section;

/**
 * The least run of a plan: at the refill mark, for the tower that takes longest, the time to fill
 * its riser, for the film to come down its modules among pots and roots, and to wet the lowest pot.
 */
public final class RunNeeds {
  private final Waterway way;
  private final ManifoldFlow low;
  private int slowest = -1;
  private int dry = -1;
  private LeastRun least;
  private boolean filmDoubtful;

  private RunNeeds(Waterway way) {
    this.way = way;
    this.low = way.flows(way.low());
    way.plan().taken().note("film 3 times slower among pots and roots");
    for (int t = 0; t < way.towers(); t++) {
      if (low.dry(way.riserOf(t))) {
        dry = dry < 0 ? t : dry;
        continue;
      }
      LeastRun own = least(t);
      if (least == null || own.seconds() > least.seconds()) {
        least = own;
        slowest = t;
      }
    }
  }

  /** The needs of a plan's towers; refused with the key that is missing. */
  public static RunNeeds of(Waterway way) {
    return new RunNeeds(way);
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
              && !tower.sections("modules").isEmpty();
    }
    return known;
  }

  private LeastRun least(int t) {
    double flow = low.flow(way.riserOf(t));
    double fill =
        way.plan().section("pump").yes("check_valve")
            ? 0
            : Fill.simpleTime(way.riser(t, way.low()).volumeAboveLevel(), flow);
    return new LeastRun(fill, filmTime(t, flow), way.plan().root().get("wetting"));
  }

  private double filmTime(int t, double flow) {
    List<Section> modules = way.tower(t).sections("modules");
    if (modules.isEmpty()) {
      throw way.tower(t).missing("modules");
    }
    double time = 0;
    for (int m = 0; m < modules.size(); m++) {
      Section module = modules.get(m);
      double inside = module.need("diameter") - 2 * module.need("wall");
      Film film = Film.of(flow, inside, 1, height(modules, m), way.water());
      filmDoubtful |= film.indicationOnly();
      time += LeastRun.USUAL_DELAY_FACTOR * film.transitTime();
    }
    return time;
  }

  /** Height of all modules of a kind in the stack; the topmost shows its whole height. */
  private static double height(List<Section> modules, int m) {
    Section module = modules.get(m);
    Double overlap = module.maybe("overlap");
    double sits = overlap == null ? 0 : overlap;
    double stacked = module.need("count") * (module.need("height") - sits);
    return m == modules.size() - 1 ? stacked + sits : stacked;
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

  /** Whether the pump's flow was measured. */
  public boolean isMeasured() {
    return way.isMeasured();
  }

  /** The longest rest by day, s: the plan's, else common practice, which is noted. */
  public static double dryDay(Plan plan) {
    return plan.section("dry_limit").get("day");
  }

  /** Whether a single timing rests longer than the plan, or common practice, allows by day. */
  public static boolean restsTooLong(Plan plan, Timing timing) {
    Double own = plan.section("dry_limit").maybe("day");
    return timing.restS() > (own == null ? DryLimit.USUAL_DAY_S : own);
  }

  /** The longest rests of a plan. */
  public static DryLimit dryLimit(Plan plan) {
    Section limit = plan.section("dry_limit");
    Double alarm = limit.maybe("alarm");
    return new DryLimit(
        limit.get("day"), limit.get("night"), alarm == null ? DryLimit.USUAL_ALARM_S : alarm);
  }
}
