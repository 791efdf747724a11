package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Sender;
import leat.level.Status;
import leat.plan.Plan;
import leat.system.SenderOf;

/** One reading of the sender in words: the sentence, its figures and what to mind. */
final class LevelWords {
  private final Plan plan;
  private final Sender sender;
  private final Motion motion;
  private final Reading reading;

  LevelWords(Plan plan, Sender sender, Motion motion, Reading reading) {
    this.plan = plan;
    this.sender = sender;
    this.motion = motion;
    this.reading = reading;
  }

  private boolean isLowest() {
    return reading.stepLow() == 0;
  }

  private boolean isTop() {
    return reading.stepHigh() == sender.staircase().size() - 1;
  }

  Phrase sentence() {
    switch (reading.status()) {
      case OPEN:
        return Phrase.of(
            "Open: a broken wire, a loose plug, or no reed closed. It says nothing of the litres.");
      case SHORT:
        return Phrase.of(
            "Short: the two wires touch, or water stands in the plug. It says nothing of the litres.");
      case UNDER_RANGE:
        return Phrase.of("Under the range: fewer ohms than the lowest step of this sender, ")
            .add(lowestOhm(), LevelColumns.OHM)
            .add(". A wet plug, or another sender than the plan says.");
      case OVER_RANGE:
        return Phrase.of("Over the range: more ohms than the highest step of this sender, ")
            .add(highestOhm(), LevelColumns.OHM)
            .add(". A corroded plug, or another sender than the plan says.");
      default:
        return band();
    }
  }

  private double lowestOhm() {
    int top = sender.staircase().size() - 1;
    return sender.staircase().ohm(sender.staircase().falls() ? top : 0);
  }

  private double highestOhm() {
    int top = sender.staircase().size() - 1;
    return sender.staircase().ohm(sender.staircase().falls() ? 0 : top);
  }

  private Phrase band() {
    Phrase words = Phrase.of();
    if (reading.status() == Status.OK_OR_SHORT) {
      words.add("Empty or shorted, this sender cannot tell: ");
    }
    if (isLowest() && isTop()) {
      return words.add("anything from empty to the rim.");
    }
    if (isLowest()) {
      words
          .add(words.isEmpty() ? "At most " : "at most ")
          .add(reading.volumeHigh(), Show.L)
          .add(" in the tank, perhaps none: below that the sender sees nothing.");
      return words.add(refillMark());
    }
    if (isTop()) {
      return words
          .add("At least ")
          .add(reading.volumeLow(), Show.L)
          .add(" in the tank: from there to the rim the sender reads the same.");
    }
    words
        .add("Between ")
        .addBare(reading.volumeLow(), Show.L)
        .add(" and ")
        .add(reading.volumeHigh(), Show.L)
        .add(" in the tank, about ")
        .add(reading.volume(), Show.L)
        .add(" (")
        .add(reading.fullShare(), Show.PERCENT)
        .add(" of full).");
    return words.add(refillMark());
  }

  private Phrase refillMark() {
    Double low = SenderOf.lowVolume(plan);
    if (low == null) {
      return Phrase.of();
    }
    if (reading.volumeHigh() <= low) {
      return Phrase.of(" That is below the refill mark.");
    }
    if (reading.volumeLow() <= low) {
      return Phrase.of(" The refill mark may be passed.");
    }
    return Phrase.of(" The refill mark is about ")
        .add(reading.volume() - low, Show.L.digits(2))
        .add(" away.");
  }

  void figures(Answer answer) {
    if (!reading.hasOhm() || reading.ohm() == Double.POSITIVE_INFINITY) {
      return;
    }
    Phrase steps = Phrase.of();
    if (reading.hasBand() && reading.stepLow() == reading.stepHigh()) {
      steps.add("the step of ").add(reading.stepLowOhm(), LevelColumns.OHM);
    } else if (reading.hasBand()) {
      double one = Math.min(reading.stepLowOhm(), reading.stepHighOhm());
      double other = Math.max(reading.stepLowOhm(), reading.stepHighOhm());
      steps
          .add(reading.status() == Status.AMBIGUOUS ? "may be " : "between the steps ")
          .addBare(one, LevelColumns.OHM)
          .add(reading.status() == Status.AMBIGUOUS ? " or " : " and ")
          .add(other, LevelColumns.OHM)
          .add(": both taken");
    } else {
      steps
          .add("steps from ")
          .addBare(lowestOhm(), LevelColumns.OHM)
          .add(" to ")
          .add(highestOhm(), LevelColumns.OHM);
    }
    if (sender.limits().lead() > 0) {
      steps
          .add(steps.isEmpty() ? "" : ", ")
          .add(sender.limits().lead(), Show.OHM)
          .add(" of lead off");
    }
    answer.figure("reading", Phrase.of(reading.ohm(), LevelColumns.OHM), steps);
    if (!reading.hasBand()) {
      return;
    }
    answer.figure(
        "litres",
        Phrase.of()
            .addBare(reading.volumeLow(), Show.L)
            .add(" to ")
            .add(reading.volumeHigh(), Show.L),
        Phrase.of(way()));
    if (reading.hasLevels()) {
      answer.figure(
          "level",
          Phrase.of()
              .addBare(reading.levelLow(), Show.MM)
              .add(" to ")
              .add(reading.levelHigh(), Show.MM));
    }
    answer.figure("full", Phrase.of(sender.fullVolume(), Show.L));
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

  void minds(Answer answer) {
    switch (reading.status()) {
      case BETWEEN_STEPS:
        answer.mind(
            "between-steps",
            "a reading between two steps is a poor contact or a wet plug more often than a level; look if it comes again.");
        break;
      case AMBIGUOUS:
        answer.mind(
            "ambiguous",
            "these steps read alike within the tolerances of resistors and meter: closer resistors, or fewer steps, part them.");
        break;
      case OK_OR_SHORT:
        answer.mind(
            "ok-or-short",
            "its lowest step is about 0 ohm: look into the tank before you trust it; a resistor of 10 ohm in the sender's wire would tell the two apart.");
        break;
      case OPEN:
        answer.mind(
            "pump-dry",
            "a pump must not run on a level nobody knows: look into the tank. Unplug mains gear before you reach into the water.");
        break;
      default:
        break;
    }
    if (reading.hasBand() && plan.root().has("hold_up")) {
      answer.mind(
          "pump-off",
          Phrase.of("read with the pump off; running towers hold ")
              .add(plan.root().need("hold_up"), Show.L)
              .add("."));
    }
  }
}
