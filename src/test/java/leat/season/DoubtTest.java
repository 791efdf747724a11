package leat.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each doubt at its limit, where it does not hold, and just over it. */
class DoubtTest {
  private static List<Doubt> of(Marks marks, double waterEc, Upkeep upkeep, double litres) {
    double[] plants = new double[20];
    Arrays.fill(plants, 1);
    plants[7] = litres;
    TankPlan plan =
        TankPlan.filled(
            marks, new Feeding(waterEc, 1.6, 5, 1.9), RainCatch.ROOFED, upkeep, EcBand.ANY, 1.2);
    return Doubt.of(plan, SeasonDays.of(plants, new double[20], new double[20]), 1.5);
  }

  private static List<Doubt> marks(
      double heel, double intake, double low, double full, double rim) {
    return of(new Marks(full, low, intake, rim, heel), 0.3, Upkeep.of(Refill.DAILY), 4);
  }

  @Test
  void theMarksRise() {
    assertThat(marks(2, 5, 15, 45, 60)).isEmpty();
    assertThat(marks(5, 5, 15, 45, 45)).as("heel at the intake, full at the rim").isEmpty();
    for (List<Doubt> odd :
        List.of(
            marks(5.1, 5, 15, 45, 60),
            marks(2, 15, 15, 45, 60),
            marks(2, 5, 45, 45, 60),
            marks(2, 5, 15, 45, 44.9))) {
      assertThat(odd).containsExactly(Doubt.MARKS_OUT_OF_ORDER);
    }
  }

  /** 10 L between low mark and intake; the thirst is taken 1.5 times. */
  @Test
  void theHottestDayAgainstTheReserve() {
    Marks usual = new Marks(45, 16, 4, 60, 2);
    Upkeep atLow = Upkeep.of(Refill.AT_LOW);
    assertThat(Doubt.reserveL(usual)).isEqualTo(12);
    assertThat(Doubt.reserveL(new Marks(45, 4, 6, 60, 2))).isZero();
    assertThat(of(usual, 0.3, atLow, 8)).isEmpty();
    assertThat(of(usual, 0.3, atLow, 8.1)).containsExactly(Doubt.RESERVE_UNDER_HOTTEST_DAY);
    assertThat(of(usual, 0.3, Upkeep.of(Refill.DAILY), 8.1)).isEmpty();
    assertThat(of(new Marks(45, 4, 4, 60, 2), 0.3, atLow, 1))
        .containsExactly(Doubt.MARKS_OUT_OF_ORDER, Doubt.LOW_UNDER_INTAKE);
  }

  /** 45 L and what the towers hold against 60 L to the rim. */
  @Test
  void filledUpWhileTheTowersRunItMayRunOver() {
    Marks kept = new Marks(45, 15, 5, 60, 2, 15);
    Marks spilt = new Marks(45, 15, 5, 60, 2, 15.5);
    assertThat(Doubt.overL(kept)).isZero();
    assertThat(Doubt.overL(spilt)).isEqualTo(0.5);
    assertThat(of(kept, 0.3, Upkeep.of(Refill.DAILY), 4)).isEmpty();
    assertThat(of(spilt, 0.3, Upkeep.of(Refill.DAILY), 4))
        .containsExactly(Doubt.RUNS_OVER_AT_A_STOP);
    assertThat(of(new Marks(61, 15, 5, 60, 2, 1), 0.3, Upkeep.of(Refill.DAILY), 4))
        .containsExactly(Doubt.MARKS_OUT_OF_ORDER);
  }

  @Test
  void aChangeAsOftenAsTheSeasonIsLong() {
    Marks usual = new Marks(45, 15, 5, 60, 2);
    for (int days : new int[] {20, 21}) {
      Upkeep upkeep = new Upkeep(Refill.DAILY, 0, Upkeep.NEVER, days, Upkeep.NEVER);
      List<Doubt> found = of(usual, 0.3, upkeep, 4);
      assertThat(found.contains(Doubt.CHANGE_LONGER_THAN_SEASON)).isEqualTo(days == 21);
    }
  }

  /** Changed ten days before it begins: after 30 days, of which 20 are the season's. */
  @Test
  void aChangeBeforeTheSeasonCounts() {
    double[] days = new double[20];
    for (int every : new int[] {30, 31}) {
      TankPlan plan =
          new TankPlan(
              new Marks(45, 15, 5, 60, 2),
              new Feeding(0.3, 1.6, 5, 1.9),
              RainCatch.ROOFED,
              new Upkeep(Refill.DAILY, 0, Upkeep.NEVER, every, Upkeep.NEVER),
              EcBand.ANY,
              1.2,
              45,
              1.6,
              new Since(-11, -11, 0));
      assertThat(Doubt.of(plan, SeasonDays.of(days, days, days), 1)).hasSize(every == 31 ? 1 : 0);
    }
  }

  @Test
  void waterAsStrongAsTheTarget() {
    Marks usual = new Marks(45, 15, 5, 60, 2);
    assertThat(of(usual, 1.6, Upkeep.of(Refill.DAILY), 4)).isEmpty();
    assertThat(of(usual, 1.61, Upkeep.of(Refill.DAILY), 4))
        .containsExactly(Doubt.WATER_OVER_TARGET);
  }

  @Test
  void theHottestDayIsOfPlantsAndOpenWater() {
    SeasonDays days =
        SeasonDays.of(new double[] {5, 6, 4}, new double[] {2, 0.5, 2.5}, new double[3]);
    assertThat(days.mostThirstL()).isEqualTo(7);
    assertThat(days.mostThirstL(1.5)).isEqualTo(10.5);
  }

  @Test
  void awayMayBeginWithTheSeasonAndEndWithIt() {
    double[] ten = new double[10];
    SeasonDays days = SeasonDays.of(ten, ten, ten);
    assertThat(days.away(0, 2).awaySpans()).containsExactly(new AwaySpan(0, 2));
    assertThat(days.away(-3, 2).awaySpans()).containsExactly(new AwaySpan(0, 2));
    assertThat(days.away(8, 9).awaySpans()).containsExactly(new AwaySpan(8, 9));
    assertThat(days.away(8, 12).awaySpans()).containsExactly(new AwaySpan(8, 9));
    assertThat(days.away(1, 2).away(4, 4).awaySpans())
        .containsExactly(new AwaySpan(1, 2), new AwaySpan(4, 4));
  }
}
