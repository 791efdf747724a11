package leat.climate;

import java.util.Arrays;
import leat.numeric.Impossible;

/**
 * ET0 of every day of a season by one method: the best that all its days allow, so that methods are
 * not mixed. Compute it once for a year of weather and a site, and use it again: nothing of the
 * tank or the plants is in it.
 *
 * <p>Source: FAO-56 chapters 3 and 4; sheet season.md section 1.
 */
public final class SeasonEt0 {
  private final double[] mm;
  private final Method method;
  private final int betterDays;

  private SeasonEt0(double[] mm, Method method, int betterDays) {
    this.mm = mm;
    this.method = method;
    this.betterDays = betterDays;
  }

  /**
   * ET0 of a season.
   *
   * @throws Impossible naming the date when the days allow no method
   */
  public static SeasonEt0 of(SeasonWeather season, Site site) {
    Method worst = Method.ET0_FILE;
    for (int i = 0; i < season.size(); i++) {
      Method own = ReferenceDay.methodOf(season.day(i));
      worst = own.compareTo(worst) > 0 ? own : worst;
    }
    if (worst == Method.DRINKS) {
      throw new Impossible("weather", "temperatures are missing in it");
    }
    worst = shared(season, worst);
    double[] mm = new double[season.size()];
    int better = 0;
    for (int i = 0; i < mm.length; i++) {
      mm[i] = ReferenceDay.mmDay(season.day(i), site, worst);
      better += ReferenceDay.methodOf(season.day(i)) == worst ? 0 : 1;
    }
    return new SeasonEt0(mm, worst, better);
  }

  /** A day with ET0 of its own need not know what a worse method asks for. */
  private static Method shared(SeasonWeather season, Method worst) {
    Method method = worst;
    for (int i = 0; i < season.size(); i++) {
      WeatherDay day = season.day(i);
      if (method == Method.PENMAN_MONTEITH && !day.suitsPenmanMonteith()) {
        method = Method.HARGREAVES_SAMANI;
      }
      if (method == Method.HARGREAVES_SAMANI && !day.hasTemperatures()) {
        throw new Impossible(
            "weather", day.date().toString().concat(": both temperatures of a day are needed"));
      }
    }
    return method;
  }

  /**
   * A season without weather: every day is the day of {@link DemandArea#FULL_DAY_MM}, on which a
   * full-grown plant drinks the plan's water.
   *
   * @throws Impossible if it has no day
   */
  public static SeasonEt0 withoutWeather(int days) {
    if (days < 1) {
      throw new Impossible("season", "it lasts a day or more");
    }
    double[] mm = new double[days];
    Arrays.fill(mm, DemandArea.FULL_DAY_MM);
    return new SeasonEt0(mm, Method.DRINKS, 0);
  }

  /** ET0 of each day, mm; the array itself, which the caller does not change. */
  public double[] mm() {
    return mm;
  }

  /** The one method of all days. */
  public Method method() {
    return method;
  }

  /** Days whose data would have allowed a better method. */
  public int betterDays() {
    return betterDays;
  }
}
