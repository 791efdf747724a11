package leat.system;

import leat.season.FirstFill;
import leat.season.TankPlan;
import leat.season.YearRuns;

/** What a season's forecast pours of feed, as solution at the label's strength. */
public final class SeasonFeedOf {
  private SeasonFeedOf() {}

  /** First fill, changes and top-ups of the shown run, in litres that so much feed would make. */
  public static double litresAtLabel(SeasonOf season) {
    TankPlan tank = season.tank();
    YearRuns runs = YearRuns.of(tank, season.years(), season.thirst());
    double ml = runs.totals().flows().concentrateMl();
    if (!tank.since().isEarlier() && tank.startL() > 0 && tank.startMsCm() > 0) {
      ml += FirstFill.of(tank.feeding(), tank.startL(), tank.startMsCm()).concentrateMl();
    }
    return ml / tank.feeding().rateMlL();
  }
}
