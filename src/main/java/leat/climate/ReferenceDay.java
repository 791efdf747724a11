package leat.climate;

import java.time.LocalDate;
import leat.numeric.Impossible;

/**
 * Reference evapotranspiration of a day and what goes with it, by the best method its data allow:
 * ET0 of the file; Penman-Monteith when sun, humidity and wind are known; else Hargreaves-Samani.
 * Held at 0 or above.
 *
 * <p>Source: FAO-56 chapters 3 and 4; order of methods sheet season.md section 1; check values
 * season-fao56.csv.
 *
 * @param date the day, which gives the day of the year
 * @param et0Mm reference evapotranspiration, mm a day
 * @param method how it was found
 * @param raMjM2 radiation above the air, MJ/m2 a day
 * @param rsMjM2 radiation on the ground, MJ/m2 a day; NaN when nothing is known
 * @param radiationBy what that rests on
 * @param daylightHours day length of FAO-56, h
 * @param vapourDeficitKPa es - ea, kPa; NaN without temperatures
 * @param dewPointCelsius dew point, C; NaN without temperatures
 * @param humidityBy what ea rests on
 */
public record ReferenceDay(
    LocalDate date,
    double et0Mm,
    Method method,
    double raMjM2,
    double rsMjM2,
    RadiationBy radiationBy,
    double daylightHours,
    double vapourDeficitKPa,
    double dewPointCelsius,
    HumidityBy humidityBy) {
  /** Heat into the soil over a day or ten, MJ/m2 a day (FAO-56 equation 42). */
  static final double SOIL_HEAT_OF_A_DAY = 0;

  /**
   * The day by its best method.
   *
   * @throws Impossible naming the date when a value is impossible or there is nothing to go by
   */
  public static ReferenceDay of(WeatherDay day, Site site) {
    WeatherCheck.refuse(day);
    Method method = methodOf(day);
    if (method == Method.DRINKS) {
      throw new Impossible("tmin", "both temperatures of the day are needed");
    }
    int dayOfYear = day.date().getDayOfYear();
    double ra = ExtraterrestrialRadiation.mjM2(site.latitudeDegrees(), dayOfYear);
    double ea = ActualVapour.bestKPa(day);
    return new ReferenceDay(
        day.date(),
        mmDay(day, site, method),
        method,
        ra,
        radiationMjM2(day, site),
        radiationBy(day),
        DayLength.hours(site.latitudeDegrees(), dayOfYear),
        SaturationVapour.meanKPa(day.tminCelsius(), day.tmaxCelsius()) - ea,
        ea > 0 ? DewPoint.celsius(ea) : Double.NaN,
        ActualVapour.by(day));
  }

  /** The best method for ET0 that the day's data allow; DRINKS when they allow none. */
  public static Method methodOf(WeatherDay day) {
    if (!Double.isNaN(day.et0Mm())) {
      return Method.ET0_FILE;
    }
    if (day.suitsPenmanMonteith()) {
      return Method.PENMAN_MONTEITH;
    }
    return day.hasTemperatures() ? Method.HARGREAVES_SAMANI : Method.DRINKS;
  }

  /** What the day's radiation rests on. */
  public static RadiationBy radiationBy(WeatherDay day) {
    if (!Double.isNaN(day.radiationMjM2())) {
      return RadiationBy.MEASURED;
    }
    if (!Double.isNaN(day.sunHours())) {
      return RadiationBy.SUN_HOURS;
    }
    return day.hasTemperatures() ? RadiationBy.TEMPERATURE : RadiationBy.NONE;
  }

  /** Radiation on the ground by the day's best data, MJ/m2; NaN when nothing is known. */
  public static double radiationMjM2(WeatherDay day, Site site) {
    RadiationBy by = radiationBy(day);
    if (by == RadiationBy.MEASURED) {
      return day.radiationMjM2();
    }
    int dayOfYear = day.date().getDayOfYear();
    double ra = ExtraterrestrialRadiation.mjM2(site.latitudeDegrees(), dayOfYear);
    if (by == RadiationBy.SUN_HOURS) {
      return SunHoursRadiation.mjM2(
          day.sunHours(), DayLength.hours(site.latitudeDegrees(), dayOfYear), ra);
    }
    return by == RadiationBy.NONE
        ? Double.NaN
        : TemperatureRadiation.mjM2(
            site.radiationFactor(),
            day.tminCelsius(),
            day.tmaxCelsius(),
            ra,
            ClearSkyRadiation.mjM2(site.altitudeM(), ra));
  }

  /** ET0 of a day by a method that its data allow, mm, held at 0. */
  static double mmDay(WeatherDay day, Site site, Method method) {
    if (method == Method.ET0_FILE) {
      return day.et0Mm();
    }
    double ra = ExtraterrestrialRadiation.mjM2(site.latitudeDegrees(), day.date().getDayOfYear());
    if (method == Method.HARGREAVES_SAMANI) {
      return HargreavesSamani.mmDay(day.tminCelsius(), day.tmaxCelsius(), ra);
    }
    return Math.max(0, penmanMonteith(day, site, ra));
  }

  private static double penmanMonteith(WeatherDay day, Site site, double raMjM2) {
    double tmin = day.tminCelsius();
    double tmax = day.tmaxCelsius();
    double ea = ActualVapour.bestKPa(day);
    double net =
        NetRadiation.mjM2(
            tmin,
            tmax,
            ea,
            radiationMjM2(day, site),
            ClearSkyRadiation.mjM2(site.altitudeM(), raMjM2));
    return PenmanMonteith.mmDay(
        day.meanCelsius(),
        net,
        SOIL_HEAT_OF_A_DAY,
        WindAtTwoMetres.ms(day.windMs(), site.windHeightM()),
        SaturationVapour.meanKPa(tmin, tmax),
        ea,
        PsychrometricConstant.kPaPerC(AirPressure.kPa(site.altitudeM())));
  }
}
