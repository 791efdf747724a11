package leat.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Fills gaps of up to three days: straight lines between the neighbours, no rain. What a filled day
 * knows itself it keeps, but for one temperature without the other. Longer gaps stay open.
 *
 * <p>Source: sheet season.md section 1, "Weather file" (our own choice).
 */
final class GapFill {
  /** Longest gap that is filled, days. */
  static final int MOST_DAYS = 3;

  final List<WeatherDay> days = new ArrayList<>();
  final List<WeatherGap> filled = new ArrayList<>();

  /** Rows in order of date, each date once. */
  GapFill(List<WeatherDay> rows) {
    boolean litres = WeatherCheck.everyRowHasLitres(rows);
    WeatherDay last = null;
    int lastPlace = -1;
    for (int i = 0; i < rows.size(); i++) {
      WeatherDay day = rows.get(i);
      if (litres || day.hasTemperatures()) {
        if (last != null) {
          between(last, day, rows, lastPlace + 1);
        }
        days.add(day);
        last = day;
        lastPlace = i;
      }
    }
  }

  private void between(WeatherDay a, WeatherDay b, List<WeatherDay> rows, int place) {
    int span = (int) (b.date().toEpochDay() - a.date().toEpochDay());
    if (span < 2 || span - 1 > MOST_DAYS) {
      return;
    }
    int next = place;
    for (int k = 1; k < span; k++) {
      LocalDate date = a.date().plusDays(k);
      WeatherDay own = rows.get(next).date().isEqual(date) ? rows.get(next++) : null;
      days.add(line(date, a, b, (double) k / span, own));
    }
    filled.add(new WeatherGap(a.date().plusDays(1), b.date().minusDays(1)));
  }

  private static WeatherDay line(
      LocalDate date, WeatherDay a, WeatherDay b, double share, WeatherDay own) {
    WeatherDay o = own == null ? WeatherDay.of(date, Double.NaN, Double.NaN, Double.NaN) : own;
    return new WeatherDay(
        date,
        at(share, a.tminCelsius(), b.tminCelsius(), Double.NaN),
        at(share, a.tmaxCelsius(), b.tmaxCelsius(), Double.NaN),
        o.rainOrNoneMm(),
        at(share, a.dewPointCelsius(), b.dewPointCelsius(), o.dewPointCelsius()),
        at(share, a.rhMinPct(), b.rhMinPct(), o.rhMinPct()),
        at(share, a.rhMaxPct(), b.rhMaxPct(), o.rhMaxPct()),
        at(share, a.rhMeanPct(), b.rhMeanPct(), o.rhMeanPct()),
        at(share, a.sunHours(), b.sunHours(), o.sunHours()),
        at(share, a.radiationMjM2(), b.radiationMjM2(), o.radiationMjM2()),
        at(share, a.windMs(), b.windMs(), o.windMs()),
        at(share, a.et0Mm(), b.et0Mm(), o.et0Mm()),
        at(share, a.plantsL(), b.plantsL(), o.plantsL()),
        at(share, a.openL(), b.openL(), o.openL()));
  }

  private static double at(double share, double a, double b, double own) {
    return Double.isNaN(own) ? a + share * (b - a) : own;
  }
}
