/**
 * The design rules. A {@link leat.check.Rule} measures a {@link leat.check.Subject}, which solves
 * the models of a plan once, and gives {@link leat.check.Finding}s of bare numbers; words, place
 * and {@link leat.check.Advice} are asked of it only for what is written. {@link
 * leat.check.Advisor} tries each {@link leat.check.Cure} on the plan, and tells those with which
 * the finding passes and nothing else newly fails. The rules stand in rooms {@code build}, {@code
 * sense}, {@code feed}, {@code run}, each with its list; {@link leat.check.Rules} joins the lists.
 *
 * <p>Depends on {@code leat.system}, {@code leat.plan}, the trade, and phrases of {@code
 * leat.answer}. Start reading at {@code Rule}, then {@code build.PumpMargin}.
 *
 * <p>Neighbours: answer, numeric, plan, quantity, system, the trade, weather.
 */
package leat.check;
