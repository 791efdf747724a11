package leat.command.sense;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import leat.log.LogDay;
import leat.log.LogReport;
import leat.log.UseMean;
import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Taken;
import leat.quantity.Units;
import leat.season.Calibration;
import leat.system.DrinksOf;
import leat.system.SeasonOf;
import leat.weather.SeasonFile;

/**
 * What the plan says the plants drink, beside what the log says: the season's own forecast of the
 * same days where the plan has a season, else its drinks.
 */
final class LogThirst {
  private final UseMean use;
  private final Double planned;
  private final Calibration bySeason;
  private final String unread;

  private LogThirst(UseMean use, Double planned, Calibration bySeason, String unread) {
    this.use = use;
    this.planned = planned;
    this.bySeason = bySeason;
    this.unread = unread;
  }

  static LogThirst of(Plan plan, LogReport report, Taken taken) {
    String unread = null;
    if (plan.section("season").has("from") && plan.section("season").has("to")) {
      try {
        LogThirst found = of(SeasonFile.of(plan, taken), report.days());
        if (found.bySeason.isEnough()) {
          return found;
        }
      } catch (Refused e) {
        unread = e.problems().get(0).message();
      } catch (Impossible e) {
        unread = e.getMessage();
      }
    }
    return new LogThirst(report.use(), DrinksOf.planned(plan), null, unread);
  }

  private static LogThirst of(SeasonOf season, List<LogDay> days) {
    double[] uses = new double[days.size()];
    int n = 0;
    double measured = 0;
    double modelled = 0;
    for (LogDay day : days) {
      double litres = season.thirstL(LocalDate.ofEpochDay(day.date()));
      if (day.isCounted() && litres == litres) {
        uses[n++] = day.used();
        measured += day.used();
        modelled += litres;
      }
    }
    Calibration found = new Calibration(n, Units.L.fromBase(measured), modelled);
    UseMean use = n == 0 ? null : UseMean.of(Arrays.copyOf(uses, n));
    return new LogThirst(use, n == 0 ? null : Units.L_D.toBase(found.modelledMeanL()), found, null);
  }

  /** The comparison with the season's forecast; null when it is with the plan's drinks. */
  static Calibration bySeason(SeasonOf season, LogReport report) {
    return of(season, report.days()).bySeason;
  }

  /** What the plan says, m3/s; null when it says nothing. */
  Double planned() {
    return planned;
  }

  boolean isBySeason() {
    return bySeason != null;
  }

  /** Why the season of the plan could not be worked out; null when it could, or there is none. */
  String unread() {
    return unread;
  }

  /** The log over the plan, -; null where one of them is silent. */
  Double factor() {
    if (bySeason != null) {
      return bySeason.factor();
    }
    return isKnown() ? Double.valueOf(use.thirst(planned)) : null;
  }

  /** Whether it lies so far off the season's forecast that it is held at an end of its range. */
  boolean isHeld() {
    return bySeason != null && bySeason.isHeld();
  }

  boolean isKnown() {
    return use != null && planned != null && planned > 0;
  }

  /** Whether what the plan says, its own thirst included, lies outside the interval. */
  boolean contradicts(Double own) {
    return isKnown()
        && !isHeld()
        && (own == null ? use.contradicts(planned) : use.contradicts(planned, own));
  }
}
