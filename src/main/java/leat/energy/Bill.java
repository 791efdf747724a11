package leat.energy;

import leat.numeric.Impossible;

/**
 * Energy and money of a timetable under a tariff over a period of dates: the forecast figure, share
 * times power integrated over the instants of each band.
 *
 * <pre>J of a band = sum over timings of (P s + P_others(s)) x seconds in force together</pre>
 *
 * <p>Starts are a sum of fractions: say "about". A controller that runs free differs by up to one
 * longest cycle for each change of timing.
 *
 * <p>Source: sheet energy.md section 2, check values energy-tariff.csv.
 *
 * @param dates the period
 * @param periodS its length, s
 * @param timingS seconds each timing is in force, s; 0 marks one that never is in this period
 * @param bandS seconds each price is in force, s
 * @param starts mean starts of the pump
 * @param runS running of the pump, s
 * @param pumpJByBand energy of the pump in each band, J
 * @param othersJByBand energy of controller and coil in each band, J
 * @param pumpJ energy of the pump, J
 * @param othersJ energy of controller and coil, J
 * @param totalJ both, J
 * @param energyCost cost of that energy, money
 * @param standingCost the tower's part of the standing charge, money
 * @param cost both, money
 * @param mostStartsPerHour starts an hour of the busiest timing that is in force
 */
public record Bill(
    Dates dates,
    double periodS,
    double[] timingS,
    double[] bandS,
    double starts,
    double runS,
    double[] pumpJByBand,
    double[] othersJByBand,
    double pumpJ,
    double othersJ,
    double totalJ,
    double energyCost,
    double standingCost,
    double cost,
    double mostStartsPerHour) {

  /** The bill of a timetable under a tariff over a period. */
  public static Bill of(Timetable timetable, Tariff tariff, Draw draw, Dates dates) {
    return of(Overlap.of(dates, timetable.windows(), tariff.windows()), timetable, tariff, draw);
  }

  /**
   * The same from an overlap of the timetable's and the tariff's windows computed before.
   *
   * @throws Impossible if the overlap is of other windows
   */
  public static Bill of(Overlap overlap, Timetable timetable, Tariff tariff, Draw draw) {
    int bands = tariff.size();
    if (overlap.rows() != timetable.size() || overlap.columns() != bands) {
      throw new Impossible("timing", "the overlap was made for other windows");
    }
    double[] pumpJ = new double[bands];
    double[] othersJ = new double[bands];
    double[] timingS = new double[timetable.size()];
    double starts = 0;
    double run = 0;
    double busiest = 0;
    for (int i = 0; i < timetable.size(); i++) {
      Timing timing = timetable.timing(i);
      double share = timing.share();
      for (int k = 0; k < bands; k++) {
        pumpJ[k] += draw.pumpW() * share * overlap.seconds(i, k);
        othersJ[k] += draw.othersW(share) * overlap.seconds(i, k);
      }
      timingS[i] = overlap.rowSeconds(i);
      starts += timing.startsPerSecond() * timingS[i];
      run += share * timingS[i];
      if (timingS[i] > 0) {
        busiest = Math.max(busiest, timing.startsPerHour());
      }
    }
    return sum(overlap, tariff, timingS, starts, run, pumpJ, othersJ, busiest);
  }

  private static Bill sum(
      Overlap overlap,
      Tariff tariff,
      double[] timingS,
      double starts,
      double run,
      double[] pumpJ,
      double[] othersJ,
      double busiest) {
    double[] bandS = new double[pumpJ.length];
    double pump = 0;
    double others = 0;
    double cost = 0;
    for (int k = 0; k < pumpJ.length; k++) {
      bandS[k] = overlap.columnSeconds(k);
      pump += pumpJ[k];
      others += othersJ[k];
      cost += (pumpJ[k] + othersJ[k]) * tariff.pricePerJ(k);
    }
    double standing = overlap.dates().days() * tariff.standingCostPerDay();
    return new Bill(
        overlap.dates(),
        overlap.dates().seconds(),
        timingS,
        bandS,
        starts,
        run,
        pumpJ,
        othersJ,
        pump,
        others,
        pump + others,
        cost,
        standing,
        cost + standing,
        busiest);
  }

  /** Share of the period the pump runs, 0 to 1. */
  public double share() {
    return runS / periodS;
  }

  /** Mean starts a calendar day. */
  public double startsPerDay() {
    return starts / dates.days();
  }

  /** Mean energy a calendar day, J. */
  public double totalJDay() {
    return totalJ / dates.days();
  }

  /** Mean cost a calendar day, money. */
  public double costDay() {
    return cost / dates.days();
  }
}
