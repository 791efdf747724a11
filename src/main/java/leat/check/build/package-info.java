/**
 * Rules of building: pump, riser, cap, film, tank and strainer. Rules of geometry ({@link
 * leat.check.build.ShapeRule}) read a tower's measures alone and need no pump; rules of flow
 * ({@link leat.check.build.TowerRule}) judge each tower at the flow that really runs, with the
 * plan's valves set. {@link leat.check.build.TowerCures} are the changes that several rules
 * propose.
 *
 * <p>Depends on {@code leat.check}, {@code leat.system}, {@code leat.hydraulics}, {@code
 * leat.level}. Start reading at {@link leat.check.build.WaterRules}, the list, then {@code
 * PumpMargin}.
 *
 * <p>Neighbours: answer, numeric, plan, quantity, system, the trade, weather.
 */
package leat.check.build;
