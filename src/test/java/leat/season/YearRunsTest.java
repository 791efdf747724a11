package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.climate.Quantile;
import leat.numeric.Impossible;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class YearRunsTest {
  private static final Quantity USE = t -> t.flows().waterUseL();
  private static final Quantity DRAINED = t -> t.flows().drainedL();

  static Stream<Row> quantiles() {
    return Sheet.of("season-quantile.csv").having("quantile").atLeast(12);
  }

  @ParameterizedTest
  @MethodSource("quantiles")
  void quantileAgrees(Row r) {
    assertThat(Quantile.of(r.list("values", " "), r.num("q")))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("quantile"), Percentage.withPercentage(100 * r.num("tol_rel")));
  }

  private static final TankPlan SB08 = Cases.plan(Cases.row("SB08"));
  private static final SeasonDays DAYS = Cases.days("SB08");

  /** Years of more and less thirst than that of the sheet. */
  private static List<YearDays> years(double... factors) {
    List<YearDays> years = new ArrayList<>();
    for (int y = 0; y < factors.length; y++) {
      double[] plants = new double[DAYS.length()];
      double[] open = new double[plants.length];
      double[] rain = new double[plants.length];
      for (int t = 0; t < plants.length; t++) {
        plants[t] = factors[y] * DAYS.plantsL(t);
        open[t] = factors[y] * DAYS.openL(t);
        rain[t] = DAYS.rainMm(t);
      }
      years.add(new YearDays(2001 + y, SeasonDays.of(plants, open, rain)));
    }
    return years;
  }

  @Test
  void theShownYearIsTheMedianAndTheLowerOfTwo() {
    Thirst thirst = Thirst.GUESSED;
    assertThat(YearRuns.of(SB08, years(1.2, 0.8, 1), thirst).year()).isEqualTo(2003);
    assertThat(YearRuns.of(SB08, years(1.2, 0.8, 1, 0.9), thirst).year()).isEqualTo(2004);
    assertThat(YearRuns.of(SB08, years(1.2, 0.8), thirst).year()).isEqualTo(2002);
    YearRuns one = YearRuns.of(SB08, years(1), thirst);
    assertThat(one.run().totals()).isEqualTo(one.totals());
    assertThat(one.totals()).isEqualTo(Season.totals(SB08, DAYS, 1));
    assertThat(one.interval(USE).low()).isEqualTo(use(1, 0.66));
    assertThat(one.interval(USE).high()).isEqualTo(use(1, 1.51));
  }

  @Test
  void fewYearsGiveARange() {
    Interval i = YearRuns.of(SB08, years(1.2, 0.8), Thirst.GUESSED).interval(USE);
    assertThat(i.kind()).isEqualTo(Interval.Kind.RANGE);
    assertThat(i.low()).isEqualTo(use(0.8, 0.66));
    assertThat(i.high()).isEqualTo(use(1.2, 1.51));
  }

  @Test
  void fiveYearsGiveQuantilesOfAllRuns() {
    double[] factors = {1.2, 0.8, 1, 0.9, 1.1};
    YearRuns runs = YearRuns.of(SB08, years(factors), Thirst.measured(1.1));
    double[] all = new double[15];
    for (int y = 0; y < 5; y++) {
      all[y] = use(factors[y], 0.86 * 1.1);
      all[5 + y] = use(factors[y], 1.1);
      all[10 + y] = use(factors[y], 1.17 * 1.1);
    }
    java.util.Arrays.sort(all);
    Interval i = runs.interval(USE);
    assertThat(i.kind()).isEqualTo(Interval.Kind.QUANTILES);
    // 14 gaps x 0.1 = 1.4: four tenths of the way from the second to the third.
    assertThat(i.low()).isCloseTo(all[1] + 0.4 * (all[2] - all[1]), within(1e-9));
    assertThat(i.high()).isCloseTo(all[12] + 0.6 * (all[13] - all[12]), within(1e-9));
  }

  private static double use(double year, double thirst) {
    SeasonDays days = years(year).get(0).days();
    return Season.totals(SB08, days, thirst).flows().waterUseL();
  }

  /** season.md section 9: SB08 drains 136 L at 1.0, 142 at 1.4, 248 at 0.7. */
  @Test
  void whatDoesNotFollowThirstGetsRunsBetween() {
    YearRuns runs = YearRuns.of(SB08, years(1), new Thirst(0.7, 1, 1.4));
    double[] three = {
      DRAINED.of(Season.totals(SB08, DAYS, 0.7)),
      DRAINED.of(runs.totals()),
      DRAINED.of(Season.totals(SB08, DAYS, 1.4))
    };
    assertThat(three[0]).isGreaterThan(three[1]);
    assertThat(three[2]).isGreaterThan(three[1]);
    Interval i = runs.interval(DRAINED);
    assertThat(i.kind()).isEqualTo(Interval.Kind.RANGE_WITH_RUNS_BETWEEN);
    assertThat(i.low()).isLessThanOrEqualTo(three[1]);
    assertThat(i.high()).isGreaterThanOrEqualTo(three[0]);
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k <= 8; k++) {
      least = Math.min(least, DRAINED.of(Season.totals(SB08, DAYS, 0.7 + 0.3 * k / 8)));
      least = Math.min(least, DRAINED.of(Season.totals(SB08, DAYS, 1 + 0.4 * k / 8)));
    }
    assertThat(i.low()).isCloseTo(least, within(1e-6));
  }

  @Test
  void withoutAYearThereIsNoSeason() {
    assertThatThrownBy(() -> YearRuns.of(SB08, List.of(), Thirst.GUESSED))
        .isInstanceOf(Impossible.class);
  }

  /** A number of its own for the runs at the low, middle and high factor, told by their thirst. */
  private static Quantity byFactor(double low, double middle, double high) {
    double once = thirst(Season.totals(SB08, DAYS, 1));
    return t -> {
      double factor = thirst(t) / once;
      return factor < 0.9 ? low : factor > 1.1 ? high : middle;
    };
  }

  private static double thirst(Totals t) {
    return t.flows().waterUseL() + t.flows().shortL();
  }

  @Test
  void whatStandsStillForAWhileIsSteady() {
    YearRuns runs = YearRuns.of(SB08, years(1), Thirst.GUESSED);
    assertThat(runs.count()).isEqualTo(1);
    assertThat(runs.plan()).isSameAs(SB08);
    assertThat(runs.thirst()).isSameAs(Thirst.GUESSED);
    for (Quantity steady :
        List.of(
            byFactor(1, 1, 1),
            byFactor(1, 1, 2),
            byFactor(1, 2, 2),
            byFactor(2, 1, 1),
            byFactor(2, 2, 1),
            byFactor(3, 2, 1))) {
      assertThat(runs.interval(steady).kind()).isEqualTo(Interval.Kind.RANGE);
    }
    for (Quantity turning : List.of(byFactor(1, 2, 1), byFactor(2, 1, 2))) {
      assertThat(runs.interval(turning).kind()).isEqualTo(Interval.Kind.RANGE_WITH_RUNS_BETWEEN);
    }
  }

  /** Seven runs on either side of the middle, evenly apart: a peak at any of them is seen. */
  @Test
  void theRunsBetweenLieEvenly() {
    YearRuns runs = YearRuns.of(SB08, years(1), new Thirst(0.6, 1, 1.8));
    double once = thirst(Season.totals(SB08, DAYS, 1));
    for (int k = 1; k <= 7; k++) {
      for (double factor : new double[] {0.6 + 0.05 * k, 1 + 0.1 * k}) {
        Quantity peak =
            t -> {
              double at = thirst(t) / once;
              return Math.abs(at - factor) < 1e-9 ? 9 : Math.abs(at - 1) < 1e-9 ? 1 : 0;
            };
        assertThat(runs.interval(peak).low()).isZero();
        assertThat(runs.interval(peak).high()).as("a run at " + factor).isEqualTo(9);
      }
    }
  }
}
