/**
 * Grams of salts and the elements they bring, both ways. Sheet solution-ec-salts.md, check values
 * solution-recipe*.csv. Start with {@link leat.solution.recipes.Recipe}.
 *
 * <p>Neighbours: numeric.
 */
package leat.solution.recipes;
