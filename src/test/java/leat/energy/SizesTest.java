package leat.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is bought or cut to fit, at the bounds; values by hand from the formulas of each class. */
class SizesTest {
  private static final double AH = 3600;

  @Test
  void theNextBatteryThatIsSold() {
    assertThat(BatterySize.atLeast(6 * AH, true)).isEqualTo(new BatterySize(7 * AH, 1));
    assertThat(BatterySize.atLeast(7 * AH, true)).isEqualTo(new BatterySize(7 * AH, 1));
    assertThat(BatterySize.atLeast(7 * AH, false)).isEqualTo(new BatterySize(7 * AH, 1));
    assertThat(BatterySize.atLeast(8 * AH, false)).isEqualTo(new BatterySize(10 * AH, 1));
    assertThat(BatterySize.atLeast(200 * AH, true)).isEqualTo(new BatterySize(200 * AH, 1));
    assertThat(BatterySize.atLeast(401 * AH, true)).isEqualTo(new BatterySize(200 * AH, 3));
  }

  /** 22 W at a power factor of 0.6 are 36.7 VA; six times that for a moment, of which half. */
  @Test
  void theNextInverterThatIsSold() {
    assertThat(Inverter.sizeW(new Motor(22, 230, 0.6, 6))).isEqualTo(OptionalDouble.of(150));
    assertThat(Inverter.sizeW(new Motor(22, 230, 0.6, 1))).isEqualTo(OptionalDouble.of(100));
    assertThat(Inverter.sizeW(new Motor(120, 230, 1, 1))).isEqualTo(OptionalDouble.of(150));
    assertThat(Inverter.sizeW(new Motor(120.1, 230, 1, 1))).isEqualTo(OptionalDouble.of(200));
    assertThat(Inverter.sizeW(new Motor(2401, 230, 1, 1))).isEmpty();
  }

  @Test
  void runsAreCutUntilTheCostFits() {
    Timetable timetable = Timetable.of(new Timing(60, 540));
    Tariff tariff = Tariff.flat(0.3 / 3.6e6);
    Overlap overlap =
        Overlap.of(
            Dates.of(LocalDate.of(2027, 5, 1), 10, ZoneId.of("UTC")),
            timetable.windows(),
            tariff.windows());
    Draw draw = Cells.pumpOnly(50);
    double cost = Bill.of(overlap, timetable, tariff, draw).cost();
    // 50 W a tenth of the time, 10 days, 0.30 for each kWh
    assertThat(cost).isCloseTo(50 * 0.1 * 240 / 1000 * 0.3, within(1e-9));
    assertThat(Bill.of(overlap, timetable, tariff, draw).share()).isCloseTo(0.1, within(1e-12));
    assertThat(new CostFactor(overlap, tariff, draw).onRuns(timetable, cost)).hasValue(1);
    double half = new CostFactor(overlap, tariff, draw).onRuns(timetable, cost / 2).getAsDouble();
    // f 60/(f 60 + 540) = 0.05
    assertThat(half).isCloseTo(27 / 0.95 / 60, within(1e-9));
    assertThat(new CostFactor(overlap, tariff, draw).onRuns(timetable, cost / 1e6)).isEmpty();
    Timing cut = timetable.times(0.5, 1).timing(0);
    assertThat(cut).isEqualTo(new Timing(30, 540));
  }

  @Test
  void theBusiestTimingHasTheHighestShare() {
    Timing day = new Timing(60, 540);
    Timing night = new Timing(60, 1740);
    Window dark = Window.between(22 * 3600, 6 * 3600);
    assertThat(Timetable.dayAndNight(day, night, dark).busiest()).isSameAs(day);
    assertThat(Timetable.dayAndNight(night, day, dark).busiest()).isSameAs(day);
    assertThat(Timetable.of(day).busiest()).isSameAs(day);
  }

  @Test
  void whatAControllerTakesIsAShareOfThePumps() {
    Draw.Hint hint = Draw.controllerHint(10, 86_400 * 100.0);
    assertThat(hint.share()).isCloseTo(hint.watts() * 10 * 86_400 / 8.64e6, within(1e-12));
  }

  @Test
  void aLeastRunIsCoveredByARunAsLong() {
    LeastRun least = new LeastRun(10, 30, 20);
    assertThat(least.coveredBy(new Timing(60, 600))).isTrue();
    assertThat(least.coveredBy(new Timing(59.99, 600))).isFalse();
    assertThat(least.longestPart()).isEqualTo(LeastRun.Part.FILM);
    assertThat(new LeastRun(30, 30, 20).longestPart()).isEqualTo(LeastRun.Part.FILL);
    assertThat(new LeastRun(20, 10, 20).longestPart()).isEqualTo(LeastRun.Part.FILL);
    assertThat(new LeastRun(5, 20, 20).longestPart()).isEqualTo(LeastRun.Part.FILM);
  }

  private static Cable cable(double lengthM, double area, double inrush, double leastV) {
    return Cable.of(12, 18, lengthM, area, Copper.byResistivity(area), 20, inrush, leastV);
  }

  /** 1.5 A through 0.0138 ohm for each metre of the way, by the resistivity of copper. */
  @Test
  void theVerdictIsTheWorst() {
    assertThat(cable(1, 2.5e-6, 1, 9).verdict()).isEqualTo(Cable.Verdict.GOOD);
    assertThat(cable(40, 2.5e-6, 1, 9).verdict()).isEqualTo(Cable.Verdict.MUCH);
    assertThat(cable(70, 2.5e-6, 1, 9).verdict()).isEqualTo(Cable.Verdict.TOO_MUCH);
    assertThat(cable(20, 2.5e-6, 6, 11).verdict()).isEqualTo(Cable.Verdict.DOES_NOT_START);
    assertThat(cable(400, 2.5e-6, 1, 9).verdict()).isEqualTo(Cable.Verdict.CANNOT_FEED);
    assertThat(Cable.Verdict.GOOD.passes() && Cable.Verdict.MUCH.passes()).isTrue();
    assertThat(Cable.Verdict.TOO_MUCH.passes()).isFalse();
    assertThat(Cable.Verdict.CORD_TOO_THIN.word()).isEqualTo("cord-too-thin");
  }

  /** A long thin cable: the drop of a constant current would be over the supply. */
  @Test
  void noMoreIsLostThanTheSupplyHas() {
    Cable long400 = cable(400, 0.75e-6, 1, 9);
    assertThat(long400.dropShare()).isGreaterThan(1);
    assertThat(long400.lostV()).isCloseTo(12, within(1e-9));
    assertThat(long400.lostShare()).isEqualTo(1);
    assertThat(long400.startV()).isEqualTo(0);
    Cable near = cable(1, 2.5e-6, 1, 9);
    assertThat(near.lostV()).isEqualTo(near.dropV());
    assertThat(near.lostShare()).isEqualTo(near.dropShare());
    assertThat(near.startV()).isEqualTo(near.pumpVAtInrush());
  }

  /** AWG 18 is 0.823 mm2, 16 is 1.31 mm2 (ASTM B258, by its formula). */
  @Test
  void theThinnestGaugeThatIsEnough() {
    assertThat(Copper.gaugeFor(0.82e-6)).hasValue(18);
    assertThat(Copper.gaugeFor(Copper.gaugeArea(18))).hasValue(18);
    assertThat(Copper.gaugeFor(0.83e-6)).hasValue(16);
    assertThat(Copper.gaugeFor(6e-6)).isEmpty();
    double gauge = Cable.leastGauge(12, 18, 5, 20, 1, 9, 0.05).getAsDouble();
    double thinner = Copper.gaugeArea(gauge + 2);
    double enough = Copper.gaugeArea(gauge);
    assertThat(cable(5, enough, 1, 9).worstDropShare()).isLessThanOrEqualTo(0.05);
    assertThat(cable(5, thinner, 1, 9).worstDropShare()).isGreaterThan(0.05);
    assertThat(Cable.leastGauge(12, 18, 500, 20, 1, 9, 0.05)).isEmpty();
  }
}
