package leat.check.season;

import leat.check.Advice;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.climate.FrostYear;
import leat.climate.SeasonWeather;
import leat.plan.Plan;
import leat.system.SiteOf;

/** Wet pipes do not freeze. */
final class FrostPipes extends WeatherRule {
  FrostPipes() {
    super(
        "frost-pipes",
        AT_LEAST,
        FrostYear.PIPES_CELSIUS,
        PRACTICE,
        "Coldest night of the season in all years. Below -1 C wet pipes freeze and burst. Silent under glass and indoors, where the weather of the file is not that of the tower.");
  }

  @Override
  boolean applies(Plan plan) {
    return super.applies(plan) && !SiteOf.hasRoof(plan);
  }

  @Override
  double celsius(SeasonWeather year) {
    return year.coldestCelsius();
  }

  @Override
  boolean isWorse(double celsius, double than) {
    return celsius < than;
  }

  @Override
  Finding judged(Subject subject, double celsius) {
    return atLeast(celsius, limit(subject), Verdict.WARN);
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    return Advice.of(
        "on such nights drain the tower or let the pump run; or a later season.from, an earlier season.to");
  }
}
