package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.hydraulics.Film;
import leat.hydraulics.Liquid;
import leat.parts.BuildList;
import leat.parts.DeckLoad;
import leat.parts.Module;
import leat.parts.PotRing;
import leat.parts.Tower;
import leat.parts.WetMass;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.stability.Situation;

/** What a plan's towers take: stacks, the list of parts, masses, the load on the deck. */
public final class PartsOf {
  private static final double WATER = 20;

  private final Plan plan;
  private final List<Section> sections;
  private final Taken taken;
  private final List<Tower> towers = new ArrayList<>();
  private final Liquid water = Liquid.water(WATER);
  private BuildList list;

  private PartsOf(Plan plan, Integer modules, Taken taken) {
    this.taken = taken;
    this.plan = plan;
    this.sections = plan.root().sections("towers");
    if (sections.isEmpty()) {
      throw plan.root().missing("towers");
    }
    for (int t = 0; t < sections.size(); t++) {
      towers.add(tower(t, modules));
    }
  }

  /**
   * The towers of a plan.
   *
   * @param modules each tower with so many instead; null as the plan has them
   * @param taken notes the defaults that are taken
   */
  public static PartsOf of(Plan plan, Integer modules, Taken taken) {
    return new PartsOf(plan, modules, taken);
  }

  private Tower tower(int t, Integer modules) {
    Tower tower = StackOf.of(plan.section("tank"), sections.get(t));
    return modules == null ? tower : tower.withModules(modules);
  }

  /** How many kinds of towers there are. */
  public int size() {
    return towers.size();
  }

  /** The stack of a kind. */
  public Tower tower(int t) {
    return towers.get(t);
  }

  /** How many of a kind. */
  public int count(int t) {
    return sections.get(t).countOr("count", 1);
  }

  /** Name of a kind. */
  public String name(int t) {
    String own = sections.get(t).text("name");
    return own == null ? "tower " + (t + 1) : own;
  }

  /** Pots of all towers. */
  public int pots() {
    int sum = 0;
    for (int t = 0; t < towers.size(); t++) {
      sum += count(t) * towers.get(t).pots();
    }
    return sum;
  }

  /** Pots that the crops of the plan want in a tower; null when no crop names it. */
  public Integer potsWanted(int t) {
    List<Section> crops = plan.root().sections("crops");
    Integer sum = null;
    for (int i = 0; i < crops.size(); i++) {
      String tower = crops.get(i).text("tower");
      boolean here = tower == null ? towers.size() == 1 : tower.equals(name(t));
      if (here && crops.get(i).has("pots")) {
        sum = (sum == null ? 0 : sum) + crops.get(i).countOr("pots", 0);
      }
    }
    return sum;
  }

  /** Pots of all towers of a kind. */
  public int potsOfKind(int t) {
    return count(t) * towers.get(t).pots();
  }

  /** Least room between two pots of a tower, m; null when no pot's size is known. */
  public Double room(int t) {
    Double least = null;
    for (int i = 0; i < towers.get(t).modules().size(); i++) {
      Double pot = pot(t, i);
      Double room = pot == null ? null : ring(t, i).room(pot);
      if (room != null && (least == null || room < least)) {
        least = room;
      }
    }
    return least;
  }

  /** Whether all pots of a tower fit round their modules; null when no pot's size is known. */
  public Boolean potsFit(int t) {
    Double room = room(t);
    return room == null ? null : Boolean.valueOf(PotRing.enough(room));
  }

  /** Diameter of the pots of a kind of modules, m; null when it is not known. */
  public Double pot(int t, int module) {
    return sections.get(t).sections("modules").get(module).maybe("pot");
  }

  /** The ring of pots of a kind of modules. */
  public PotRing ring(int t, int module) {
    return towers.get(t).modules().get(module).ring();
  }

  /** The list of parts, of all towers. */
  public BuildList list() {
    if (list == null) {
      list = BuildOf.of(plan, towers, taken);
    }
    return list;
  }

  /** Mass of all towers, film and riser known only when each tower's flow and riser are. */
  public WetMass mass() {
    WetMass sum = new WetMass(0, 0, 0, 0);
    for (int t = 0; t < towers.size(); t++) {
      WetMass one = mass(t);
      for (int n = 0; n < count(t); n++) {
        sum = sum.and(one);
      }
    }
    return sum;
  }

  private WetMass mass(int t) {
    Tower tower = towers.get(t);
    Double cap = sections.get(t).section("cap").maybe("mass");
    double dry = cap == null ? 0 : cap;
    for (int i = 0; i < tower.modules().size(); i++) {
      double mass = sections.get(t).sections("modules").get(i).need("mass");
      dry += tower.modules().get(i).count() * mass;
    }
    double plants = tower.pots() * sections.get(t).section("grown").get("mass", taken);
    return new WetMass(dry, plants, runs(t) ? film(t) : 0, runs(t) ? riser(t) : 0);
  }

  /** Whether the running mass of each tower is known: its flow and its riser are. */
  public boolean runs() {
    boolean all = true;
    for (int t = 0; t < towers.size(); t++) {
      all &= runs(t);
    }
    return all;
  }

  private boolean runs(int t) {
    Section riser = sections.get(t).section("riser");
    return sections.get(t).has("wanted") && riser.has("bore") && riser.has("length");
  }

  private double film(int t) {
    Module lowest = towers.get(t).modules().get(0);
    Double wall = sections.get(t).sections("modules").get(0).maybe("wall");
    double inner = lowest.diameter() - 2 * (wall == null ? 0 : wall);
    double height = towers.get(t).stackHeight();
    return Film.of(sections.get(t).need("wanted"), inner, 1, height, water).volume()
        * water.density();
  }

  private double riser(int t) {
    Section riser = sections.get(t).section("riser");
    return WetMass.ofPipe(riser.need("bore"), riser.need("length"), water.density());
  }

  /** Mass of all, full and running, kg; null when the tank is not known. */
  public Double wholeMass() {
    Section tank = plan.section("tank");
    if (!tank.has("mass") || !tank.has("full") || !TankOf.isKnown(tank)) {
      return null;
    }
    double solution = Situation.massOf(TankOf.of(tank, taken).volume(tank.need("full")));
    return tank.need("mass") + solution + mass().on();
  }

  /** Press of all, full and running, on the deck under the foot, Pa; null when not known. */
  public Double deckPressure() {
    Section tank = plan.section("tank");
    boolean foot = tank.has("foot") || tank.has("bottom") || tank.has("diameter");
    Double mass = wholeMass();
    return mass == null || !foot
        ? null
        : Double.valueOf(DeckLoad.pressure(mass, TubOf.footArea(tank, taken)));
  }
}
