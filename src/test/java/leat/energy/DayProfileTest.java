package leat.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.stream.Stream;
import leat.Sheet.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DayProfileTest {
  private static final int H = 3600;

  static Stream<Row> rows() {
    return TariffTest.rows();
  }

  private static DayProfile plan(LocalDate date) {
    Timetable timetable =
        new Timetable(
            new Window[] {
              Window.always(), Window.between(22 * H, 6 * H), Window.between(11 * H, 17 * H + 600)
            },
            new Timing[] {new Timing(90, 720), new Timing(60, 1500), new Timing(1, 0)});
    Tariff tariff =
        new Tariff(
            new Window[] {Window.always(), Window.between(22 * H, 6 * H)},
            new double[] {3e-7, 2e-7},
            0,
            0);
    return DayProfile.of(timetable, tariff, date, ZoneId.of("Europe/Vienna"));
  }

  @Test
  void aSpringDayAsALine() {
    DayProfile day = plan(LocalDate.of(2027, 3, 28));
    assertThat(day.priceLine("ab")).isEqualTo("bb bbbaaaaaaaaaaaaaaaabb");
    assertThat(day.timingLine("ab")).isEqualTo("bb bbbaaaaabbbbbbaaaaabb");
    assertThat(day.seconds()[2]).isZero();
    assertThat(day.timing()[2]).isEqualTo(-1);
    assertThat(day.share()[12]).isEqualTo(1);
    assertThat(day.share()[17]).isCloseTo((600 + 3000 / 9.0) / 3600, within(1e-12));
    assertThat(day.pricePerJ()[6]).isEqualTo(3e-7);
  }

  @Test
  void anAutumnDayRepeatsAnHour() {
    assertThat(plan(LocalDate.of(2027, 10, 31)).seconds()[2]).isEqualTo(2 * H);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void sumsToTheBillOfThatDay(Row r) {
    Dates first = Dates.of(Cells.dates(r).from(), 1, Cells.dates(r).zone());
    Draw pump = Cells.pumpOnly(Cells.draw(r).pumpW());
    Bill bill = Bill.of(Cells.timetable(r), Cells.tariff(r), pump, first);
    DayProfile day = DayProfile.of(Cells.timetable(r), Cells.tariff(r), first.from(), first.zone());
    double run = 0;
    double all = 0;
    for (int h = 0; h < 24; h++) {
      run += day.share()[h] * day.seconds()[h];
      all += day.seconds()[h];
    }
    assertThat(all).isEqualTo(bill.periodS());
    assertThat(run).isCloseTo(bill.runS(), within(1e-9 * bill.runS()));
  }
}
