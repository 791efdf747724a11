/**
 * The commands, in rooms as help groups them, and their one list {@link leat.command.Commands}. A
 * command declares flags, calls the trade and says the answer; its prose stands in a text file
 * beside it. No formulas, no thresholds, no formatting. Start with {@link
 * leat.command.build.HeadCommand}.
 *
 * <p>Neighbours: answer, check, cli, controller, html, numeric, paper, plan, quantity, sweep,
 * system, the trade, weather.
 */
package leat.command;
