package leat.command.feed;

import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.solution.tank.Rained;

/** The columns of {@code leat topup} by the gram and how its results fill them. */
final class TopupSaltColumns {
  static final Column SALT = Column.plain("salt", "salt");
  static final Column GRAMS = Column.of("grams", "grams", SaltGrams.SHOW);
  static final Column GRAMS_LOW = Column.of("grams_low_g", "at least", SaltGrams.SHOW);
  static final Column GRAMS_HIGH = Column.of("grams_high_g", "at most", SaltGrams.SHOW);
  static final Column TOTAL = Column.of("salts_g", "salts in all", SaltGrams.SHOW);
  static final Column TOTAL_LOW = Column.of("salts_low_g", "at least", SaltGrams.SHOW);
  static final Column TOTAL_HIGH = Column.of("salts_high_g", "at most", SaltGrams.SHOW);
  static final Column GAIN = Column.of("recipe_ec_mS_cm", "the recipe adds", Show.MS_CM);
  static final Column MAKES = Column.of("makes_L", "makes", Show.L);

  private static final Column[] ONE = {
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
    MAKES,
    TopupColumns.RAINED,
    TopupColumns.RAINED_EC,
    TopupColumns.OVERFLOW,
    TopupColumns.CANS,
    TopupColumns.LAST_CAN
  };
  private static final Column[] ENDS = {
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

  private TopupSaltColumns() {}

  /** Columns of the figures: with a band or without. */
  static Column[] of(boolean band) {
    if (!band) {
      return ONE;
    }
    Column[] all = java.util.Arrays.copyOf(ONE, ONE.length + ENDS.length);
    System.arraycopy(ENDS, 0, all, ONE.length, ENDS.length);
    return all;
  }

  /**
   * Columns of a row for one of many readings: those of the figures, then the grams of each salt.
   */
  static Column[] ofRows(WeighedRecipe recipe) {
    Column[] figures = of(true);
    Column[] all = java.util.Arrays.copyOf(figures, figures.length + recipe.size());
    for (int i = 0; i < recipe.size(); i++) {
      String name = recipe.name(i);
      all[figures.length + i] = Column.of(name + "_g", name, SaltGrams.SHOW);
    }
    return all;
  }

  /** The figures of one answer. */
  static void fill(Row row, TopupBySalts by) {
    TopupAsked asked = by.asked;
    row.set(TopupColumns.STATUS, by.middle.status().word)
        .set(TopupColumns.DRAIN, Litres.base(by.middle.drainL()))
        .set(TopupColumns.WATER, Litres.base(by.middle.waterL()))
        .set(TOTAL, by.total(by.middle.recipeL()))
        .set(TopupColumns.FINAL_VOLUME, Litres.base(by.middle.finalVolumeL()))
        .set(TopupColumns.FINAL_EC, by.middle.finalEcMsCm())
        .set(TopupColumns.FULL, asked.full)
        .set(TopupColumns.TARGET, asked.target)
        .set(TopupColumns.WATER_EC, asked.waterEc)
        .set(GAIN, by.recipe.gainMsCm())
        .set(MAKES, by.recipe.makes());
    Rained rained = by.rained();
    row.set(TopupColumns.RAINED, Litres.base(rained.volumeL()))
        .set(TopupColumns.RAINED_EC, rained.ecMsCm())
        .set(TopupColumns.OVERFLOW, Litres.base(rained.overflowL()));
    CansText.fill(row, by.cans());
  }

  /** The ends of a band. */
  static void fillEnds(Row row, TopupBySalts by) {
    row.set(TopupColumns.SENDER, by.held.status())
        .set(TopupColumns.VOLUME_LOW, by.held.low)
        .set(TopupColumns.VOLUME_HIGH, by.held.high)
        .set(TopupColumns.DRAIN_LOW, Litres.base(by.band.drainLowL()))
        .set(TopupColumns.DRAIN_HIGH, Litres.base(by.band.drainHighL()))
        .set(TopupColumns.WATER_LOW, Litres.base(by.band.waterLowL()))
        .set(TopupColumns.WATER_HIGH, Litres.base(by.band.waterHighL()))
        .set(TOTAL_LOW, by.total(by.band.recipeLowL()))
        .set(TOTAL_HIGH, by.total(by.band.recipeHighL()));
  }
}
