package leat.command.feed;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Row;
import leat.cli.Call;
import leat.plan.Plan;
import leat.solution.Ions;
import leat.solution.recipes.MixEc;
import leat.solution.recipes.Recipe;
import leat.solution.stock.MadeWater;
import leat.solution.stock.Stock;
import leat.system.SaltsOf;
import leat.system.StockOf;

/** What {@code leat stock} tells of the tower water that the bottles make. */
final class StockTank {
  private final Call call;
  private final List<Stock.Weighed> salts;
  private final double makes;
  private final Stock.Answer mix;
  private final MixEc ec;

  StockTank(Call call, List<Stock.Weighed> salts, double bottle, double coldest, double makes) {
    this.call = call;
    this.salts = salts;
    this.makes = makes;
    this.mix = mix(bottle, coldest);
    this.ec = ec();
  }

  private Stock.Answer mix(double bottle, double coldest) {
    Plan plan = call.plan();
    double ph = plan.section("target").getOr("ph", Stock.TANK_PH, "tank at pH 6", call.taken());
    return Stock.mix(
        salts,
        bottle,
        coldest,
        ph,
        MadeWater.dilution(bottle, makes),
        StockOf.water(plan.section("water"), call.taken()));
  }

  private MixEc ec() {
    Ions water = SaltsOf.water(call.plan());
    Recipe recipe = MadeWater.of(salts, makes, water);
    return MixEc.of(recipe, water, call.plan().section("water").maybe("ec"));
  }

  /** Whether something settles out in the tank. */
  Stock.Verdict verdict() {
    return mix.verdict();
  }

  /** Sets what is known of the tower water in a row of a bottle. */
  void fill(Row row) {
    row.set(StockRows.MIX, mix.verdict().word)
        .set(StockRows.GYPSUM, mix.index().gypsum())
        .set(StockRows.BRUSHITE, mix.index().brushite());
    StockRows.ec(row, ec);
  }

  private String indices() {
    boolean gypsum = mix.index().gypsum() != null;
    boolean brushite = mix.index().brushite() != null;
    if (gypsum && brushite) {
      return "gypsum index {mix_si_gypsum}, calcium phosphate {mix_si_brushite}; settles out over 0";
    }
    if (brushite) {
      return "calcium phosphate index {mix_si_brushite}; settles out over 0";
    }
    return gypsum ? "gypsum index {mix_si_gypsum}; settles out over 0" : "";
  }

  /**
   * Tells it in lines of figures.
   *
   * @param both whether two bottles are poured
   */
  void tell(Answer answer, Row row, boolean both) {
    answer.figure("in the tank", row, "{mix_verdict}", indices());
    answer.figure(
        "rate in tower water", row, both ? "takes {rate_mL_L} of each" : "takes {rate_mL_L}");
    if (ec != null) {
      answer.figure(
          "EC at that rate",
          row,
          "{ec_mS_cm}",
          ec.waterEc() == null && !SaltsOf.hasWater(call.plan())
              ? "in pure water, {ec_low_mS_cm..ec_high_mS_cm}"
              : "with the plan's water in it, {ec_low_mS_cm..ec_high_mS_cm}");
    }
    if (row.get(StockRows.BOTTLES) != null) {
      answer.figure(
          "a season",
          row,
          both ? "{bottles_season} of each" : "{bottles_season}",
          "for {season_L}");
    }
  }

  void minds(Answer answer) {
    if (mix.verdict().no) {
      answer.mind(
          "settles-in-tank",
          "something settles out in the tower water: let the bottles make more of it, or, where it is calcium phosphate, hold its pH lower.");
    }
  }
}
