package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

class SeasonTest {
  private static final Marks MARKS = new Marks(45, 15, 5, 60, 2);
  private static final Feeding FEED = new Feeding(0.3, 1.6, 5, 1.9);

  private static TankPlan tank(Feeding feeding, Upkeep upkeep, double uptake) {
    return TankPlan.filled(MARKS, feeding, RainCatch.ROOFED, upkeep, new EcBand(1.5, 1.9), uptake);
  }

  private static SeasonDays steady(int n, double litres) {
    double[] plants = new double[n];
    Arrays.fill(plants, litres);
    return SeasonDays.of(plants, new double[n], new double[n]);
  }

  /** season.md section 11: "every 3 d" serves on days 2, 5, 8 and "change 14 d" on days 13, 27. */
  @Test
  void theFirstFillIsTheEveningBefore() {
    TankPlan plan = tank(FEED, new Upkeep(Refill.every(3), 0, Upkeep.NEVER, 14, Upkeep.NEVER), 1.2);
    List<DayRow> rows = Season.run(plan, steady(29, 1), 1).days();
    assertThat(rows.get(2).service()).isEqualTo(Service.TOP_UP);
    assertThat(rows.get(5).service()).isEqualTo(Service.TOP_UP);
    assertThat(rows.get(3).service()).isEqualTo(Service.NONE);
    assertThat(rows.get(13).service()).isEqualTo(Service.CHANGE);
    assertThat(rows.get(16).service()).isEqualTo(Service.TOP_UP);
    assertThat(rows.get(27).service()).isEqualTo(Service.CHANGE);
  }

  @Test
  void theLastDayIsNotServed() {
    TankPlan plan = tank(FEED, Upkeep.of(Refill.DAILY), 1.2);
    List<DayRow> rows = Season.run(plan, steady(3, 1), 1).days();
    assertThat(rows.get(1).service()).isEqualTo(Service.TOP_UP);
    assertThat(rows.get(2).service()).isEqualTo(Service.NONE);
    assertThat(Season.run(plan, steady(1, 1), 1).days().get(0).volumeL()).isEqualTo(44);
  }

  @Test
  void theFirstFillMixesToTheTarget() {
    FirstFill fill = FirstFill.of(FEED, 45, 1.6);
    assertThat(fill.volumeL()).isCloseTo(45, within(1e-12));
    assertThat(fill.ecMsCm()).isCloseTo(1.6, within(1e-12));
    assertThat(fill.waterL() + fill.concentrateMl() / 1000).isCloseTo(45, within(1e-12));
    assertThat(0.3 * fill.waterL() + 0.38 * fill.concentrateMl()).isCloseTo(72, within(1e-9));
    FirstFill strong = FirstFill.of(new Feeding(2, 1.6, 5, 1.9), 45, 1.6);
    assertThat(strong.concentrateMl()).isZero();
    assertThat(strong.ecMsCm()).isEqualTo(2);
  }

  @Test
  void anEmptyTankHasNoEc() {
    Marks marks = new Marks(20, 5, 0, 25, 0);
    TankPlan plan =
        TankPlan.filled(
            marks,
            FEED,
            RainCatch.ROOFED,
            new Upkeep(Refill.NONE, 1.2, 1.9, 0, Upkeep.NEVER),
            EcBand.ANY,
            1.2);
    List<DayRow> rows = Season.run(plan, steady(6, 10), 1).days();
    assertThat(rows.get(1).volumeL()).isZero();
    assertThat(rows.get(1).ecMsCm()).isNaN();
    assertThat(rows.get(3).event()).isEqualTo("dry");
    assertThat(Season.totals(plan, steady(6, 10), 1).evenings().ecMaxMsCm()).isFinite();
    TankPlan served =
        TankPlan.filled(
            marks,
            FEED,
            RainCatch.ROOFED,
            new Upkeep(Refill.AT_LOW, 1.2, 1.9, 0, Upkeep.NEVER),
            EcBand.ANY,
            0);
    DayRow filled = Season.run(served, steady(6, 20), 1).days().get(0);
    assertThat(filled.volumeL()).isEqualTo(20);
  }

  @Test
  void streaksOutsideTheBandAreCounted() {
    Totals t = Season.totals(tank(FEED, Upkeep.of(Refill.NONE), 1.2), steady(8, 4), 1);
    List<DayRow> rows = Season.run(tank(FEED, Upkeep.of(Refill.NONE), 1.2), steady(8, 4), 1).days();
    int first = 0;
    while (rows.get(first).ecMsCm() <= 1.9) {
      first++;
    }
    assertThat(t.evenings().above()).isEqualTo(new Streak(8 - first, first));
    assertThat(t.evenings().outside()).isEqualTo(t.evenings().above());
    assertThat(t.evenings().below()).isEqualTo(new Streak(0, -1));
    Totals hungry = Season.totals(tank(FEED, Upkeep.of(Refill.NONE), 2.8), steady(8, 4), 1);
    assertThat(hungry.evenings().below().days()).isPositive();
  }

  @Test
  void theBusiestFortnightAndTheGaps() {
    double[] plants = new double[60];
    Arrays.fill(plants, 3);
    Arrays.fill(plants, 20, 34, 9);
    SeasonDays days = SeasonDays.of(plants, new double[60], new double[60]);
    List<DayRow> rows = Season.run(tank(FEED, Upkeep.of(Refill.AT_LOW), 1.2), days, 1).days();
    Fortnight busiest = Fortnight.busiest(rows);
    assertThat(busiest.first()).isEqualTo(20);
    assertThat(busiest.thirstL()).isCloseTo(126, within(1e-9));
    assertThat(busiest.daysACan(18)).isCloseTo(2, within(1e-9));
    assertThat(busiest.services())
        .isEqualTo(
            (int) rows.subList(20, 34).stream().filter(r -> r.service() != Service.NONE).count());
    List<DayRow> none =
        Season.run(tank(FEED, Upkeep.of(Refill.NONE), 1.2), steady(10, 1), 1).days();
    assertThat(Fortnight.busiest(none).days()).isEqualTo(10);
  }

  @Test
  void weeksAndMonthsAddUp() {
    LocalDate start = LocalDate.of(2027, 4, 10); // a Saturday
    SeasonRun run = Season.run(Cases.plan(Cases.row("SB08")), Cases.days("SB08"), 1);
    List<Period> weeks = Period.weeks(run.days(), start);
    assertThat(weeks.get(0).first()).isEqualTo(start);
    assertThat(weeks.get(0).last()).isEqualTo(LocalDate.of(2027, 4, 11));
    assertThat(weeks.get(1).first()).isEqualTo(LocalDate.of(2027, 4, 12));
    assertThat(weeks.get(1).rows()).hasSize(7);
    List<Period> months = Period.months(run.days(), start);
    assertThat(months.get(1).first()).isEqualTo(LocalDate.of(2027, 5, 1));
    for (List<Period> periods : List.of(weeks, months)) {
      assertThat(periods.stream().mapToInt(p -> p.rows().size()).sum()).isEqualTo(164);
      assertThat(periods.stream().mapToDouble(p -> p.sum().concentrateMl()).sum())
          .isCloseTo(run.totals().flows().concentrateMl(), within(1e-9));
      assertThat(periods.stream().mapToInt(p -> p.counts().topups()).sum())
          .isEqualTo(run.totals().counts().topups());
      Period last = periods.get(periods.size() - 1);
      assertThat(last.sum().volumeL()).isEqualTo(run.totals().evenings().volumeEndL());
      assertThat(periods.stream().mapToDouble(p -> p.sum().lowL()).min().getAsDouble())
          .isEqualTo(run.totals().evenings().lowestL());
    }
  }

  /** What a bug would do: a few billionths of a litre, or of salt, from nowhere. */
  @Test
  void aBalanceThatDoesNotCloseIsABug() {
    TankPlan plan = tank(FEED, Upkeep.of(Refill.DAILY), 1.2);
    TankState start = TankState.start(plan);
    for (int lost = 0; lost < 3; lost++) {
      Machine machine = new Machine(plan, start);
      Ledger ledger = new Ledger(plan, start);
      machine.day(3, 1, 0, Attendance.USUAL);
      ledger.take(machine);
      machine.volume += lost == 1 ? 2e-9 : 0;
      machine.salt += lost == 2 ? 2e-9 : 0;
      if (lost == 0) {
        assertThat(ledger.close(machine).days()).isEqualTo(1);
      } else {
        String what = lost == 1 ? "water" : "salt";
        assertThatThrownBy(() -> ledger.close(machine))
            .isInstanceOf(IllegalStateException.class)
            .hasMessageContaining(what);
      }
    }
  }

  @Test
  void doubtsAreTold() {
    TankPlan odd = Cases.plan(Cases.row("SB11"));
    assertThat(Doubt.of(odd, Cases.days("SB11"), 1))
        .containsExactly(Doubt.MARKS_OUT_OF_ORDER, Doubt.LOW_UNDER_INTAKE);
    TankPlan slow =
        tank(
            new Feeding(1.7, 1.6, 5, 1.9),
            new Upkeep(Refill.DAILY, 0, Upkeep.NEVER, 30, Upkeep.NEVER),
            1);
    assertThat(Doubt.of(slow, steady(20, 1), 1))
        .containsExactly(Doubt.CHANGE_LONGER_THAN_SEASON, Doubt.WATER_OVER_TARGET);
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new Feeding(0.3, 1.6, 2000, 1.9))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("too weak");
    assertThatThrownBy(() -> Refill.every(0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new RainCatch(1, 1.1, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new EcBand(2, 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Upkeep(Refill.NONE, 0, 1, -1, 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> steady(0, 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> steady(3, -1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> steady(3, 1e7)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> SeasonDays.of(new double[] {1}, new double[] {1}, new double[] {3000}))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> steady(3, Double.NaN)).isInstanceOf(Impossible.class);
    TankPlan plan = tank(FEED, Upkeep.of(Refill.DAILY), 1);
    assertThatThrownBy(() -> Season.totals(plan, steady(3, 1), -1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Season.totals(plan, steady(3, 1), Double.NaN))
        .isInstanceOf(Impossible.class);
  }
}
