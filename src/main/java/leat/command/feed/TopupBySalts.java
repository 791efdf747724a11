package leat.command.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.command.sense.LoggedTank;
import leat.plan.Named;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.Weighed;
import leat.solution.tank.Topup;
import leat.solution.tank.TopupSalts;
import leat.system.SaltsOf;

/** {@code leat topup} for feed that is weighed: grams of each salt of a recipe. */
final class TopupBySalts {
  static final Column SALT = Column.plain("salt", "salt");
  static final Column GRAMS = Column.of("grams", "weigh", SaltGrams.SHOW);
  static final Column GRAMS_LOW = Column.of("grams_low_g", "at least", SaltGrams.SHOW);
  static final Column GRAMS_HIGH = Column.of("grams_high_g", "at most", SaltGrams.SHOW);
  static final Column TOTAL = Column.of("salts_g", "salts in all", SaltGrams.SHOW);
  static final Column TOTAL_LOW = Column.of("salts_low_g", "at least", SaltGrams.SHOW);
  static final Column TOTAL_HIGH = Column.of("salts_high_g", "at most", SaltGrams.SHOW);
  static final Column GAIN = Column.of("recipe_ec_mS_cm", "the recipe adds", Show.MS_CM);
  static final Column MAKES = Column.of("makes_L", "it makes", Show.L);

  private final TopupAsked asked;
  private final Held held;
  private final Recipe recipe;
  private final double makes;
  private final TopupSalts.Answer low;
  private final TopupSalts.Answer middle;
  private final TopupSalts.Answer high;

  TopupBySalts(TopupAsked asked, Held held) {
    this(asked, held, asked.ec(held), recipe(asked));
  }

  /** The same for one of many readings, with the recipe read before. */
  TopupBySalts(TopupAsked asked, Held held, double ec, Recipe recipe) {
    this.asked = asked;
    this.held = held;
    this.recipe = recipe;
    this.makes = makes(asked);
    this.low = solve(held.low, ec);
    this.middle = solve(held.middle, ec);
    this.high = solve(held.high, ec);
  }

  private static double makes(TopupAsked asked) {
    Section stock = asked.call.plan().section("feed").section("stock");
    if (!stock.has("makes")) {
      throw asked.call.has("--weigh") ? asked.call.needs("--makes") : stock.missing("makes");
    }
    return stock.need("makes");
  }

  /** The recipe that is weighed, in the water that it makes. */
  static Recipe recipe(TopupAsked asked) {
    double makes = makes(asked);
    Recipe recipe = Recipe.mix(weighed(asked.call), Litres.of(makes), Ions.NONE);
    if (recipe.ec() == null) {
      throw new Refused(MixErrors.recipeIsStock(makes));
    }
    return recipe;
  }

  /**
   * Columns of a row for one of many readings: those of the figures, then the grams of each salt.
   */
  static Column[] columns(Recipe recipe) {
    Column[] figures = columns(true);
    int n = recipe.salts().size();
    Column[] all = java.util.Arrays.copyOf(figures, figures.length + n);
    for (int i = 0; i < n; i++) {
      String name = recipe.salts().get(i).salt().name();
      all[figures.length + i] = Column.of(name + "_g", name, SaltGrams.SHOW);
    }
    return all;
  }

  /** Fills such a row. */
  void fill(Row row, Column[] columns) {
    fill(row, true);
    int first = columns.length - recipe.salts().size();
    for (int i = first; i < columns.length; i++) {
      row.set(columns[i], kg(i - first, middle));
    }
  }

  private TopupSalts.Answer solve(double volume, double ec) {
    return TopupSalts.solve(
        Litres.of(volume),
        ec,
        Litres.of(asked.full),
        asked.target,
        asked.waterEc,
        recipe.ec().ec25());
  }

  private static List<Weighed> weighed(Call call) {
    List<Weighed> all = new ArrayList<>();
    if (call.has("--weigh")) {
      List<Object> typed = call.values("--weigh");
      for (int i = 0; i < typed.size(); i++) {
        leat.quantity.NamedQuantity one = (leat.quantity.NamedQuantity) typed.get(i);
        all.add(weighed(salt(call, "--weigh", one.name()), one.quantity().value()));
      }
      return all;
    }
    Named grams = call.plan().section("feed").section("stock").named("grams");
    for (int i = 0; i < grams.size(); i++) {
      Salt salt = salt(call, "feed.stock.grams", grams.name(i));
      all.add(weighed(salt, (Double) grams.value(i)));
    }
    return all;
  }

  private static Weighed weighed(Salt salt, double kg) {
    if (kg < 0) {
      throw new Refused(MixErrors.negativeWeight(salt.name()));
    }
    return new Weighed(salt, Units.G.fromBase(kg));
  }

  private static Salt salt(Call call, String flag, String name) {
    Salt salt = SaltsOf.find(call.plan(), name);
    if (salt == null) {
      throw new Refused(EcErrors.noSalt(flag, name, SaltsOf.names(call.plan())));
    }
    return salt;
  }

  Answer answer() {
    boolean band = held.isBand();
    Answer salts = band ? new Answer(SALT, GRAMS, GRAMS_LOW, GRAMS_HIGH) : new Answer(SALT, GRAMS);
    RainSeenText rain =
        RainSeenText.of(asked.call, Litres.of(held.middle), asked.ec(held), asked.target);
    Answer figures = new Answer(RainSeenText.with(LoggedTank.with(columns(band), held.log), rain));
    Row row = figures.row();
    fill(row, band);
    for (int i = 0; i < recipe.salts().size() && middle.reached(); i++) {
      Row one = salts.row().set(SALT, recipe.salts().get(i).salt().name());
      one.set(GRAMS, kg(i, middle));
      if (band) {
        one.set(GRAMS_LOW, kg(i, least())).set(GRAMS_HIGH, kg(i, most()));
      }
    }
    salts.jsonObject(figures).array("salts", salts);
    MixedPhText ph =
        MixedPhText.of(
            asked.call,
            middle.reached() ? Litres.of(asked.full) - middle.waterL() : null,
            middle.waterL());
    text(salts, row, ph);
    if (rain != null) {
      rain.tell(salts, row);
    }
    asked.typed.taken(salts, "--ec");
    if (asked.call.wantsChart() && middle.reached()) {
      salts.chart(TopupChart.water(row)).chart(TopupChart.salts(salts));
    }
    asked.call.withTaken(salts);
    TopupCommand.readingMinds(salts, asked.call.plan(), held);
    minds(salts);
    return middle.reached() ? salts : salts.no();
  }

  private static Column[] columns(boolean band) {
    Column[] one = {
      TopupColumns.DRAIN,
      TopupColumns.WATER,
      TOTAL,
      TopupColumns.FINAL_VOLUME,
      TopupColumns.FINAL_EC,
      TopupColumns.STATUS,
      TopupColumns.FULL,
      TopupColumns.TARGET,
      TopupColumns.WATER_EC,
      GAIN,
      MAKES
    };
    Column[] ends = {
      TopupColumns.SENDER,
      TopupColumns.VOLUME_LOW,
      TopupColumns.VOLUME_HIGH,
      TopupColumns.DRAIN_LOW,
      TopupColumns.DRAIN_HIGH,
      TopupColumns.WATER_LOW,
      TopupColumns.WATER_HIGH,
      TOTAL_LOW,
      TOTAL_HIGH
    };
    if (!band) {
      return one;
    }
    Column[] all = java.util.Arrays.copyOf(one, one.length + ends.length);
    System.arraycopy(ends, 0, all, one.length, ends.length);
    return all;
  }

  private void fill(Row row, boolean band) {
    row.set(TopupColumns.STATUS, middle.status().word)
        .set(TopupColumns.DRAIN, Litres.base(middle.drainL()))
        .set(TopupColumns.WATER, Litres.base(middle.waterL()))
        .set(TOTAL, total(middle))
        .set(TopupColumns.FINAL_VOLUME, Litres.base(middle.finalVolumeL()))
        .set(TopupColumns.FINAL_EC, middle.finalEcMsCm())
        .set(TopupColumns.FULL, asked.full)
        .set(TopupColumns.TARGET, asked.target)
        .set(TopupColumns.WATER_EC, asked.waterEc)
        .set(GAIN, recipe.ec().ec25())
        .set(MAKES, makes);
    if (band) {
      row.set(TopupColumns.SENDER, held.status())
          .set(TopupColumns.VOLUME_LOW, held.low)
          .set(TopupColumns.VOLUME_HIGH, held.high)
          .set(TopupColumns.DRAIN_LOW, Litres.base(low.drainL()))
          .set(TopupColumns.DRAIN_HIGH, Litres.base(high.drainL()))
          .set(TopupColumns.WATER_LOW, Litres.base(high.waterL()))
          .set(TopupColumns.WATER_HIGH, Litres.base(low.waterL()))
          .set(TOTAL_LOW, total(least()))
          .set(TOTAL_HIGH, total(most()));
    }
  }

  private TopupSalts.Answer least() {
    return low.reached() && high.reached() && low.recipeL() < high.recipeL() ? low : high;
  }

  private TopupSalts.Answer most() {
    return least() == low ? high : low;
  }

  private Double total(TopupSalts.Answer one) {
    return one.reached() ? Litres.baseOfG(recipe.gramsFor(one.recipeL())) : null;
  }

  private Double kg(int salt, TopupSalts.Answer one) {
    return one.reached() ? Litres.baseOfG(recipe.gramsFor(salt, one.recipeL())) : null;
  }

  private void text(Answer answer, Row row, MixedPhText ph) {
    if (!middle.reached()) {
      answer.sentence(
          row,
          "{target_ec_mS_cm} cannot be reached: the water itself is {water_ec_mS_cm}, and weighed salts only lift the EC.");
      return;
    }
    answer.sentence(row, sentence());
    for (int i = 0; i < answer.size(); i++) {
      Row one = answer.row(i);
      answer.figure(
          (String) one.get(SALT), one, held.isBand() ? "{grams_low_g..grams_high_g}" : "{grams}");
    }
    answer.block();
    if (held.isBand()) {
      answer.figure("in the tank", row, "{volume_low_L..volume_high_L}", "full at {full_L}");
    }
    answer.figure(row, GAIN, "by its ions, in the {makes_L} that it makes");
    if (held.log != null) {
      held.log.tell(answer, row, asked.ec(held));
    }
    if (ph != null) {
      ph.figureAlone(answer);
    }
    answer.working(
        Working.of(
            "salts in all",
            "grams = recipe's grams a litre x (F (t - w) - K (e - w)) / g",
            Answer.filled(
                row,
                "F = {full_L}, t = {target_ec_mS_cm}, w = {water_ec_mS_cm}, g = {recipe_ec_mS_cm}"),
            total(middle),
            SaltGrams.SHOW.digits(4),
            EcRange.words(),
            "balance of volume and salt; EC of the recipe's ions"));
  }

  private String sentence() {
    boolean salts = held.isBand() ? most().recipeL() > 0 : middle.recipeL() > 0;
    if (held.isBand()) {
      return high.drainL() > 0
          ? salts
              ? "Drain {drain_low_L..drain_high_L}, fill to the mark with {water_low_L..water_high_L} of water, stir and measure; then dissolve {salts_low_g..salts_high_g} of salts."
              : "Drain {drain_low_L..drain_high_L}, fill to the mark with {water_low_L..water_high_L} of water, stir and measure: it needs no salts."
          : salts
              ? "Fill to the mark with {water_low_L..water_high_L} of water, stir and measure; then dissolve {salts_low_g..salts_high_g} of salts."
              : "Fill to the mark with {water_low_L..water_high_L} of water, stir and measure: it needs no salts.";
    }
    if (middle.drainL() > 0 && middle.waterL() == 0) {
      return salts
          ? "Drain {drain_L}, then dissolve {salts_g} of salts: {final_volume_L} at {final_ec_mS_cm}."
          : "Drain {drain_L} and add nothing: {final_volume_L} at {final_ec_mS_cm}.";
    }
    if (middle.drainL() > 0) {
      return "Drain {drain_L} and add {water_L} of water: {final_volume_L} at {final_ec_mS_cm}. It needs no salts.";
    }
    if (middle.waterL() > 0) {
      return salts
          ? "Add {water_L} of water and {salts_g} of salts: {final_volume_L} at {final_ec_mS_cm}. Drain nothing."
          : "Add {water_L} of water: {final_volume_L} at {final_ec_mS_cm}. It needs no salts; drain nothing.";
    }
    return salts
        ? "Dissolve {salts_g} of salts: {final_volume_L} at {final_ec_mS_cm}. Drain nothing."
        : "Nothing to do: {final_volume_L} at {final_ec_mS_cm}.";
  }

  private void minds(Answer answer) {
    if (low.reached() != high.reached()) {
      answer.mind(
          "doubtful",
          "for some volumes of the band there is an answer and for others none: measure the level before you pour.");
    }
    if (!middle.reached()) {
      return;
    }
    if (!Topup.VALID.holds(asked.target, asked.target)) {
      EcRange.mind(answer);
    }
    if (!recipe.ionsComplete()) {
      answer.mind(
          "hidden-ions",
          "one product does not say what form its nitrogen has: it adds more EC than is counted here.");
    }
    if (recipe.scaledTooSmall(middle.recipeL())) {
      answer.mind(
          "too-little",
          "one of these is too little for a kitchen scale: weigh ten times as much into ten times the water and pour a tenth.");
    }
    asked.typed.minds(answer);
    if (middle.recipeL() > 0) {
      answer.mind(
          "dissolve",
          "dissolve each salt by itself in a jug of the tank's water, calcium last; put in three quarters, stir, wait ten minutes, measure.");
    }
    if (!recipe.ec().inRange()) {
      answer.mind("ion-range", "the recipe is stronger than the sum of its EC was checked for.");
    }
    answer.next(
        asked.call.again("dose salts") + " --ask ...   to see the elements that a recipe brings");
  }
}
