package leat.energy;

import static leat.energy.DutyTest.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Roots;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BackupTest {
  static Stream<Row> rows() {
    return Sheet.of("energy-backup.csv").atLeast(7);
  }

  static Stream<Row> givenRows() {
    return Sheet.of("energy-backup.csv").having("given_capacity_Ah").atLeast(5);
  }

  private static Battery battery(Row r) {
    return new Battery(
        r.num("battery_V"),
        r.num("depth_of_discharge_pct") / 100,
        r.num("reserve_pct") / 100,
        r.num("peukert_k"),
        r.num("rated_at_h") * 3600);
  }

  private static Inverter inverter(Row r) {
    return new Inverter(r.num("inverter_efficiency_pct") / 100, r.num("inverter_idle_W"));
  }

  private static Backup backup(Row r) {
    return Backup.of(
        Cells.timing(r), Cells.draw(r), inverter(r), battery(r), r.num("hours") * 3600);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Backup b = backup(r);
    Close.to(r, "battery_average_W", b.meanW());
    Close.to(r, "battery_Wh", b.energyJ() / 3600);
    Close.to(r, "average_A", b.meanA());
    Close.to(r, "capacity_Ah", b.capacityC() / 3600);
    Close.to(r, "capacity_peukert_Ah", b.capacityPeukertC() / 3600);
    Close.to(r, "day_Wh", b.dayJ() / 3600);
    Close.to(r, "stepped_battery_Wh", b.countedJ() / 3600);
    assertThat(b.countedJ() / 3600).isCloseTo(b.energyJ() / 3600, within(r.num("stepped_tol_Wh")));
    assertThat(b.pumpMeanW() + b.inverterIdleW() + b.othersMeanW())
        .isCloseTo(b.meanW(), within(1e-12 * b.meanW()));
  }

  /** The sheet's current of the running pump counts the whole draw of that moment. */
  @ParameterizedTest
  @MethodSource("rows")
  void drawsWhileThePumpRuns(Row r) {
    Close.to(r, "pump_on_A", backup(r).pumpOnA());
  }

  @ParameterizedTest
  @MethodSource("givenRows")
  void aGivenBatteryLastsAsTheSheetSays(Row r) {
    double lasts = battery(r).lastsS(r.num("battery_average_W"), r.num("given_capacity_Ah") * 3600);
    Close.to(r, "given_capacity_runs_h", lasts / 3600);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void thePanelOfTheWorstMonth(Row r) {
    double[] sun = r.list("peak_sun_hours_by_month", ";");
    double worst = Arrays.stream(sun).min().getAsDouble();
    Close.to(r, "worst_peak_sun_hours", worst);
    Close.to(
        r,
        "pv_W",
        Solar.panelW(
            backup(r).dayJ(),
            worst,
            r.num("pv_performance_pct") / 100,
            r.num("battery_cycle_efficiency_pct") / 100));
  }

  @Test
  void refusesASunOrAShareThatCannotBe() {
    refused("peak sun", () -> Solar.panelW(1, 0, 0.7, 0.9));
    refused("performance", () -> Solar.panelW(1, 1, 0, 0.9));
    refused("battery efficiency", () -> Solar.panelW(1, 1, 0.7, 1.1));
  }

  @Test
  void theLargestPart() {
    Battery lead = Cells.lead();
    Draw draw = new Draw(22, 1, 0, Coil.NEVER);
    Timing timing = new Timing(90, 720);
    assertThat(Backup.of(timing, draw, new Inverter(0.85, 3), lead, 28_800).largestPart())
        .isEqualTo(Backup.Part.INVERTER_IDLE);
    assertThat(Backup.of(timing, draw, Inverter.none(), lead, 28_800).largestPart())
        .isEqualTo(Backup.Part.PUMP);
    Draw idle = new Draw(5, 1, 0, Coil.NEVER);
    assertThat(Backup.of(timing, idle, Inverter.none(), lead, 28_800).largestPart())
        .isEqualTo(Backup.Part.CONTROLLER_AND_COIL);
  }

  @Test
  void refusesWhatCannotBe() {
    Battery lead = Cells.lead();
    refused("hours", () -> backupOf(0));
    refused("hours", () -> backupOf(-1));
    refused("power", () -> lead.lastsS(0, 3600));
    refused("battery", () -> lead.lastsS(5, 0));
    refused("battery", () -> new Battery(0, 0.5, 0.25, 1, 72_000));
    refused("depth", () -> new Battery(12, 0, 0.25, 1, 72_000));
    refused("depth", () -> new Battery(12, 1.1, 0.25, 1, 72_000));
    refused("reserve", () -> new Battery(12, 0.5, -0.1, 1, 72_000));
    refused("Peukert exponent", () -> new Battery(12, 0.5, 0.2, 0.9, 72_000));
    refused("rated time", () -> new Battery(12, 0.5, 0.2, 1, 0));
    refused("inverter", () -> new Inverter(1.2, 3));
    refused("inverter idle", () -> new Inverter(0.9, -3));
    Draw nothing = Cells.pumpOnly(0);
    refused("power", () -> Backup.of(Cells.QUARTER_HOURS, nothing, Inverter.none(), lead, 3600));
  }

  private static Backup backupOf(double seconds) {
    return Backup.of(
        Cells.QUARTER_HOURS, Cells.pumpOnly(5), Inverter.none(), Cells.lead(), seconds);
  }

  @Property(tries = 300)
  void runTimeIsTheInverse(
      @ForAll @DoubleRange(min = 0.1, max = 100) double watts,
      @ForAll @DoubleRange(min = 0.2, max = 200) double hours,
      @ForAll @DoubleRange(min = 1, max = 1.4) double k,
      @ForAll @DoubleRange(min = 0.3, max = 1) double depth) {
    Battery battery = new Battery(12, depth, 0.25, k, 72_000);
    double capacity = battery.capacityPeukertC(watts, hours * 3600);
    assertThat(battery.lastsS(watts, capacity)).isCloseTo(hours * 3600, within(1e-6 * hours));
    double searched =
        Roots.bracketed(
            c -> battery.lastsS(watts, c) - hours * 3600, capacity / 100, capacity * 100);
    assertThat(searched).isCloseTo(capacity, within(1e-9 * capacity));
  }
}
