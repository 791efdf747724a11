package leat.check;

import java.util.List;
import leat.climate.SeasonWeather;
import leat.energy.Dates;
import leat.energy.DryLimit;
import leat.energy.Overlap;
import leat.energy.Windows;
import leat.season.YearRuns;
import leat.system.MoneyOf;
import leat.system.SeasonOf;
import leat.system.ZoneOf;
import leat.weather.SeasonFile;
import leat.weather.WeatherFile;

/** The season of a plan under judgement: its dates, weather, runs and money, worked out once. */
final class SubjectSeason {
  private final Subject subject;
  private final Designs designs;
  private Dates dates;
  private Overlap dayAndNight;
  private List<SeasonWeather> weather;
  private WeatherFile weatherFile;
  private SeasonOf laid;
  private YearRuns runs;
  private MoneyOf money;

  SubjectSeason(Subject subject, Designs designs) {
    this.subject = subject;
    this.designs = designs;
  }

  /** The season's dates. */
  Dates dates() {
    if (dates == null) {
      dates = ZoneOf.season(subject.plan(), subject.taken());
    }
    return dates;
  }

  /** Seconds of the season in which each timing is in force, by day and at night. */
  Overlap dayAndNight() {
    if (dayAndNight == null) {
      Windows parts = Windows.dayAndNight(DryLimit.usualNight());
      dayAndNight = Overlap.of(dates(), subject.timetable().windows(), parts);
    }
    return dayAndNight;
  }

  /**
   * The season's days in every year of its weather.
   *
   * @throws leat.numeric.Impossible when its weather cannot be read
   */
  SeasonOf laid() {
    if (laid == null) {
      laid = SeasonFile.judged(subject.plan(), weatherFile(), subject.taken());
    }
    return laid;
  }

  /**
   * The season's weather in every year, which needs neither crops nor tank.
   *
   * @throws leat.numeric.Impossible when it cannot be read
   */
  List<SeasonWeather> weather() {
    if (weather == null) {
      weather = SeasonFile.judgedWeather(subject.plan(), weatherFile());
    }
    return weather;
  }

  /** The weather file, read once for all rules; null when the plan names none. */
  private WeatherFile weatherFile() {
    if (weatherFile == null) {
      WeatherFile read = designs == null ? null : designs.weather();
      weatherFile = read == null ? SeasonFile.judgedFile(subject.plan()) : read;
    }
    return weatherFile;
  }

  /** The runs of the season. */
  YearRuns runs() {
    if (runs == null) {
      runs = YearRuns.of(laid().tank(), laid().years(), laid().thirst());
    }
    return runs;
  }

  /** Energy and money of the season. */
  MoneyOf money() {
    if (money == null) {
      money = MoneyOf.of(subject.plan(), laid(), subject.taken());
    }
    return money;
  }
}
