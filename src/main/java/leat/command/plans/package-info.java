/**
 * Commands of the group "plans": plans as a whole. Sheets as their trade names them. Start with
 * {@link leat.command.plans.PlanShowCommand}.
 *
 * <p>Neighbours: answer, check, cli, numeric, plan, quantity, sweep, system, the trade.
 */
package leat.command.plans;
