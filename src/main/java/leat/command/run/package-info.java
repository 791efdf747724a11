/**
 * Commands of the group "run": running the pump. Sheets as their trade names them. Start with
 * {@link leat.command.run.DutyCommand}.
 *
 * <p>Neighbours: answer, check, cli, controller, html, numeric, paper, plan, quantity, sweep,
 * system, the trade, weather.
 */
package leat.command.run;
