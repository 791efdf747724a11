package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.command.sense.LoggedTank;
import leat.solution.tank.Cans;
import leat.solution.tank.Rained;
import leat.solution.tank.TopupSalts;
import leat.solution.tank.TopupSaltsAsk;
import leat.solution.tank.TopupSaltsBand;

/** {@code leat topup} for feed that is weighed: grams of each salt of a recipe. */
final class TopupBySalts {
  final TopupAsked asked;
  final Held held;
  final WeighedRecipe recipe;
  final TopupSaltsAsk ask;
  final TopupSaltsBand band;
  final TopupSalts.Answer middle;

  TopupBySalts(TopupAsked asked, Held held) {
    this(asked, held, asked.ec(held), WeighedRecipe.of(asked.call));
  }

  /** The same for one of many readings, with the recipe read before. */
  TopupBySalts(TopupAsked asked, Held held, double ec, WeighedRecipe recipe) {
    this.asked = asked;
    this.held = held;
    this.recipe = recipe;
    this.ask = asked.saltsAsk(ec, recipe.gainMsCm());
    this.band =
        TopupSaltsBand.solve(
            ask, Litres.of(held.low), Litres.of(held.middle), Litres.of(held.high));
    this.middle = band.middle();
  }

  /** The tank after the rain, by the middle of the band. */
  Rained rained() {
    return ask.rained(Litres.of(held.middle));
  }

  /** The water in cans; null when no can is known or no water is poured. */
  Cans cans() {
    return asked.cans(middle.waterL());
  }

  /** Fills a row for one of many readings. */
  void fill(Row row, Column[] columns) {
    TopupSaltColumns.fill(row, this);
    TopupSaltColumns.fillEnds(row, this);
    int first = columns.length - recipe.size();
    for (int i = first; i < columns.length; i++) {
      row.set(columns[i], kg(i - first, middle));
    }
  }

  Answer answer() {
    boolean band = held.isBand();
    RainSeenText rain =
        RainSeenText.of(asked.call, Litres.of(held.middle), asked.ec(held), asked.target);
    MixedPhText ph = ph();
    Answer figures =
        new Answer(
            RainSeenText.with(
                MixedPhText.with(LoggedTank.with(TopupSaltColumns.of(band), held.log), ph), rain));
    Row row = figures.row();
    TopupSaltColumns.fill(row, this);
    if (band) {
      TopupSaltColumns.fillEnds(row, this);
    }
    Answer salts = salts(band);
    salts.jsonObject(figures).array("salts", salts);
    tell(salts, row, ph, rain);
    return middle.reached() ? salts : salts.no();
  }

  private void tell(Answer salts, Row row, MixedPhText ph, RainSeenText rain) {
    TopupSaltsText text = new TopupSaltsText(this, salts, row);
    text.sentenceAndFigures(ph);
    if (rain != null) {
      rain.tell(salts, row);
    }
    asked.typed.taken(salts, "--ec");
    if (asked.call.wantsChart() && middle.reached()) {
      salts.chart(TopupChart.water(row)).chart(TopupChart.salts(salts));
    }
    asked.call.withTaken(salts);
    TopupCommand.readingMinds(salts, asked.call.plan(), held);
    text.minds();
  }

  /** Grams of each salt, a row each; none when the target cannot be met. */
  private Answer salts(boolean band) {
    Answer salts =
        band
            ? new Answer(
                TopupSaltColumns.SALT,
                TopupSaltColumns.GRAMS,
                TopupSaltColumns.GRAMS_LOW,
                TopupSaltColumns.GRAMS_HIGH)
            : new Answer(TopupSaltColumns.SALT, TopupSaltColumns.GRAMS);
    for (int i = 0; i < recipe.size() && middle.reached(); i++) {
      Row one = salts.row().set(TopupSaltColumns.SALT, recipe.name(i));
      one.set(TopupSaltColumns.GRAMS, kg(i, middle));
      if (band) {
        one.set(TopupSaltColumns.GRAMS_LOW, recipe.kg(i, this.band.recipeLowL()))
            .set(TopupSaltColumns.GRAMS_HIGH, recipe.kg(i, this.band.recipeHighL()));
      }
    }
    return salts;
  }

  private MixedPhText ph() {
    Double kept = middle.reached() ? Litres.of(asked.full) - middle.waterL() : null;
    return MixedPhText.of(asked.call, kept, middle.waterL());
  }

  /** kg of all salts for so many litres of the recipe; null when the target cannot be met. */
  Double total(Double recipeL) {
    return recipeL == null ? null : recipe.kg(recipeL);
  }

  private Double kg(int salt, TopupSalts.Answer one) {
    return one.reached() ? recipe.kg(salt, one.recipeL()) : null;
  }
}
