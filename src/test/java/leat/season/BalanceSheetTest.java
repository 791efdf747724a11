package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of season-balance.csv, season-balance-daily.csv and season-interval.csv. */
class BalanceSheetTest {
  static Stream<Row> seasons() {
    return Sheet.of("season-balance.csv").having("sum_et_L").atLeast(8);
  }

  static Stream<Row> factors() {
    return Sheet.of("season-interval.csv").having("et_factor").atLeast(15);
  }

  @ParameterizedTest
  @MethodSource("seasons")
  void sumsAgree(Row r) {
    SeasonDays days = Cases.days(r.id());
    assertThat(days.length()).isEqualTo((int) r.num("days"));
    Totals totals = Season.totals(Cases.plan(r), days, 1);
    Totals.Flows f = totals.flows();
    near(r, "sum_rain_L", f.rainL());
    near(r, "sum_overflow_L", f.overflowL());
    near(r, "sum_et_L", f.waterUseL());
    near(r, "sum_short_L", f.shortL());
    near(r, "sum_topup_water_L", f.waterL());
    near(r, "sum_concentrate_mL", f.concentrateMl());
    near(r, "sum_drained_L", f.drainedL());
    near(r, "sum_uptake_salt", f.uptakeMsCmL());
    Totals.Counts c = totals.counts();
    near(r, "n_topup", c.topups());
    near(r, "n_dose", c.doses());
    near(r, "n_dilute", c.dilutions());
    near(r, "n_change", c.changes());
    near(r, "n_overflow", c.overflowDays());
    near(r, "n_dry", c.dryDays());
    Totals.Evenings e = totals.evenings();
    near(r, "ec_min_mS_cm", e.ecMinMsCm());
    near(r, "ec_max_mS_cm", e.ecMaxMsCm());
    near(r, "lowest_L", e.lowestL());
    near(r, "volume_end_L", e.volumeEndL());
    near(r, "ec_end_mS_cm", e.ecEndMsCm());
    near(r, "salt_end_mS_cm_L", e.saltEndMsCmL());
  }

  @ParameterizedTest
  @MethodSource("seasons")
  void everyDayAgrees(Row season) {
    double tolerance = season.num("tol_abs");
    List<Row> sheet = Cases.daily(season.id());
    List<DayRow> days = Season.run(Cases.plan(season), Cases.days(season.id()), 1).days();
    assertThat(days).hasSameSizeAs(sheet);
    LocalDate first = LocalDate.parse(season.text("first_day"));
    for (int t = 0; t < days.size(); t++) {
      Row r = sheet.get(t);
      DayRow d = days.get(t);
      assertThat(first.plusDays(d.day())).isEqualTo(LocalDate.parse(r.text("date")));
      assertThat(d.day()).isEqualTo((int) r.num("day"));
      near(r, "rain_L", d.rainL(), tolerance);
      near(r, "overflow_L", d.overflowL(), tolerance);
      near(r, "et_L", d.useL(), tolerance);
      near(r, "short_L", d.shortL(), tolerance);
      near(r, "low_L", d.lowL(), tolerance);
      near(r, "drained_L", d.drainedL(), tolerance);
      near(r, "topup_water_L", d.waterL(), tolerance);
      near(r, "topup_concentrate_mL", d.concentrateMl(), tolerance);
      near(r, "volume_L", d.volumeL(), tolerance);
      near(r, "ec_mS_cm", d.ecMsCm(), tolerance);
      near(r, "salt_mS_cm_L", d.saltMsCmL(), tolerance);
      assertThat(d.event()).as(r.id() + " day " + d.day()).isEqualTo(r.text("event"));
    }
  }

  @ParameterizedTest
  @MethodSource("factors")
  void otherThirstIsRerun(Row r) {
    String id = r.text("balance_case");
    Totals t = Season.totals(Cases.plan(Cases.row(id)), Cases.days(id), r.num("et_factor"));
    near(r, "sum_et_L", t.flows().waterUseL());
    near(r, "sum_topup_water_L", t.flows().waterL());
    near(r, "sum_concentrate_mL", t.flows().concentrateMl());
    near(r, "sum_drained_L", t.flows().drainedL());
    near(r, "sum_overflow_L", t.flows().overflowL());
    near(r, "sum_short_L", t.flows().shortL());
    near(r, "n_topup", t.counts().topups());
    near(r, "ec_max_mS_cm", t.evenings().ecMaxMsCm());
  }

  static Stream<Row> rains() {
    return Sheet.of("season-rain.csv").having("ec_after_mS_cm").atLeast(7);
  }

  /** A day of rain and nothing else. */
  @ParameterizedTest
  @MethodSource("rains")
  void rainMixesBeforeItRunsOver(Row r) {
    double before = r.num("volume_before_L");
    double ec = r.num("ec_before_mS_cm");
    double rainEc = r.num("rain_ec_mS_cm");
    TankPlan plan =
        new TankPlan(
            new Marks(r.num("rim_L"), 0, 0, r.num("rim_L"), 0),
            new Feeding(0.3, 1.6, 5, 1.9),
            new RainCatch(r.num("area_m2"), r.num("catch"), rainEc),
            Upkeep.of(Refill.NONE),
            EcBand.ANY,
            1.2,
            before,
            ec);
    DayInput day = new DayInput(0, 0, r.num("rain_mm"), Attendance.USUAL);
    DayRow row = TankDay.next(plan, TankState.start(plan), day).row();
    double tolerance = r.num("tol_rel");
    near(r, "rain_L", row.rainL(), tolerance * r.num("rain_L"));
    near(r, "overflow_L", row.overflowL(), tolerance * r.num("overflow_L"));
    near(r, "volume_after_L", row.volumeL(), tolerance * row.volumeL());
    near(r, "ec_after_mS_cm", row.ecMsCm(), tolerance * row.ecMsCm());
    double lost = before * ec + row.rainL() * rainEc - row.saltMsCmL();
    // A difference of two salts: the tolerance is that of what it is taken from.
    near(r, "salt_lost_mS_cm_L", lost, tolerance * before * ec);
    assertThat(row.overflowed()).isEqualTo(r.num("overflow_L") > 0);
  }

  private static void near(Row r, String column, double value) {
    near(r, column, value, r.num("tol_abs"));
  }

  private static void near(Row r, String column, double value, double tolerance) {
    assertThat(value)
        .as(column + " " + r.idAndProvenance())
        .isCloseTo(r.num(column), within(tolerance));
  }
}
