package leat.check.run;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.Bill;
import leat.energy.Contact;
import leat.energy.Dates;
import leat.energy.RelayLife;
import leat.energy.Tariff;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.plan.Section;
import leat.quantity.Units;
import leat.system.DrawOf;

/** The relay carries the pump's start and lasts the season. */
final class RelayLasts extends DeclaredRule {
  private static final Show DAYS = Show.of(Units.D, 3);
  private static final int NEVER_SWITCHES = 0;
  private static final int OVERLOADED = 1;

  RelayLasts() {
    super(
        "relay-life",
        AT_LEAST,
        DAYS,
        null,
        "electrical endurance at rated load, the term of IEC 61810-1; inrush of 6 times from makers' relay guides",
        "controller.relay pump.power pump.supply" + ReadKeys.TIMING,
        "Days that the relay's operations last at the season's mean starts, against the season's length; the start's current must be within the contact's rating.");
  }

  private static RelayLife life(Subject subject) {
    Dates dates = subject.season();
    Bill bill =
        Bill.of(
            subject.timetable(), Tariff.flat(0), DrawOf.of(subject.plan(), subject.taken()), dates);
    Contact contact = DrawOf.contact(subject.plan(), subject.taken());
    return RelayLife.of(
        DrawOf.motor(subject.plan(), subject.taken()), contact, bill.starts(), dates.days());
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Section relay = subject.section("controller").section("relay");
    if (!relay.isGiven()) {
      return List.of();
    }
    relay.need("rated");
    Section season = subject.section("season");
    season.needRaw("from");
    season.needRaw("to");
    RelayLife life = life(subject);
    if (!life.suits()) {
      return List.of(Finding.words(this, Verdict.FAIL, OVERLOADED));
    }
    if (life.days().isEmpty()) {
      return List.of(Finding.words(this, Verdict.PASS, NEVER_SWITCHES));
    }
    double limit = limitOr(subject, Units.D.toBase(subject.season().days()));
    return List.of(atLeast(Units.D.toBase(life.days().getAsDouble()), limit, Verdict.FAIL));
  }

  @Override
  public String words(Subject subject, Finding finding) {
    return finding.saying() == OVERLOADED
        ? Phrase.of(life(subject).inrushA(), Show.A).add(" at the start").render(false)
        : "never switches";
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    if (!finding.hasValue()) {
      return Advice.of("a relay for motors")
          .cure(Cure.atLeast("controller.relay.rated", life(subject).inrushA(), Show.A));
    }
    double more = finding.limit() / finding.value();
    double cycles = DrawOf.contact(subject.plan(), subject.taken()).ratedOperations() * more;
    return Advice.none()
        .also("a spare relay in the drawer")
        .cure(Cure.typed("controller.relay.cycles", String.valueOf((long) Math.ceil(cycles))))
        .cure(longer(subject.timetable(), more));
  }

  /** Every run and rest longer by a share, so that the relay switches less often. */
  private static Cure longer(Timetable timetable, double more) {
    Cure cure = null;
    for (int i = 0; i < timetable.size(); i++) {
      Timing timing = timetable.timing(i);
      String run = TimingRule.key(i, "run");
      Show seconds = Show.S.digits(3);
      cure =
          cure == null
              ? Cure.atLeast(run, more * timing.runS(), seconds)
              : cure.andAtLeast(run, more * timing.runS(), seconds);
      cure.andAtLeast(TimingRule.key(i, "rest"), more * timing.restS(), Show.MIN);
    }
    return cure;
  }
}
