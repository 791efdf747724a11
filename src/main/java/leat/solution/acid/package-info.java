/**
 * Acid against alkalinity: carbonates, how much of which acid, and how it is poured. Sheet
 * solution-tank.md, check values solution-acid.csv. Start with {@link leat.solution.acid.AcidNeed}.
 *
 * <p>Neighbours: numeric.
 */
package leat.solution.acid;
