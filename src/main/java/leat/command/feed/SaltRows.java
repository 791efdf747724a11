package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.plan.Plan;
import leat.solution.Element;
import leat.solution.recipes.LabelledBottle;
import leat.solution.recipes.Missed;
import leat.solution.recipes.MixEc;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.RecipeFit;
import leat.solution.recipes.Weighed;

/** The rows of {@code leat dose salts}: salts, elements, and the figures of the whole. */
final class SaltRows {
  static final Column SALT = Column.plain("salt", "salt");
  static final Column GRAMS = Column.number("grams", "grams", 3);

  static final Column ELEMENT = Column.plain("element", "element");
  static final Column ASKED = Column.of("asked_mg_L", "asked", Show.MG_L);
  static final Column GOT = Column.of("got_mg_L", "got", Show.MG_L);
  static final Column MISSED = Column.of("missed_mg_L", "missed by", Show.MG_L);
  static final Column MISSED_PCT = Column.number("missed_pct", "missed by", 2);
  static final Column FROM_WATER = Column.of("from_water_mg_L", "from the water", Show.MG_L);

  static final Column VOLUME = Column.of("volume_L", "into", Show.L);
  static final Column TOTAL = Column.of("total_g", "salts in all", StockRows.SCALE);
  static final Column EC = Column.of("ec_mS_cm", "EC, about", Show.MS_CM);
  static final Column EC_LOW = Column.of("ec_low_mS_cm", "EC from", Show.MS_CM);
  static final Column EC_HIGH = Column.of("ec_high_mS_cm", "to", Show.MS_CM);
  static final Column WATER_EC = Column.of("water_ec_mS_cm", "the water's EC", Show.MS_CM);
  static final Column CATIONS = Column.of("cations_meq_L", "cations", Show.MEQ_L.digits(3));
  static final Column ANIONS = Column.of("anions_meq_L", "anions", Show.MEQ_L.digits(3));
  static final Column BALANCE =
      Column.of("charge_balance_meq_L", "charge balance", Show.MEQ_L.digits(2));
  static final Column BALANCE_PCT = Column.number("charge_balance_pct", "charge balance", 2);
  static final Column COST = Column.money("cost", "cost");
  static final Column CURRENCY = Column.plain("currency", "currency");
  static final Column EXACT = Column.plain("exact", "exact");
  static final Column UNIQUE = Column.plain("unique", "the only answer");
  static final Column WORST = Column.number("worst_miss_pct", "worst miss", 2);

  private static final Column[] FIGURES = {
    VOLUME, TOTAL, EC, EC_LOW, EC_HIGH,
    CATIONS, ANIONS, BALANCE, BALANCE_PCT, COST,
    CURRENCY, EXACT, UNIQUE, WORST, WATER_EC,
  };

  private final Recipe recipe;
  private final RecipeFit fit;
  private final MixEc ec;

  SaltRows(Recipe recipe, RecipeFit fit, MixEc ec) {
    this.recipe = recipe;
    this.fit = fit;
    this.ec = ec;
  }

  /** The salts alone, for JSON. */
  Answer salts(LiquidFeed liquid) {
    Answer salts =
        liquid == null ? new Answer(SALT, GRAMS) : new Answer(SALT, GRAMS, LiquidFeed.POURED);
    for (int i = 0; i < recipe.salts().size(); i++) {
      fill(salts.row(), i, liquid);
    }
    return salts;
  }

  private void fill(Row row, int i, LiquidFeed liquid) {
    Weighed one = recipe.salts().get(i);
    LabelledBottle bottle = liquid == null ? null : liquid.bottle(i, recipe);
    row.set(SALT, one.salt().name());
    row.set(GRAMS, bottle != null && !bottle.weighs() ? null : (Double) one.grams());
    if (bottle != null) {
      row.set(LiquidFeed.POURED, liquid.poured(bottle));
    }
  }

  /** The rows of CSV: a salt each, with the EC and what became of every asked element beside it. */
  Answer wide(LiquidFeed liquid) {
    int asked = fit == null ? 0 : fit.elements().size();
    Column[] columns = columns(asked, liquid == null ? 3 : 4);
    int first = columns.length - 3 * asked;
    Answer answer = new Answer(columns);
    for (int s = 0; s < recipe.salts().size(); s++) {
      Row row = answer.row().set(EC, ec == null ? null : (Double) ec.ec25());
      fill(row, s, liquid);
      for (int i = 0; i < asked; i++) {
        int at = first + 3 * i;
        Missed one = fit.elements().get(i);
        row.set(columns[at], one.asked())
            .set(columns[at + 1], one.got())
            .set(columns[at + 2], one.missed());
      }
    }
    return answer;
  }

  /** The first three or four, then three for each element asked. */
  private Column[] columns(int asked, int first) {
    Column[] columns = new Column[first + 3 * asked];
    columns[0] = SALT;
    columns[1] = GRAMS;
    columns[2] = EC;
    if (first > 3) {
      columns[3] = LiquidFeed.POURED;
    }
    for (int i = 0; i < asked; i++) {
      String name = fit.elements().get(i).element().label().replace('-', '_');
      int at = first + 3 * i;
      columns[at] = Column.of(name + "_asked_mg_L", name + " asked", Show.MG_L);
      columns[at + 1] = Column.of(name + "_got_mg_L", name + " got", Show.MG_L);
      columns[at + 2] = Column.of(name + "_missed_mg_L", name + " missed by", Show.MG_L);
    }
    return columns;
  }

  Answer figures(Plan plan, double volume, boolean weighs) {
    Answer figures = new Answer(FIGURES);
    boolean priced = recipe.cost() > 0;
    Row row =
        figures
            .row()
            .set(VOLUME, volume)
            .set(TOTAL, weighs ? Litres.baseOfG(recipe.totalGrams()) : null)
            .set(COST, priced ? (Double) recipe.cost() : null)
            .set(CURRENCY, priced ? plan.root().text("currency") : null)
            .setAny(EXACT, fit == null ? null : (Object) fit.exact())
            .setAny(UNIQUE, fit == null ? null : (Object) fit.unique())
            .set(WORST, fit == null ? null : (Double) fit.worstMissPct());
    charges(row);
    return figures;
  }

  /** Charges of the ions and the EC that they make. */
  private void charges(Row row) {
    row.set(CATIONS, recipe.ions().cations())
        .set(ANIONS, recipe.ions().anions())
        .set(BALANCE, recipe.ions().balance())
        .set(BALANCE_PCT, recipe.ions().balancePct());
    if (ec != null) {
      row.set(EC, ec.ec25()).set(EC_LOW, ec.low()).set(EC_HIGH, ec.high());
      row.set(WATER_EC, ec.waterEc());
    }
  }

  Answer elements() {
    Answer elements = new Answer(ELEMENT, ASKED, GOT, MISSED, MISSED_PCT, FROM_WATER);
    boolean[] done = new boolean[Element.count()];
    for (int i = 0; fit != null && i < fit.elements().size(); i++) {
      Missed one = fit.elements().get(i);
      done[one.element().ordinal()] = true;
      elements
          .row()
          .set(ELEMENT, one.element().label())
          .set(ASKED, one.asked())
          .set(GOT, one.got())
          .set(MISSED, one.missed())
          .set(MISSED_PCT, one.hasPct() ? (Double) one.missedPct() : null)
          .set(FROM_WATER, one.fromWater());
    }
    others(elements, done);
    return elements;
  }

  /** Elements that nobody asked, where there are any. */
  private void others(Answer elements, boolean[] done) {
    for (int i = 0; i < done.length; i++) {
      Element element = Element.at(i);
      double got = recipe.total().orElse(element, 0);
      if (!done[i] && got > 0) {
        elements
            .row()
            .set(ELEMENT, element.label())
            .set(GOT, got)
            .set(FROM_WATER, recipe.fromWater().orElse(element, 0));
      }
    }
  }
}
