package leat.controller;

import leat.energy.DryLimit;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.energy.Window;
import leat.numeric.Impossible;

/**
 * Runs and rests by the local clock, and the longest rests.
 *
 * <p>Source: {@link leat.energy.Windows}: the last entry that holds is in force.
 */
public final class TimingTable {
  private static final long MOST_MS = 0xFFFFFFFFL;

  private final Timetable timetable;
  private final DryLimit dry;

  /**
   * @param timetable the timings, or null for none
   * @param dry the longest rests
   * @throws Impossible if a run or a rest is longer than 32 bits hold
   */
  public TimingTable(Timetable timetable, DryLimit dry) {
    this.timetable = timetable;
    this.dry = dry;
    for (int i = 0; timetable != null && i < timetable.size(); i++) {
      fits("run", timetable.timing(i).runS());
      fits("rest", timetable.timing(i).restS());
    }
  }

  private static void fits(String what, double seconds) {
    if (1000 * seconds > MOST_MS) {
      throw new Impossible(what, "the table of a controller holds at most 49 days");
    }
  }

  void write(StringBuilder out) {
    if (timetable != null) {
      timings(out);
    }
    Window night = DryLimit.usualNight();
    out.append("\n/* Longest rests of the pump, s. */\n");
    CText.define(out, "TOWER_DRY_DAY_S", seconds(dry.dayS()), "by day");
    CText.define(out, "TOWER_DRY_NIGHT_S", seconds(dry.nightS()), "by night");
    CText.define(out, "TOWER_DRY_ALARM_S", seconds(dry.alarmS()), "raise an alarm after it");
    CText.define(out, "TOWER_NIGHT_FROM_S", CText.u32(night.fromS()), "s since 00:00");
    CText.define(out, "TOWER_NIGHT_TO_S", CText.u32(night.toS()), "not included");
    out.append('\n').append(LONGEST_REST);
  }

  private void timings(StringBuilder out) {
    out.append("\n/* Runs and rests; of those that hold the last one is in force. */\n");
    CText.define(out, "TOWER_HAS_TIMING", 1);
    CText.define(out, "TOWER_TIMINGS", timetable.size());
    out.append('\n').append(STRUCT).append("static const tower_timing tower_timings[] = {\n");
    for (int i = 0; i < timetable.size(); i++) {
      Timing timing = timetable.timing(i);
      Window window = timetable.windows().window(i);
      out.append("  {").append(CText.u32(Math.round(1000 * timing.runS()))).append(", ");
      out.append(CText.u32(Math.round(1000 * timing.restS()))).append(", ");
      out.append(CText.u32(window.fromS())).append(", ");
      out.append(CText.u32(window.toS())).append(", 0x");
      out.append(Integer.toHexString(window.months())).append(", 0x");
      out.append(Integer.toHexString(window.weekdays())).append("},\n");
    }
    out.append("};\n\n").append(IN_FORCE);
  }

  private static String seconds(double s) {
    return CText.u32((long) Math.floor(s));
  }

  private static final String STRUCT =
      """
      typedef struct {
        uint32_t run_ms;
        uint32_t rest_ms;
        uint32_t from_s;  /* s since 00:00 on the clock's face */
        uint32_t to_s;    /* not included; equal to from_s: the whole day */
        uint16_t months;  /* bit m for month m, 1 to 12 */
        uint8_t weekdays; /* bit d for weekday d, 1 Monday to 7 Sunday */
      } tower_timing;

      """;

  private static final String IN_FORCE =
      """
      static inline int tower_holds(
          const tower_timing *t, uint32_t second, unsigned month, unsigned weekday) {
        if (!(t->months >> month & 1) || !(t->weekdays >> weekday & 1)) {
          return 0;
        }
        if (t->from_s == t->to_s) {
          return 1;
        }
        if (t->from_s < t->to_s) {
          return second >= t->from_s && second < t->to_s;
        }
        return second >= t->from_s || second < t->to_s;
      }

      /* The timing in force; second of the local clock (0 to 86399), month 1 to 12, weekday 1 Monday. */
      static inline const tower_timing *tower_timing_at(
          uint32_t second, unsigned month, unsigned weekday) {
        int i = TOWER_TIMINGS - 1;
        while (i > 0 && !tower_holds(&tower_timings[i], second, month, weekday)) {
          i--;
        }
        return &tower_timings[i];
      }
      """;

  private static final String LONGEST_REST =
      """
      static inline uint32_t tower_longest_rest_s(uint32_t second) {
        int night = second >= TOWER_NIGHT_FROM_S || second < TOWER_NIGHT_TO_S;
        return night ? TOWER_DRY_NIGHT_S : TOWER_DRY_DAY_S;
      }
      """;
}
