/**
 * Commands of the group "sense": the level sender. Sheets as their trade names them. Start with
 * {@link leat.command.sense.LevelCommand}.
 *
 * <p>Neighbours: answer, check, cli, controller, html, numeric, paper, plan, quantity, sweep,
 * system, the trade, weather.
 */
package leat.command.sense;
