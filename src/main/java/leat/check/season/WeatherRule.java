package leat.check.season;

import java.util.List;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.climate.SeasonWeather;
import leat.plan.Plan;
import leat.plan.Section;

/** A rule on the temperatures of the season's weather. */
abstract class WeatherRule extends DeclaredRule {
  private static final String READS = "season.from season.to site.weather site.months";

  WeatherRule(String id, String need, double limit, String source, String meaning) {
    super(id, need, Show.C, limit, source, READS, meaning);
  }

  @Override
  protected boolean allows(double limit) {
    return true;
  }

  @Override
  public String place(Finding finding) {
    return "site";
  }

  /** The temperature that counts in a year, C; NaN when none is known. */
  abstract double celsius(SeasonWeather year);

  /** Whether one temperature is worse than another. */
  abstract boolean isWorse(double celsius, double than);

  abstract Finding judged(Subject subject, double celsius);

  /** Whether it applies where temperatures are known. */
  boolean applies(Plan plan) {
    return plan.section("site").has("weather") || plan.section("site").has("months");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Plan plan = subject.plan();
    Section season = plan.section("season");
    if (!season.has("from") || !season.has("to") || !applies(plan)) {
      return List.of();
    }
    double worst = Double.NaN;
    List<SeasonWeather> years = subject.seasonWeather();
    for (int i = 0; i < years.size(); i++) {
      double celsius = celsius(years.get(i));
      if (Double.isNaN(worst) || isWorse(celsius, worst)) {
        worst = celsius;
      }
    }
    return Double.isNaN(worst) ? List.of() : List.of(judged(subject, worst));
  }
}
