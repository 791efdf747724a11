/**
 * Commands of the group "feed": the solution. Sheets as their trade names them. Start with {@link
 * leat.command.feed.EcCommand}.
 *
 * <p>Neighbours: answer, check, cli, controller, html, numeric, paper, plan, quantity, sweep,
 * system, the trade, weather.
 */
package leat.command.feed;
