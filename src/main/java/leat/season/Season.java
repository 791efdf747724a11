package leat.season;

import java.util.ArrayList;
import java.util.List;

/**
 * A season's run: the tank's day from the first fill to the close, both balances closed to 1e-9 L
 * and mS/cm L in every run.
 *
 * <p>Source: mass balance of water and salt. Check values: season-balance.csv,
 * season-balance-daily.csv, season-interval.csv.
 */
public final class Season {
  private Season() {}

  /**
   * The season with a row a day.
   *
   * @param plan the tank and its upkeep
   * @param days what the days bring
   * @param thirst factor on all thirst, of plants and open water alike, 1 as it is
   * @return rows and sums
   * @throws leat.numeric.Impossible if the factor is negative or absurd
   * @throws IllegalStateException if a balance does not close: a bug
   */
  public static SeasonRun run(TankPlan plan, SeasonDays days, double thirst) {
    List<DayRow> rows = new ArrayList<>(days.length());
    Totals totals = through(plan, days, thirst, rows);
    return new SeasonRun(rows, totals);
  }

  /**
   * The season's sums alone: no record a day, for sweeps and for solving.
   *
   * @param plan the tank and its upkeep
   * @param days what the days bring
   * @param thirst factor on all thirst, 1 as it is
   * @return the sums, the same to the last bit as those of {@link #run}
   * @throws leat.numeric.Impossible if the factor is negative or absurd
   * @throws IllegalStateException if a balance does not close: a bug
   */
  public static Totals totals(TankPlan plan, SeasonDays days, double thirst) {
    return through(plan, days, thirst, null);
  }

  private static Totals through(TankPlan plan, SeasonDays days, double thirst, List<DayRow> rows) {
    Accepted.thirst(thirst);
    TankState start = TankState.start(plan);
    Machine machine = new Machine(plan, start);
    Ledger ledger = new Ledger(plan, start);
    for (int t = 0; t < days.length(); t++) {
      machine.day(
          thirst * days.plantsL(t), thirst * days.openL(t), days.rainMm(t), days.attendance(t));
      ledger.take(machine);
      if (rows != null) {
        rows.add(machine.row());
      }
    }
    return ledger.close(machine);
  }
}
