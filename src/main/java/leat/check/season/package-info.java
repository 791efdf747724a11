/**
 * Rules of the season: dry days, strength of the solution, rain that runs over, times away, warmth
 * and frost, each measured by the shown run of the plan's season.
 *
 * <p>Depends on {@code leat.check}, {@code leat.system}, {@code leat.season}. They are silent until
 * the plan names a season and the weather, or crops with dates. Start reading at {@link
 * leat.check.season.SeasonRule}.
 *
 * <p>Neighbours: answer, numeric, plan, quantity, system, the trade, weather.
 */
package leat.check.season;
