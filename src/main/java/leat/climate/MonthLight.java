package leat.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;

/**
 * Light of a month: means over its days, since its middle day alone is up to 6 % off. Days without
 * sun count 0.
 *
 * <p>Source: FAO-56 equations 21, 34, 35, 37, 50; sheet season-light.md section 1, check values
 * season-light.csv.
 *
 * @param month 1 for January
 * @param days days of it that were looked at
 * @param raMjM2 radiation above the air, MJ/m2 a day
 * @param daylightHours day length of FAO-56, h
 * @param clearMjM2 radiation of a clear sky, MJ/m2 a day
 * @param rsMjM2 radiation on the ground, MJ/m2 a day; NaN when nothing is known
 * @param cappedDays days on which the clear sky held radiation from temperature down
 */
public record MonthLight(
    int month,
    int days,
    double raMjM2,
    double daylightHours,
    double clearMjM2,
    double rsMjM2,
    int cappedDays) {
  private static final int MONTHS = 12;

  /** Light on the brightest possible days, mol/m2 a day. */
  public double clearMolM2() {
    return DailyLight.molM2(clearMjM2);
  }

  /** Light in the open, mol/m2 a day; NaN when nothing is known. */
  public double molM2() {
    return Double.isNaN(rsMjM2) ? Double.NaN : DailyLight.molM2(rsMjM2);
  }

  /**
   * A month of one lowest and one highest temperature, in a year of 365 days.
   *
   * @param site the place
   * @param month 1 for January
   * @param tminCelsius mean of the lowest temperatures, C; NaN when not known
   * @param tmaxCelsius mean of the highest temperatures, C; NaN when not known
   * @throws Impossible if there is no such month or the temperatures are turned
   */
  public static MonthLight of(Site site, int month, double tminCelsius, double tmaxCelsius) {
    if (month < 1 || month > MONTHS) {
      throw new Impossible("month", "a year has the months 1 to 12");
    }
    LocalDate first = LocalDate.of(2027, month, 1);
    Sums sums = new Sums();
    for (int i = 0; i < first.lengthOfMonth(); i++) {
      sums.add(WeatherDay.of(first.plusDays(i), tminCelsius, tmaxCelsius, 0), site);
    }
    return sums.mean(month);
  }

  /** The months of a season's weather in the order they come, each by its own days' best data. */
  public static List<MonthLight> of(SeasonWeather season, Site site) {
    List<MonthLight> months = new ArrayList<>();
    Sums sums = new Sums();
    for (int i = 0; i < season.size(); i++) {
      LocalDate date = season.day(i).date();
      sums.add(season.day(i), site);
      if (i + 1 == season.size()
          || season.day(i + 1).date().getMonthValue() != date.getMonthValue()) {
        months.add(sums.mean(date.getMonthValue()));
        sums = new Sums();
      }
    }
    return months;
  }

  /** The months of several years, each the mean of its namesakes by their place. */
  public static List<MonthLight> mean(List<List<MonthLight>> years) {
    List<MonthLight> means = new ArrayList<>();
    for (int m = 0; m < years.get(0).size(); m++) {
      double[] sums = new double[4];
      int days = 0;
      int capped = 0;
      for (int y = 0; y < years.size(); y++) {
        MonthLight one = years.get(y).get(m);
        days += one.days;
        capped += one.cappedDays;
        sums[0] += one.days * one.raMjM2;
        sums[1] += one.days * one.daylightHours;
        sums[2] += one.days * one.clearMjM2;
        sums[3] += one.days * one.rsMjM2;
      }
      means.add(
          new MonthLight(
              years.get(0).get(m).month,
              days,
              sums[0] / days,
              sums[1] / days,
              sums[2] / days,
              sums[3] / days,
              capped));
    }
    return means;
  }

  private static final class Sums {
    private int days;
    private double ra;
    private double hours;
    private double clear;
    private double rs;
    private int capped;

    void add(WeatherDay day, Site site) {
      int dayOfYear = day.date().getDayOfYear();
      double above = ExtraterrestrialRadiation.mjM2(site.latitudeDegrees(), dayOfYear);
      double brightest = ClearSkyRadiation.mjM2(site.altitudeM(), above);
      double ground = ReferenceDay.radiationMjM2(day, site);
      days++;
      ra += above;
      hours += DayLength.hours(site.latitudeDegrees(), dayOfYear);
      clear += brightest;
      rs += ground;
      boolean byTemperature = ReferenceDay.radiationBy(day) == RadiationBy.TEMPERATURE;
      capped += byTemperature && above > 0 && ground == brightest ? 1 : 0;
    }

    MonthLight mean(int month) {
      return new MonthLight(month, days, ra / days, hours / days, clear / days, rs / days, capped);
    }
  }
}
