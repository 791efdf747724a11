package leat.command.run;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.cli.CommandErrors;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.season.Batch;
import leat.season.ical.Calendar;
import leat.season.ical.Event;
import leat.system.Sown;

/** Sowings, transplants and harvests as a calendar. */
final class SowCalendar {
  private SowCalendar() {}

  static Answer of(Plan plan, List<Sown> crops) {
    List<Event> events = new ArrayList<>();
    for (SowRows.Line line : SowRows.lines(crops)) {
      add(events, line.crop(), line.batch());
    }
    if (events.isEmpty()) {
      throw new Refused(CommandErrors.noEvents());
    }
    LocalDate from = plan == null ? null : (LocalDate) plan.section("season").raw("from");
    LocalDate stamp = from == null ? crops.get(0).batches().sowing().first() : from;
    String name = plan == null ? "" : plan.title();
    return Answer.verbatim(Calendar.text("-//leat//sow//EN", name, stamp, events));
  }

  private static String seeds(Batch batch) {
    return "For "
        + batch.plants()
        + " plants; "
        + batch.seeds()
        + " seeds are enough on average, "
        + batch.seeds90()
        + " in nine springs of ten.";
  }

  private static void add(List<Event> events, Sown crop, Batch batch) {
    String name = crop.name() == null ? "plants" : crop.name();
    String id = name + "-" + (crop.index() + 1) + "-" + batch.sow() + "@leat";
    String where = crop.tower() == null ? "" : "Tower " + crop.tower() + ". ";
    events.add(
        Event.on(
            "sow-" + id, batch.sow(), "Sow " + batch.seeds90() + " seeds: " + name, seeds(batch)));
    events.add(
        Event.on(
            "transplant-" + id,
            batch.transplant(),
            "To the tower: " + batch.plants() + " " + name,
            where + "Sown on " + batch.sow() + "."));
    events.add(
        Event.on(
            "harvest-" + id,
            batch.harvest(),
            "Harvest: " + batch.plants() + " " + name,
            where + "Planted on " + batch.transplant() + "."));
  }
}
