package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.parts.BuildList;
import leat.parts.Material;
import leat.parts.PotRing;
import leat.plan.Plan;
import leat.quantity.Units;
import leat.system.PartsOf;

/** The words of {@code leat parts}. */
final class PartsText {
  private static final Column SOFTENS = Column.of("softens_C", "softens", Show.C.digits(2));

  private final Call call;
  private final Plan plan;
  private final PartsOf parts;
  private final BuildList list;
  private final String currency;

  PartsText(Call call, Plan plan, PartsOf parts, BuildList list) {
    this.call = call;
    this.plan = plan;
    this.parts = parts;
    this.list = list;
    this.currency = plan.currency();
  }

  void write(Answer answer, Row sums, Answer towers) {
    sentence(answer, sums);
    for (int t = 0; t < towers.size(); t++) {
      tower(answer, towers.row(t), t);
    }
    answer.block();
    figures(answer, sums);
    answer.table(
        PartsCommand.PART,
        PartsCommand.PIECES,
        PartsCommand.EACH,
        PartsCommand.PRINT_EACH,
        PartsCommand.MASS,
        PartsCommand.PRICE);
    minds(answer, sums, towers);
    answer.next(call.again("parts", "--modules", "--reach") + " --format csv -o shopping.csv");
    answer.next(call.again("wind") + "   tells whether it stands");
  }

  private void sentence(Answer answer, Row sums) {
    Phrase words =
        Answer.filled(
            sums, "{pieces} printed parts, {filament_net_kg} of filament, {print_h} of printing");
    Double cost = (Double) sums.get(PartsCommand.COST);
    if (cost != null) {
      words.add(", ").money(cost, currency);
    }
    answer.sentence(
        words.add(
            Answer.filled(
                sums,
                sums.get(PartsCommand.TOP) == null
                    ? "; {pots} pots."
                    : "; {pots} pots, the highest at {top_pot_mm}.")));
  }

  private void tower(Answer answer, Row row, int t) {
    answer.figure(
        parts.name(t),
        row,
        "{modules} modules, {pots} pots, {height_mm}",
        row.get(PartsCommand.TOP) == null
            ? ""
            : "highest pot {top_pot_mm}; {modules_in_reach} modules stay within {reach_mm}");
    if (row.get(PartsCommand.ROOM) != null) {
      answer.figure("", row, "{pot_room_mm} between two pots");
    }
    if (row.get(PartsCommand.SPACING) != null) {
      answer.figure("", row, "{same_column_spacing_mm} between pots of one line");
    }
    if (row.get(PartsCommand.WANTED) != null) {
      answer.figure("", row, "{pots_for_crops} pots wanted by the crops, {pots} in one tower");
    }
  }

  private void figures(Answer answer, Row sums) {
    answer.figure(sums, PartsCommand.NET, "{filament_gross_kg} with waste: {spools} spools");
    answer.figure(sums, PartsCommand.PRINT, "{print_days} days; {energy_kwh}");
    if (sums.get(PartsCommand.FILAMENT) != null) {
      answer.figure(
          "filament",
          Phrase.of().money((Double) sums.get(PartsCommand.FILAMENT), currency).add(" by spools"),
          Phrase.of().money((Double) sums.get(PartsCommand.BY_MASS), currency).add(" used"));
    }
    answer.figure(
        "mass of the towers",
        sums,
        "{mass_dry_kg} dry, {mass_wet_off_kg} with grown plants",
        sums.get(PartsCommand.ON) == null ? "" : "{mass_wet_on_kg} running");
    if (sums.get(PartsCommand.DECK) != null) {
      answer.figure(sums, PartsCommand.DECK, "{mass_whole_kg} with the tank full");
    }
  }

  private void minds(Answer answer, Row sums, Answer towers) {
    for (int t = 0; t < towers.size(); t++) {
      Row row = towers.row(t);
      if (Boolean.FALSE.equals(row.get(PartsCommand.FIT))) {
        answer.mind("pots-fit", fit(t));
      }
      if (Boolean.FALSE.equals(row.get(PartsCommand.IN_REACH))) {
        answer.mind(
            "reach",
            row,
            "{tower}: the highest pot at {top_pot_mm} is over the reach of {reach_mm}: a step, or {modules_in_reach} modules.");
      }
      Integer wanted = parts.potsWanted(t);
      if (wanted != null && wanted > parts.potsOfKind(t)) {
        answer.mind(
            "crops-pots", row, "{tower}: the crops want {pots_for_crops} pots; there are fewer.");
      }
    }
    cautions(answer, sums);
  }

  /** What is wrong with the pots of a tower, and what fits. */
  private Phrase fit(int t) {
    for (int i = 0; i < parts.tower(t).modules().size(); i++) {
      PotRing ring = parts.ring(t, i);
      Double pot = parts.pot(t, i);
      if (pot != null && !ring.fits(pot)) {
        return Phrase.of(parts.name(t) + ": ")
            .count(ring.pots())
            .add(" pots of ")
            .add(pot, leat.answer.Show.MM)
            .add(" do not fit round it: at most ")
            .count(ring.mostPots(pot))
            .add(", or a module of at least ")
            .add(ring.diameterFor(pot), leat.answer.Show.MM)
            .add(".");
      }
    }
    return Phrase.of();
  }

  private void cautions(Answer answer, Row sums) {
    prices(answer);
    if (sums.get(PartsCommand.ON) == null) {
      answer.mind("no-flow", "mass while it runs needs towers[].wanted and the riser.");
    }
    if (list.run().daysTooFull()) {
      answer.mind("days-too-full", "so many prints do not fit into a day: it takes more days.");
    }
    for (int i = 0; i < list.stockCount(); i++) {
      material(answer, Material.named(list.stock(i).name()));
    }
    answer.mind(
        "food",
        "a printed part is no food-safe part: layers hold residues and germs. Pots of one size vary by some mm: measure them.");
  }

  private void prices(Answer answer) {
    if (list.filamentCost() == null) {
      answer.mind("no-prices", "no money: prices.filament is not known.");
    } else if (list.energyCost() == null) {
      answer.mind("no-tariff", "energy is not in the cost: tariff.price is not known.");
    } else if (plan.section("tariff").sections("bands").size() > 0) {
      answer.mind("tariff-bands", "energy at the plain price: when it prints is not known.");
    }
  }

  private static void material(Answer answer, Material material) {
    if (material == Material.PLA) {
      answer.mind(
          "pla-in-sun",
          Row.aside(SOFTENS).set(SOFTENS, Units.C.toBase(material.softensCelsius())),
          "PLA softens from {softens_C} and sags on a dark wall in sun; ASA is made for weather.");
    }
  }
}
