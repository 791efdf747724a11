package leat.plan;

import static leat.plan.Key.one;
import static leat.plan.Key.section;
import static leat.quantity.Dimension.EC;
import static leat.quantity.Dimension.SHARE;
import static leat.quantity.Dimension.TIME;

/**
 * Keys of the section {@code log}: names of columns, the keeper's hour, thresholds. The example of
 * a threshold is what is used without it.
 */
final class LogKeys {
  private static final double LONGEST_WINDOW_S = 86_400;

  private LogKeys() {}

  static Key log() {
    return section(
        "log",
        "the logger's file: names of its columns, and how it is judged",
        one("time", Kind.TEXT, "time", "column of the time"),
        one("reading", Kind.TEXT, "counts", "column of the sender's reading"),
        one(
            "reading_in",
            Kind.choice("ohm", "counts"),
            "counts",
            "what the reading is; without it a column that is named counts has counts, others ohms"),
        one("ec", Kind.TEXT, "ec_mS_cm", "column of the EC at 25 C, mS/cm"),
        one("ph", Kind.TEXT, "ph", "column of the pH"),
        one("temperature", Kind.TEXT, "water_C", "column of the water temperature, C"),
        one("pump", Kind.TEXT, "pump", "column of the pump's state, 0 or 1, off or on"),
        one("cap", Kind.TEXT, "cap_counts", "column of the cap sensor's counts"),
        one("rain", Kind.TEXT, "rain_mm", "column of the rain since the row before, mm"),
        one(
            "name",
            Kind.TEXT,
            "entity_id",
            "column of the sensor's name, in a file of time, name, value"),
        one("value", Kind.TEXT, "state", "column of the value, in a file of time, name, value"),
        one("delimiter", Kind.TEXT, "\";\"", "between the columns"),
        one("decimal", Kind.TEXT, "\",\"", "decimal sign"),
        one("keeper", Kind.CLOCK, "\"18:00\"", "hour at which cans are poured, local clock")
            .byDefault("18:00", "cans are poured at 18:00"),
        thresholds());
  }

  private static Key time(String name, String example, String meaning) {
    return Key.one(name, Kind.quantity(TIME), example, meaning).above0();
  }

  /** A time that rows are kept in memory for. */
  private static Key window(String name, String example, String meaning) {
    return time(name, example, meaning).within(1, LONGEST_WINDOW_S);
  }

  private static Key number(String name, String example, String meaning) {
    return Key.one(name, Kind.NUMBER, example, meaning).above0();
  }

  private static Key share(String name, String example, String meaning) {
    return Key.one(name, Kind.quantity(SHARE), example, meaning).within(0, 1);
  }

  private static Key count(String name, String example, String meaning) {
    return Key.one(name, Kind.COUNT, example, meaning).within(1, 1000);
  }

  private static Key thresholds() {
    return section(
        "thresholds",
        "when rows tell of an event; each is used as in its example unless it is given",
        window("disorder", "2 h", "rows later than this against the newest are dropped"),
        window("rest", "1 h", "the step at rest is the highest of so long"),
        time("clock_jump", "24 h", "a row that lies further beyond the newest one is doubted"),
        number("gap", "2.5", "intervals without a row that are a gap"),
        window("fault", "45 min", "two faulty rows within this are a fault"),
        count("refill_steps", "3", "steps of a rise that is a refill"),
        window("refill_within", "40 min", "time in which it rises"),
        share(
            "change_above",
            "30 %",
            "a change of solution falls from above this share of the steps"),
        share("change_below", "17 %", "to below this share"),
        window("change_fall", "75 min", "within this time, the pump at rest"),
        window("change_refill", "8 h", "and is filled again within this"),
        window("rain_join", "2 h", "rains less apart than this are one"),
        number("rain_least", "0.5", "mean steps that a rain brings at least to be told"),
        Key.one(
                "rain_ec",
                Kind.quantity(EC),
                "0.02 mS/cm",
                "fall of EC that shows a slow rise as rain, without a column of rain")
            .from0(),
        number("leak_factor", "1.8", "times the expected use that make a fall suspect"),
        number("leak_steps", "0.8", "mean steps beyond the expected use that make a leak"),
        window("leak_join", "1 h", "suspect falls further apart do not belong together"),
        share("dry", "80 %", "dryness of the cap above which it is dry"),
        number("dry_intervals", "2", "intervals that the cap may be dry beyond dry_limit"),
        number(
            "stuck_steps",
            "2.5",
            "mean steps of expected use without a change that show a stuck float"),
        number("stuck_jump_steps", "1.4", "the same, when it comes free with a jump"),
        count("stuck_jump", "2", "steps of that jump"),
        time("wilt", "2 h", "a pump failure longer than this makes its days unsure"),
        count("use_days", "7", "days of the mean use"),
        count("use_least_days", "3", "fewer sure days say nothing"),
        count("weekday_days", "3", "days of one weekday that are needed to call it different"),
        Key.one("day_from", Kind.CLOCK, "\"07:00\"", "begin of the bright part of the day"),
        Key.one("day_to", Kind.CLOCK, "\"19:00\"", "end of it"),
        share("night", "12 %", "use in the dark, as a share of that in the bright part"),
        count("ec_rows", "6", "rows whose median is the EC at an end of a span").within(1, 100),
        number("silent", "3", "intervals after which a log without a new row is silent"));
  }
}
