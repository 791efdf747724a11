package leat.command.run;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.quantity.DateWords;

/** What {@code leat season light} says in words. */
final class LightText {
  private static final Column NAME = Column.plain("name", "name");

  private LightText() {}

  static void write(Answer answer) {
    Row first = answer.row(0);
    if (answer.size() > 1) {
      table(answer);
    } else if (first.get(SeasonLightCommand.MONTH) == null) {
      answer.sentence(first, "The plants get {dli_mol_m2} mol/m2 of light per day.");
      figures(answer, first);
    } else if (first.get(SeasonLightCommand.DLI) == null) {
      answer.sentence(
          first.with(name(first)),
          "In {name} a day without clouds brings {dli_clear_mol_m2} mol/m2 of light; with --tmin and --tmax leat reckons what comes through the clouds.");
    } else {
      one(answer, first);
    }
    for (int i = 0; i < answer.size(); i++) {
      minds(answer, answer.row(i));
    }
    answer.mind(
        "light-level",
        "light on the level, good to 10 % where the sun was measured, less from temperatures; a tower stands upright, and its shaded side gets less than half.");
    answer.next("leat crops --list   the light that crops need, with EC and pH");
  }

  private static Row name(Row row) {
    Row name = Row.aside(NAME);
    return name.set(NAME, DateWords.month((Integer) row.get(SeasonLightCommand.MONTH)));
  }

  private static void one(Answer answer, Row row) {
    answer.sentence(
        row.with(name(row)), "In {name} the plants get {dli_mol_m2} mol/m2 of light per day.");
    answer.figure(row, SeasonLightCommand.DAYLIGHT, "");
    answer.figure("in the open", row, "{dli_open_mol_m2} mol/m2", "a clear sky {dli_clear_mol_m2}");
    figures(answer, row);
  }

  private static void figures(Answer answer, Row row) {
    if (row.get(SeasonLightCommand.PPFD) != null) {
      answer.figure(row, SeasonLightCommand.PPFD, "");
    }
    if (row.get(SeasonLightCommand.CROP) != null) {
      answer.figure("need", row, "{low_mol_m2} to {good_mol_m2} mol/m2", "{crop}");
    } else if (row.get(SeasonLightCommand.GOOD) != null) {
      answer.figure("need", row, "{good_mol_m2} mol/m2");
    }
    if (row.get(SeasonLightCommand.STATUS) != null) {
      answer.figure(
          "lamp", row, "{lamp_h}", "{lamp_day_kWh} per day, then {dli_with_lamp_mol_m2} mol/m2");
      answer.figure(row, SeasonLightCommand.WATTS, "");
    }
  }

  private static void table(Answer answer) {
    int low = 0;
    for (int i = 0; i < answer.size(); i++) {
      low += Boolean.FALSE.equals(answer.row(i).get(SeasonLightCommand.ENOUGH)) ? 1 : 0;
    }
    Row count = Row.aside(SeasonLightCommand.MONTH, NAME);
    count.set(SeasonLightCommand.MONTH, low).set(NAME, String.valueOf(answer.size()));
    answer.sentence(
        count,
        low == 0
            ? "The light is enough in each of the {name} months."
            : "In {month} of {name} months the light is under the crops' low mark.");
    answer.table(
        SeasonLightCommand.MONTH,
        SeasonLightCommand.DAYLIGHT,
        SeasonLightCommand.OPEN,
        SeasonLightCommand.DLI,
        SeasonLightCommand.CROP,
        SeasonLightCommand.LOW,
        SeasonLightCommand.GOOD,
        SeasonLightCommand.ENOUGH,
        SeasonLightCommand.HOURS,
        SeasonLightCommand.KWH);
  }

  private static void withLamp(Answer answer, Row row) {
    boolean month = row.get(SeasonLightCommand.MONTH) != null;
    answer.mind(
        "light-low-lamp",
        month ? row.with(name(row)) : row,
        row.get(SeasonLightCommand.CROP) == null
            ? "without the lamp that is {missing_mol_m2} mol/m2 per day under what is wanted; with it {dli_with_lamp_mol_m2} mol/m2."
            : month
                ? "in {name} {crop} gets {dli_mol_m2} mol/m2 per day without the lamp, under its low mark of {low_mol_m2}; with it {dli_with_lamp_mol_m2}."
                : "{crop} gets {dli_mol_m2} mol/m2 per day without the lamp, under its low mark of {low_mol_m2}; with it {dli_with_lamp_mol_m2}.");
  }

  /** Whether the lamp lifts it over the low mark. */
  private static boolean lampHelps(Row row) {
    Object with = row.get(SeasonLightCommand.WITH);
    return with != null && (Double) with >= (Double) row.get(SeasonLightCommand.LOW);
  }

  private static void minds(Answer answer, Row row) {
    if (!Boolean.FALSE.equals(row.get(SeasonLightCommand.ENOUGH))) {
      return;
    }
    if (lampHelps(row)) {
      withLamp(answer, row);
    } else if (row.get(SeasonLightCommand.CROP) == null) {
      answer.mind(
          "light-low", row, "that is {missing_mol_m2} mol/m2 per day under what is wanted.");
    } else if (row.get(SeasonLightCommand.MONTH) == null) {
      answer.mind(
          "light-low",
          row,
          "{crop} gets {dli_mol_m2} mol/m2 per day, under its low mark of {low_mol_m2}: it grows thin and pale.");
    } else {
      answer.mind(
          "light-low",
          row.with(name(row)),
          "in {name} {crop} gets {dli_mol_m2} mol/m2 per day, under its low mark of {low_mol_m2}: it grows thin and pale.");
    }
  }
}
