/**
 * Commands of the group "plans": plans as a whole. Sheets as their trade names them. Start with
 * {@link leat.command.plans.PlanShowCommand}.
 *
 * <p>Neighbours: answer, check, cli, controller, html, numeric, paper, plan, quantity, sweep,
 * system, the trade, weather.
 */
package leat.command.plans;
