package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.hydraulics.Film;
import leat.hydraulics.Liquid;
import leat.parts.PotRing;
import leat.parts.Tower;
import leat.parts.WetMass;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.plan.Value;

/** What a plan's towers take: stacks, pots, masses. */
public final class PartsOf {
  private static final double WATER = 20;

  /** One kind of tower; its values are asked for with what they answer. */
  private record Kind(
      Tower stack,
      String name,
      int count,
      Value[] pots,
      Value[] masses,
      Value wall,
      Value cap,
      Value plant,
      Value wanted,
      Value bore,
      Value length) {
    private static Kind of(Section tower, String name, Tower stack, Taken taken) {
      List<Section> modules = tower.sections("modules");
      Value[] pots = new Value[modules.size()];
      Value[] masses = new Value[pots.length];
      for (int i = 0; i < pots.length; i++) {
        pots[i] = modules.get(i).value("pot");
        masses[i] = modules.get(i).value("mass");
      }
      Section riser = tower.section("riser");
      return new Kind(
          stack,
          name,
          tower.countOr("count", 1),
          pots,
          masses,
          modules.get(0).value("wall"),
          tower.section("cap").value("mass"),
          tower.section("grown").value("mass", taken),
          tower.value("wanted"),
          riser.value("bore"),
          riser.value("length"));
    }

    private boolean runs() {
      return wanted.isKnown() && bore.isKnown() && length.isKnown();
    }

    private WetMass mass(Liquid water) {
      double dry = cap.orElse(0);
      for (int i = 0; i < stack.modules().size(); i++) {
        dry += stack.modules().get(i).count() * masses[i].need();
      }
      double plants = stack.pots() * plant.orTaken();
      return runs()
          ? new WetMass(dry, plants, film(water), riser(water))
          : new WetMass(dry, plants, 0, 0);
    }

    private double film(Liquid water) {
      double inner = stack.modules().get(0).diameter() - 2 * wall.orElse(0);
      double height = stack.stackHeight();
      return Film.of(wanted.need(), inner, 1, height, water).volume() * water.density();
    }

    private double riser(Liquid water) {
      return WetMass.ofPipe(bore.need(), length.need(), water.density());
    }
  }

  /** Pots that a crop wants, in a tower or in the only one. */
  private record Wanted(String tower, Value pots) {}

  private final List<Kind> kinds = new ArrayList<>();
  private final List<Tower> stacks = new ArrayList<>();
  private final List<Wanted> wanted = new ArrayList<>();
  private final Liquid water = Liquid.water(WATER);

  private PartsOf(Plan plan, Integer modules, Taken taken) {
    List<Section> sections = plan.root().sections("towers");
    if (sections.isEmpty()) {
      throw plan.root().missing("towers");
    }
    for (int t = 0; t < sections.size(); t++) {
      Tower asPlanned = StackOf.of(plan.section("tank"), sections.get(t));
      stacks.add(modules == null ? asPlanned : asPlanned.withModules(modules));
      String own = sections.get(t).text("name");
      String name = own == null ? "tower " + (t + 1) : own;
      kinds.add(Kind.of(sections.get(t), name, stacks.get(t), taken));
    }
    List<Section> crops = plan.root().sections("crops");
    for (int i = 0; i < crops.size(); i++) {
      wanted.add(new Wanted(crops.get(i).text("tower"), crops.get(i).value("pots")));
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

  /** How many kinds of towers there are. */
  public int size() {
    return stacks.size();
  }

  /** The stack of a kind. */
  public Tower tower(int t) {
    return stacks.get(t);
  }

  /** The stacks of all kinds. */
  public List<Tower> towers() {
    return stacks;
  }

  /** How many of a kind. */
  public int count(int t) {
    return kinds.get(t).count();
  }

  /** Name of a kind. */
  public String name(int t) {
    return kinds.get(t).name();
  }

  /** Pots of all towers. */
  public int pots() {
    int sum = 0;
    for (int t = 0; t < stacks.size(); t++) {
      sum += count(t) * stacks.get(t).pots();
    }
    return sum;
  }

  /** Pots that the crops of the plan want in a tower; null when no crop names it. */
  public Integer potsWanted(int t) {
    Integer sum = null;
    for (Wanted one : wanted) {
      boolean here = one.tower() == null ? size() == 1 : one.tower().equals(name(t));
      if (here && one.pots().isKnown()) {
        sum = (sum == null ? 0 : sum) + (int) one.pots().need();
      }
    }
    return sum;
  }

  /** Pots of all towers of a kind. */
  public int potsOfKind(int t) {
    return count(t) * stacks.get(t).pots();
  }

  /** Least room between two pots of a tower, m; null when no pot's size is known. */
  public Double room(int t) {
    Double least = null;
    for (int i = 0; i < stacks.get(t).modules().size(); i++) {
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
    Value pot = kinds.get(t).pots()[module];
    return pot.isKnown() ? Double.valueOf(pot.need()) : null;
  }

  /** The ring of pots of a kind of modules. */
  public PotRing ring(int t, int module) {
    return stacks.get(t).modules().get(module).ring();
  }

  /** Mass of all towers, film and riser known only when each tower's flow and riser are. */
  public WetMass mass() {
    WetMass sum = new WetMass(0, 0, 0, 0);
    for (int t = 0; t < stacks.size(); t++) {
      WetMass one = kinds.get(t).mass(water);
      for (int n = 0; n < count(t); n++) {
        sum = sum.and(one);
      }
    }
    return sum;
  }

  /** Whether the running mass of each tower is known: its flow and its riser are. */
  public boolean runs() {
    boolean all = true;
    for (Kind kind : kinds) {
      all &= kind.runs();
    }
    return all;
  }
}
