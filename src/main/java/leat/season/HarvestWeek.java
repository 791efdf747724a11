package leat.season;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;

/**
 * Plants that are cut in a week.
 *
 * @param monday the week's Monday
 * @param plants how many
 */
public record HarvestWeek(LocalDate monday, int plants) {
  /** Every week from the first harvest's to the last's, those without one too. */
  public static List<HarvestWeek> of(Batches crop) {
    List<HarvestWeek> weeks = new ArrayList<>();
    if (crop.batches().isEmpty()) {
      return weeks;
    }
    LocalDate monday = monday(crop.firstHarvest());
    int next = 0;
    while (next < crop.batches().size()) {
      int plants = 0;
      LocalDate after = monday.plusDays(7);
      while (next < crop.batches().size() && crop.batches().get(next).harvest().isBefore(after)) {
        plants += crop.batches().get(next).plants();
        next++;
      }
      weeks.add(new HarvestWeek(monday, plants));
      monday = after;
    }
    return weeks;
  }

  private static LocalDate monday(LocalDate date) {
    return date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }
}
