/**
 * What a tower takes: height, reach, pots and the room between them, filament, print time, energy,
 * money, mass and load on the deck. Metres, kg, s, J, radians; money is a plain number of the
 * plan's currency, prices by kg and by kWh.
 *
 * <p>A printed part is no food-safe part: layers hold residues and germs, pigments and a brass
 * nozzle may not be food grade (EU rule: Regulation 10/2011). Plastic lids creep: a tower's weight
 * or a line's pull on a lid without support sags it over weeks.
 *
 * <p>Depends on {@link leat.numeric}. Start with {@link leat.parts.Tower} and {@link
 * leat.parts.BuildList}.
 *
 * <p>Neighbours: numeric.
 */
package leat.parts;
