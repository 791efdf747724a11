package leat.weather;

import java.util.List;
import leat.climate.LeftOutYear;
import leat.climate.SeasonWeather;
import leat.climate.SeasonYears;
import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Taken;
import leat.system.SeasonOf;

/** The season of a plan under the weather it names: a file, a climate table, or none. */
public final class SeasonFile {
  private SeasonFile() {}

  /** The season with its days laid. */
  public static SeasonOf of(Plan plan, Taken taken) {
    return of(plan, WeatherFile.isNamed(plan) ? WeatherFile.of(plan) : null, taken);
  }

  /**
   * The same with the weather read before.
   *
   * @param plan the plan
   * @param file its weather, or null for none
   * @param taken notes the defaults that are taken
   */
  public static SeasonOf of(Plan plan, WeatherFile file, Taken taken) {
    SeasonOf season = SeasonOf.of(plan, file == null ? null : file.weather(), taken);
    if (file != null) {
      judge(season, file);
    }
    return season.laid(taken);
  }

  /**
   * The same with the weather read before.
   *
   * @param plan the plan
   * @param read its weather file; null to read it, where the plan names one
   * @param taken notes the defaults that are taken
   */
  public static SeasonOf judged(Plan plan, WeatherFile read, Taken taken) {
    WeatherFile file = read == null ? judgedFile(plan) : read;
    try {
      return of(plan, file, taken);
    } catch (Refused e) {
      if (e.problems().get(0).code().startsWith("weather-")) {
        throw new Impossible("site.weather", e.problems().get(0).message());
      }
      throw e;
    }
  }

  /**
   * The season's weather alone for a verdict: it needs neither crops nor tank.
   *
   * @param plan the plan
   * @param read its weather file; null to read it, where the plan names one
   * @throws Impossible when the weather cannot be used
   */
  public static List<SeasonWeather> judgedWeather(Plan plan, WeatherFile read) {
    WeatherFile file = read == null ? judgedFile(plan) : read;
    SeasonYears found = SeasonOf.weather(plan, file == null ? null : file.weather());
    if (found.years().isEmpty()) {
      throw new Impossible("site.weather", "no year of the weather covers the season");
    }
    return found.years();
  }

  /**
   * The weather file of a plan for a verdict; null when it names none.
   *
   * @throws Impossible when it cannot be used
   */
  public static WeatherFile judgedFile(Plan plan) {
    try {
      return WeatherFile.isNamed(plan) ? WeatherFile.of(plan) : null;
    } catch (Refused e) {
      throw new Impossible("site.weather", e.problems().get(0).message());
    }
  }

  private static void judge(SeasonOf season, WeatherFile file) {
    LeftOutYear broken = new SeasonYears(List.of(), season.leftOut()).broken();
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
