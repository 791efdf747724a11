package leat.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Days put together, from rows written by hand. */
class PeriodTest {
  private static final LocalDate MAY_30 = LocalDate.of(2027, 5, 30); // a Sunday

  private static DayRow row(
      int day, double low, boolean overflowed, boolean dry, boolean awayDry, Service service) {
    // rain 1, over 2, use 3, short 4, drained 5, water 6, concentrate 7 of each day
    return new DayRow(
        day, 1, 2, 3, 4, low, 5, 6, 7, 30 + day, 50 + day, overflowed, dry, awayDry, service);
  }

  private static final List<DayRow> ROWS =
      List.of(
          row(0, 20, true, false, false, Service.TOP_UP),
          row(1, 18, false, false, false, Service.DOSE),
          row(2, 16, false, true, false, Service.DILUTE),
          row(3, 17, true, true, true, Service.CHANGE),
          row(4, 19, false, false, false, Service.TOP_UP),
          row(5, 21, false, true, true, Service.NONE));

  @Test
  void whatHappenedIsCounted() {
    List<Period> months = Period.months(ROWS, MAY_30);
    assertThat(months).hasSize(2);
    assertThat(months.get(0).counts()).isEqualTo(new Totals.Counts(1, 1, 0, 0, 1, 0, 0));
    assertThat(months.get(1).counts()).isEqualTo(new Totals.Counts(1, 0, 1, 1, 1, 3, 2));
    List<Period> weeks = Period.weeks(ROWS, MAY_30);
    assertThat(weeks).hasSize(2);
    assertThat(weeks.get(0).counts()).isEqualTo(new Totals.Counts(1, 0, 0, 0, 1, 0, 0));
    assertThat(weeks.get(1).counts()).isEqualTo(new Totals.Counts(1, 1, 1, 1, 1, 3, 2));
  }

  @Test
  void theDaysAsOne() {
    List<Period> months = Period.months(ROWS, MAY_30);
    assertThat(months.get(0).sum())
        .isEqualTo(
            new DayRow(0, 2, 4, 6, 8, 18, 10, 12, 14, 31, 51, true, false, false, Service.NONE));
    assertThat(months.get(1).sum())
        .isEqualTo(
            new DayRow(2, 4, 8, 12, 16, 16, 20, 24, 28, 35, 55, true, true, true, Service.NONE));
    assertThat(months.get(1).first()).isEqualTo(LocalDate.of(2027, 6, 1));
    assertThat(months.get(1).last()).isEqualTo(LocalDate.of(2027, 6, 4));
  }

  @Test
  void aQuietTimeHasNoEvent() {
    List<DayRow> quiet =
        List.of(
            row(0, 20, false, false, false, Service.NONE),
            row(1, 20, false, false, false, Service.NONE));
    Period one = Period.weeks(quiet, LocalDate.of(2027, 5, 31)).get(0);
    assertThat(one.counts()).isEqualTo(new Totals.Counts(0, 0, 0, 0, 0, 0, 0));
    assertThat(one.sum().event()).isEmpty();
  }

  /** Thirst of 7 L each day, so all fortnights are equal: the first is told. */
  @Test
  void ofEqualFortnightsTheFirst() {
    List<DayRow> rows = new ArrayList<>();
    for (int t = 0; t < 20; t++) {
      rows.add(row(t, 20, false, false, false, t % 2 == 0 ? Service.TOP_UP : Service.NONE));
    }
    assertThat(Fortnight.busiest(rows)).isEqualTo(new Fortnight(0, 14, 14 * 7, 14 * 6, 7));
    rows.set(19, row(19, 20, false, false, false, Service.TOP_UP));
    assertThat(Fortnight.busiest(rows).first()).isZero();
  }

  @Test
  void theLastFortnightMayBeTheBusiest() {
    List<DayRow> rows = new ArrayList<>();
    for (int t = 0; t < 20; t++) {
      rows.add(new DayRow(t, 0, 0, t, 0, 20, 0, 1, 0, 30, 50, false, false, false, Service.NONE));
    }
    Fortnight busiest = Fortnight.busiest(rows);
    // 6 + 7 + ... + 19
    assertThat(busiest).isEqualTo(new Fortnight(6, 14, 175, 14, 0));
    assertThat(busiest.daysACan(25)).isEqualTo(2);
  }
}
