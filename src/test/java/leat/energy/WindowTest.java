package leat.energy;

import static leat.energy.DutyTest.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class WindowTest {
  private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");
  private static final int H = 3600;

  @Test
  void theEndIsNotIncluded() {
    Window noon = Window.between(11 * H, 17 * H);
    assertThat(noon.contains(11 * H, 7, 1)).isTrue();
    assertThat(noon.contains(17 * H - 1, 7, 1)).isTrue();
    assertThat(noon.contains(17 * H, 7, 1)).isFalse();
    assertThat(noon.contains(11 * H - 1, 7, 1)).isFalse();
  }

  @Test
  void aNightWrapsAndTakesEachMomentsOwnDate() {
    Window saturdayNight = Window.between(22 * H, 6 * H).weekdayList(6);
    assertThat(saturdayNight.contains(2 * H, 7, 6)).isTrue();
    assertThat(saturdayNight.contains(23 * H, 7, 6)).isTrue();
    assertThat(saturdayNight.contains(2 * H, 7, 7)).isFalse();
    assertThat(saturdayNight.contains(6 * H, 7, 6)).isFalse();
  }

  @Test
  void monthsAndWeekdaysWrap() {
    Window winter = Cells.months(Window.always(), 11, 2);
    for (int month = 1; month <= 12; month++) {
      assertThat(winter.contains(0, month, 1)).isEqualTo(month >= 11 || month <= 2);
    }
    Window weekend = Cells.weekdays(Window.always(), 6, 1);
    assertThat(weekend.contains(0, 1, 1)).isTrue();
    assertThat(weekend.contains(0, 1, 2)).isFalse();
    assertThat(weekend.contains(0, 1, 7)).isTrue();
    assertThat(winter.isAlways()).isFalse();
    assertThat(Window.between(5 * H, 5 * H).isAlways()).isTrue();
    assertThat(Window.between(0, 24 * H).isAlways()).isTrue();
  }

  @Test
  void midnightAsAnEnd() {
    Window evening = Window.between(18 * H, 24 * H);
    assertThat(evening.contains(24 * H - 1, 1, 1)).isTrue();
    assertThat(evening.contains(0, 1, 1)).isFalse();
    assertThat(evening.contains(18 * H - 1, 1, 1)).isFalse();
  }

  @Test
  void theLastThatMatchesWins() {
    Windows windows =
        new Windows(
            "band", Window.always(), Window.between(6 * H, 20 * H), Window.between(8 * H, 9 * H));
    assertThat(windows.inForce(0, 1, 1)).isZero();
    assertThat(windows.inForce(7 * H, 1, 1)).isEqualTo(1);
    assertThat(windows.inForce(8 * H, 1, 1)).isEqualTo(2);
  }

  @Test
  void tellsWhichAreCoveredByLaterOnes() {
    Windows windows =
        new Windows(
            "timing",
            Window.always(),
            Cells.months(Window.between(7 * H, 9 * H), 6, 8),
            Window.between(6 * H, 20 * H));
    assertThat(windows.everInForce()).containsExactly(true, false, true);
    assertThat(new Windows("timing", Window.always(), Window.always()).everInForce())
        .containsExactly(false, true);
  }

  @Test
  void aWindowInsideTheGapIsNeverInForceThatDay() {
    Dates spring = Dates.of(LocalDate.of(2027, 3, 28), 1, VIENNA);
    Windows gap = new Windows("band", Window.always(), Window.between(2 * H, 3 * H));
    Overlap overlap = Overlap.of(spring, gap, gap);
    assertThat(overlap.rowSeconds(1)).isZero();
    assertThat(overlap.seconds(0, 0)).isEqualTo(23 * H);
    Dates autumn = Dates.of(LocalDate.of(2027, 10, 31), 1, VIENNA);
    assertThat(Overlap.of(autumn, gap, gap).rowSeconds(1)).isEqualTo(2 * H);
  }

  @Test
  void refusesWhatNeverMatches() {
    refused("months", () -> Window.always().monthList());
    refused("days", () -> Window.always().weekdayList());
    refused("months", () -> Window.always().monthList(1, 13));
    refused("months", () -> Window.always().monthList(0));
    refused("days", () -> Window.always().weekdayList(0, 3));
    refused("days", () -> Window.always().weekdayList(8));
    refused("months", () -> new Window(0, 0, 1, 2));
    refused("from", () -> Window.between(24 * H, 0));
    refused("from", () -> Window.between(-1, 0));
    refused("to", () -> Window.between(0, 24 * H + 1));
    refused("band", () -> new Windows("band"));
    refused("band", () -> new Windows("band", Window.between(0, H)));
    refused("timing", () -> new Timetable(new Window[] {Window.always()}, new Timing[0]));
    refused("band", () -> new Tariff(new Window[] {Window.always()}, new double[2], 0, 0));
  }

  @Test
  void refusesAPeriodThatIsNone() {
    LocalDate day = LocalDate.of(2027, 4, 10);
    refused("period", () -> new Dates(day, day.minusDays(1), VIENNA));
    refused("days", () -> Dates.of(day, 0, VIENNA));
    refused("period", () -> new Dates(LocalDate.of(1899, 12, 31), day, VIENNA));
    refused("period", () -> new Dates(day, LocalDate.MAX, VIENNA));
    refused("period", () -> new Dates(day, day.plusYears(101), VIENNA));
    LocalDate skipped = LocalDate.of(2011, 12, 30);
    refused("period", () -> new Dates(skipped, skipped, ZoneId.of("Pacific/Apia")));
    assertThat(new Dates(day, LocalDate.of(2027, 10, 15), VIENNA).days()).isEqualTo(189);
  }

  @Test
  void anOverlapOfOtherWindowsIsRefused() {
    Timetable timetable = Timetable.of(Cells.QUARTER_HOURS);
    Overlap other =
        Overlap.of(
            Dates.of(LocalDate.of(2027, 4, 10), 1, VIENNA),
            timetable.windows(),
            Windows.dayAndNight(DryLimit.usualNight()));
    refused("timing", () -> Bill.of(other, timetable, Tariff.flat(0), Cells.pumpOnly(1)));
  }
}
