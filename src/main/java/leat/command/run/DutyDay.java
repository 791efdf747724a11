package leat.command.run;

import java.time.LocalDate;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.energy.Dates;
import leat.energy.DayProfile;
import leat.energy.Timetable;
import leat.system.TariffOf;

/** The day as a line of 24 hours: which timing is in force, and what energy costs. */
final class DutyDay {
  private static final String MARKS = "abcdefghijklmnopqrstuvwxyz";
  private static final String PRICES = "123456789";

  private static final Column MARK = Column.plain("mark", "mark");
  private static final Column NAME = Column.plain("name", "name");
  private static final Column SHARE = Column.of("run_share_pct", "pump runs", Show.PERCENT);
  private static final Column PRICE = Column.number("price", "price", 4);
  private static final Column CURRENCY = Column.plain("currency", "currency");

  private DutyDay() {}

  /** Draws the middle day of the period. */
  static void draw(
      Answer answer, Timetable timetable, String[] names, TariffOf price, Dates dates) {
    LocalDate day = dates.from().plusDays(dates.days() / 2);
    DayProfile profile = DayProfile.of(timetable, price.tariff(), day, dates.zone());
    answer.block();
    answer.figure("hours of " + day, Phrase.of("0     6     12    18"));
    timings(answer, timetable, names, profile);
    if (price.isPriced()) {
      prices(answer, price, profile);
    }
  }

  private static void timings(
      Answer answer, Timetable timetable, String[] names, DayProfile profile) {
    Phrase timings = Phrase.of();
    for (int i = 0; i < timetable.size(); i++) {
      if (holds(profile.timing(), i)) {
        Row row =
            Row.aside(MARK, NAME, SHARE)
                .set(MARK, mark(MARKS, i))
                .set(NAME, names[i])
                .set(SHARE, timetable.timing(i).share());
        timings
            .add(timings.isEmpty() ? "" : ", ")
            .add(Answer.filled(row, "{mark} = {name} {run_share_pct}"));
      }
    }
    answer.figure("timing", Phrase.of(profile.timingLine(MARKS)), timings);
  }

  private static void prices(Answer answer, TariffOf price, DayProfile profile) {
    Phrase prices = Phrase.of();
    for (int i = 0; i < price.tariff().size(); i++) {
      if (holds(profile.band(), i)) {
        Row row =
            Row.aside(MARK, PRICE, CURRENCY)
                .set(MARK, mark(PRICES, i))
                .set(PRICE, price.perKwh(i))
                .set(CURRENCY, price.currency());
        prices
            .add(prices.isEmpty() ? "" : ", ")
            .add(Answer.filled(row, "{mark} = {price:money} {currency} per kWh"));
      }
    }
    answer.figure("price", Phrase.of(profile.priceLine(PRICES)), prices);
  }

  private static String mark(String marks, int i) {
    return String.valueOf(marks.charAt(Math.min(i, marks.length() - 1)));
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
