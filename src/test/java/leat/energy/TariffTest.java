package leat.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TariffTest {
  static Stream<Row> rows() {
    return Sheet.of("energy-tariff.csv").atLeast(19);
  }

  static Stream<Row> steppedRows() {
    return Sheet.of("energy-tariff.csv").having("stepped_starts").atLeast(17);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Bill bill = Bill.of(Cells.timetable(r), Cells.tariff(r), Cells.draw(r), Cells.dates(r));
    Close.to(r, "period_s", bill.periodS());
    Close.toEach(r, "band_s", bill.bandS());
    Close.to(r, "starts", bill.starts());
    Close.to(r, "on_s", bill.runS());
    Close.toEach(r, "pump_kwh_by_band", Close.kwh(bill.pumpJByBand()));
    Close.toEach(r, "other_kwh_by_band", Close.kwh(bill.othersJByBand()));
    Close.to(r, "kwh", bill.totalJ() / Cells.J_PER_KWH);
    Close.to(r, "energy_cost", bill.energyCost());
    Close.to(r, "cost", bill.cost());
    assertThat(bill.energyCost() + bill.standingCost()).isEqualTo(bill.cost());
    assertThat(bill.pumpJ() + bill.othersJ()).isEqualTo(bill.totalJ());
    assertThat(bill.totalJDay()).isEqualTo(bill.totalJ() / r.num("days"));
    assertThat(bill.costDay()).isEqualTo(bill.cost() / r.num("days"));
    assertThat(bill.startsPerDay()).isEqualTo(bill.starts() / r.num("days"));
  }

  @ParameterizedTest
  @MethodSource("steppedRows")
  void runsFreeAsTheSheet(Row r) {
    Timetable timetable = Cells.timetable(r);
    FreeRun free = FreeRun.of(timetable, Cells.tariff(r), Cells.draw(r), Cells.dates(r));
    Close.to(r, "stepped_starts", free.starts());
    Close.to(r, "stepped_on_s", free.runS());
    Close.toEach(r, "stepped_pump_kwh_by_band", Close.kwh(free.pumpJByBand()));
    Close.to(r, "stepped_energy_cost", free.energyCost());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void freeRunStaysWithinACycleForEachChange(Row r) {
    Timetable timetable = Cells.timetable(r);
    Tariff tariff = Cells.tariff(r);
    Overlap overlap = Overlap.of(Cells.dates(r), timetable.windows(), tariff.windows());
    Bill bill = Bill.of(overlap, timetable, tariff, Cells.draw(r));
    FreeRun free = FreeRun.of(timetable, tariff, Cells.draw(r), Cells.dates(r));
    double longest = 0;
    for (int i = 0; i < timetable.size(); i++) {
      longest = Math.max(longest, timetable.timing(i).cycleS());
    }
    assertThat(free.runS())
        .as(r.idAndProvenance())
        .isCloseTo(bill.runS(), within(longest * (changes(timetable, tariff, Cells.dates(r)) + 1)));
  }

  /** How often another timing comes into force. */
  private static int changes(Timetable timetable, Tariff tariff, Dates dates) {
    Stretches stretches =
        new Stretches(dates, Windows.borders(timetable.windows(), tariff.windows()));
    int changes = 0;
    int before = -1;
    while (stretches.next()) {
      int now = stretches.inForce(timetable.windows());
      changes += before >= 0 && now != before ? 1 : 0;
      before = now;
    }
    return changes;
  }
}
