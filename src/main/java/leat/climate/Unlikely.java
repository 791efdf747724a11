package leat.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What in rows of weather is possible but hardly so, each kind told once with its first day and the
 * number of days.
 *
 * <p>Source: bounds of {@link WeatherCaution}, common practice.
 */
public final class Unlikely {
  private static final int KINDS = 9;

  private final LocalDate[] first = new LocalDate[KINDS];
  private final double[] value = new double[KINDS];
  private final int[] days = new int[KINDS];

  private Unlikely() {}

  /** The cautions of the rows, in the order of the kinds. */
  public static List<WeatherCaution> of(List<WeatherDay> rows) {
    Unlikely unlikely = new Unlikely();
    for (int i = 0; i < rows.size(); i++) {
      unlikely.take(rows.get(i));
      if (i > 0 && rows.get(i).date().isBefore(rows.get(i - 1).date())) {
        unlikely.see(WeatherCaution.Kind.OUT_OF_ORDER, rows.get(i), true, Double.NaN);
      }
    }
    return unlikely.list();
  }

  private void take(WeatherDay day) {
    double tmax = day.tmaxCelsius();
    double tmin = day.tminCelsius();
    see(WeatherCaution.Kind.HOT, day, tmax > WeatherCaution.HOT_CELSIUS, tmax);
    see(WeatherCaution.Kind.WARM_NIGHT, day, tmin > WeatherCaution.WARM_NIGHT_CELSIUS, tmin);
    see(WeatherCaution.Kind.WIDE_SPAN, day, tmax - tmin > WeatherCaution.WIDE_CELSIUS, tmax - tmin);
    see(WeatherCaution.Kind.RAIN, day, day.rainMm() > WeatherCaution.RAIN_MM, day.rainMm());
    see(WeatherCaution.Kind.WIND, day, day.windMs() > WeatherCaution.WIND_MS, day.windMs());
    see(WeatherCaution.Kind.ET0, day, day.et0Mm() > WeatherCaution.ET0_MM, day.et0Mm());
    see(
        WeatherCaution.Kind.RADIATION,
        day,
        day.radiationMjM2() > WeatherCaution.RADIATION_MJ_M2,
        day.radiationMjM2());
    see(
        WeatherCaution.Kind.DEW_OVER_TMAX,
        day,
        day.dewPointCelsius() > tmax + WeatherCaution.DEW_OVER_CELSIUS,
        day.dewPointCelsius());
  }

  private void see(WeatherCaution.Kind kind, WeatherDay day, boolean unlikely, double what) {
    int k = kind.ordinal();
    if (unlikely && days[k]++ == 0) {
      first[k] = day.date();
      value[k] = what;
    }
  }

  private List<WeatherCaution> list() {
    List<WeatherCaution> cautions = new ArrayList<>();
    WeatherCaution.Kind[] kinds = WeatherCaution.Kind.values();
    for (int k = 0; k < KINDS; k++) {
      if (days[k] > 0) {
        cautions.add(new WeatherCaution(kinds[k], first[k], value[k], days[k]));
      }
    }
    return cautions;
  }
}
