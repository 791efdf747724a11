package leat.command.run;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.climate.FrostDates;
import leat.climate.FrostYear;
import leat.plan.Plan;
import leat.quantity.DateWords;
import leat.season.Batch;
import leat.system.SiteOf;
import leat.system.Sown;
import leat.system.WarmthOf;
import leat.weather.WeatherFile;

/** What the weather file says of sowing: frost, and warmth that a crop waits for. */
final class SowWeather {
  private static final Column CROP = Column.plain("crop", "crop");
  private static final Column DAY = Column.plain("day", "day");
  private static final Column SAFE = Column.plain("safe", "safe");
  private static final Column YEARS = Column.plain("years", "years");
  private static final Column LEAST = Column.plain("least", "least");
  private static final Column MOST = Column.plain("most", "most");
  private static final Column PLANNED = Column.plain("planned", "planned");

  private final List<Sown> crops;
  private final FrostDates frost;
  private final List<WarmthOf> warmth = new ArrayList<>();

  private SowWeather(List<Sown> crops, FrostDates frost) {
    this.crops = crops;
    this.frost = frost;
  }

  /** The weather of a plan; null when it names no file or no latitude. */
  static SowWeather of(Plan plan, List<Sown> crops) {
    if (!WeatherFile.isNamed(plan) || !plan.section("site").has("latitude")) {
      return null;
    }
    WeatherFile file = WeatherFile.of(plan);
    LocalDate first = crops.get(0).batches().sowing().first();
    double latitude = SiteOf.latitudeDegrees(plan);
    FrostDates frost =
        FrostDates.of(
            file.weather(),
            FrostYear.springYear(first, latitude),
            FrostYear.TENDER_CELSIUS,
            latitude);
    SowWeather weather = new SowWeather(crops, frost);
    for (Sown crop : crops) {
      weather.warmth.add(WarmthOf.of(plan, crop, file.weather()));
    }
    return weather;
  }

  LocalDate lastSpring() {
    return frost.lastSpring();
  }

  LocalDate firstAutumn() {
    return frost.firstAutumn();
  }

  void minds(Answer answer) {
    for (int i = 0; i < crops.size(); i++) {
      List<Batch> batches = crops.get(i).batches().batches();
      if (!batches.isEmpty()) {
        frost(answer, crops.get(i), batches);
        warmth(answer, crops.get(i), warmth.get(i));
      }
    }
  }

  private void frost(Answer answer, Sown crop, List<Batch> batches) {
    Row row = Row.aside(CROP, DAY, SAFE, YEARS);
    row.set(CROP, crop.name()).set(YEARS, frost.years().size());
    LocalDate safe = frost.safeFrom();
    LocalDate first = batches.get(0).transplant();
    if (safe != null && first.isBefore(safe)) {
      row.set(DAY, DateWords.day(frost.lastSpring())).set(SAFE, DateWords.day(safe));
      answer.mind(
          "frost-spring",
          row,
          "the last frost of spring came as late as {day} in {years} years: {crop} planted before {safe} may freeze if it is a tender plant.");
    }
    LocalDate until = frost.safeUntil();
    LocalDate last = crop.batches().lastHarvest();
    if (until != null && last.isAfter(until)) {
      row.set(DAY, DateWords.day(frost.firstAutumn())).set(SAFE, DateWords.day(until));
      answer.mind(
          "frost-autumn",
          row,
          "the first frost of autumn came as early as {day} in {years} years: {crop} that stands after {safe} may freeze if it is a tender plant.");
    }
  }

  private static void warmth(Answer answer, Sown crop, WarmthOf warmth) {
    if (warmth == null) {
      return;
    }
    Row row = Row.aside(CROP, DAY, LEAST, MOST, PLANNED);
    row.set(CROP, crop.name())
        .set(DAY, DateWords.day(warmth.transplant()))
        .set(PLANNED, crop.batches().sowing().growingDays());
    if (warmth.least() < 0) {
      answer.mind(
          "warmth-short",
          row,
          warmth.years() == 0
              ? "the weather file has no whole year of days after {crop} is planted on {day}: its warmth is not judged."
              : "{crop} planted on {day} does not reach its warmth in any year of the weather file: look at its warmth and its base.");
      return;
    }
    row.set(LEAST, warmth.least()).set(MOST, warmth.most());
    int planned = crop.batches().sowing().growingDays();
    answer.mind(
        "warmth",
        row,
        warmth.most() <= planned
            ? "by warmth {crop} planted on {day} needs {least..most} days; the plan's {planned} are enough."
            : "by warmth {crop} planted on {day} needs {least..most} days, where the plan says {planned}: early batches come later and bunch with the next.");
  }
}
