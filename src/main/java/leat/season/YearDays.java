package leat.season;

/**
 * The season under one year's weather.
 *
 * @param year the year in the weather file
 * @param days what its days bring
 */
public record YearDays(int year, SeasonDays days) {}
