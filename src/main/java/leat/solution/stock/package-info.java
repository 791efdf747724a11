/**
 * Stock bottles salt by salt: sorting into two, solubility, precipitation. Sheet solution-tank.md,
 * check values solution-stock.csv; ions together are judged in leat.solution.pitzer. Start with
 * {@link leat.solution.stock.Stock}.
 *
 * <p>Neighbours: numeric.
 */
package leat.solution.stock;
