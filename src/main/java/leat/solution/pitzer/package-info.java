/**
 * What crystallises out of a stock bottle: its ions are judged together, not its salts one by one.
 *
 * <p>The way: grams to molality ({@link leat.solution.pitzer.BottleSalt}, {@link
 * leat.solution.pitzer.Contents}); activities by Pitzer's model in the form of Harvie, Moller and
 * Weare ({@link leat.solution.pitzer.Pitzer}, {@link leat.solution.pitzer.Coefficients}); the ion
 * product of every solid whose ions are there against that of its own saturated solution ({@link
 * leat.solution.pitzer.Solid}); index, amount that falls out, strength, verdict ({@link
 * leat.solution.pitzer.Brine}, {@link leat.solution.pitzer.FallOut}, {@link
 * leat.solution.pitzer.MixedBottle}).
 *
 * <p>Sheet and check values: solution-mixed.csv. Range: 0 to 30 C, ionic strength to 8 mol/kg.
 * Molality is in mol in a kilogram of water, volumes in litres, masses in grams. Depends on
 * leat.solution, leat.numeric and the JDK only; on the start path, hence no lambdas. Start with
 * {@link leat.solution.pitzer.MixedBottle}.
 *
 * <p>Neighbours: numeric.
 */
package leat.solution.pitzer;
