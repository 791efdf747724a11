package leat.weather;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import leat.climate.MonthLight;
import leat.climate.SeasonWeather;
import leat.climate.Site;
import leat.plan.Plan;
import leat.plan.Section;
import leat.system.SeasonOf;

/** The light of the months of a plan's season: the mean of all years of its weather. */
public final class LightMonths {
  private static final int YEAR = 365;

  private LightMonths() {}

  /** The months of the season; of a whole year when the plan has no season. */
  public static List<MonthLight> of(Plan plan, Site site) {
    Section season = plan.section("season");
    LocalDate from = (LocalDate) season.raw("from");
    LocalDate to = (LocalDate) season.raw("to");
    boolean known = from != null && to != null;
    LocalDate first = known ? from : LocalDate.of(2027, 1, 1);
    int days = known ? (int) ChronoUnit.DAYS.between(from, to) + 1 : YEAR;
    List<SeasonWeather> years = new ArrayList<>();
    if (WeatherFile.isNamed(plan)) {
      WeatherFile file = WeatherFile.of(plan);
      years.addAll(file.weather().season(first, days).years());
      if (years.isEmpty()) {
        throw new leat.plan.Refused(
            WeatherErrors.noYear(
                file.name(),
                first.toString(),
                first.plusDays(days - 1L).toString(),
                file.weather().season(first, days).leftOut()));
      }
    } else if (SeasonOf.hasMonths(plan)) {
      years.add(SeasonOf.months(plan).season(first, days));
    } else {
      throw plan.section("site").missing("weather");
    }
    List<List<MonthLight>> all = new ArrayList<>();
    for (SeasonWeather year : years) {
      all.add(MonthLight.of(year, site));
    }
    return MonthLight.mean(all);
  }
}
