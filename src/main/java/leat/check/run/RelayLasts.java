package leat.check.run;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.Bill;
import leat.energy.Contact;
import leat.energy.Dates;
import leat.energy.RelayLife;
import leat.energy.Tariff;
import leat.energy.Timetable;
import leat.plan.Section;
import leat.quantity.Units;
import leat.system.DrawOf;
import leat.system.TimetableOf;
import leat.system.ZoneOf;

/** The relay carries the pump's start and lasts the season. */
final class RelayLasts extends DeclaredRule {
  private static final Show DAYS = Show.of(Units.D, 3);

  RelayLasts() {
    super(
        "relay-life",
        AT_LEAST,
        DAYS,
        null,
        "electrical endurance at rated load, the term of IEC 61810-1; inrush of 6 times from makers' relay guides",
        "controller.relay timing season pump.power pump.supply pump.power_factor",
        "Days that the relay's operations last at the season's mean starts, against the season's length; the start's current must be within the contact's rating.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Section relay = subject.section("controller").section("relay");
    if (!relay.isGiven()) {
      return List.of();
    }
    Section season = subject.section("season");
    relay.need("rated");
    season.needRaw("from");
    season.needRaw("to");
    Timetable timetable = TimetableOf.of(subject.plan());
    Dates dates = ZoneOf.season(subject.plan());
    Bill bill = Bill.of(timetable, Tariff.flat(0), DrawOf.of(subject.plan()), dates);
    Contact contact = DrawOf.contact(subject.plan());
    RelayLife life =
        RelayLife.of(DrawOf.motor(subject.plan()), contact, bill.starts(), dates.days());
    if (!life.suits()) {
      return List.of(overloaded(life));
    }
    if (life.days().isEmpty()) {
      return List.of(Finding.words(this, Verdict.PASS, "never switches", Phrase.of()));
    }
    Double own = subject.ownLimit(this);
    double limit = own == null ? Units.D.toBase(dates.days()) : own;
    double cycles = contact.ratedOperations() * limit / Units.D.toBase(life.days().getAsDouble());
    return List.of(
        atLeast(
            Units.D.toBase(life.days().getAsDouble()),
            limit,
            Verdict.FAIL,
            Phrase.of("controller.relay.cycles of ")
                .count((long) Math.ceil(cycles))
                .add(", longer rests, or a spare relay in the drawer")));
  }

  private Finding overloaded(RelayLife life) {
    return Finding.words(
        this,
        Verdict.FAIL,
        Phrase.of(life.inrushA(), Show.A).add(" at the start").render(false),
        Mends.of(Phrase.of(), "controller.relay.rated", life.inrushA(), Show.A));
  }
}
