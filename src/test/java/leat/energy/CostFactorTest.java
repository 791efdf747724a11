package leat.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.OptionalDouble;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

class CostFactorTest {
  private static final Window NIGHT = Window.between(22 * 3600, 6 * 3600);
  private final Timetable timetable =
      Timetable.dayAndNight(new Timing(90, 720), new Timing(60, 1500), NIGHT);
  private final Tariff tariff =
      new Tariff(
          new Window[] {Window.always(), NIGHT}, new double[] {0.31 / 3.6e6, 0.22 / 3.6e6}, 0, 0);
  private final Draw draw = new Draw(22, 1.2, 0.4, Coil.WHILE_RUNNING);
  private final Overlap overlap =
      Overlap.of(
          Dates.of(LocalDate.of(2027, 3, 20), 30, ZoneId.of("Europe/Vienna")),
          timetable.windows(),
          tariff.windows());

  private double cost(double factor) {
    Timetable stretched =
        Timetable.dayAndNight(new Timing(90, 720 * factor), new Timing(60, 1500 * factor), NIGHT);
    return Bill.of(overlap, stretched, tariff, draw).cost();
  }

  @Test
  void theStretchedTimetableCostsTheLimit() {
    for (double factor : new double[] {1.01, 1.5, 4, 30, 400}) {
      OptionalDouble found = new CostFactor(overlap, tariff, draw).onRests(timetable, cost(factor));
      assertThat(found.getAsDouble()).isCloseTo(factor, within(1e-6 * factor));
    }
  }

  @Test
  void nothingToStretchAndNothingThatHelps() {
    assertThat(new CostFactor(overlap, tariff, draw).onRests(timetable, cost(1))).hasValue(1);
    double alone = 30 * 24 * 1.2 / 1000 * 0.2;
    assertThat(new CostFactor(overlap, tariff, draw).onRests(timetable, alone)).isEmpty();
    assertThatThrownBy(() -> new CostFactor(overlap, tariff, draw).onRests(timetable, -1))
        .isInstanceOf(Impossible.class);
  }

  /** Sheet energy-relay.csv RL01: 100 000 operations at 106.67 starts a day are 937.5 days. */
  @Test
  void daysOfARelay() {
    assertThat(RelayLife.days(1e5, new Timing(90, 720).startsPerDay()).getAsDouble())
        .isCloseTo(937.5, within(1e-9));
    assertThat(RelayLife.days(1e5, 0)).isEmpty();
    assertThatThrownBy(() -> RelayLife.days(0, 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> RelayLife.days(1, -1)).isInstanceOf(Impossible.class);
  }

  @Test
  void daysAlikeUnlessMonthsOrWeekdaysDiffer() {
    assertThat(timetable.windows().everyDayAlike()).isTrue();
    assertThat(new Windows("band", Window.always(), NIGHT.monthList(6)).everyDayAlike()).isFalse();
    assertThat(new Windows("band", Window.always(), NIGHT.weekdayList(6, 7)).everyDayAlike())
        .isFalse();
  }
}
