package leat.command.run;

import java.time.LocalDate;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.climate.DailyLight;
import leat.climate.HumidityBy;
import leat.climate.ReferenceDay;
import leat.climate.Site;
import leat.climate.VapourDeficit;
import leat.climate.WeatherDay;
import leat.plan.Kind;
import leat.quantity.DateWords;
import leat.quantity.Dimension;
import leat.quantity.Units;
import leat.season.DayThirst;
import leat.system.LightOf;
import leat.system.SiteOf;
import leat.system.ThirstOf;

/** {@code leat season day}: tomorrow's thirst from a forecast. */
public final class SeasonDayCommand extends Command {
  static final String TMIN_MEANING = "lowest temperature of the day, or its mean over the month";

  static final String TMAX_MEANING = "highest temperature of the day, or its mean over the month";

  private static final Kind TEMPERATURE = Kind.quantity(Dimension.TEMPERATURE);
  private static final Kind SHARE = Kind.quantity(Dimension.SHARE);
  private static final Show THIRST = Show.L;

  static final Column DATE = Column.plain("date", "day");
  static final Column ET0 = Column.of("et0_mm", "reference evaporation", Show.MM);
  static final Column METHOD = Column.plain("method", "method");
  static final Column RA = Column.number("ra_MJ_m2", "above the air MJ/m2", 3);
  static final Column DAYLIGHT = Column.of("daylight_h", "daylight", Show.H);
  static final Column PLANTS = Column.of("plants_L", "plants", THIRST);
  static final Column OPEN = Column.of("open_L", "open water", THIRST);
  static final Column USE = Column.of("water_use_L", "drunk", THIRST);
  static final Column VPD = Column.number("vpd_kPa", "dryness of the air", 2);
  static final Column DEW = Column.of("dew_point_C", "dew point", Show.C);
  static final Column DLI = Column.number("dli_mol_m2", "at the plants mol/m2", 2);
  static final Column LOW = Column.of("water_use_low_L", "least", THIRST.digits(2));
  static final Column HIGH = Column.of("water_use_high_L", "most", THIRST.digits(2));
  static final Column AIR = Column.plain("air", "air");

  @Override
  public String name() {
    return "season day";
  }

  @Override
  public Flag[] flags() {
    return SeasonDayFlags.all();
  }

  @Override
  public Answer answer(Call call) {
    LocalDate date = (LocalDate) call.value("--date");
    if (date == null) {
      throw call.needs("--date");
    }
    Site site = SiteOf.of(call.plan(), call.has("--wind"), true, call.taken());
    ReferenceDay day = ReferenceDay.of(forecast(call, date), site);
    DayThirst thirst =
        call.hasPlan() ? ThirstOf.day(call.plan(), date, day.et0Mm(), call.taken()) : null;
    Answer answer =
        new Answer(
            DATE, ET0, METHOD, RA, DAYLIGHT, PLANTS, OPEN, USE, VPD, DEW, DLI, LOW, HIGH, AIR);
    Row row = row(answer, call, day, thirst);
    text(call, answer, row, day, thirst);
    return call.withTaken(answer);
  }

  private static WeatherDay forecast(Call call, LocalDate date) {
    String[] needed = {"--tmin", "--tmax"};
    for (int i = 0; i < needed.length; i++) {
      if (!call.has(needed[i])) {
        throw call.needs(needed[i]);
      }
    }
    return WeatherDay.of(date, call.quantity("--tmin"), call.quantity("--tmax"), 0)
        .withHumidity(
            or(call.quantity("--dew-point")),
            percent(call, "--rh-min"),
            percent(call, "--rh-max"),
            percent(call, "--rh-mean"))
        .withSky(
            call.has("--sun") ? Units.H.fromBase(call.quantity("--sun")) : Double.NaN,
            or(call.quantity("--radiation")),
            or(call.quantity("--wind")));
  }

  private static double percent(Call call, String flag) {
    Double share = call.quantity(flag);
    return share == null ? Double.NaN : Units.PERCENT.fromBase(share);
  }

  private static double or(Double value) {
    return value == null ? Double.NaN : value;
  }

  private static Row row(Answer answer, Call call, ReferenceDay day, DayThirst thirst) {
    Row row =
        answer
            .row()
            .set(DATE, day.date().toString())
            .set(ET0, Units.MM.toBase(day.et0Mm()))
            .set(METHOD, day.method().word())
            .set(RA, day.raMjM2())
            .set(DAYLIGHT, Units.H.toBase(day.daylightHours()))
            .set(VPD, SeasonRows.known(day.vapourDeficitKPa()))
            .set(DEW, SeasonRows.known(day.dewPointCelsius()))
            .set(AIR, VapourDeficit.word(day.vapourDeficitKPa()));
    if (!Double.isNaN(day.rsMjM2())) {
      row.set(DLI, LightOf.inside(call.plan(), DailyLight.molM2(day.rsMjM2()), call.taken()));
    }
    thirst(row, thirst);
    return row;
  }

  private static void thirst(Row row, DayThirst thirst) {
    if (thirst != null) {
      row.set(PLANTS, Units.L.toBase(thirst.plantsL()))
          .set(OPEN, Units.L.toBase(thirst.openL()))
          .set(USE, Units.L.toBase(thirst.inAllL()))
          .set(LOW, Units.L.toBase(thirst.leastL()))
          .set(HIGH, Units.L.toBase(thirst.mostL()));
    }
  }

  private static void text(Call call, Answer answer, Row row, ReferenceDay day, DayThirst thirst) {
    Row on = Row.aside(DATE);
    on.set(DATE, DateWords.day(day.date()));
    towers(answer, on, row, thirst);
    answer.figure(row, DAYLIGHT, "sun above the air {ra_MJ_m2} MJ/m2");
    answer.figure("dryness of the air", row, "{vpd_kPa} kPa", "{air}; dew point {dew_point_C}");
    if (row.get(DLI) != null) {
      answer.figure("light", row, "{dli_mol_m2} mol/m2");
    }
    minds(call, answer, row, day, thirst);
    answer.next(
        call.hasPlan()
            ? call.again("season") + "   the whole season"
            : "leat season day --plan PLAN --date ... --tmin ... --tmax ...   tells the litres");
  }

  private static void minds(Call call, Answer answer, Row row, ReferenceDay day, DayThirst thirst) {
    if (thirst != null && thirst.plantsL() == 0) {
      answer.mind("no-plants", "nothing stands in the towers on that day.");
    }
    if (call.has("--sun") && Units.H.fromBase(call.quantity("--sun")) > day.daylightHours()) {
      answer.mind(
          "sun-over-daylight",
          row,
          "the day has {daylight_h} of light: more sun than that is not counted.");
    }
    if (call.hasPlan() && UnusedDrinks.isIn(call.plan())) {
      UnusedDrinks.tell(answer);
    }
    if (day.humidityBy() == HumidityBy.TMIN) {
      answer.mind(
          "humidity-guessed",
          "without humidity the dew point is taken as the lowest temperature; in dry places it lies lower.");
    }
    answer.mind("one-day", "a single day is worth little: add up five days or more.");
  }

  private static void towers(Answer answer, Row on, Row row, DayThirst thirst) {
    if (thirst == null) {
      answer.sentence(on.with(row), "On {date} the air asks for {et0_mm} of water.");
    } else {
      answer.sentence(
          on.with(row),
          "On {date} the towers want {water_use_L} ({water_use_low_L!} to {water_use_high_L}).");
      answer.figure(row, PLANTS, "");
      answer.figure(row, OPEN, "");
      answer.figure(row, ET0, "{method}");
    }
  }
}
