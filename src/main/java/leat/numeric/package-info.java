/**
 * Small numerical tools that the trade packages share: a bracketed root, a monotone cubic, the
 * range of a correlation as data, and {@link leat.numeric.Impossible}, the one exception by which a
 * formula refuses an input.
 *
 * <p>Depends on nothing but the JDK. Start with {@link leat.numeric.Roots}.
 *
 * <p>Neighbours: none.
 */
package leat.numeric;
