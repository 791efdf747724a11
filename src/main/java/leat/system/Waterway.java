package leat.system;

import java.util.List;
import java.util.OptionalDouble;
import leat.hydraulics.Derate;
import leat.hydraulics.Line;
import leat.hydraulics.Liquid;
import leat.hydraulics.Manifold;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.MeasuredDerate;
import leat.hydraulics.PipeSection;
import leat.hydraulics.Power;
import leat.hydraulics.PumpCurve;
import leat.hydraulics.Riser;
import leat.plan.Plan;
import leat.plan.Taken;
import leat.plan.Value;
import leat.quantity.MeasuredFlow;
import leat.quantity.Quantity;
import leat.quantity.Units;

/**
 * The water's way of a plan: pump, common pipe and the risers of all towers, with the derate in
 * force. It is solved for a level in the tank; towers of {@code count} n stand as n equal risers.
 */
public final class Waterway {
  /** K of a common pipe that names none: a sharp entrance. */
  private static final double ENTRANCE = 0.5;

  private static final double EXIT = 1.0;

  private final Tower[] towers;
  private final int[] firstRiser;
  private final PumpCurve printed;
  private final Derate believed;
  private final double derate;
  private final Liquid water;
  private final Line common;
  private final int risers;
  private final Value low;
  private final Value full;
  private final Value power;
  private final Value holdUp;
  private final Value checkValve;

  private Waterway(
      Plan plan, Double celsius, Double lift, Derate believed, double derate, Taken taken) {
    List<leat.plan.Section> sections = plan.root().sections("towers");
    if (sections.isEmpty()) {
      throw plan.root().missing("towers");
    }
    this.water = water(celsius, taken);
    this.common = commonPipe(plan.section("pipe"), taken);
    this.towers = new Tower[sections.size()];
    this.firstRiser = new int[towers.length];
    int n = 0;
    for (int t = 0; t < towers.length; t++) {
      leat.plan.Section section = sections.get(t);
      Line line = riser(section, taken);
      double outlet = lift != null ? lift : section.need("outlet");
      towers[t] = Tower.of(section, t, line, outlet, taken);
      firstRiser[t] = n;
      n += towers[t].count();
    }
    this.risers = n;
    this.printed =
        PumpOf.isKnown(plan.section("pump")) ? PumpOf.printed(plan.section("pump")) : null;
    this.believed = believed;
    this.derate = derate;
    this.low = plan.section("tank").value("low");
    this.full = plan.section("tank").value("full");
    this.power = plan.section("pump").value("power");
    this.holdUp = plan.root().value("hold_up");
    this.checkValve = plan.section("pump").value("check_valve", taken);
  }

  private Waterway(Waterway same, Derate believed, double derate) {
    this.towers = same.towers;
    this.firstRiser = same.firstRiser;
    this.printed = same.printed;
    this.water = same.water;
    this.common = same.common;
    this.risers = same.risers;
    this.low = same.low;
    this.full = same.full;
    this.power = same.power;
    this.holdUp = same.holdUp;
    this.checkValve = same.checkValve;
    this.believed = believed;
    this.derate = derate;
  }

  /** The same for a verdict: without {@code derate} and {@code measured} 70 % is left. */
  public static Waterway judged(Plan plan, Taken taken) {
    return judged(plan, DerateOf.forVerdict(plan, taken), taken);
  }

  /** The same with a derate that was found before, on the tower as written. */
  public static Waterway judged(Plan plan, Derate believed, Taken taken) {
    Waterway way = new Waterway(plan, null, null, believed, believed.shareForVerdict(), taken);
    PumpOf.needed(plan.section("pump"));
    return way;
  }

  /** The same for somebody who may have no pump yet; see {@link #hasPump}. */
  public static Waterway ofPipes(Plan plan, Double celsius, Double lift, Taken taken) {
    return PumpOf.isKnown(plan.section("pump"))
        ? of(plan, celsius, lift, taken)
        : pipes(plan, celsius, lift, taken);
  }

  /** Pipes and lifts alone: no derate is solved. */
  public static Waterway pipes(Plan plan, Double celsius, Double lift, Taken taken) {
    return new Waterway(plan, celsius, lift, Derate.notNamed(), 1, taken);
  }

  /** The pump by its printed head, for a trial. */
  static Waterway printed(Plan plan, Double celsius, Double lift, Taken taken) {
    Waterway way = pipes(plan, celsius, lift, taken);
    PumpOf.needed(plan.section("pump"));
    return way;
  }

  /**
   * The same with a temperature and a lift of the user's.
   *
   * @param celsius temperature of the water, or null for the plan's
   * @param lift of every outlet over the water, m, or null to take it from outlet and level
   * @param taken notes the defaults that are taken
   */
  public static Waterway of(Plan plan, Double celsius, Double lift, Taken taken) {
    Waterway printed = printed(plan, celsius, lift, taken);
    Derate believed = DerateOf.of(plan, celsius, lift, taken);
    return new Waterway(printed, believed, believed.share());
  }

  private static Liquid water(Double celsius, Taken taken) {
    if (celsius != null) {
      return Liquid.water(celsius);
    }
    taken.note("water 20 C");
    return Liquid.usualWater();
  }

  private Line commonPipe(leat.plan.Section pipe, Taken taken) {
    return pipe.isGiven()
        ? new Line(
            water,
            PipeOf.of(pipe, ENTRANCE, "K 0.5 for the common pipe: a sharp entrance only", taken))
        : null;
  }

  private Line riser(leat.plan.Section tower, Taken taken) {
    double usual = common == null ? PipeSection.K_WHEN_NOT_NAMED : EXIT;
    String as =
        common == null ? "K 1.5: entrance and exit only" : "K 1 for the riser: its exit only";
    return new Line(water, PipeOf.of(tower.section("riser"), usual, as, taken));
  }

  /** K of the fittings of a {@code pipe} or {@code riser} of a plan, named or taken; no valve. */
  public static double fittingsK(Plan plan, leat.plan.Section pipe, boolean isRiser, Taken taken) {
    double riser = plan.section("pipe").isGiven() ? EXIT : PipeSection.K_WHEN_NOT_NAMED;
    return PipeOf.fittingsK(pipe, isRiser ? riser : ENTRANCE, taken);
  }

  /** The derate that explains a measured flow of all towers together. */
  public MeasuredDerate measure(MeasuredFlow flow) {
    Manifold trial = manifold(flow.level() == null ? full() : flow.level().value());
    if (flow.bucket() != null) {
      return MeasuredDerate.of(
          printed,
          trial,
          flow.bucket().volume().value(),
          flow.bucket().time().value(),
          MeasuredDerate.WATCH);
    }
    return MeasuredDerate.of(printed, trial, flow.flow().value());
  }

  /** The same at the lift the water's way was asked for, whatever the level. */
  public MeasuredDerate measureAtLift(MeasuredFlow flow) {
    return measure(new MeasuredFlow(flow.flow(), flow.bucket(), Quantity.of(0, Units.M)));
  }

  /** Share of the electrical power that arrives in the water, or null when the power is unknown. */
  public Double efficiency(ManifoldFlow flows) {
    return power.isKnown()
        ? Double.valueOf(
            Power.efficiency(
                Power.hydraulic(water.density(), flows.totalFlow(), flows.pumpHead()),
                power.need()))
        : null;
  }

  /** Number of kinds of tower. */
  public int towers() {
    return towers.length;
  }

  /** A kind of tower, as in the plan. */
  public Tower tower(int t) {
    return towers[t];
  }

  /** Name of a tower: the plan's, else its number. */
  public String name(int t) {
    return towers[t].name();
  }

  /** How many equal towers of this kind there are. */
  public int count(int t) {
    return towers[t].count();
  }

  /** Whether a check valve keeps the risers full. */
  public boolean checkValve() {
    return checkValve.orTaken() > 0;
  }

  /** What the running towers were measured to hold above the tank, m3. */
  public Value holdUp() {
    return holdUp;
  }

  /** Index of the first riser of a tower in the manifold. */
  public int riserOf(int t) {
    return firstRiser[t];
  }

  /** Whether a curve is known: without one only pipes and lifts are. */
  public boolean hasPump() {
    return printed != null;
  }

  /** Electrical power of the pump, W. */
  public Value power() {
    return power;
  }

  /** Flow in the common pipe when every tower takes {@code each}, m3/s. */
  public double together(double each) {
    return risers * each;
  }

  /** Indices of all risers of a tower in the manifold. */
  public int[] risersOf(int t) {
    int[] all = new int[towers[t].count()];
    for (int k = 0; k < all.length; k++) {
      all[k] = firstRiser[t] + k;
    }
    return all;
  }

  /** Pump as printed, at its speed. */
  public PumpCurve printed() {
    return printed;
  }

  /** Share of the printed head in force. */
  public double derate() {
    return derate;
  }

  /** How much of the printed head is believed, and why. */
  public Derate believed() {
    return believed;
  }

  /** Pump with its derate. */
  public PumpCurve curve() {
    return printed.derated(derate);
  }

  /** The water. */
  public Liquid water() {
    return water;
  }

  /** The common pipe, or null. */
  public Line common() {
    return common;
  }

  /** Riser of a tower over a level, m. */
  public Riser riser(int t, double level) {
    return new Riser(towers[t].riser(), towers[t].outlet() - level);
  }

  /** All risers over a level, m. */
  public Manifold manifold(double level) {
    Riser[] all = new Riser[risers];
    int i = 0;
    for (int t = 0; t < towers.length; t++) {
      Riser riser = riser(t, level);
      for (int k = 0; k < towers[t].count(); k++) {
        all[i++] = riser;
      }
    }
    return new Manifold(common, all);
  }

  /** Flows with the tank at a level, m. */
  public ManifoldFlow flows(double level) {
    return manifold(level).solve(curve());
  }

  /** The same with another share of the printed head left, -. */
  public ManifoldFlow flowsAt(double share, double level) {
    return manifold(level).solve(printed.derated(share));
  }

  /** Level of the refill mark, m. */
  public double low() {
    return low.need();
  }

  /** Level when full, m. */
  public double full() {
    return full.need();
  }

  /** Flow a tower is wanted to get, or empty. */
  public OptionalDouble wanted(int t) {
    return towers[t].wanted().orEmpty();
  }

  /**
   * Flows wanted of all risers, m3/s, in the order of the manifold.
   *
   * @param every the same for every tower, or null for each tower's own; refused when one lacks it
   */
  public double[] wants(Double every) {
    double[] wants = new double[risers];
    for (int t = 0; t < towers.length; t++) {
      double want = every != null ? every : towers[t].wanted().need();
      for (int k = 0; k < towers[t].count(); k++) {
        wants[firstRiser[t] + k] = want;
      }
    }
    return wants;
  }
}
