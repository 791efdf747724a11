/**
 * The season day by day, and sowing: the tank as a state machine, a season's run, its interval,
 * what would help, and batches of seed.
 *
 * <p>{@link leat.season.Season} runs a tank day by day ({@code run} keeps the days, {@code totals}
 * only the sums, for sweeps: the same machine); {@link leat.season.YearRuns} runs years and thirst
 * factors and gives intervals; {@link leat.season.Cure}, {@link leat.season.Help} and {@link
 * leat.season.AwayOutcome} solve for what would mend it. {@link leat.season.Sowing} lays out
 * batches; {@link leat.season.PotUse} looks at the pots of a whole tower. Calendar files:
 * leat.season.ical.
 *
 * <p>Units here: litres, millilitres of concentrate, mm of rain, EC in mS/cm, salt as EC times
 * litres (mS/cm L). Days are counted from 0, the season's first; the first fill is the evening of
 * day -1. Dates only at the edge. Thirst and rain come in as arrays: where they come from (weather,
 * crops) is not known here. Sheets: season-balance*.csv, season-interval.csv, season-quantile.csv,
 * season-sow*.csv. Depends on leat.numeric and the JDK only. Start with {@link
 * leat.season.TankPlan}.
 *
 * <p>Neighbours: numeric, the trade.
 */
package leat.season;
