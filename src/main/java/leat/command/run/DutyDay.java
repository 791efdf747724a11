package leat.command.run;

import java.time.LocalDate;
import leat.answer.Answer;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.energy.Dates;
import leat.energy.DayProfile;
import leat.energy.Timetable;
import leat.system.TariffOf;

/** The day as a line of 24 hours: which timing is in force, and what energy costs. */
final class DutyDay {
  private static final String MARKS = "abcdefghijklmnopqrstuvwxyz";
  private static final String PRICES = "123456789";

  private DutyDay() {}

  /** Draws the middle day of the period. */
  static void draw(
      Answer answer, Timetable timetable, String[] names, TariffOf price, Dates dates) {
    LocalDate day = dates.from().plusDays(dates.days() / 2);
    DayProfile profile = DayProfile.of(timetable, price.tariff(), day, dates.zone());
    answer.block();
    answer.figure("hours of " + day, Phrase.of("0     6     12    18"));
    Phrase timings = Phrase.of();
    for (int i = 0; i < timetable.size(); i++) {
      if (holds(profile.timing(), i)) {
        timings
            .add(timings.isEmpty() ? "" : ", ")
            .add(mark(MARKS, i))
            .add(names[i])
            .add(" ")
            .add(timetable.timing(i).share(), Show.PERCENT);
      }
    }
    answer.figure("timing", Phrase.of(profile.timingLine(MARKS)), timings);
    if (!price.isPriced()) {
      return;
    }
    Phrase prices = Phrase.of();
    for (int i = 0; i < price.tariff().size(); i++) {
      if (holds(profile.band(), i)) {
        prices
            .add(prices.isEmpty() ? "" : ", ")
            .add(mark(PRICES, i))
            .money(price.perKwh(i), price.currency());
      }
    }
    answer.figure("price", Phrase.of(profile.priceLine(PRICES)), prices.add(" a kWh"));
  }

  private static String mark(String marks, int i) {
    return marks.charAt(Math.min(i, marks.length() - 1)) + " = ";
  }

  private static boolean holds(int[] entries, int i) {
    for (int h = 0; h < entries.length; h++) {
      if (entries[h] == i) {
        return true;
      }
    }
    return false;
  }
}
