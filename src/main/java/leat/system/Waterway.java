package leat.system;

import java.util.List;
import java.util.OptionalDouble;
import leat.hydraulics.Line;
import leat.hydraulics.Liquid;
import leat.hydraulics.Manifold;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.MeasuredDerate;
import leat.hydraulics.Power;
import leat.hydraulics.PumpCurve;
import leat.hydraulics.Riser;
import leat.hydraulics.Section;
import leat.plan.Plan;
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
  private static final double USUAL_CELSIUS = 20;

  private final Plan plan;
  private final List<leat.plan.Section> towers;
  private final int[] firstRiser;
  private final PumpCurve printed;
  private final HeadLeft left;
  private final Liquid water;
  private final Line common;
  private final Line[] lines;
  private final double[] outlets;

  private Waterway(Plan plan, Double celsius, double[] lifts, HeadLeft left) {
    this.plan = plan;
    this.towers = plan.root().sections("towers");
    this.water = Liquid.water(temperature(plan, celsius));
    this.common = commonPipe();
    int n = 0;
    this.firstRiser = new int[towers.size()];
    for (int t = 0; t < firstRiser.length; t++) {
      firstRiser[t] = n;
      n += count(t);
    }
    if (n == 0) {
      throw plan.root().missing("towers");
    }
    this.lines = new Line[n];
    this.outlets = new double[n];
    for (int t = 0; t < firstRiser.length; t++) {
      Line line = riser(towers.get(t));
      double outlet = lifts != null ? lifts[0] : towers.get(t).need("outlet");
      for (int k = 0; k < count(t); k++) {
        lines[firstRiser[t] + k] = line;
        outlets[firstRiser[t] + k] = outlet;
      }
    }
    this.printed = PumpOf.printed(plan.section("pump"));
    this.left = left;
  }

  /** The water's way of a plan. */
  public static Waterway of(Plan plan) {
    return new Waterway(plan, null, null, HeadLeft.of(plan));
  }

  /**
   * The same for a verdict: without {@code derate} and {@code measured} the usual share is left.
   */
  public static Waterway judged(Plan plan) {
    return new Waterway(plan, null, null, HeadLeft.judged(plan));
  }

  /** The same with a share of the pump's head that is known already. */
  public static Waterway of(Plan plan, HeadLeft left) {
    return new Waterway(plan, null, null, left);
  }

  /** The pump by its printed head, for a trial. */
  static Waterway printed(Plan plan, Double celsius, Double lift) {
    return new Waterway(plan, celsius, lift == null ? null : new double[] {lift}, null);
  }

  /**
   * The same with a temperature and a lift of the user's.
   *
   * @param celsius temperature of the water, or null for the plan's
   * @param lift of every outlet over the water, m, or null to take it from outlet and level
   */
  public static Waterway of(Plan plan, Double celsius, Double lift) {
    return new Waterway(
        plan, celsius, lift == null ? null : new double[] {lift}, HeadLeft.of(plan, celsius, lift));
  }

  private static double temperature(Plan plan, Double celsius) {
    if (celsius != null) {
      return celsius;
    }
    plan.taken().note("water 20 C");
    return USUAL_CELSIUS;
  }

  private Line commonPipe() {
    leat.plan.Section pipe = plan.section("pipe");
    return pipe.isGiven()
        ? new Line(
            water, PipeOf.of(pipe, ENTRANCE, "K 0.5 for the common pipe: a sharp entrance only"))
        : null;
  }

  private Line riser(leat.plan.Section tower) {
    double usual = common == null ? Section.K_WHEN_NOT_NAMED : EXIT;
    String taken =
        common == null ? "K 1.5: entrance and exit only" : "K 1 for the riser: its exit only";
    return new Line(water, PipeOf.of(tower.section("riser"), usual, taken));
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
    Double electric = plan.section("pump").maybe("power");
    if (electric == null) {
      return null;
    }
    return Power.efficiency(
        Power.hydraulic(water.density(), flows.totalFlow(), flows.pumpHead()), electric);
  }

  /** The plan. */
  public Plan plan() {
    return plan;
  }

  /** Number of kinds of tower. */
  public int towers() {
    return firstRiser.length;
  }

  /** A kind of tower, as in the plan. */
  public leat.plan.Section tower(int t) {
    return towers.get(t);
  }

  /** Name of a tower: the plan's, else its number. */
  public String name(int t) {
    String own = towers.get(t).text("name");
    return own == null ? "tower " + (t + 1) : own;
  }

  /** How many equal towers of this kind there are. */
  public int count(int t) {
    return towers.get(t).has("count") ? towers.get(t).count("count") : 1;
  }

  /** Index of the first riser of a tower in the manifold. */
  public int riserOf(int t) {
    return firstRiser[t];
  }

  /** Pump as printed, at its speed. */
  public PumpCurve printed() {
    return printed;
  }

  /** Share of the printed head in force. */
  public double derate() {
    return left.share();
  }

  /** Share of the printed head that is left, and where it comes from. */
  public HeadLeft left() {
    return left;
  }

  /** Pump with its derate. */
  public PumpCurve curve() {
    return printed.derated(left.share());
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
    int i = firstRiser[t];
    return new Riser(lines[i], outlets[i] - level);
  }

  /** All risers over a level, m. */
  public Manifold manifold(double level) {
    Riser[] risers = new Riser[lines.length];
    for (int i = 0; i < risers.length; i++) {
      risers[i] = new Riser(lines[i], outlets[i] - level);
    }
    return new Manifold(common, risers);
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
    return plan.section("tank").need("low");
  }

  /** Level when full, m. */
  public double full() {
    return plan.section("tank").need("full");
  }

  /** Flow a tower is wanted to get, or empty. */
  public OptionalDouble wanted(int t) {
    Double wanted = towers.get(t).maybe("wanted");
    return wanted == null ? OptionalDouble.empty() : OptionalDouble.of(wanted);
  }
}
