package leat.climate;

import java.time.LocalDate;

/**
 * One row of weather. What is not known is NaN. Nothing is refused here, so that all that is wrong
 * with a file can be told at once: see {@link WeatherCheck}.
 *
 * <p>Source: the plan's weather file, or a forecast.
 *
 * @param date the day
 * @param tminCelsius lowest temperature, C
 * @param tmaxCelsius highest temperature, C
 * @param rainMm rain, mm
 * @param dewPointCelsius dew point, C
 * @param rhMinPct lowest relative humidity, %
 * @param rhMaxPct highest relative humidity, %
 * @param rhMeanPct mean relative humidity, %
 * @param sunHours hours of sunshine, h
 * @param radiationMjM2 radiation on the ground, MJ/m2 a day
 * @param windMs wind at the site's wind height, m/s
 * @param et0Mm reference evapotranspiration, mm a day
 * @param plantsL litres the plants drank, L a day
 * @param openL litres from open water, L a day
 */
public record WeatherDay(
    LocalDate date,
    double tminCelsius,
    double tmaxCelsius,
    double rainMm,
    double dewPointCelsius,
    double rhMinPct,
    double rhMaxPct,
    double rhMeanPct,
    double sunHours,
    double radiationMjM2,
    double windMs,
    double et0Mm,
    double plantsL,
    double openL) {

  /**
   * A day of which only temperatures and rain are known.
   *
   * @param date the day
   * @param tminCelsius lowest temperature, C
   * @param tmaxCelsius highest temperature, C
   * @param rainMm rain, mm
   */
  public static WeatherDay of(
      LocalDate date, double tminCelsius, double tmaxCelsius, double rainMm) {
    double no = Double.NaN;
    return new WeatherDay(
        date, tminCelsius, tmaxCelsius, rainMm, no, no, no, no, no, no, no, no, no, no);
  }

  /** This day with humidity: dew point in C, the rest in %; NaN for what is not known. */
  public WeatherDay withHumidity(
      double dewPoint, double lowestPct, double highestPct, double meanPct) {
    return new WeatherDay(
        date,
        tminCelsius,
        tmaxCelsius,
        rainMm,
        dewPoint,
        lowestPct,
        highestPct,
        meanPct,
        sunHours,
        radiationMjM2,
        windMs,
        et0Mm,
        plantsL,
        openL);
  }

  /** This day with sun in h, radiation in MJ/m2 and wind in m/s; NaN for what is not known. */
  public WeatherDay withSky(double sun, double radiation, double wind) {
    return new WeatherDay(
        date,
        tminCelsius,
        tmaxCelsius,
        rainMm,
        dewPointCelsius,
        rhMinPct,
        rhMaxPct,
        rhMeanPct,
        sun,
        radiation,
        wind,
        et0Mm,
        plantsL,
        openL);
  }

  /** This day with given ET0 in mm and litres a day; NaN for what is not known. */
  public WeatherDay withGiven(double et0, double plants, double open) {
    return new WeatherDay(
        date,
        tminCelsius,
        tmaxCelsius,
        rainMm,
        dewPointCelsius,
        rhMinPct,
        rhMaxPct,
        rhMeanPct,
        sunHours,
        radiationMjM2,
        windMs,
        et0,
        plants,
        open);
  }

  /** The same weather on another date. */
  public WeatherDay on(LocalDate other) {
    return new WeatherDay(
        other,
        tminCelsius,
        tmaxCelsius,
        rainMm,
        dewPointCelsius,
        rhMinPct,
        rhMaxPct,
        rhMeanPct,
        sunHours,
        radiationMjM2,
        windMs,
        et0Mm,
        plantsL,
        openL);
  }

  /** Middle of the two temperatures, C; NaN when they are not known. */
  public double meanCelsius() {
    return (tmaxCelsius + tminCelsius) / 2;
  }

  /** Rain, mm; 0 when not known. */
  public double rainOrNoneMm() {
    return Double.isNaN(rainMm) ? 0 : rainMm;
  }

  boolean hasTemperatures() {
    return !Double.isNaN(tminCelsius) && !Double.isNaN(tmaxCelsius);
  }

  boolean hasHumidity() {
    return !Double.isNaN(dewPointCelsius) || !Double.isNaN(rhMaxPct) || !Double.isNaN(rhMeanPct);
  }

  boolean hasSun() {
    return !Double.isNaN(radiationMjM2) || !Double.isNaN(sunHours);
  }

  /** Whether Penman-Monteith may be used. */
  boolean suitsPenmanMonteith() {
    return hasTemperatures() && hasHumidity() && hasSun() && !Double.isNaN(windMs);
  }
}
