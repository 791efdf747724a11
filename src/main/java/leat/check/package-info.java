/**
 * The design rules: each a small class with its id, what it measures, need, limit, advice and
 * source; one list ({@link leat.check.Rules}). A rule gets its numbers from {@link
 * leat.check.Subject}, which solves the models of a plan once; its advice names the key to change
 * and a value that would pass, found by solving.
 *
 * <p>Depends on {@code leat.system}, {@code leat.plan}, the trade, and phrases of {@code
 * leat.answer}.
 *
 * <p>Neighbours: answer, numeric, plan, quantity, system, the trade.
 */
package leat.check;
