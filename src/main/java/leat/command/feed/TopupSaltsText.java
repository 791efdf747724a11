package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.solution.tank.Topup;
import leat.solution.tank.TopupSalts;

/** What {@code leat topup} says in words where the feed is weighed. */
final class TopupSaltsText {
  private static final Column KEPT = Column.of("kept_L", "kept", Show.L);
  private static final Column FILLED = Column.of("filled_L", "filled", Show.L.digits(5));

  private final TopupBySalts by;
  private final TopupSalts.Answer middle;
  private final Answer answer;
  private final Row row;

  TopupSaltsText(TopupBySalts by, Answer answer, Row row) {
    this.by = by;
    this.middle = by.middle;
    this.answer = answer;
    this.row = row;
  }

  void sentenceAndFigures(MixedPhText ph) {
    if (!middle.reached()) {
      answer.sentence(
          row,
          "{target_ec_mS_cm} cannot be reached: the water itself is {water_ec_mS_cm}, and weighed salts only lift the EC.");
      return;
    }
    answer.sentence(row, by.held.isBand() ? ofBand() : ofOne());
    figures();
    if (by.held.log != null) {
      by.held.log.tell(answer, row, by.asked.ec(by.held));
    }
    if (ph != null) {
      ph.figure(answer, row);
    }
    working();
  }

  private void figures() {
    boolean band = by.held.isBand();
    for (int i = 0; i < answer.size(); i++) {
      Row one = answer.row(i);
      answer.figure(
          (String) one.get(TopupSaltColumns.SALT),
          one,
          band ? "{grams_low_g..grams_high_g}" : "{grams}");
    }
    answer.block();
    if (band) {
      answer.figure("in the tank", row, "{volume_low_L..volume_high_L}", "full at {full_L}");
    }
    answer.figure(row, TopupSaltColumns.GAIN, "by its ions, in the {makes_L} that it makes");
    if (by.asked.rained()) {
      TopupText.rained(answer, row, by.rained().overflowL());
    }
    CansText.tell(answer, row, by.cans());
  }

  private void working() {
    answer.working(
        Working.of(
            "salts in all",
            "grams = recipe's grams a litre x (F (t - w) - K (e - w)) / g",
            Answer.filled(
                row.with(Row.aside(KEPT).set(KEPT, kept())),
                "F = {full_L}, t = {target_ec_mS_cm}, w = {water_ec_mS_cm}, K = {kept_L}, e = {after_rain_ec_mS_cm}, g = {recipe_ec_mS_cm}"),
            by.total(middle.recipeL()),
            SaltGrams.SHOW.digits(4),
            EcRange.words(),
            "balance of volume and salt; EC of the recipe's ions"));
  }

  /** What is left in the tank after draining, m3. */
  private Double kept() {
    return Litres.base(by.rained().volumeL() - middle.drainL());
  }

  private String ofBand() {
    boolean salts = by.band.recipeHighL() > 0;
    if (salts && by.band.drainHighL() > 0 && by.band.drainLowL() == 0) {
      return "Drain up to {drain_high_L}, fill to the mark with {water_low_L..water_high_L} of water, stir and measure; then dissolve {salts_low_g..salts_high_g} of salts.";
    }
    if (by.band.drainHighL() > 0) {
      return salts
          ? "Drain {drain_low_L..drain_high_L}, fill to the mark with {water_low_L..water_high_L} of water, stir and measure; then dissolve {salts_low_g..salts_high_g} of salts."
          : "Drain {drain_low_L..drain_high_L}, fill to the mark with {water_low_L..water_high_L} of water, stir and measure: it needs no salts.";
    }
    return salts
        ? "Fill to the mark with {water_low_L..water_high_L} of water, stir and measure; then dissolve {salts_low_g..salts_high_g} of salts."
        : "Fill to the mark with {water_low_L..water_high_L} of water, stir and measure: it needs no salts.";
  }

  private String ofOne() {
    boolean salts = middle.recipeL() > 0;
    if (middle.drains()) {
      return !middle.pours()
          ? drained(salts)
          : "Drain {drain_L} and add {water_L} of water: {final_volume_L} at {final_ec_mS_cm}. It needs no salts.";
    }
    if (middle.pours()) {
      return salts
          ? "Add {water_L} of water and {salts_g} of salts: {final_volume_L} at {final_ec_mS_cm}. Drain nothing."
          : "Add {water_L} of water: {final_volume_L} at {final_ec_mS_cm}. It needs no salts; drain nothing.";
    }
    return salts
        ? "Dissolve {salts_g} of salts: {final_volume_L} at {final_ec_mS_cm}. Drain nothing."
        : "Nothing to do: {final_volume_L} at {final_ec_mS_cm}.";
  }

  private static String drained(boolean salts) {
    return salts
        ? "Drain {drain_L}, then dissolve {salts_g} of salts: {final_volume_L} at {final_ec_mS_cm}."
        : "Drain {drain_L} and add nothing: {final_volume_L} at {final_ec_mS_cm}.";
  }

  void minds() {
    if (by.band.doubtful()) {
      answer.mind(
          "doubtful",
          "for some volumes of the band there is an answer and for others none: measure the level before you pour.");
    }
    if (!middle.reached()) {
      return;
    }
    TopupText.ofTheTank(answer, by.ask.isOverFull(Litres.of(by.held.middle)), middle.drainsMore());
    if (!Topup.VALID.holds(by.rained().ecMsCm(), by.asked.target)) {
      EcRange.mind(answer);
    }
    ofTheRecipe();
    next();
  }

  private void next() {
    Call call = by.asked.call;
    if (by.held.isBand()) {
      filled(call);
    } else if (middle.pours()) {
      TopupText.acid(answer, row, call);
    }
    answer.next(
        row,
        NextLine.of(call.again("dose salts") + by.recipe.weighed())
            + " --volume \"{makes_L}\"   to see the elements that the recipe brings");
  }

  /** The same question of the filled tank. */
  private void filled(Call call) {
    String again =
        call.again(
            "topup", "--full", "--target", "--water-ec", "--weigh", "--makes", "--scale", "--at");
    answer.next(
        row.with(Row.aside(FILLED).set(FILLED, by.asked.full)),
        NextLine.of(again)
            + " --volume \"{filled_L}\" --ec READING   when it is filled, stirred and measured");
  }

  private void ofTheRecipe() {
    if (!by.recipe.recipe().ionsComplete()) {
      answer.mind(
          "hidden-ions",
          "one product does not say what form its nitrogen has: it adds more EC than is counted here.");
    }
    if (by.recipe.recipe().scaledTooSmall(middle.recipeL())) {
      answer.mind(
          "too-little",
          "one of these is too little for a kitchen scale: weigh ten times as much into ten times the water and pour a tenth.");
    }
    by.asked.typed.minds(answer);
    if (middle.recipeL() > 0) {
      answer.mind(
          "dissolve",
          "dissolve each salt by itself in a jug of the tank's water, calcium last; put in three quarters, stir, wait ten minutes, measure.");
    }
    if (!by.recipe.recipe().ec().inRange()) {
      answer.mind("ion-range", "the recipe is stronger than the sum of its EC was checked for.");
    }
  }
}
