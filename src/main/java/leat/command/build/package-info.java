/**
 * Commands of the group "build": designing and building. Sheets as their trade names them. Start
 * with {@link leat.command.build.HeadCommand}.
 *
 * <p>Neighbours: answer, check, cli, controller, html, numeric, paper, plan, quantity, sweep,
 * system, the trade, weather.
 */
package leat.command.build;
