package leat.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.climate.Quantile;

/**
 * A season under every year's weather at three thirst factors: rerun each, never scaled.
 *
 * <p>The shown run is the middle factor in the year of median water use (even count: the lower).
 * The ends of a quantity are the 10 and 90 % quantiles of all runs; under {@link
 * #YEARS_FOR_QUANTILES} years the least and the most. A quantity that does not rise or fall
 * steadily with thirst in every year gets runs between, and the least and the most of them all.
 *
 * <p>Source: common practice; reruns. Check values: season-interval.csv.
 */
public final class YearRuns {
  /** Fewer years than this give a range, no quantiles (common practice). */
  public static final int YEARS_FOR_QUANTILES = Quantile.FEWEST_YEARS;

  private static final double LOW = 0.1;
  private static final double HIGH = 0.9;

  /** Runs between two factors, for a quantity that does not follow thirst steadily. */
  private static final int BETWEEN = 7;

  private final TankPlan plan;
  private final List<YearDays> years;
  private final Thirst thirst;
  private final Totals[] low;
  private final Totals[] middle;
  private final Totals[] high;
  private final int shown;
  private List<Totals> between;

  private YearRuns(TankPlan plan, List<YearDays> years, Thirst thirst) {
    this.plan = plan;
    this.years = new ArrayList<>(years);
    this.thirst = thirst;
    low = at(thirst.low());
    middle = at(thirst.middle());
    high = at(thirst.high());
    shown = medianYear();
  }

  /**
   * Runs them all.
   *
   * @throws leat.numeric.Impossible if there is no year
   */
  public static YearRuns of(TankPlan plan, List<YearDays> years, Thirst thirst) {
    if (years.isEmpty()) {
      throw new leat.numeric.Impossible("weather", "no year covers the season");
    }
    return new YearRuns(plan, years, thirst);
  }

  private Totals[] at(double factor) {
    Totals[] all = new Totals[years.size()];
    for (int y = 0; y < all.length; y++) {
      all[y] = Season.totals(plan, years.get(y).days(), factor);
    }
    return all;
  }

  private int medianYear() {
    double[] use = new double[middle.length];
    for (int y = 0; y < use.length; y++) {
      use[y] = middle[y].flows().waterUseL();
    }
    double[] sorted = use.clone();
    Arrays.sort(sorted);
    double median = sorted[(sorted.length - 1) / 2];
    int y = 0;
    while (use[y] != median) {
      y++;
    }
    return y;
  }

  /** The shown year, as the weather file counts it. */
  public int year() {
    return years.get(shown).year();
  }

  /** How many years were run. */
  public int count() {
    return years.size();
  }

  /** The days of the shown year. */
  public SeasonDays days() {
    return years.get(shown).days();
  }

  /** The shown run, day by day. */
  public SeasonRun run() {
    return Season.run(plan, days(), thirst.middle());
  }

  /** The sums of the shown run. */
  public Totals totals() {
    return middle[shown];
  }

  public TankPlan plan() {
    return plan;
  }

  public Thirst thirst() {
    return thirst;
  }

  /** The ends of a quantity. */
  public Interval interval(Quantity quantity) {
    int n = years.size();
    double[] values = new double[3 * n];
    boolean steady = true;
    for (int y = 0; y < n; y++) {
      double a = quantity.of(low[y]);
      double b = quantity.of(middle[y]);
      double c = quantity.of(high[y]);
      steady &= a <= b && b <= c || a >= b && b >= c;
      values[3 * y] = a;
      values[3 * y + 1] = b;
      values[3 * y + 2] = c;
    }
    if (!steady) {
      return leastAndMost(values, quantity);
    }
    if (n < YEARS_FOR_QUANTILES) {
      return new Interval(Quantile.of(values, 0), Quantile.of(values, 1), Interval.Kind.RANGE);
    }
    return new Interval(
        Quantile.of(values, LOW), Quantile.of(values, HIGH), Interval.Kind.QUANTILES);
  }

  private Interval leastAndMost(double[] values, Quantity quantity) {
    double least = Quantile.of(values, 0);
    double most = Quantile.of(values, 1);
    for (Totals one : between()) {
      double value = quantity.of(one);
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    return new Interval(least, most, Interval.Kind.RANGE_WITH_RUNS_BETWEEN);
  }

  private List<Totals> between() {
    if (between == null) {
      between = new ArrayList<>();
      for (int i = 1; i <= BETWEEN; i++) {
        double share = i / (BETWEEN + 1.0);
        between.addAll(Arrays.asList(at(thirst.low() + share * (thirst.middle() - thirst.low()))));
        between.addAll(
            Arrays.asList(at(thirst.middle() + share * (thirst.high() - thirst.middle()))));
      }
    }
    return between;
  }
}
