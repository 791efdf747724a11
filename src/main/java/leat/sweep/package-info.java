/**
 * Many designs from one plan: keys varied ({@link leat.sweep.Axis}), designs in order ({@link
 * leat.sweep.Grid}), judged and measured one by one ({@link leat.sweep.Judge}), ranked ({@link
 * leat.sweep.Front}); which guess matters most ({@link leat.sweep.Nudge}) and how sure a pass is
 * ({@link leat.sweep.Doubt}).
 *
 * <p>Off the start path: loaded for {@code leat sweep} only. Start with {@link leat.sweep.Judge}.
 *
 * <p>Neighbours: answer, check, numeric, plan, quantity, system, the trade.
 */
package leat.sweep;
