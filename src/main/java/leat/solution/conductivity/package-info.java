/**
 * What a conductivity reading means: temperature, ppm scales, standards, a meter's check, and EC
 * from ions. Sheet solution-ec-salts.md, check values solution-ec-*.csv. Start with {@link
 * leat.solution.conductivity.EcReading}.
 *
 * <p>Neighbours: numeric.
 */
package leat.solution.conductivity;
