package leat.season;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Seasons a second; a class of its own, because no mutant is judged by a clock. */
class SeasonSpeedTest {
  /** A brutal bound: a tenth of a hundred thousand seasons a second that were measured. */
  @Test
  void thousandsOfSeasonsASecond() {
    TankPlan plan = Cases.plan(Cases.row("SB08"));
    SeasonDays days = Cases.days("SB08");
    double sum = 0;
    long start = System.nanoTime();
    for (int i = 0; i < 20_000; i++) {
      sum += Season.totals(plan, days, 0.7 + i * 1e-5).flows().waterUseL();
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    assertThat(sum).isPositive();
    assertThat(20_000 / seconds).isGreaterThan(2_000);
  }
}
