package leat.command.feed;

import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Problem;
import leat.plan.Refused;
import leat.plan.Taken;
import leat.system.SeasonFeedOf;
import leat.system.SeasonOf;
import leat.weather.SeasonFile;

/** The feed of a plan's season, by its forecast. */
final class StockSeason {
  static final String TAKEN = "feed for the season by its forecast, see leat season";

  private StockSeason() {}

  /**
   * Solution at the label's strength that holds the season's feed, L; null, and said in Taken, when
   * the season cannot be worked out: then dates and daily use tell it roughly.
   */
  static Double litres(Plan plan, Taken taken) {
    try {
      SeasonOf season = SeasonFile.of(plan, taken);
      double litres = SeasonFeedOf.litresAtLabel(season);
      taken.note(TAKEN);
      return litres;
    } catch (Refused e) {
      Problem why = e.problems().get(0);
      taken.note(
          why.asked() == null
              ? "the season roughly, by its days: " + why.message()
              : "the season roughly, by its days: leat season wants " + why.asked());
    } catch (Impossible e) {
      taken.note("the season roughly, by its days: " + e.getMessage());
    }
    return null;
  }
}
