package leat.answer.chart;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import leat.quantity.DateWords;
import leat.quantity.NumberText;

/** Places on an axis that get a word, in the unit shown. */
final class Ticks {
  private static final int HOUR = 3600;
  private static final int DAY = 24 * HOUR;
  private static final int[] SPACES = {
    HOUR, 2 * HOUR, 6 * HOUR, 12 * HOUR, DAY, 2 * DAY, 7 * DAY, 14 * DAY
  };

  final List<Double> at = new ArrayList<>();
  final List<String> words = new ArrayList<>();

  private Ticks() {}

  /** Ticks of an axis over a scale, about so many at most. */
  static Ticks of(Axis axis, Scale scale, int most) {
    Ticks ticks = new Ticks();
    if (axis.isTime()) {
      ticks.moments(scale, most);
    } else {
      ticks.numbers(scale);
    }
    return ticks;
  }

  private void add(double value, String word) {
    at.add(value);
    words.add(word);
  }

  private void numbers(Scale scale) {
    double step = scale.step();
    int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    long first = (long) Math.ceil(scale.low() / step - 1e-9);
    long last = (long) Math.floor(scale.high() / step + 1e-9);
    for (long i = first; i <= last; i++) {
      add(i * step, NumberText.decimals(i * step, Math.min(decimals, 9)));
    }
  }

  private void moments(Scale scale, int most) {
    double range = scale.high() - scale.low();
    for (int space : SPACES) {
      if (range / space <= most) {
        spaced(scale, space);
        return;
      }
    }
    months(scale, most);
  }

  private void spaced(Scale scale, int space) {
    double first = Math.ceil(scale.low() / space) * space;
    for (double t = first; t <= scale.high(); t += space) {
      LocalDateTime moment = LocalDateTime.ofEpochSecond((long) t, 0, ZoneOffset.UTC);
      add(
          t,
          space < DAY && moment.getHour() > 0
              ? (moment.getHour() < 10 ? "0" : "") + moment.getHour() + ":00"
              : DateWords.day(moment.toLocalDate()));
    }
  }

  private void months(Scale scale, int most) {
    LocalDate first = LocalDate.ofEpochDay((long) Math.floor(scale.low() / DAY));
    LocalDate last = LocalDate.ofEpochDay((long) Math.floor(scale.high() / DAY));
    long months = java.time.temporal.ChronoUnit.MONTHS.between(first, last) + 1;
    long each = Math.max(1, (months + most - 1) / most);
    LocalDate month = first.getDayOfMonth() == 1 ? first : first.withDayOfMonth(1).plusMonths(1);
    for (; !month.isAfter(last); month = month.plusMonths(each)) {
      String name = DateWords.shortMonth(month.getMonthValue());
      add(
          Axis.at(month),
          each >= 12 || month.getMonthValue() == 1 ? name + " " + month.getYear() : name);
    }
  }
}
