/**
 * The tank and its stepped float level sender: litres at a level and back, what the reeds and
 * resistors of a sender read, ohms and counts to a band of levels and litres, the design of a
 * ladder and of a divider, and the fit of a sender from poured litres.
 *
 * <p>Levels in m above the lowest point of the tank's inside, areas in m2, volumes in m3,
 * resistances in ohm. Pure functions and small records; start with {@link leat.level.Tank} and
 * {@link leat.level.Sender}.
 *
 * <p>Neighbours: numeric.
 */
package leat.level;
