package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.check.Rules;
import leat.check.Subject;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.parts.BuildList;
import leat.parts.Part;
import leat.parts.PrintRun;
import leat.parts.Purchase;
import leat.parts.Tower;
import leat.parts.WetMass;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.quantity.Dimension;
import leat.quantity.Units;
import leat.system.BuildOf;
import leat.system.DeckOf;
import leat.system.PartsOf;

/** {@code leat parts}: what a tower takes to build. */
public final class PartsCommand extends Command {
  private static final Show MM = Show.MM.digits(4);

  static final Column HEIGHT = Column.of("height_mm", "base to cap", MM);
  static final Column TOTAL = Column.of("total_height_mm", "with the stand", MM);
  static final Column POTS = Column.plain("pots", "pots");
  static final Column TOP = Column.of("top_pot_mm", "highest pot", MM);
  static final Column NET = Column.of("filament_net_kg", "filament in the parts", Show.KG);
  static final Column GROSS = Column.of("filament_gross_kg", "filament with waste", Show.KG);
  static final Column SPOOLS = Column.plain("spools", "spools");
  static final Column PRINT = Column.of("print_h", "printing", Show.H);
  static final Column DAYS = Column.plain("print_days", "days");
  static final Column ENERGY = Column.of("energy_kwh", "energy", Show.KWH);
  static final Column FILAMENT = Column.money("cost_filament", "filament by spools");
  static final Column BY_MASS = Column.money("cost_filament_by_mass", "filament used");
  static final Column COST_ENERGY = Column.money("cost_energy", "energy costs");
  static final Column COST = Column.money("cost_total", "cost in all");
  static final Column DRY = Column.of("mass_dry_kg", "dry", Show.KG);
  static final Column OFF = Column.of("mass_wet_off_kg", "with plants", Show.KG);
  static final Column ON = Column.of("mass_wet_on_kg", "running", Show.KG);
  static final Column DECK = Column.of("deck_kPa", "on the deck", Show.of(Units.KPA, Units.PSI, 3));
  static final Column LEFT = Column.money("cost_left_on_spools", "left on the spools");
  static final Column BOUGHT = Column.money("cost_bought", "bought");
  static final Column PIECES_ALL = Column.plain("pieces", "pieces");
  static final Column WHOLE = Column.of("mass_whole_kg", "tank full and towers", Show.KG);

  static final Column PART = Column.plain("part", "part");
  static final Column PIECES = Column.plain("pieces", "pieces");
  static final Column EACH = Column.of("each_g", "each", Show.of(Units.G, Units.OZ, 3));
  static final Column PRINT_EACH = Column.of("print_h_each", "print each", Show.H);
  static final Column PRINT_ALL = Column.of("print_h", "printing", Show.H);
  static final Column MASS = Column.of("mass_kg", "mass", Show.KG);
  static final Column PRICE = Column.money("cost", "cost");

  static final Column TOWER = Column.plain("tower", "tower");
  static final Column COUNT = Column.plain("count", "count");
  static final Column MODULES = Column.plain("modules", "modules");
  static final Column REACH = Column.of("reach_mm", "reach", MM);
  static final Column IN_REACH = Column.plain("in_reach", "in reach");
  static final Column MOST = Column.plain("modules_in_reach", "modules in reach");
  static final Column SPACING = Column.of("same_column_spacing_mm", "pots of one line apart", MM);
  static final Column ROOM = Column.of("pot_room_mm", "room between pots", Show.MM);
  static final Column FIT = Column.plain("pots_fit", "pots fit");
  static final Column WANTED = Column.plain("pots_for_crops", "pots for the crops");
  private static final Column[] FIGURES = {
    HEIGHT, TOTAL, POTS, TOP, NET, GROSS, SPOOLS, PRINT, DAYS,
    ENERGY, FILAMENT, BY_MASS, COST_ENERGY, COST, DRY, OFF, ON, DECK,
    LEFT, BOUGHT, PIECES_ALL, WHOLE
  };
  private static final Column[] TOWERS = {
    TOWER, COUNT, MODULES, POTS, HEIGHT, TOP, REACH, IN_REACH, MOST, SPACING, ROOM, FIT, WANTED
  };

  @Override
  public String name() {
    return "parts";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of("--modules", "N", Kind.COUNT, "8", "each tower with so many modules instead"),
      Flag.of(
          "--reach",
          "LENGTH",
          Kind.quantity(Dimension.LENGTH),
          "1.4 m",
          "height you reach: the most modules whose pots stay under it"),
    };
  }

  @Override
  public Answer answer(Call call) {
    if (!call.hasPlan()) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    Plan plan = call.plan();
    PartsOf parts = PartsOf.of(plan, (Integer) call.value("--modules"), call.taken());
    Double asked = call.above0("--reach");
    Double told = asked != null ? asked : new Subject(plan).ownLimit(Rules.find("reach"));
    Answer rows = new Answer(PART, PIECES, EACH, PRINT_EACH, PRINT_ALL, MASS, PRICE).asList();
    Answer printed = new Answer(rows.columns());
    BuildList list = BuildOf.of(plan, parts.towers(), call.taken());
    parts(rows, printed, list);
    Answer figures = new Answer(FIGURES);
    Row sums = sums(figures.row(), parts, list);
    DeckOf deck = DeckOf.of(plan, parts, call.taken());
    sums.set(DECK, deck.pressure()).set(WHOLE, deck.wholeMass());
    Answer towers = towers(parts, told == null ? Tower.REACH : told);
    rows.jsonObject(figures).array("parts", printed).array("towers", towers);
    if (told == null) {
      rows.taken(towers.row(0), "reach {reach_mm}");
    }
    new PartsText(call, plan, parts, list).write(rows, sums, towers);
    StandingWorkings.parts(rows, sums);
    return call.withTaken(rows);
  }

  private static void parts(Answer rows, Answer printed, BuildList list) {
    for (int i = 0; i < list.parts().size(); i++) {
      Part part = list.parts().get(i);
      Double cost = list.partCosts() == null ? null : list.partCosts().get(i);
      part(rows.row(), part, cost);
      part(printed.row(), part, cost);
    }
    if (list.leftOnSpools() != null && list.leftOnSpools() > 0) {
      rows.row().set(PART, "filament left on the spools").set(PRICE, list.leftOnSpools());
    }
    for (int i = 0; i < list.purchases().size(); i++) {
      Purchase one = list.purchases().get(i);
      rows.row().set(PART, one.name()).set(PIECES, 1).set(PRICE, one.cost());
    }
  }

  private static void part(Row row, Part part, Double cost) {
    row.set(PART, part.name())
        .set(PIECES, part.pieces())
        .set(EACH, part.mass())
        .set(PRINT_EACH, part.printTime())
        .set(PRINT_ALL, part.timeOfAll())
        .set(MASS, part.massOfAll())
        .set(PRICE, cost);
  }

  private static Row sums(Row row, PartsOf parts, BuildList list) {
    tallest(row, parts);
    printed(row, list);
    WetMass mass = parts.mass();
    return row.set(POTS, parts.pots())
        .set(DRY, mass.dry())
        .set(OFF, mass.off())
        .set(ON, parts.runs() ? Double.valueOf(mass.on()) : null);
  }

  private static void tallest(Row row, PartsOf parts) {
    double height = 0;
    double total = 0;
    Double top = null;
    for (int t = 0; t < parts.size(); t++) {
      Tower tower = parts.tower(t);
      height = Math.max(height, tower.height());
      total = Math.max(total, tower.totalHeight());
      Double pot = tower.topPot();
      top = top == null || pot != null && pot > top ? pot : top;
    }
    row.set(HEIGHT, height).set(TOTAL, total).set(TOP, top);
  }

  private static void printed(Row row, BuildList list) {
    PrintRun run = list.run();
    row.set(NET, list.net())
        .set(GROSS, list.gross())
        .set(SPOOLS, (int) list.spools())
        .set(PRINT, run.machineTime())
        .set(DAYS, run.days())
        .set(ENERGY, run.energy())
        .set(FILAMENT, list.filamentCost())
        .set(BY_MASS, list.filamentCostByMass())
        .set(COST_ENERGY, list.energyCost())
        .set(COST, list.total())
        .set(LEFT, list.leftOnSpools())
        .set(BOUGHT, list.purchasesCost())
        .set(PIECES_ALL, list.pieces());
  }

  private static Answer towers(PartsOf parts, double reach) {
    Answer answer = new Answer(TOWERS);
    for (int t = 0; t < parts.size(); t++) {
      Tower tower = parts.tower(t);
      answer
          .row()
          .set(TOWER, parts.name(t))
          .set(COUNT, parts.count(t))
          .set(MODULES, tower.count())
          .set(POTS, tower.pots())
          .set(HEIGHT, tower.height())
          .set(TOP, tower.topPot())
          .set(REACH, reach)
          .set(IN_REACH, tower.inReach(reach))
          .set(MOST, tower.modulesInReach(reach))
          .set(SPACING, tower.sameColumnSpacing())
          .set(ROOM, parts.room(t))
          .setAny(FIT, parts.potsFit(t))
          .setAny(WANTED, parts.potsWanted(t));
    }
    return answer;
  }
}
