package leat.check.season;

import leat.check.Advice;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.climate.SeasonWeather;
import leat.climate.TankWarmth;

/** The solution does not become too warm for roots. */
final class TankWarm extends WeatherRule {
  TankWarm() {
    super(
        "tank-warm",
        AT_MOST,
        TankWarmth.WARM_CELSIUS,
        PRACTICE,
        "Mean air of the warmest day of all years, which the running film brings the solution near to. Above 24 C roots lack oxygen. Sun on the tank adds several degrees and is not in it.");
  }

  @Override
  double celsius(SeasonWeather year) {
    int day = year.warmest();
    return day < 0 ? Double.NaN : year.meanCelsius(day, day);
  }

  @Override
  boolean isWorse(double celsius, double than) {
    return celsius > than;
  }

  @Override
  Finding judged(Subject subject, double celsius) {
    return atMost(celsius, limit(subject), Verdict.WARN);
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    return Advice.of("shade and a white wall; on the warmest days bottles of ice in the tank");
  }
}
