package leat.season;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Each goal at its limit and just over it. */
class GoalTest {
  private static final Streak NO_DAY = new Streak(0, -1);

  private static Totals counts(int overflow, int dry, int awayDry) {
    return totals(overflow, dry, awayDry, NO_DAY, NO_DAY, NO_DAY, 0);
  }

  private static Totals evenings(int above, int below, int outside) {
    return totals(0, 0, 0, new Streak(above, 0), new Streak(below, 0), new Streak(outside, 0), 0);
  }

  private static Totals tapSalt(double most) {
    return totals(0, 0, 0, NO_DAY, NO_DAY, NO_DAY, most);
  }

  private static Totals totals(
      int overflow, int dry, int awayDry, Streak above, Streak below, Streak outside, double tap) {
    return new Totals(
        30,
        new Totals.Flows(60, 0, 0, 0, 30, 100, 0, 0),
        new Totals.Counts(0, 0, 0, 0, overflow, dry, awayDry),
        new Totals.Evenings(1.4, 1.8, 12, 40, 64, above, below, outside),
        new Totals.TapSalt(tap, 5, 0),
        -1,
        -1);
  }

  @Test
  void dryDaysAreTheOwnersOrAways() {
    assertThat(Goal.NEVER_DRY.met(counts(0, 2, 2))).isTrue();
    assertThat(Goal.NEVER_DRY.met(counts(0, 3, 2))).isFalse();
    assertThat(Goal.AWAY_CARRIED.met(counts(0, 2, 0))).isTrue();
    assertThat(Goal.AWAY_CARRIED.met(counts(0, 1, 1))).isFalse();
  }

  @Test
  void threeEveningsOutsideAreWeatherFourAreNot() {
    assertThat(Goal.EC_NOT_HIGH.met(evenings(3, 9, 9))).isTrue();
    assertThat(Goal.EC_NOT_HIGH.met(evenings(4, 0, 0))).isFalse();
    assertThat(Goal.EC_NOT_LOW.met(evenings(9, 3, 9))).isTrue();
    assertThat(Goal.EC_NOT_LOW.met(evenings(0, 4, 0))).isFalse();
    assertThat(Goal.EC_IN_BAND.met(evenings(9, 9, 3))).isTrue();
    assertThat(Goal.EC_IN_BAND.met(evenings(0, 0, 4))).isFalse();
  }

  @Test
  void oneDayOverIsOver() {
    assertThat(Goal.NO_OVERFLOW.met(counts(0, 5, 5))).isTrue();
    assertThat(Goal.NO_OVERFLOW.met(counts(1, 0, 0))).isFalse();
  }

  @Test
  void theTapsSaltMayReachHalfTheTarget() {
    assertThat(Goal.TAP_SALT_LOW.met(tapSalt(0.5))).isTrue();
    assertThat(Goal.TAP_SALT_LOW.met(tapSalt(0.501))).isFalse();
  }
}
