/**
 * The daily weather file of a plan, read into the rows of leat.climate: CSV of any separator with
 * the columns of {@code site.weather_columns}, all its mistakes told at once.
 *
 * <p>Sheet season.md section 1, "Weather file". Commons CSV reads it; off the start path of every
 * command but those of a season. Start with {@link leat.weather.WeatherFile}.
 *
 * <p>Neighbours: numeric, plan, quantity, system, the trade.
 */
package leat.weather;
