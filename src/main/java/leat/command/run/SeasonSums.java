package leat.command.run;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.climate.TankWarmth;
import leat.quantity.NumberText;
import leat.quantity.Unit;
import leat.quantity.Units;
import leat.season.FirstFill;
import leat.season.Interval;
import leat.season.Marks;
import leat.season.Money;
import leat.season.Quantity;
import leat.season.Totals;
import leat.season.YearRuns;
import leat.system.MoneyOf;
import leat.system.PumpWarmth;
import leat.system.SeasonOf;
import leat.system.SeenFull;

/** The season's sums: the shown run, and the ends of litres, mL and money. */
final class SeasonSums {
  static final Column YEAR = Column.plain("year", "year");
  static final Column METHOD = Column.plain("method", "method");
  static final Column YEARS = Column.plain("years_used", "years");
  static final Ends USE = Ends.of("water_use", "_L", "drunk", Show.L);
  static final Ends SHORT = Ends.of("short", "_L", "short", Show.L);
  static final Ends RAIN = Ends.of("rain", "_L", "rain", Show.L);
  static final Ends OVER = Ends.of("overflow", "_L", "run over", Show.L);
  static final Ends WATER = Ends.of("topup_water", "_L", "water", Show.L);
  static final Ends FEED = Ends.of("topup_concentrate", "_mL", "feed", Show.ML);
  static final Ends DRAINED = Ends.of("drained", "_L", "drained", Show.L);
  static final Column TOPUPS = Column.plain("topups", "top-ups");
  static final Column DOSES = Column.plain("doses", "feed alone");
  static final Column DILUTIONS = Column.plain("dilutions", "dilutions");
  static final Column CHANGES = Column.plain("changes", "changes");
  static final Column OVER_DAYS = Column.plain("overflow_days", "days run over");
  static final Column DRY_DAYS = Column.plain("dry_days", "dry days");
  static final Column AWAY_DRY = Column.plain("away_dry_days", "dry days away");
  static final Column EC_MIN = Column.of("ec_min_mS_cm", "least EC", Show.MS_CM);
  static final Column EC_MAX = Column.of("ec_max_mS_cm", "most EC", Show.MS_CM);
  static final Ends LOWEST = Ends.of("lowest", "_L", "least in the tank", Show.L);
  static final Ends END = Ends.of("volume_end", "_L", "left at the end", Show.L);
  static final Column EC_END = Column.of("ec_end_mS_cm", "EC last", Show.MS_CM);
  static final Column WARM = Column.plain("warm_days", "warm days");
  static final Ends FIRST_WATER = Ends.of("first_fill_water", "_L", "first fill", Show.L);
  static final Ends FIRST_FEED = Ends.of("first_fill_concentrate", "_mL", "first feed", Show.ML);
  static final Column KWH = Column.of("kwh", "energy", Show.KWH);
  static final Column RUN = Column.of("pump_h", "pump runs", Show.H);
  static final Ends ACID = Ends.of("acid", "_mL", "acid", Show.ML);
  static final Ends COST_FIRST = Ends.money("cost_first_fill", "first fill");
  static final Ends COST_WATER = Ends.money("cost_water", "water");
  static final Ends COST_FEED = Ends.money("cost_feed", "feed");
  static final Ends COST_ACID = Ends.money("cost_acid", "acid");
  static final Ends COST_ENERGY = Ends.money("cost_energy", "electricity");
  static final Ends COST_SEED = Ends.money("cost_seed", "seed");
  static final Ends COST = Ends.money("cost_season", "cost");
  static final Column HARVEST = Column.of("harvest_kg", "harvest", Show.KG);
  static final Column PLANTS = Column.plain("plants_harvested", "plants harvested");
  static final Ends VALUE = Ends.money("harvest_value", "in a shop");
  static final Ends PAYBACK = Ends.seasons("payback_seasons", "paid back after");
  static final Column BOUGHT = Column.money("cost_bought", "bought");
  static final Column CURRENCY = Column.plain("currency", "currency");
  static final Column RISE_MOST = Column.number("rise_most_K", "warming by the pump", 2);
  static final Column RISE_STEADY = Column.number("rise_steady_K", "after a long time", 2);
  static final Column TAP = Column.of("tap_salt_share_pct", "tap water's own salt", Show.PERCENT);
  static final Column START = Column.of("volume_start_L", "in the tank at the start", Show.L);
  static final Column HELD = Column.of("hold_up_L", "hold up", Show.L);
  static final Column AIR = Column.of("air_L", "the pump draws air under", Show.L);
  static final Column SEEN = Column.of("sender_sees_L", "the sender sees up to", Show.L);
  static final Column EC_START = Column.of("ec_start_mS_cm", "EC first", Show.MS_CM);
  static final Column FACTOR_LOW = Column.number("thirst_factor_low", "least thirst", 3);
  static final Column FACTOR_HIGH = Column.number("thirst_factor_high", "most thirst", 3);

  private final SeasonOf season;
  private final YearRuns runs;
  private final MoneyOf energy;
  private final Money money;
  private final SeenFull seen;

  /** Columns of a number and its two ends. */
  record Ends(Column middle, Column low, Column high, Unit unit) {
    static Ends of(String key, String suffix, String label, Show show) {
      return new Ends(
          Column.of(key + suffix, label, show),
          Column.of(key + "_low" + suffix, label + ", least", show.digits(2)),
          Column.of(key + "_high" + suffix, label + ", most", show.digits(2)),
          show.metric());
    }

    static Ends money(String key, String label) {
      return new Ends(
          Column.number(key, label, 3),
          Column.number(key + "_low", label + ", least", 2),
          Column.number(key + "_high", label + ", most", 2),
          null);
    }

    static Ends seasons(String key, String label) {
      return new Ends(
          Column.number(key, label, 2),
          Column.number(key + "_low", label + ", least", 2),
          Column.number(key + "_high", label + ", most", 2),
          null);
    }

    void set(Row row, double value, double least, double most) {
      row.set(middle, base(value)).set(low, base(least)).set(high, base(most));
    }

    /** The shown run and the ends over all runs; nothing where the shown run does not know it. */
    void set(Row row, YearRuns runs, Quantity quantity) {
      double value = quantity.of(runs.totals());
      if (!Double.isNaN(value)) {
        Interval interval = runs.interval(quantity);
        set(row, value, interval.low(), interval.high());
      }
    }

    /** A sum without a range. */
    void set(Row row, double value) {
      set(row, value, value, value);
    }

    /** Whether nothing is left of the range but the last digits of a sum. */
    boolean isOneNumber(Row row) {
      return NumberText.significant((Double) row.get(low), 6)
          .equals(NumberText.significant((Double) row.get(high), 6));
    }

    private Double base(double value) {
      if (Double.isNaN(value)) {
        return null;
      }
      return unit == null ? value : unit.toBase(value);
    }
  }

  SeasonSums(SeasonOf season, YearRuns runs, MoneyOf energy, Money money, SeenFull seen) {
    this.seen = seen;
    this.season = season;
    this.runs = runs;
    this.energy = energy;
    this.money = money;
  }

  private static final Object[] IN_ORDER = {
    YEAR, METHOD, YEARS, USE, SHORT,
    RAIN, OVER, WATER, FEED, DRAINED,
    TOPUPS, DOSES, DILUTIONS, CHANGES, OVER_DAYS,
    DRY_DAYS, AWAY_DRY, EC_MIN, EC_MAX, LOWEST,
    END, EC_END, WARM, FIRST_WATER, FIRST_FEED,
    KWH, COST_FIRST, COST_WATER, COST_FEED, COST_ACID,
    COST_ENERGY, COST_SEED, COST, HARVEST, VALUE,
    PAYBACK, RUN, ACID, PLANTS, BOUGHT,
    CURRENCY, RISE_MOST, RISE_STEADY, TAP, FACTOR_LOW,
    FACTOR_HIGH, START, EC_START, HELD, AIR,
    SEEN, LoggedSeason.READ_AT, LoggedSeason.THIRST, LoggedSeason.THIRST_DAYS,
  };

  private static Column[] columns() {
    java.util.List<Column> all = new java.util.ArrayList<>();
    for (int i = 0; i < IN_ORDER.length; i++) {
      if (IN_ORDER[i] instanceof Ends ends) {
        all.add(ends.middle());
        all.add(ends.low());
        all.add(ends.high());
      } else {
        all.add((Column) IN_ORDER[i]);
      }
    }
    return all.toArray(new Column[0]);
  }

  /** The sums: an answer of one row. */
  Answer answer(String currency) {
    Answer answer = new Answer(columns());
    Row row = answer.row();
    counts(row, runs.totals());
    flows(row);
    new SeasonBill(runs, money).fill(row.set(CURRENCY, currency));
    years(row);
    yields(row);
    tank(row);
    warmth(row);
    return answer;
  }

  private void years(Row row) {
    row.setAny(YEAR, runs.year() == 0 ? null : Integer.valueOf(runs.year()))
        .set(METHOD, season.method(season.shown(runs)).word())
        .set(YEARS, runs.count())
        .set(FACTOR_LOW, runs.thirst().low())
        .set(FACTOR_HIGH, runs.thirst().high());
  }

  private void yields(Row row) {
    row.set(KWH, SeasonRows.known(energy.energyJ(0, season.days() - 1)))
        .set(RUN, SeasonRows.known(energy.runS()))
        .set(HARVEST, SeasonRows.known(energy.harvestKg()))
        .setAny(PLANTS, season.crops().isEmpty() ? null : energy.plantsHarvested());
  }

  private void warmth(Row row) {
    PumpWarmth warmth = energy.warmth();
    if (warmth != null) {
      row.set(RISE_MOST, warmth.mostK()).set(RISE_STEADY, warmth.steadyK());
    }
    int year = season.shown(runs);
    if (season.weather(year) != null) {
      int warm = season.weather(year).daysAbove(TankWarmth.WARM_CELSIUS);
      row.setAny(WARM, warm < 0 ? null : Integer.valueOf(warm));
    }
  }

  private void tank(Row row) {
    Marks marks = runs.plan().marks();
    row.set(TAP, runs.totals().tapSalt().most())
        .set(START, Units.L.toBase(runs.plan().startL()))
        .set(EC_START, runs.plan().startMsCm())
        .set(AIR, Units.L.toBase(marks.airL()));
    if (marks.heldL() > 0) {
      row.set(HELD, Units.L.toBase(marks.heldL()));
    }
    if (seen != null) {
      row.set(SEEN, Units.L.toBase(seen.litres()));
    }
  }

  private void counts(Row row, Totals shown) {
    Totals.Counts n = shown.counts();
    Totals.Evenings evenings = shown.evenings();
    row.set(TOPUPS, n.topups())
        .set(DOSES, n.doses())
        .set(DILUTIONS, n.dilutions())
        .set(CHANGES, n.changes())
        .set(OVER_DAYS, n.overflowDays())
        .set(DRY_DAYS, n.dryDays())
        .set(AWAY_DRY, n.awayDryDays())
        .set(EC_MIN, SeasonRows.known(evenings.ecMinMsCm()))
        .set(EC_MAX, SeasonRows.known(evenings.ecMaxMsCm()))
        .set(EC_END, SeasonRows.known(evenings.ecEndMsCm()));
  }

  private void flows(Row row) {
    USE.set(row, runs, t -> t.flows().waterUseL());
    SHORT.set(row, runs, t -> t.flows().shortL());
    RAIN.set(row, runs, t -> t.flows().rainL());
    OVER.set(row, runs, t -> t.flows().overflowL());
    WATER.set(row, runs, t -> t.flows().waterL());
    FEED.set(row, runs, t -> t.flows().concentrateMl());
    DRAINED.set(row, runs, t -> t.flows().drainedL());
    LOWEST.set(row, runs, t -> t.evenings().lowestL());
    END.set(row, runs, t -> t.evenings().volumeEndL());
    FirstFill first = energy.firstFill();
    FIRST_WATER.set(row, first.waterL());
    FIRST_FEED.set(row, first.concentrateMl());
  }
}
