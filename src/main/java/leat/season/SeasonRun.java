package leat.season;

import java.util.List;

/**
 * A season day by day.
 *
 * @param days its rows, in order
 * @param totals its sums: the rows add up to them
 */
public record SeasonRun(List<DayRow> days, Totals totals) {}
