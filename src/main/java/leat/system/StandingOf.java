package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.level.Tank;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.plan.Value;
import leat.stability.Assembly;
import leat.stability.Column;
import leat.stability.GuyLines;
import leat.stability.Joint;
import leat.stability.LineLoad;
import leat.stability.Situation;
import leat.stability.StackJoint;
import leat.stability.Standing;
import leat.stability.Tub;

/**
 * A plan's tank with its towers before the wind, in the states it is judged in. Towers of {@code
 * count} n stand as n equal columns; what is asked of one is asked of the first of its kind.
 */
public final class StandingOf {
  /** Where lines are tied that are proposed, a share of the tower's height (practice). */
  private static final double RING_AT = 2.0 / 3;

  private static final double CENTIMETRE = 0.01;

  private final Assembly assembly;
  private final Tank tank;
  private final String[] names;
  private final Value[] fastened;
  private final Value[] breaking;
  private final int[] firstColumn;
  private final List<Situation> states;
  private final List<List<StackJoint>> joints = new ArrayList<>();

  private StandingOf(Plan plan, List<Situation> asked, Taken taken) {
    Section section = plan.section("tank");
    this.tank = TankOf.of(section, taken);
    List<Section> towers = plan.root().sections("towers");
    if (towers.isEmpty()) {
      throw plan.root().missing("towers");
    }
    Tub tub = TubOf.of(section, tank, taken);
    List<Column> columns = new ArrayList<>();
    this.firstColumn = new int[towers.size()];
    this.names = new String[firstColumn.length];
    this.fastened = new Value[firstColumn.length];
    this.breaking = new Value[firstColumn.length];
    for (int t = 0; t < firstColumn.length; t++) {
      firstColumn[t] = columns.size();
      names[t] = towers.get(t).text("name");
      fastened[t] = towers.get(t).value("fastened", taken);
      breaking[t] = towers.get(t).section("guys").value("breaking");
      joints.add(null);
      Column column = ColumnOf.of(towers.get(t), taken);
      int count = towers.get(t).countOr("count", 1);
      for (int n = 0; n < count; n++) {
        columns.add(column);
      }
    }
    this.assembly = new Assembly(tub, columns, TubOf.friction(section, taken));
    this.states = asked != null ? asked : usual(section);
    taken.note("planted tube's drag 1.2, plants' 0.5");
  }

  /** The plan in its usual states: at the refill mark with grown plants, full with young ones. */
  public static StandingOf of(Plan plan, Taken taken) {
    return new StandingOf(plan, null, taken);
  }

  /** The plan in states of the user's. */
  public static StandingOf of(Plan plan, List<Situation> states, Taken taken) {
    return new StandingOf(plan, states, taken);
  }

  private List<Situation> usual(Section section) {
    List<Situation> usual = new ArrayList<>();
    usual.add(Situation.refillMark(massAt(section.need("low"))));
    usual.add(Situation.full(massAt(section.need("full"))));
    return usual;
  }

  private double massAt(double level) {
    return Situation.massOf(tank.volume(level));
  }

  /** The tank with its towers. */
  public Assembly assembly() {
    return assembly;
  }

  /** The inside of the tank. */
  public Tank tank() {
    return tank;
  }

  /** The states judged, the worst of the usual ones first. */
  public List<Situation> states() {
    return states;
  }

  /** How many kinds of towers there are. */
  public int towers() {
    return names.length;
  }

  /** Name of a tower. */
  public String name(int t) {
    return names[t] == null ? "tower " + (t + 1) : names[t];
  }

  /** Number of the first column of a kind in the assembly. */
  public int column(int t) {
    return firstColumn[t];
  }

  /** Whether the modules of a tower, and the tower to its tank, are fastened. */
  public boolean fastened(int t) {
    return fastened[t].orTaken() != 0;
  }

  /** Load at which a line of a tower breaks, N; null when it is not told. */
  public Double breaking(int t) {
    return breaking[t].isKnown() ? Double.valueOf(breaking[t].need()) : null;
  }

  /** Lines of a tower, ring over the anchors; null for none. */
  public GuyLines lines(int t) {
    return assembly.lines(firstColumn[t]);
  }

  /** Whether lines to the ground hold the whole. */
  public boolean heldByLines() {
    for (int t = 0; t < firstColumn.length; t++) {
      if (lines(t) != null && lines(t).toGround()) {
        return true;
      }
    }
    return false;
  }

  /** A tower as it merely stands on the lid; null when it does not, or its foot is not known. */
  public Standing onLid(int t, Situation state) {
    return assembly.onLid(firstColumn[t], state);
  }

  /**
   * What the lines of a tower see at a pressure in Pa in the worst state: the larger of what they
   * hold of the whole and of what they hold of a tower that is not fastened to its lid; null
   * without lines, or when lines to the tank have no tower on the lid to hold.
   */
  public LineLoad load(int t, double pressure) {
    GuyLines lines = lines(t);
    int c = firstColumn[t];
    if (lines == null || !lines.toGround() && onLid(t, states.get(0)) == null) {
      return null;
    }
    LineLoad whole = assembly.lineLoad(c, states, pressure);
    LineLoad lid = fastened(t) ? null : assembly.lineLoadOnLid(c, states, pressure);
    return lid != null && lid.tension() > whole.tension() ? lid : whole;
  }

  /** The state that uses most of what holds it at a pressure in Pa. */
  public Situation worst(double pressure) {
    Situation worst = states.get(0);
    for (int i = 1; i < states.size(); i++) {
      Situation state = states.get(i);
      if (assembly.worst(state).utilisation(pressure)
          > assembly.worst(worst).utilisation(pressure)) {
        worst = state;
      }
    }
    return worst;
  }

  /** The state in which it slides first. */
  public Situation slidesFirst(double pressure) {
    Situation first = states.get(0);
    for (int i = 1; i < states.size(); i++) {
      Double at = assembly.slideSafety(states.get(i), pressure);
      Double least = assembly.slideSafety(first, pressure);
      if (at != null && least != null && at < least) {
        first = states.get(i);
      }
    }
    return first;
  }

  /**
   * Friction, and lines to the ground, over the wind's force in the state that slides first, -;
   * null when nothing pushes.
   */
  public Double slideSafety(double pressure) {
    return assembly.slideSafety(slidesFirst(pressure), pressure);
  }

  /** Friction with which no state slides at a pressure in Pa, with the factors, -. */
  public double frictionNotToSlide(double pressure) {
    return assembly.frictionNotToSlide(slidesFirst(pressure), pressure);
  }

  /** Joints of a tower from the bottom up, each over all states; found when first asked for. */
  public List<StackJoint> joints(int t) {
    if (joints.get(t) == null) {
      joints.set(t, jointsOf(firstColumn[t]));
    }
    return joints.get(t);
  }

  private List<StackJoint> jointsOf(int column) {
    List<List<Joint>> byState = new ArrayList<>();
    for (Situation state : states) {
      byState.add(assembly.joints(column, state));
    }
    List<StackJoint> stack = new ArrayList<>();
    for (int i = 0; i < byState.get(0).size(); i++) {
      List<Joint> same = new ArrayList<>();
      for (List<Joint> one : byState) {
        same.add(one.get(i));
      }
      stack.add(new StackJoint(same));
    }
    return stack;
  }

  /** Gust that opens the first joint of a tower in any state, m/s; null when none opens. */
  public Double firstJointOpensAt(int t, double density) {
    Double least = null;
    for (StackJoint joint : joints(t)) {
      least = StackJoint.least(least, joint.opensAt(density));
    }
    return least;
  }

  /**
   * Gust that rolls the modules of a tower off at a joint in any state, m/s; null when none does.
   */
  public Double firstJointRollsAt(int t, double density) {
    Double least = null;
    for (StackJoint joint : joints(t)) {
      least = StackJoint.least(least, joint.rollsAt(density));
    }
    return least;
  }

  /** Whether nothing but their weight keeps the modules of a tower on each other. */
  public boolean merelyStacked(int t) {
    return !fastened(t) && lines(t) == null;
  }

  /** Whether the modules of a tower stay on each other in a state, even if a joint opens. */
  public boolean keepsStack(int t, Situation state, double pressure) {
    if (merelyStacked(t)) {
      for (Joint joint : assembly.joints(firstColumn[t], state)) {
        if (joint.rolls(pressure)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Pull of a rod that keeps the joints of a tower shut in all states at a pressure in Pa, N. */
  public double tieToStayShut(int t, double pressure) {
    double most = 0;
    for (StackJoint joint : joints(t)) {
      most = Math.max(most, joint.tieToStayShut(pressure));
    }
    return most;
  }

  /** Three lines to the ground for a tower, as a plan has them: from two thirds up, 45 degrees. */
  public String threeLines(int t) {
    Column column = assembly.columns().get(firstColumn[t]);
    long ring = Math.round(Math.floor(column.height() * RING_AT / CENTIMETRE));
    long run = Math.round(Math.ceil((column.height() * RING_AT + column.foot()) / CENTIMETRE));
    return "{lines: 3, ring: " + ring + " cm, run: " + run + " cm, anchor: ground}";
  }

  /** Gust that tips the first tower off its lid, m/s; null when none stands there. */
  public Double lidTipsAt(Situation state, double density) {
    Double least = null;
    for (int t = 0; t < firstColumn.length; t++) {
      Standing tower = onLid(t, state);
      Double at = tower == null ? null : tower.tipsAt(density);
      if (at != null && (least == null || at < least)) {
        least = at;
      }
    }
    return least;
  }

  /**
   * Solution to keep in the tank so that a state passes at a pressure in Pa, m3; null when the tank
   * does not hold so much.
   */
  public Double volumeToKeep(Situation state, double pressure) {
    double needed = state.withSolution(assembly.solutionToKeep(state, pressure)).volume();
    return needed <= tank.capacity() ? Double.valueOf(needed) : null;
  }

  /** Whether the whole stands in a state at a pressure in Pa, with the factors or by its lines. */
  public boolean stands(Situation state, double pressure) {
    return heldByLines() || assembly.worst(state).passes(pressure);
  }

  /** Whether a tower keeps to its lid: fastened, reaching into the tank, held, or heavy enough. */
  public boolean keepsToLid(int t, Situation state, double pressure) {
    Standing tower = onLid(t, state);
    return tower == null || fastened(t) || lines(t) != null || tower.passes(pressure);
  }

  /** Whether the lines of a tower bear what they see; true when their breaking load is not told. */
  public boolean linesBear(int t, double pressure) {
    LineLoad load = load(t, pressure);
    return load == null || breaking(t) == null || load.utilisation(breaking(t)) <= 1;
  }

  /** Whether all holds in a state. */
  public boolean passes(Situation state, double pressure) {
    boolean passes = stands(state, pressure);
    for (int t = 0; t < firstColumn.length; t++) {
      passes &=
          keepsToLid(t, state, pressure)
              && keepsStack(t, state, pressure)
              && linesBear(t, pressure);
    }
    return passes;
  }
}
