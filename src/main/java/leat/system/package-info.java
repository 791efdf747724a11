/**
 * The tower system that a plan describes: the trade's records (tank, water's way, sender, timing,
 * feed) built from the plan's values, with the flags already laid over them. Commands, rules and
 * sweeps share these, so that they compute the same thing. They hold values: none keeps a plan and
 * reads it while it calculates.
 *
 * <p>Depends on {@code leat.plan} and the trade. Start with {@link leat.system.TankOf}.
 *
 * <p>Neighbours: numeric, plan, quantity, the trade.
 */
package leat.system;
