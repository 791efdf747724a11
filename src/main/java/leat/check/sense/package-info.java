/**
 * Rules of sensing: whether the sender tells its steps apart, sees the marks, and was fitted. They
 * are silent for a plan without a sender.
 *
 * <p>Depends on {@code leat.check}, {@code leat.system}, {@code leat.level}. Start reading at
 * {@link leat.check.sense.LevelRules}, the list, then {@code LowAboveStep}.
 *
 * <p>Neighbours: answer, numeric, plan, quantity, system, the trade, weather.
 */
package leat.check.sense;
