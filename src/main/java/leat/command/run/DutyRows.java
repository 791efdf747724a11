package leat.command.run;

import java.util.OptionalDouble;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.energy.RelayLife;
import leat.energy.Saving;
import leat.quantity.NumberText;
import leat.system.PeriodOf;

/** The columns of a timing with its energy and money, and the words that its rows lend to text. */
final class DutyRows {
  static final Column TIMING = Column.plain("timing", "timing");
  static final Column RUN = Column.of("run_s", "run", Show.S.digits(4));
  static final Column REST = Column.of("rest_s", "rest", Show.S.digits(4));
  static final Column SHARE = Column.of("run_share_pct", "pump runs", Show.PERCENT);
  static final Column STARTS = Column.number("starts_per_day", "starts per day", 3);
  static final Column KWH_DAY = Column.of("kwh_day", "energy per day", Show.KWH);
  static final Column COST_DAY = Column.money("cost_day", "cost per day");
  static final Column KWH = Column.of("kwh_total", "energy in all", Show.KWH);
  static final Column COST = Column.money("cost_total", "cost in all");
  static final Column CURRENCY = Column.plain("currency", "currency");
  static final Column DAYS = Column.number("days", "days", 4);
  static final Column SAVED_KWH = Column.of("saving_kwh", "energy kept", Show.KWH);
  static final Column SAVED = Column.money("saving_cost", "you keep");
  static final Column SAVED_SHARE = Column.of("saving_pct", "less energy", Show.PERCENT);
  static final Column RUN_TOTAL = Column.of("run_total_h", "pump in all", Show.H);
  static final Column STARTS_TOTAL = Column.number("starts_total", "starts in all", 3);
  static final Column RELAY_DAYS = Column.number("relay_days", "relay lasts days", 3);

  /** Those of CSV stand first. */
  static final int OF_CSV = 9;

  static final Column[] ALL = {
    TIMING,
    RUN,
    REST,
    SHARE,
    STARTS,
    KWH_DAY,
    COST_DAY,
    KWH,
    COST,
    CURRENCY,
    DAYS,
    SAVED_KWH,
    SAVED,
    SAVED_SHARE,
    RUN_TOTAL,
    STARTS_TOTAL,
    RELAY_DAYS
  };

  private static final Column PERIOD = Column.plain("period", "period");
  private static final Column STARTS_TEXT = Column.plain("starts", "starts");
  private static final Column OPERATIONS = Column.number("operations", "operations", 3);

  private DutyRows() {}

  /** Fills what every answer has of a timing; run and rest where there is one only. */
  static void fill(Row row, DutyLine.Terms terms, DutyLine line, double operations) {
    boolean priced = terms.price.isPriced();
    row.set(TIMING, line.name)
        .set(SHARE, line.share)
        .set(STARTS, line.startsPerDay)
        .set(KWH_DAY, line.jDay)
        .set(COST_DAY, priced ? Double.valueOf(line.costDay) : null)
        .set(KWH, line.j)
        .set(COST, priced ? Double.valueOf(line.cost) : null)
        .set(CURRENCY, terms.price.currency())
        .set(DAYS, terms.period.days())
        .set(RELAY_DAYS, orNull(RelayLife.days(operations, line.startsPerDay)));
  }

  /** What this timing saves against the first. */
  static void saved(Row row, DutyLine.Terms terms, Saving saving) {
    row.set(SAVED_KWH, saving.energyJ())
        .set(SAVED, terms.price.isPriced() ? Double.valueOf(saving.money()) : null)
        .set(SAVED_SHARE, orNull(saving.share()));
  }

  /** Words of a row that the text alone needs. */
  static Row words(DutyLine.Terms terms, DutyLine line, double operations) {
    return Row.aside(PERIOD, STARTS_TEXT, OPERATIONS)
        .set(PERIOD, period(terms.period))
        .set(STARTS_TEXT, whole(line.startsPerDay))
        .set(OPERATIONS, operations);
  }

  private static String period(PeriodOf period) {
    return period.days() == 1 ? "1 day" : whole(period.days()) + " days";
  }

  /** A whole number without decimals, others with three significant digits. */
  private static String whole(double value) {
    return NumberText.isWhole(value)
        ? NumberText.shortest(value)
        : NumberText.significant(value, 3);
  }

  static Double orNull(OptionalDouble value) {
    return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
  }
}
