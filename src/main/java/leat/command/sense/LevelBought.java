package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.level.Tank;
import leat.plan.Refused;
import leat.quantity.NumberText;

/** {@code leat level ladder --bought}: the steps of a sender of which only the label is known. */
final class LevelBought {
  private static final Column STEPS = Column.plain("steps", "steps");
  private static final Column FIRST = Column.of("first_mm", "lowest step", Show.MM.digits(4));
  private static final Column LAST = Column.of("last_mm", "highest step", Show.MM.digits(4));
  private static final Column PITCH = Column.of("pitch_mm", "a step every", Show.MM);

  private static final Column LOWEST = Column.of("lowest_ohm", "lowest reads", LevelColumns.OHM);
  private static final Column HIGHEST = Column.of("highest_ohm", "highest reads", LevelColumns.OHM);
  private static final Column APART = Column.of("apart_ohm", "from step to step", LevelColumns.OHM);
  private static final String PRACTICE = "common practice, no source";
  private static final Column[] COLUMNS = {
    LevelLadderCommand.REED,
    LevelLadderCommand.LEVEL,
    LevelLadderCommand.VOLUME,
    LevelLadderCommand.NODE
  };

  private LevelBought() {}

  static Answer answer(Call call, Command command, double[] ohms, double[] reeds, Tank tank) {
    String[] own = {"--series", "--equal", "--pull-in", "--drop-out"};
    for (int i = 0; i < own.length; i++) {
      if (call.has(own[i])) {
        throw new Refused(CommandErrors.notBoth(command, "--bought", own[i]));
      }
    }
    Answer answer = new Answer(COLUMNS).asList();
    for (int i = 0; i < ohms.length; i++) {
      fill(answer.row(), i, ohms, reeds, tank);
    }
    Row row = row(ohms, reeds);
    answer.sentence(
        row,
        "{steps} even steps from {first_mm} to {last_mm}, one every {pitch_mm}, as the label says.");
    answer.table(COLUMNS);
    workings(answer, row);
    call.withTaken(answer);
    answer.mind(
        "bought",
        "even steps are a guess: senders of one label differ, and the ends may lie 10 ohm off. Pour known amounts and let leat level fit find the true steps.");
    String steps = steps(ohms, reeds);
    return call.plan().section("sender").has("below")
        ? call.intoPlan(answer, "sender.below", "", "sender.steps", steps)
        : call.intoPlan(answer, "sender.steps", steps);
  }

  private static void fill(Row row, int i, double[] ohms, double[] reeds, Tank tank) {
    row.set(LevelLadderCommand.REED, i + 1)
        .set(LevelLadderCommand.LEVEL, reeds[i])
        .set(LevelLadderCommand.NODE, ohms[i]);
    if (tank != null && reeds[i] <= tank.height()) {
      row.set(LevelLadderCommand.VOLUME, tank.volume(reeds[i]));
    }
  }

  private static Row row(double[] ohms, double[] reeds) {
    int top = reeds.length - 1;
    return Row.aside(STEPS, FIRST, LAST, PITCH, LOWEST, HIGHEST, APART)
        .set(STEPS, reeds.length)
        .set(FIRST, reeds[0])
        .set(LAST, reeds[top])
        .set(PITCH, reeds[1] - reeds[0])
        .set(LOWEST, ohms[0])
        .set(HIGHEST, ohms[top])
        .set(APART, Math.abs(ohms[1] - ohms[0]));
  }

  private static void workings(Answer answer, Row row) {
    answer.working(
        row,
        PITCH,
        "(highest - lowest)/(steps - 1)",
        "lowest {first_mm}, highest {last_mm}, {steps} steps",
        "even steps, as far as the label tells",
        PRACTICE);
    answer.working(
        row,
        APART,
        "|R_highest - R_lowest|/(steps - 1)",
        "R_lowest = {lowest_ohm}, R_highest = {highest_ohm}, {steps} steps",
        "even steps; the ends may lie 10 ohm off",
        PRACTICE);
  }

  private static String steps(double[] ohms, double[] reeds) {
    StringBuilder text = new StringBuilder("[");
    for (int i = 0; i < ohms.length; i++) {
      text.append(i == 0 ? "" : ", ");
      text.append(LevelLadderWords.mm(reeds[i])).append(" = ");
      text.append(NumberText.atMost(ohms[i], 1)).append(" ohm");
    }
    return text.append("]").toString();
  }
}
