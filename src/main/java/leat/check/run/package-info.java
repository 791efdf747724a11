/**
 * Rules of running: timing, relay, money, battery and cable. Findings of a {@code TimingRule} are
 * of one entry of {@code timing}.
 *
 * <p>Depends on {@code leat.check}, {@code leat.system}, {@code leat.energy}. Start reading at
 * {@link leat.check.run.DutyRules}, the list, then {@code RestRule}.
 *
 * <p>Neighbours: answer, numeric, plan, quantity, system, the trade, weather.
 */
package leat.check.run;
