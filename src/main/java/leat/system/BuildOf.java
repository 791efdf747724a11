package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.parts.BuildList;
import leat.parts.Filament;
import leat.parts.Material;
import leat.parts.Part;
import leat.parts.Printer;
import leat.parts.Purchase;
import leat.parts.Tower;
import leat.plan.Named;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;

/** The list of a plan's parts with what they cost: it asks for masses, not for heights. */
public final class BuildOf {
  private static final String[] BOUGHT = {"pump", "tank", "sender", "controller", "other"};

  private BuildOf() {}

  /** Whether it knows what the printed parts cost: filament has a price, all modules a mass. */
  static boolean isPriced(Plan plan) {
    Section prices = plan.section("prices");
    boolean known = prices.has("filament") || prices.named("filaments").size() > 0;
    List<Section> towers = plan.root().sections("towers");
    int modules = 0;
    for (int t = 0; t < towers.size(); t++) {
      List<Section> all = towers.get(t).sections("modules");
      for (int i = 0; i < all.size(); i++, modules++) {
        known &= all.get(i).has("mass");
      }
    }
    return known && modules > 0;
  }

  private static int count(Section section) {
    return section.countOr("count", 1);
  }

  /**
   * The list; refused with the mass that is missing.
   *
   * @param plan the plan
   * @param stacks the towers as they stand, one a tower of the plan, with modules of the same
   *     kinds; null as the plan has them
   * @param taken notes the defaults that are taken
   */
  public static BuildList of(Plan plan, List<Tower> stacks, Taken taken) {
    List<Section> towers = plan.root().sections("towers");
    List<Material> materials = new ArrayList<>();
    List<Part> parts = new ArrayList<>();
    for (int t = 0; t < towers.size(); t++) {
      int material = material(towers.get(t), materials);
      modules(parts, towers.get(t), stacks == null ? null : stacks.get(t), material, taken);
      Section cap = towers.get(t).section("cap");
      if (cap.has("mass") && cap.need("mass") > 0) {
        double time = printTime(cap, taken);
        add(parts, new Part("cap", count(towers.get(t)), cap.need("mass"), time, material));
      }
    }
    Double energy = plan.section("tariff").maybe("price");
    return new BuildList(
        parts, stocks(plan, materials, taken), printer(plan, taken), energy, bought(plan));
  }

  private static void modules(
      List<Part> parts, Section tower, Tower stack, int material, Taken taken) {
    List<Section> modules = tower.sections("modules");
    int kinds = stack == null ? modules.size() : stack.modules().size();
    for (int i = 0; i < kinds; i++) {
      Section module = modules.get(i);
      String own = module.text("name");
      double mass = module.need("mass");
      int each = stack == null ? count(module) : stack.modules().get(i).count();
      add(
          parts,
          new Part(
              own == null ? "module" : own,
              count(tower) * each,
              mass,
              printTime(module, taken),
              material));
    }
  }

  private static double printTime(Section section, Taken taken) {
    return section.getOr("print_time", Printer.PRINT_TIME, "8 h to print a part", taken);
  }

  /** Equal parts of several towers are one row. */
  private static void add(List<Part> parts, Part part) {
    for (int i = 0; i < parts.size(); i++) {
      Part there = parts.get(i);
      if (there.isLike(part)) {
        parts.set(i, there.plus(part.pieces()));
        return;
      }
    }
    parts.add(part);
  }

  /** Number of a tower's material in the list; null stands for one that is not named. */
  private static int material(Section tower, List<Material> materials) {
    Material own = Material.named(tower.text("material"));
    int at = materials.indexOf(own);
    if (at < 0) {
      materials.add(own);
      return materials.size() - 1;
    }
    return at;
  }

  private static List<BuildList.Stock> stocks(Plan plan, List<Material> materials, Taken taken) {
    Section prices = plan.section("prices");
    Section printer = plan.section("printer");
    double waste = printer.getOr("waste", Filament.WASTE, "10 % of the filament wasted", taken);
    double spool = prices.getOr("spool", Filament.SPOOL, "1 kg on a spool", taken);
    Named own = prices.named("filaments");
    List<BuildList.Stock> stocks = new ArrayList<>();
    for (int i = 0; i < materials.size(); i++) {
      Double price = prices.maybe("filament");
      String name = materials.get(i) == null ? "filament" : materials.get(i).word();
      for (int k = 0; k < own.size(); k++) {
        price = own.name(k).equals(name) ? (Double) own.value(k) : price;
      }
      stocks.add(new BuildList.Stock(name, waste, spool, price));
    }
    return stocks;
  }

  private static Printer printer(Plan plan, Taken taken) {
    Section printer = plan.section("printer");
    Double jobs = printer.maybe("jobs");
    if (jobs == null) {
      taken.note("2 prints a day on each printer");
    }
    return new Printer(
        (int) printer.getOr("count", 1, "one printer", taken),
        jobs == null ? Printer.JOBS : Units.PER_D.fromBase(jobs),
        printer.getOr("power", Printer.POWER, "printer 120 W", taken),
        printer.getOr("changeover", Printer.CHANGEOVER, "30 min between prints", taken));
  }

  private static List<Purchase> bought(Plan plan) {
    Section prices = plan.section("prices");
    List<Purchase> bought = new ArrayList<>();
    for (int i = 0; i < BOUGHT.length; i++) {
      if (prices.has(BOUGHT[i])) {
        bought.add(new Purchase(BOUGHT[i], prices.need(BOUGHT[i])));
      }
    }
    return bought;
  }
}
