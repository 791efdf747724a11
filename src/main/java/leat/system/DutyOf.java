package leat.system;

import leat.energy.Bill;
import leat.energy.Draw;
import leat.energy.Duty;
import leat.energy.Timetable;
import leat.plan.Plan;
import leat.plan.Taken;

/**
 * What a timetable does over a period: by dates where clock or season are known, else by a number
 * of days.
 *
 * @param share share of the time the pump runs, -
 * @param startsPerDay starts a day
 * @param runS running in all, s
 * @param starts starts in all
 * @param pumpJ energy of the pump in all, J
 * @param jDay energy a day, J
 * @param costDay cost a day
 * @param j energy in all, J
 * @param cost cost in all
 * @param priced whether a price is known
 */
public record DutyOf(
    double share,
    double startsPerDay,
    double runS,
    double starts,
    double pumpJ,
    double jDay,
    double costDay,
    double j,
    double cost,
    boolean priced) {
  /** A timetable under a tariff over a period. */
  public static DutyOf of(Timetable timetable, Draw draw, TariffOf price, PeriodOf period) {
    if (period.dates() != null) {
      return of(Bill.of(timetable, price.tariff(), draw, period.dates()), price.isPriced());
    }
    Duty duty =
        Duty.of(
            timetable.timing(0),
            draw,
            price.tariff().pricePerJ(0),
            price.tariff().standingCostPerDay(),
            1,
            period.days());
    return new DutyOf(
        duty.share(),
        duty.startsPerDay(),
        duty.runTotalS(),
        duty.startsTotal(),
        duty.pumpJTotal(),
        duty.totalJDay(),
        duty.costDay(),
        duty.totalJ(),
        duty.costTotal(),
        price.isPriced());
  }

  private static DutyOf of(Bill bill, boolean priced) {
    return new DutyOf(
        bill.share(),
        bill.startsPerDay(),
        bill.runS(),
        bill.starts(),
        bill.pumpJ(),
        bill.totalJDay(),
        bill.costDay(),
        bill.totalJ(),
        bill.cost(),
        priced);
  }

  /** The plan's own timetable over its season, else over a year. */
  public static DutyOf of(Plan plan, Timetable timetable, Taken taken) {
    TariffOf price = TariffOf.of(plan, 0);
    return of(
        timetable,
        DrawOf.of(plan, taken),
        price,
        PeriodOf.of(plan, timetable, price.tariff(), null, null, taken));
  }
}
