package leat.system;

import java.time.LocalDate;
import java.util.List;
import leat.climate.CropWarmth;
import leat.climate.DegreeDays;
import leat.climate.SeasonWeather;
import leat.climate.Weather;
import leat.plan.Plan;
import leat.plan.Section;

/**
 * Days that the first batch of a crop takes by warmth, over the years of a weather file.
 *
 * @param transplant the day it is planted
 * @param least fewest days of the years; -1 when it is never reached
 * @param most most days of the years in which it is reached
 * @param years how many years of the file hold the days after planting
 */
public record WarmthOf(LocalDate transplant, int least, int most, int years) {
  /** Longest time that is looked at, d. */
  private static final int MOST_DAYS = 300;

  /** The days of a crop; null when the plan names no warmth or nothing is planted. */
  public static WarmthOf of(Plan plan, Sown crop, Weather weather) {
    Section entry = plan.root().sections("crops").get(crop.index());
    Double target = entry.maybe("warmth");
    if (target == null || crop.batches().batches().isEmpty()) {
      return null;
    }
    CropWarmth known = CropWarmth.find(crop.name());
    Double base = entry.maybe("base");
    Double upper = entry.maybe("upper");
    double from = base != null || known == null ? entry.need("base") : known.baseCelsius();
    double to = upper != null ? upper : known == null ? DegreeDays.NO_UPPER : known.upperCelsius();
    LocalDate transplant = crop.batches().batches().get(0).transplant();
    int least = -1;
    int most = -1;
    List<SeasonWeather> years = weather.season(transplant, MOST_DAYS).years();
    int shorter = crop.batches().sowing().growingDays();
    List<SeasonWeather> own = years.isEmpty() ? weather.season(transplant, shorter).years() : years;
    for (int i = 0; i < own.size(); i++) {
      SeasonWeather year = own.get(i);
      int days =
          DegreeDays.CLIPPED.daysTo(target, year.tminCelsius(), year.tmaxCelsius(), 0, from, to);
      least = days >= 0 && (least < 0 || days < least) ? days : least;
      most = Math.max(most, days);
    }
    return new WarmthOf(transplant, least, most, own.size());
  }
}
