package leat.energy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;

/**
 * The stretches of a period in which neither the zone's offset nor the local date nor any window
 * changes. It cuts at the zone's transitions first; between two of them the offset is constant, so
 * local borders are plain sums. (Borders made from local times lose half an hour where a border
 * falls into a gap: they are moved later by the whole gap.)
 */
final class Stretches {
  private static final int DAY_S = 86_400;

  private final ZoneRules rules;
  private final int[] borders;
  private final long periodStart;
  private final long periodEnd;
  private long end;
  private long offsetUntil;
  private int offset;
  private long day = Long.MIN_VALUE;
  private int month;
  private int weekday;
  private int secondOfDay;
  private long start;

  /**
   * @param borders seconds of the day at which something may change, rising
   */
  Stretches(Dates dates, int[] borders) {
    this.rules = dates.zone().getRules();
    this.borders = borders;
    this.periodStart = dates.startEpochS();
    this.periodEnd = dates.endEpochS();
    this.end = periodStart;
    this.offsetUntil = periodStart;
  }

  /** Moves to the next stretch; false when the period is over. */
  boolean next() {
    start = end;
    if (start >= periodEnd) {
      return false;
    }
    if (start >= offsetUntil) {
      enterOffset();
    }
    long local = start + offset;
    enterDay(Math.floorDiv(local, DAY_S));
    secondOfDay = (int) Math.floorMod(local, (long) DAY_S);
    end = Math.min(offsetUntil, start + borderAfter(secondOfDay) - secondOfDay);
    return true;
  }

  private void enterOffset() {
    Instant instant = Instant.ofEpochSecond(start);
    offset = rules.getOffset(instant).getTotalSeconds();
    ZoneOffsetTransition next = rules.nextTransition(instant);
    offsetUntil = next == null ? periodEnd : Math.min(periodEnd, next.toEpochSecond());
  }

  private void enterDay(long epochDay) {
    if (epochDay != day) {
      day = epochDay;
      LocalDate date = LocalDate.ofEpochDay(epochDay);
      month = date.getMonthValue();
      weekday = date.getDayOfWeek().getValue();
    }
  }

  private int borderAfter(int second) {
    for (int i = 0; i < borders.length; i++) {
      if (borders[i] > second) {
        return borders[i];
      }
    }
    return DAY_S;
  }

  /** Length of this stretch, s. */
  long seconds() {
    return end - start;
  }

  /** Second of the local day at which this stretch begins. */
  int secondOfDay() {
    return secondOfDay;
  }

  /** The entry in force during this stretch. */
  int inForce(Windows windows) {
    return windows.inForce(secondOfDay, month, weekday);
  }
}
