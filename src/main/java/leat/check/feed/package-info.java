/**
 * Rules of feeding: crops and their bands, target, oxygen, meters ({@link
 * leat.check.feed.FeedRules}); water, acid and stock bottles ({@link
 * leat.check.feed.SolutionRules}).
 *
 * <p>Depends on {@code leat.check}, {@code leat.system}, {@code leat.solution}. Start reading at
 * the two lists, then {@code TargetAboveWater}.
 *
 * <p>Neighbours: answer, numeric, plan, quantity, system, the trade, weather.
 */
package leat.check.feed;
