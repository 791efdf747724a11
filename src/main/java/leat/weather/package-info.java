/**
 * The daily weather file of a plan, read into the rows of leat.climate: CSV of any separator with
 * the columns of {@code site.weather_columns}, all its mistakes told at once.
 *
 * <p>Sheet season.md section 1, "Weather file". Depends on leat.plan, leat.climate, leat.quantity
 * and Commons CSV; off the start path of every command but those of a season. Start with {@link
 * leat.weather.WeatherFile}.
 */
package leat.weather;
