package leat.command.run;

import java.time.LocalDate;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Show;
import leat.climate.SeasonWeather;
import leat.quantity.Units;
import leat.season.DayRow;
import leat.season.Money;
import leat.season.Period;
import leat.season.Totals;
import leat.system.MoneyOf;
import leat.system.SeasonOf;

/** The season's rows: a day, a week or a month each. */
final class SeasonRows {
  static final Column DATE = Column.plain("date", "day");
  static final Column VOLUME = Column.of("volume_L", "in the tank", Show.L);
  static final Column EC = Column.of("ec_mS_cm", "EC", Show.MS_CM);
  static final Column LOW = Column.of("low_L", "least", Show.L);
  static final Column USE = Column.of("water_use_L", "drunk", Show.L);
  static final Column SHORT = Column.of("short_L", "short", Show.L);
  static final Column RAIN = Column.of("rain_L", "rain", Show.L);
  static final Column OVER = Column.of("overflow_L", "run over", Show.L);
  static final Column WATER = Column.of("topup_water_L", "water", Show.L);
  static final Column FEED = Column.of("topup_concentrate_mL", "feed", Show.ML);
  static final Column DRAINED = Column.of("drained_L", "drained", Show.L);
  static final Column TANK_C = Column.of("tank_C", "warmth", Show.C);
  static final Column KWH = Column.of("kwh", "energy", Show.KWH);
  static final Column COST = Column.money("cost", "cost");
  static final Column EVENT = Column.plain("event", "event");

  private final SeasonOf season;
  private final MoneyOf energy;
  private final Money money;
  private final SeasonWeather weather;

  SeasonRows(SeasonOf season, MoneyOf energy, Money money, SeasonWeather weather) {
    this.season = season;
    this.energy = energy;
    this.money = money;
    this.weather = weather;
  }

  /** An answer with the columns of a row. */
  static Answer answer() {
    return new Answer(
        DATE, VOLUME, EC, LOW, USE, SHORT, RAIN, OVER, WATER, FEED, DRAINED, TANK_C, KWH, COST,
        EVENT);
  }

  /** A row a day. */
  void days(Answer answer, List<DayRow> rows) {
    for (int t = 0; t < rows.size(); t++) {
      DayRow day = rows.get(t);
      row(answer, season.from().plusDays(t), day, t, day.event());
    }
  }

  /** A row for each week or month. */
  void periods(Answer answer, List<Period> periods) {
    for (int i = 0; i < periods.size(); i++) {
      Period one = periods.get(i);
      int last = one.rows().get(one.rows().size() - 1).day();
      row(answer, one.first(), one.sum(), last, events(one.counts()));
    }
  }

  private void row(Answer answer, LocalDate date, DayRow day, int last, String event) {
    Double celsius = weather == null ? null : known(weather.meanCelsius(day.day(), last));
    answer
        .row()
        .set(DATE, date.toString())
        .set(VOLUME, Units.L.toBase(day.volumeL()))
        .set(EC, known(day.ecMsCm()))
        .set(LOW, Units.L.toBase(day.lowL()))
        .set(USE, Units.L.toBase(day.useL()))
        .set(SHORT, Units.L.toBase(day.shortL()))
        .set(RAIN, Units.L.toBase(day.rainL()))
        .set(OVER, Units.L.toBase(day.overflowL()))
        .set(WATER, Units.L.toBase(day.waterL()))
        .set(FEED, Units.ML.toBase(day.concentrateMl()))
        .set(DRAINED, Units.L.toBase(day.drainedL()))
        .set(TANK_C, celsius)
        .set(KWH, known(energy.energyJ(day.day(), last)))
        .set(COST, known(money.of(day, last)))
        .set(EVENT, event.isEmpty() ? null : event);
  }

  private static String events(Totals.Counts n) {
    StringBuilder words = new StringBuilder();
    add(words, n.overflowDays(), "overflow");
    add(words, n.dryDays(), "dry");
    add(words, n.changes(), "change");
    add(words, n.topups(), "top-up");
    add(words, n.dilutions(), "dilute");
    add(words, n.doses(), "dose");
    return words.toString();
  }

  private static void add(StringBuilder words, int n, String what) {
    if (n > 0) {
      words.append(words.length() == 0 ? "" : " ").append(n).append(' ').append(what);
    }
  }

  /** A number, or null for one that is not known. */
  static Double known(double value) {
    return Double.isNaN(value) ? null : Double.valueOf(value);
  }
}
