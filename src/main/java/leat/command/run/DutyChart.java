package leat.command.run;

import java.time.LocalDate;
import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.energy.Dates;
import leat.energy.DayProfile;
import leat.quantity.Units;
import leat.system.TariffOf;

/** The day by its hours: how much the pump runs, and where energy has another price. */
final class DutyChart {
  private static final int HOURS = 24;

  private DutyChart() {}

  static Chart of(List<DutyLine> lines, TariffOf price, Dates dates) {
    Chart chart =
        Chart.of(
            "How much of each hour the pump runs",
            Axis.of("hour of the day", Show.H),
            Axis.of("pump runs", Show.PERCENT));
    double[] hours = hours();
    LocalDate day = dates == null ? null : dates.from().plusDays(dates.days() / 2);
    for (DutyLine line : lines) {
      double[] known =
          day == null
              ? null
              : DayProfile.of(line.timetable, price.tariff(), day, dates.zone()).share();
      chart.steps(line.name, hours, shares(line, known));
    }
    if (day != null && price.isPriced() && price.tariff().size() > 1) {
      DayProfile profile = DayProfile.of(lines.get(0).timetable, price.tariff(), day, dates.zone());
      bands(chart, profile.band(), price, hours);
    }
    return chart.fromZero();
  }

  private static double[] hours() {
    double[] hours = new double[HOURS + 1];
    for (int h = 0; h <= HOURS; h++) {
      hours[h] = Units.H.toBase(h);
    }
    return hours;
  }

  /** Share of each hour; the same all day where no day is known. */
  private static double[] shares(DutyLine line, double[] known) {
    double[] shares = new double[HOURS + 1];
    java.util.Arrays.fill(shares, line.share);
    if (known != null) {
      System.arraycopy(known, 0, shares, 0, HOURS);
      shares[HOURS] = known[HOURS - 1];
    }
    return shares;
  }

  /** Hours at another price than the first. */
  private static void bands(Chart chart, int[] band, TariffOf price, double[] hours) {
    int from = 0;
    for (int h = 1; h <= HOURS; h++) {
      if (h == HOURS || band[h] != band[from]) {
        if (band[from] > 0) {
          Phrase words = Phrase.of().money(price.perKwh(band[from]), price.currency());
          chart.event(words.add(" a kWh").render(false), hours[from], hours[h]);
        }
        from = h;
      }
    }
  }
}
