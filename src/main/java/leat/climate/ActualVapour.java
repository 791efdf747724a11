package leat.climate;

/**
 * Vapour pressure that the air really has, by the best data of the day: dew point; highest and
 * lowest relative humidity; highest; mean; with none of these the dew point is taken as the lowest
 * temperature.
 *
 * <p>Source: FAO-56 equations 14, 17, 18, 19, 48; sheet season.md section 1, check values
 * season-fao56.csv.
 */
public final class ActualVapour {
  private ActualVapour() {}

  /**
   * From the dew point.
   *
   * @param dewPointCelsius dew point, C
   * @return kPa
   */
  public static double fromDewPointKPa(double dewPointCelsius) {
    return SaturationVapour.kPa(dewPointCelsius);
  }

  /**
   * From the highest and the lowest relative humidity.
   *
   * @param tminCelsius lowest temperature, C
   * @param tmaxCelsius highest temperature, C
   * @param rhMinPct lowest relative humidity, %
   * @param rhMaxPct highest relative humidity, %
   * @return kPa
   */
  public static double fromBothKPa(
      double tminCelsius, double tmaxCelsius, double rhMinPct, double rhMaxPct) {
    return (SaturationVapour.kPa(tminCelsius) * Accepted.percent("humidity", rhMaxPct)
            + SaturationVapour.kPa(tmaxCelsius) * Accepted.percent("humidity", rhMinPct))
        / 200;
  }

  /**
   * From the highest relative humidity.
   *
   * @param tminCelsius lowest temperature, C
   * @param rhMaxPct highest relative humidity, %
   * @return kPa
   */
  public static double fromHighestKPa(double tminCelsius, double rhMaxPct) {
    return SaturationVapour.kPa(tminCelsius) * Accepted.percent("humidity", rhMaxPct) / 100;
  }

  /**
   * From the mean relative humidity.
   *
   * @param tminCelsius lowest temperature, C
   * @param tmaxCelsius highest temperature, C
   * @param rhMeanPct mean relative humidity, %
   * @return kPa
   */
  public static double fromMeanKPa(double tminCelsius, double tmaxCelsius, double rhMeanPct) {
    return SaturationVapour.meanKPa(tminCelsius, tmaxCelsius)
        * Accepted.percent("humidity", rhMeanPct)
        / 100;
  }

  /** What the day's vapour pressure rests on, best first. */
  public static HumidityBy by(WeatherDay day) {
    if (!Double.isNaN(day.dewPointCelsius())) {
      return HumidityBy.DEW_POINT;
    }
    if (!Double.isNaN(day.rhMaxPct())) {
      return Double.isNaN(day.rhMinPct()) ? HumidityBy.HIGHEST : HumidityBy.BOTH;
    }
    return Double.isNaN(day.rhMeanPct()) ? HumidityBy.TMIN : HumidityBy.MEAN;
  }

  /** The vapour pressure by the best data of the day, kPa. */
  public static double bestKPa(WeatherDay day) {
    double tmin = day.tminCelsius();
    double tmax = day.tmaxCelsius();
    return switch (by(day)) {
      case DEW_POINT -> fromDewPointKPa(day.dewPointCelsius());
      case BOTH -> fromBothKPa(tmin, tmax, day.rhMinPct(), day.rhMaxPct());
      case HIGHEST -> fromHighestKPa(tmin, day.rhMaxPct());
      case MEAN -> fromMeanKPa(tmin, tmax, day.rhMeanPct());
      case TMIN -> SaturationVapour.kPa(tmin);
    };
  }
}
