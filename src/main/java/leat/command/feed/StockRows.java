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

  /** Made when asked: the columns of bottles stand in a class that knows this one. */
  private static Column[] columns() {
    return new Column[] {
      BOTTLE,
      SALT,
      GRAMS,
      SHARE,
      VERDICT,
      RATE,
      MAKES,
      SEASON,
      BOTTLES,
      MIX,
      GYPSUM,
      BRUSHITE,
      BottleIons.SOLID,
      BottleIons.INDEX,
      BottleIons.BAND,
      BottleIons.FALLS_OUT,
      EC,
      EC_LOW,
      EC_HIGH,
    };
  }

  /** No row yet; more columns stand behind the usual ones. */
  static Answer empty(Column... more) {
    Column[] usual = columns();
    Column[] all = java.util.Arrays.copyOf(usual, usual.length + more.length);
    System.arraycopy(more, 0, all, usual.length, more.length);
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
