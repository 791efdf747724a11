package leat.weather;

import leat.climate.LeftOutYear;
import leat.climate.SeasonYears;
import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.system.SeasonOf;

/** The season of a plan under the weather it names: a file, a climate table, or none. */
public final class SeasonFile {
  private SeasonFile() {}

  /** The season with its days laid. */
  public static SeasonOf of(Plan plan) {
    return of(plan, WeatherFile.isNamed(plan) ? WeatherFile.of(plan) : null);
  }

  /**
   * The same with the weather read before.
   *
   * @param plan the plan
   * @param file its weather, or null for none
   */
  public static SeasonOf of(Plan plan, WeatherFile file) {
    SeasonOf season = SeasonOf.of(plan, file == null ? null : file.weather());
    if (file != null) {
      judge(season, file);
    }
    return season.laid();
  }

  /**
   * The same for a verdict: weather that cannot be used makes it unknown, not the plan wrong.
   *
   * @throws Impossible when the weather cannot be used
   * @throws Refused when a key is missing
   */
  public static SeasonOf judged(Plan plan) {
    return judged(plan, null);
  }

  /**
   * The same with the weather read before.
   *
   * @param plan the plan
   * @param read its weather file; null to read it, where the plan names one
   */
  public static SeasonOf judged(Plan plan, WeatherFile read) {
    WeatherFile file = read;
    try {
      file = file == null && named(plan) ? WeatherFile.of(plan) : file;
      return of(plan, file);
    } catch (Refused e) {
      if (e.problems().get(0).code().startsWith("weather-") || file == null && named(plan)) {
        throw new Impossible("site.weather", e.problems().get(0).message());
      }
      throw e;
    }
  }

  private static boolean named(Plan plan) {
    return WeatherFile.isNamed(plan);
  }

  private static void judge(SeasonOf season, WeatherFile file) {
    LeftOutYear broken = new SeasonYears(java.util.List.of(), season.leftOut()).broken();
    if (broken != null) {
      throw new Refused(WeatherErrors.gap(file.name(), broken));
    }
    if (!season.hasWeather()) {
      throw new Refused(
          WeatherErrors.noYear(
              file.name(), season.from().toString(), season.to().toString(), season.leftOut()));
    }
  }
}
