package leat.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** 40 L between full and intake, 6 L a day, by hand. */
class AwayTest {
  private static final Marks MARKS = new Marks(45, 15, 5, 60, 2);

  private static TankPlan tank(Upkeep upkeep) {
    return TankPlan.filled(
        MARKS, new Feeding(0.3, 1.6, 5, 1.9), RainCatch.ROOFED, upkeep, EcBand.ANY, 1.2);
  }

  private static SeasonDays steady(int n, double litres) {
    double[] plants = new double[n];
    Arrays.fill(plants, litres);
    return SeasonDays.of(plants, new double[n], new double[n]);
  }

  @Test
  void aDryDayIsAwaysUntilSomebodyServes() {
    TankPlan plan = tank(Upkeep.of(Refill.AT_LOW));
    SeasonDays days = steady(40, 6).away(10, 19);
    List<DayRow> rows = Season.run(plan, days, 1).days();
    // Full on the evening of day 9 (five days of 6 L reach 15 L); 40 L last 6 days, the 7th is dry.
    assertThat(rows.get(9).service()).isEqualTo(Service.TOP_UP);
    assertThat(rows.get(15).dry()).isFalse();
    for (int t = 16; t <= 20; t++) {
      assertThat(rows.get(t).awayDry()).as("day " + t).isTrue();
    }
    assertThat(rows.get(19).event()).isEqualTo("dry");
    // Back on day 20: still dry by day, topped up in the evening.
    assertThat(rows.get(20).event()).isEqualTo("dry top-up");
    assertThat(rows.get(21).dry()).isFalse();
    Totals t = Season.totals(plan, days, 1);
    assertThat(t.counts().dryDays()).isEqualTo(5);
    assertThat(t.counts().awayDryDays()).isEqualTo(5);
    assertThat(t.firstAwayDry()).isEqualTo(16);
    assertThat(t.firstDry()).isEqualTo(-1);
  }

  @Test
  void whereNobodyEverServesOnlyTheDaysAwayAreAways() {
    TankPlan plan = tank(Upkeep.of(Refill.NONE));
    Totals t = Season.totals(plan, steady(12, 6).away(7, 8), 1);
    assertThat(t.counts().dryDays()).isEqualTo(6);
    assertThat(t.counts().awayDryDays()).isEqualTo(2);
  }

  @Test
  void awayOnTheLastDaysStaysAways() {
    Totals t = Season.totals(tank(Upkeep.of(Refill.AT_LOW)), steady(20, 6).away(10, 19), 1);
    assertThat(t.counts().awayDryDays()).isEqualTo(4);
    assertThat(t.counts().dryOutsideAway()).isZero();
  }

  @Test
  void whatCarriesItOver() {
    TankPlan plan = tank(Upkeep.of(Refill.AT_LOW));
    double[] part = new double[60];
    Arrays.fill(part, 5);
    List<CropPart> crops = List.of(new CropPart("chard", 10, part));
    SeasonDays days = steady(60, 6).away(10, 21).away(40, 42);
    AwayOutcome[] outcomes = AwayOutcome.of(plan, days, 1, crops);
    assertThat(outcomes).hasSize(2);
    AwayOutcome long12 = outcomes[0];
    assertThat(long12.span()).isEqualTo(new AwaySpan(10, 21));
    assertThat(long12.driesOn()).isEqualTo(16);
    assertThat(long12.dryDays()).isEqualTo(7);
    assertThat(long12.shortL()).isEqualTo(2 + 6 * 6);
    assertThat(long12.fillBeforeCarries()).isFalse();
    // Days 10 to 22 drink 78 L over the 5 L under the intake.
    assertThat(long12.fullCarriesL()).isEqualTo(83);
    // 40 L over 13 days: 1 L and 0.5 L a plant leave 4 plants.
    assertThat(long12.plantsCarry()).isEqualTo(4);
    assertThat(long12.neighbourDays()).containsExactly(15, 21);
    assertThat(outcomes[1].carried()).isTrue();
    assertThat(outcomes[1].neighbourDays()).isEmpty();
  }

  @Test
  void fillingUpBeforeLeavingMayBeEnough() {
    TankPlan plan = tank(Upkeep.of(Refill.AT_LOW));
    // Day 4 tops up, so on the evening of day 8 only 21 L are left.
    AwayOutcome[] outcomes = AwayOutcome.of(plan, steady(30, 6).away(9, 12), 1, List.of());
    assertThat(outcomes[0].carried()).isFalse();
    assertThat(outcomes[0].fillBeforeCarries()).isTrue();
    assertThat(outcomes[0].neighbourDays()).isEmpty();
    assertThat(outcomes[0].fullCarriesL()).isNull();
    assertThat(outcomes[0].crop()).isNull();
  }

  @Test
  void aNeighbourFillsAndTheRestIsAway() {
    TankPlan plan = tank(new Upkeep(Refill.AT_LOW, 0, Upkeep.NEVER, 3, Upkeep.NEVER));
    SeasonDays days = steady(20, 6).away(5, 10).filledOn(7);
    assertThat(days.attendance(7)).isEqualTo(Attendance.NEIGHBOUR);
    assertThat(days.awaySpans()).containsExactly(new AwaySpan(5, 10));
    List<DayRow> rows = Season.run(plan, days, 1).days();
    assertThat(rows.get(7).service()).isEqualTo(Service.TOP_UP);
    assertThat(rows.get(7).volumeL()).isEqualTo(45);
    assertThat(rows.get(8).service()).isEqualTo(Service.NONE);
    assertThat(rows.get(11).service()).isEqualTo(Service.CHANGE);
    assertThat(days.home().awaySpans()).isEmpty();
    assertThat(days.filledOn(19).attendance(19)).isEqualTo(Attendance.CLOSING);
  }

  /** 41 L a day over 40 L: dry by a litre on day 0, and no evening before it to fill on. */
  @Test
  void awayFromTheFirstDay() {
    TankPlan plan = tank(Upkeep.of(Refill.DAILY));
    AwayOutcome first = AwayOutcome.of(plan, steady(6, 41).away(0, 2), 1, List.of())[0];
    assertThat(first.driesOn()).isZero();
    assertThat(first.carried()).isFalse();
    assertThat(first.dryDays()).as("days 0 to 3: topped up on the evening of day 3").isEqualTo(4);
    assertThat(first.shortL()).isEqualTo(1 + 3 * 41);
    assertThat(first.fillBeforeCarries()).isFalse();
    // Four days of 41 L over the 5 L under the intake.
    assertThat(first.fullCarriesL()).isEqualTo(169);
    assertThat(first.neighbourDays()).isNull();
  }

  /** 21 L a day over 40 L: filled every evening, from the first of the days away to the last. */
  @Test
  void theNeighbourMayComeOnTheFirstEvening() {
    TankPlan plan = tank(Upkeep.of(Refill.DAILY));
    AwayOutcome away = AwayOutcome.of(plan, steady(20, 21).away(10, 12), 1, List.of())[0];
    assertThat(away.driesOn()).isEqualTo(11);
    assertThat(away.neighbourDays()).containsExactly(10, 11, 12);
  }

  /** 25 L a day over 40 L: filled on the evening of day 0, before leaving, and on day 1. */
  @Test
  void aVisitMayFallOnTheSeasonsFirstEvening() {
    TankPlan plan = tank(Upkeep.of(Refill.AT_LOW));
    assertThat(Neighbour.days(plan, steady(5, 25).away(1, 1), 1)).containsExactly(0, 1);
  }
}
