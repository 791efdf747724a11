/**
 * Weather, water and light: what the air asks of the plants, what rain brings, what warmth, frost
 * and daylight allow.
 *
 * <p>Follows sheets season.md (sections 1 to 3 and 6 to 9) and season-light.md and their check
 * values season-*.csv. Depends on {@link leat.numeric} and {@code java.time} values only; no file
 * and no clock is read: rows of weather come in as {@link leat.climate.WeatherDay}s.
 *
 * <p>Units are those of FAO Irrigation and Drainage Paper 56, said in every {@code @param}: water
 * in mm a day (which is L per m2 and day), radiation in MJ per m2 and day, vapour pressure in kPa,
 * sun in hours, light in mol per m2 and day, latitude in degrees, north positive. What leaves the
 * package for the tank is in litres a day. Not known is NaN, never 0.
 *
 * <p>Start with {@link leat.climate.ReferenceDay} (one day), then {@link leat.climate.Weather} (a
 * file), {@link leat.climate.SeasonEt0} (a season's ET0, computed once and used again by every run
 * of a sweep) and {@link leat.climate.PlantThirst} (litres); for light with {@link
 * leat.climate.MonthLight}.
 *
 * <p>Neighbours: numeric.
 */
package leat.climate;
