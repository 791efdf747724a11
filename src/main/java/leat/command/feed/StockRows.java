package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.quantity.Units;
import leat.solution.recipes.MixEc;
import leat.solution.stock.StockBottles;

/** The rows of {@code leat stock}: one for each salt, or for each bottle that is bought. */
final class StockRows {
  /** A kitchen scale shows grams, whatever the other units. */
  static final Show SCALE = Show.of(Units.G, 3);

  static final Column BOTTLE = Column.plain("bottle", "bottle");
  static final Column SALT = Column.plain("salt", "salt");
  static final Column GRAMS = Column.of("grams", "grams", SCALE);
  static final Column SHARE =
      Column.of("share_of_solubility_pct", "of what the cold can hold", Show.PERCENT);
  static final Column VERDICT = Column.plain("verdict", "verdict");
  static final Column RATE = Column.of("rate_mL_L", "rate in tower water", Show.ML_L);
  static final Column MAKES = Column.of("makes_L", "makes", Show.L);
  static final Column SEASON = Column.of("season_L", "the season takes", Show.L);
  static final Column BOTTLES = Column.plain("bottles_season", "bottles for a season");
  static final Column MIX = Column.plain("mix_verdict", "in the tank");
  static final Column GYPSUM = Column.number("mix_si_gypsum", "index of gypsum", 2);
  static final Column BRUSHITE = Column.number("mix_si_brushite", "index of calcium phosphate", 2);
  static final Column EC = Column.of("ec_mS_cm", "EC of the tower water", Show.MS_CM);
  static final Column EC_LOW = Column.of("ec_low_mS_cm", "EC from", Show.MS_CM);
  static final Column EC_HIGH = Column.of("ec_high_mS_cm", "to", Show.MS_CM);

  /** For the text alone. */
  static final Column SIZE = Column.of("bottle_L", "size of a bottle", Show.L);

  static final Column COLDEST = Column.of("coldest_C", "coldest", Show.C);

  private final double rate;
  private final double makes;
  private final Double season;
  final Answer answer;

  StockRows(Answer answer, double rate, double makes, Double season) {
    this.answer = answer;
    this.rate = rate;
    this.makes = makes;
    this.season = season;
  }

  private static final Column[] OF_SALTS = {
    BOTTLE, SALT, GRAMS, SHARE, VERDICT, RATE,
    MAKES, SEASON, BOTTLES, MIX, GYPSUM, BRUSHITE,
  };
  private static final Column[] OF_EC = {EC, EC_LOW, EC_HIGH};

  /** No row yet; more columns stand behind the usual ones. */
  static Answer empty(Column... more) {
    Column[] ions = BottleIons.columns();
    int fixed = OF_SALTS.length + ions.length;
    Column[] all = java.util.Arrays.copyOf(OF_SALTS, fixed + OF_EC.length + more.length);
    System.arraycopy(ions, 0, all, OF_SALTS.length, ions.length);
    System.arraycopy(OF_EC, 0, all, fixed, OF_EC.length);
    System.arraycopy(more, 0, all, fixed + OF_EC.length, more.length);
    return new Answer(all).asList();
  }

  /** A new row of a bottle. */
  Row row(String bottle) {
    Row row =
        answer
            .row()
            .set(BOTTLE, bottle)
            .set(RATE, rate)
            .set(MAKES, Litres.base(makes))
            .set(SEASON, Litres.base(season));
    return season == null ? row : row.set(BOTTLES, StockBottles.season(season, makes).whole());
  }

  static void ec(Row row, MixEc ec) {
    if (ec != null) {
      row.set(EC, ec.ec25()).set(EC_LOW, ec.low()).set(EC_HIGH, ec.high());
    }
  }
}
