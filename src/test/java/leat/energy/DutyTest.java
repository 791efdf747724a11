package leat.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DutyTest {
  static Stream<Row> rows() {
    return Sheet.of("energy-duty.csv").atLeast(16);
  }

  private static Duty duty(Row r, Timing timing) {
    return Duty.of(
        timing,
        Cells.draw(r),
        r.num("price_per_kWh") / Cells.J_PER_KWH,
        r.num("standing_per_day"),
        r.num("standing_share"),
        r.num("days"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Duty duty = duty(r, Cells.timing(r));
    Close.to(r, "on_share_pct", 100 * duty.share());
    Close.to(r, "starts_per_day", duty.startsPerDay());
    Close.to(r, "pump_kwh_day", duty.pumpJDay() / Cells.J_PER_KWH);
    Close.to(r, "other_kwh_day", duty.othersJDay() / Cells.J_PER_KWH);
    Close.to(r, "kwh_day", duty.totalJDay() / Cells.J_PER_KWH);
    Close.to(r, "energy_cost_day", duty.energyCostDay());
    Close.to(r, "cost_day", duty.costDay());
    Close.to(r, "kwh_total", duty.totalJ() / Cells.J_PER_KWH);
    Close.to(r, "cost_total", duty.costTotal());
    Close.to(r, "run_hours_total", duty.runTotalS() / 3600);
    assertThat(duty.pumpJTotal() + duty.othersJTotal())
        .isCloseTo(duty.totalJ(), within(1e-9 * duty.totalJ()));
    assertThat(duty.startsTotal()).isEqualTo(duty.startsPerDay() * r.num("days"));
    assertThat(duty.energyCostDay() + duty.standingCostDay()).isEqualTo(duty.costDay());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void savesWhatTheSheetSays(Row r) {
    Duty other = duty(r, new Timing(r.num("against_on_s"), r.num("against_off_s")));
    Close.to(r, "against_kwh_total", other.totalJ() / Cells.J_PER_KWH);
    Close.to(r, "against_cost_total", other.costTotal());
    Saving saving = against(duty(r, Cells.timing(r)), other);
    Close.to(r, "saving_kwh", saving.energyJ() / Cells.J_PER_KWH);
    Close.to(r, "saving_cost", saving.money());
    Close.to(r, "saving_pct", 100 * saving.share().getAsDouble());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void countsStartsAndSecondsAsTheSheet(Row r) {
    Timing timing = Cells.timing(r);
    double period = r.num("days") * 86_400;
    Close.to(r, "stepped_starts", starts(timing, period));
    Close.to(r, "stepped_on_s", timing.countedRunS(period));
  }

  private static Saving against(Duty one, Duty other) {
    return Saving.of(one.totalJ(), one.costTotal(), other.totalJ(), other.costTotal());
  }

  /** Starts of a period that begins with one: one for each cycle that has begun. */
  private static double starts(Timing timing, double period) {
    return timing.withoutPause() ? 1 : Math.ceil(period / timing.cycleS());
  }

  @Test
  void aStandingShareIsAdded() {
    Duty duty =
        Duty.of(new Timing(90, 720), Cells.pumpOnly(22), 0.31 / Cells.J_PER_KWH, 0.35, 0.1, 10);
    assertThat(duty.standingCostDay()).isCloseTo(0.035, within(1e-12));
    assertThat(duty.costTotal()).isCloseTo(10 * (0.0586666667 * 0.31 + 0.035), within(1e-9));
  }

  /** Screens: at 1.2 W a controller adds 5.2 kWh in 180 days. */
  @Test
  void aControllerAlone() {
    assertThat(Duty.steadyJ(1.2, 180) / Cells.J_PER_KWH).isCloseTo(5.184, within(1e-12));
  }

  @Test
  void quarterHoursAreFortyEightStartsAndHalfTheDay() {
    assertThat(Cells.QUARTER_HOURS.startsPerDay()).isEqualTo(48);
    assertThat(Cells.QUARTER_HOURS.startsPerHour()).isEqualTo(2);
    assertThat(Cells.QUARTER_HOURS.share()).isEqualTo(0.5);
    assertThat(new Timing(90, 0).startsPerHour()).isZero();
  }

  @Test
  void refusesWhatCannotBe() {
    refused("run", () -> new Timing(0, 720));
    refused("run", () -> new Timing(-1, 720));
    refused("run", () -> new Timing(Double.NaN, 720));
    refused("run", () -> new Timing(1e300, 0));
    refused("run", () -> new Timing(1e-9, 0));
    refused("rest", () -> new Timing(90, -1));
    refused("rest", () -> new Timing(90, Double.POSITIVE_INFINITY));
    refused("power", () -> Cells.pumpOnly(-22));
    refused("controller power", () -> new Draw(22, -1, 0, Coil.NEVER));
    refused("coil power", () -> new Draw(22, 1, -0.4, Coil.NEVER));
    refused("price", () -> Tariff.flat(-0.1));
    Timing t = Cells.QUARTER_HOURS;
    refused("days", () -> Duty.of(t, Cells.pumpOnly(22), 0, 0, 0, 0));
    refused("days", () -> Duty.of(t, Cells.pumpOnly(22), 0, 0, 0, -3));
    refused("standing share", () -> Duty.of(t, Cells.pumpOnly(22), 0, 1, 1.1, 3));
    refused("standing charge", () -> Duty.of(t, Cells.pumpOnly(22), 0, -1, 0.1, 3));
    refused("period", () -> t.countedRunS(-1));
    refused("share", () -> Cells.pumpOnly(22).meanW(1.01));
  }

  static void refused(String quantity, Runnable what) {
    assertThatThrownBy(what::run)
        .isInstanceOfSatisfying(
            Impossible.class, e -> assertThat(e.quantity()).isEqualTo(quantity));
  }

  @Test
  void noPowerAtAllSavesNoShare() {
    assertThat(Saving.of(0, 0, 0, 0).share()).isEqualTo(OptionalDouble.empty());
  }

  @Property(tries = 300)
  void countedStaysWithinOneCycleOfTheShare(
      @ForAll @DoubleRange(min = 0.5, max = 4000) double run,
      @ForAll @DoubleRange(min = 0, max = 9000) double rest,
      @ForAll @DoubleRange(min = 0, max = 1e7) double period) {
    Timing timing = new Timing(run, rest);
    assertThat(timing.countedRunS(period))
        .isCloseTo(timing.share() * period, within(timing.cycleS()));
    assertThat(timing.countedRunS(period)).isLessThanOrEqualTo(period * (1 + 1e-12));
  }

  @Property(tries = 200)
  void countsAsAMinuteByMinuteWalk(
      @ForAll @IntRange(min = 1, max = 300) int run,
      @ForAll @IntRange(min = 1, max = 300) int rest,
      @ForAll @IntRange(min = 0, max = 5000) int period) {
    int starts = 0;
    int on = 0;
    for (int s = 0; s < period; s++) {
      int phase = s % (run + rest);
      starts += phase == 0 ? 1 : 0;
      on += phase < run ? 1 : 0;
    }
    assertThat(starts(new Timing(run, rest), period)).isEqualTo(starts);
    assertThat(new Timing(run, rest).countedRunS(period)).isEqualTo(on);
  }

  @Property(tries = 200)
  void equalSharesUseEqualEnergy(
      @ForAll @DoubleRange(min = 1, max = 900) double run,
      @ForAll @DoubleRange(min = 1, max = 3600) double rest,
      @ForAll @DoubleRange(min = 0, max = 100) double watts) {
    Draw draw = new Draw(watts, 1.2, 0.4, Coil.WHILE_RESTING);
    Duty one = Duty.of(new Timing(run, rest), draw, 1e-7, 0, 0, 30);
    Duty twice = Duty.of(new Timing(2 * run, 2 * rest), draw, 1e-7, 0, 0, 30);
    assertThat(against(one, twice).energyJ()).isCloseTo(0, within(1e-9 * one.totalJ()));
    assertThat(one.startsTotal()).isCloseTo(2 * twice.startsTotal(), within(1e-6));
    assertThat(against(twice, one).energyJ()).isEqualTo(-against(one, twice).energyJ());
  }
}
