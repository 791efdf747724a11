package leat.command.run;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.cli.CommandErrors;
import leat.plan.Plan;
import leat.season.AwayOutcome;
import leat.season.DayRow;
import leat.season.SeasonRun;
import leat.season.Service;
import leat.season.YearRuns;
import leat.season.ical.Calendar;
import leat.season.ical.Event;
import leat.system.SeasonOf;

/** The season as a calendar: changes with their meter checks, and the neighbour's days. */
final class SeasonCalendar {
  static final String PRODUCT = "-//leat//season//EN";

  private SeasonCalendar() {}

  static Answer of(Plan plan, SeasonOf season, YearRuns runs, SeasonRun run) {
    List<Event> events = new ArrayList<>();
    for (int t = 0; t < run.days().size(); t++) {
      DayRow day = run.days().get(t);
      if (day.service() == Service.CHANGE) {
        LocalDate date = SeasonDates.date(season, t);
        events.add(Event.on("change-" + date + "@leat", date, "Change the solution", plan.title()));
        events.add(
            Event.on(
                "meters-" + date + "@leat",
                date,
                "Check the EC and pH meters",
                "Against their standards, before the fresh solution is measured."));
      }
    }
    neighbour(events, season, runs);
    if (events.isEmpty()) {
      throw new leat.plan.Refused(CommandErrors.noEvents());
    }
    return Answer.verbatim(Calendar.text(PRODUCT, plan.title(), season.from(), events));
  }

  private static void neighbour(List<Event> events, SeasonOf season, YearRuns runs) {
    AwayOutcome[] all = season.away(runs);
    for (int i = 0; i < all.length; i++) {
      int[] visits = all[i].neighbourDays();
      for (int k = 0; visits != null && k < visits.length; k++) {
        LocalDate date = SeasonDates.date(season, visits[k]);
        events.add(
            Event.on(
                "neighbour-" + date + "@leat",
                date,
                "Neighbour: fill the tank",
                "Up to the full mark, at the target EC."));
      }
    }
  }
}
