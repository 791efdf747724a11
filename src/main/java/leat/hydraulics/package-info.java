/**
 * The water's way: water itself, friction and fittings, lines of pipe, pump curves, the point where
 * a pump meets one riser or several, valves that balance them, bores one can buy and the pump that
 * is needed, filling and draining back, the falling film, the cap, the strainer, and draining a
 * tank. Metres of water, m3/s, Pa s; heads count from the tank's water level.
 *
 * <p>Depends on {@link leat.numeric}. Start with {@link leat.hydraulics.OperatingPoint} and {@link
 * leat.hydraulics.Manifold}.
 *
 * <p>Neighbours: numeric.
 */
package leat.hydraulics;
