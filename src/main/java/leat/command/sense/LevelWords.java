package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Sender;
import leat.level.Staircase;
import leat.level.Status;
import leat.plan.Plan;
import leat.system.SenderOf;

/** One reading of the sender in words: the sentence, its figures and what to mind. */
final class LevelWords {
  private static final Column LOWEST = Column.of("lowest_ohm", "lowest reads", LevelColumns.OHM);
  private static final Column HIGHEST = Column.of("highest_ohm", "highest reads", LevelColumns.OHM);
  private static final Column STEP = Column.of("step_ohm", "step", LevelColumns.OHM);
  private static final Column OTHER_STEP = Column.of("step_2_ohm", "other step", LevelColumns.OHM);
  private static final Column LEAD = Column.of("lead_ohm", "lead", Show.OHM);
  private static final Column FULL = Column.of("full_L", "full", Show.L);
  private static final Column AWAY = Column.of("above_low_L", "above low", Show.L.digits(2));
  private static final Column HOLD_UP = Column.of("hold_up_L", "hold up", Show.L);
  private static final Column AT_LEAST = Column.of("at_least_L", "asked", Show.L);

  private final Plan plan;
  private final Sender sender;
  private final Motion motion;
  private final Reading reading;
  private final Double low;
  private final Double atLeast;
  private final Row row;
  private final boolean us;

  LevelWords(Call call, Row answered, Sender sender, Reading reading) {
    this.plan = call.plan();
    this.sender = sender;
    this.motion = LevelColumns.motion(call);
    this.reading = reading;
    this.low = SenderOf.lowVolume(plan, call.taken());
    this.atLeast = call.from0("--at-least");
    this.us = "us".equals(call.text("--units"));
    this.row = answered.with(aside());
  }

  private Row aside() {
    Staircase stairs = sender.staircase();
    double first = stairs.ohm(0);
    double last = stairs.ohm(stairs.size() - 1);
    Row aside =
        Row.aside(LOWEST, HIGHEST, STEP, OTHER_STEP, LEAD, FULL, AWAY, HOLD_UP, AT_LEAST)
            .set(LOWEST, Math.min(first, last))
            .set(HIGHEST, Math.max(first, last))
            .set(LEAD, sender.limits().lead())
            .set(FULL, sender.fullVolume())
            .set(AT_LEAST, atLeast)
            .set(HOLD_UP, plan.root().maybe("hold_up"));
    if (reading.hasBand()) {
      band(aside);
    }
    return aside;
  }

  private void band(Row aside) {
    aside
        .set(STEP, Math.min(reading.stepLowOhm(), reading.stepHighOhm()))
        .set(OTHER_STEP, Math.max(reading.stepLowOhm(), reading.stepHighOhm()));
    if (low != null) {
      aside.set(AWAY, reading.aboveMark(low));
    }
  }

  void say(Answer answer) {
    answer.sentence(row, reading.hasBand() ? asked() + band() + refillMark() : fault());
    if (reading.hasOhm() && reading.ohm() != Double.POSITIVE_INFINITY) {
      figures(answer);
    }
    minds(answer);
  }

  private String fault() {
    switch (reading.status()) {
      case OPEN:
        return "Open: a broken wire, a loose plug, or no reed closed. It says nothing about the water.";
      case SHORT:
        return "Short: the two wires touch, or water stands in the plug. It says nothing about the water.";
      case UNDER_RANGE:
        return "Under the range: fewer ohms than the lowest step of this sender, {lowest_ohm}. A wet plug, or another sender than the plan says.";
      case OVER_RANGE:
        return "Over the range: more ohms than the highest step of this sender, {highest_ohm}. A corroded plug, or another sender than the plan says.";
      default:
        return "No reading.";
    }
  }

  /** The answer to --at-least, before anything else. */
  private String asked() {
    if (atLeast == null) {
      return "";
    }
    return reading.mayBeBelow(atLeast)
        ? reading.isBelow(atLeast) && !printsAs(reading.volumeHigh())
            ? "No: {at_least_L} is not there, {volume_high_L} is the most. "
            : printsAs(reading.volumeLow())
                ? "No: {at_least_L} is not sure, it may be a little less. "
                : "No: {at_least_L} is not sure, it may be only {volume_low_L}. "
        : "Yes: at least {at_least_L}. ";
  }

  /** Whether what is asked and an end of the band would print alike. */
  private boolean printsAs(double end) {
    return Phrase.readAlike(atLeast, end, Show.L, us);
  }

  private String band() {
    boolean either = reading.status() == Status.OK_OR_SHORT;
    if (reading.reachesFloor() && reading.reachesRim()) {
      return either
          ? "Empty or shorted, this sender cannot tell: anything from empty to the rim."
          : "Anything from empty to the rim.";
    }
    if (reading.reachesFloor()) {
      return either
          ? "Empty or shorted, this sender cannot tell: at most {volume_high_L} in the tank, perhaps none."
          : "At most {volume_high_L} in the tank, perhaps none: below that the sender sees nothing.";
    }
    if (reading.reachesRim()) {
      return "At least {volume_low_L} in the tank: from there to the rim the sender reads the same.";
    }
    String rest =
        "etween {volume_low_L!} and {volume_high_L} in the tank, about {volume_L} ({full_pct} of full).";
    return either ? "Shorted, or b" + rest : "B" + rest;
  }

  private String refillMark() {
    if (low == null || reading.reachesRim() && !reading.mayBeBelow(low)) {
      return "";
    }
    if (reading.isBelow(low)) {
      return " That is below the refill mark.";
    }
    return reading.mayBeBelow(low)
        ? " The refill mark may be passed."
        : " The refill mark is about {above_low_L} away.";
  }

  private void figures(Answer answer) {
    answer.figure(row, LevelColumns.READING, steps() + lead());
    if (!reading.hasBand()) {
      return;
    }
    answer.figure("volume", row, "{volume_low_L!} to {volume_high_L}", way());
    if (reading.hasLevels()) {
      answer.figure("level", row, "{level_low_mm!} to {level_high_mm}");
    }
    answer.figure("full", row, "{full_L}");
  }

  private String steps() {
    if (!reading.hasBand()) {
      return "steps from {lowest_ohm!} to {highest_ohm}";
    }
    if (reading.stepLow() == reading.stepHigh()) {
      return "the step of {step_ohm}";
    }
    return reading.status() == Status.AMBIGUOUS
        ? "may be {step_ohm!} or {step_2_ohm}: both taken"
        : "between the steps {step_ohm!} and {step_2_ohm}: both taken";
  }

  private String lead() {
    return sender.limits().lead() > 0 ? ", {lead_ohm} of lead off" : "";
  }

  private String way() {
    switch (motion) {
      case RISING:
        return "as it rises";
      case FALLING:
        return "as it falls";
      default:
        return "rising or falling; the sender cannot say finer";
    }
  }

  private void minds(Answer answer) {
    doubt(answer);
    if (reading.hasBand() && plan.root().has("hold_up")) {
      answer.mind("pump-off", row, "read with the pump off; running towers hold {hold_up_L}.");
    }
  }

  private void doubt(Answer answer) {
    switch (reading.status()) {
      case BETWEEN_STEPS:
        answer.mind(
            "between-steps",
            "a reading between two steps is a poor contact or a wet plug more often than a level; look if it comes again.");
        break;
      case AMBIGUOUS:
        answer.mind(
            "ambiguous",
            "these steps read alike within the tolerances of resistors, meter and ADC: closer resistors, or fewer steps, part them.");
        break;
      case OK_OR_SHORT:
        answer.mind(
            "ok-or-short",
            "its lowest step is about 0 ohm: look into the tank before you trust it. A resistor of 10 ohm in the sender's wire would tell the two apart.");
        break;
      case OPEN:
        answer.mind(
            "pump-dry",
            "a pump must not run on a level nobody knows: look into the tank. Unplug mains gear before you reach into the water.");
        break;
      default:
        break;
    }
  }
}
