/**
 * The tank: a dose, the daily top-up with its band, what drains, cleaning. Sheet solution-tank.md,
 * check values solution-topup.csv, solution-dose.csv, solution-clean.csv. Start with {@link
 * leat.solution.tank.Topup}.
 *
 * <p>Neighbours: numeric.
 */
package leat.solution.tank;
