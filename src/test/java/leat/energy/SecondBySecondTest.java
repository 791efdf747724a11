package leat.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A thousand random timetables, tariffs, zones and dates, walked second by second with the JDK's
 * own conversion of each instant; half of the dates hold a clock change. Nothing of the package is
 * used but the answers.
 */
class SecondBySecondTest {
  private static final int CASES = 1000;
  private static final String[] ZONES = {
    "Europe/Vienna", "Europe/London", "Europe/Dublin", "America/New_York", "America/St_Johns",
    "America/Sao_Paulo", "America/Santiago", "America/Havana", "Africa/Cairo", "Africa/Casablanca",
    "Asia/Kolkata", "Asia/Kathmandu", "Asia/Beirut", "Asia/Tehran", "Australia/Lord_Howe",
    "Australia/Sydney", "Pacific/Chatham", "Pacific/Apia", "Antarctica/Troll", "UTC"
  };

  /** One entry as a person reads it. */
  private record Entry(int from, int to, Set<Month> months, Set<DayOfWeek> days) {
    boolean holds(int second, Month month, DayOfWeek day) {
      if (!months.contains(month) || !days.contains(day)) {
        return false;
      }
      if (from == to) {
        return true;
      }
      return from < to ? from <= second && second < to : !(to <= second && second < from);
    }

    Window window() {
      return Window.between(from, to)
          .monthList(months.stream().mapToInt(Month::getValue).toArray())
          .weekdayList(days.stream().mapToInt(DayOfWeek::getValue).toArray());
    }
  }

  private record Case(
      ZoneId zone,
      LocalDate from,
      int days,
      List<Entry> timingEntries,
      int[] run,
      int[] rest,
      List<Entry> bandEntries,
      double[] price,
      Draw draw) {}

  /** What the walk counts. */
  private static final class Count {
    long[][] seconds;
    long[] runByBand;
    long[] byBand;
    long starts;
  }

  @Test
  void sameSecondsStartsAndMoney() {
    Random random = new Random(20270412);
    int changes = 0;
    for (int i = 0; i < CASES; i++) {
      Case c = draw(random);
      changes += compare(i, c) % 86_400 == 0 ? 0 : 1;
    }
    assertThat(changes).as("periods that hold a clock change").isGreaterThan(CASES / 3);
  }

  private static long compare(int number, Case c) {
    String what = number + " " + c;
    Window[] timingWindows = c.timingEntries.stream().map(Entry::window).toArray(Window[]::new);
    Window[] bandWindows = c.bandEntries.stream().map(Entry::window).toArray(Window[]::new);
    Timing[] timings = new Timing[c.run.length];
    for (int i = 0; i < timings.length; i++) {
      timings[i] = new Timing(c.run[i], c.rest[i]);
    }
    Timetable timetable = new Timetable(timingWindows, timings);
    Tariff tariff = new Tariff(bandWindows, c.price, 0, 0);
    Dates dates = Dates.of(c.from, c.days, c.zone);
    Count count = walk(c);

    Bill bill = Bill.of(timetable, tariff, c.draw, dates);
    Overlap overlap = Overlap.of(dates, timetable.windows(), tariff.windows());
    double starts = 0;
    double money = 0;
    double runS = 0;
    long all = 0;
    for (int i = 0; i < timings.length; i++) {
      double cycle = c.run[i] + c.rest[i];
      double share = c.run[i] / cycle;
      for (int k = 0; k < c.price.length; k++) {
        long s = count.seconds[i][k];
        assertThat(overlap.seconds(i, k)).as(what).isEqualTo(s);
        all += s;
        starts += c.rest[i] == 0 ? 0 : s / cycle;
        runS += s * share;
        money += s * watts(c.draw, share) * c.price[k];
      }
    }
    assertThat(bill.periodS()).as(what).isEqualTo(all);
    assertThat(bill.starts()).as(what).isCloseTo(starts, within(1e-9 * starts + 1e-12));
    assertThat(bill.runS()).as(what).isCloseTo(runS, within(1e-9 * runS));
    assertThat(bill.cost()).as(what).isCloseTo(money, within(1e-9 * money));

    FreeRun free = FreeRun.of(timetable, tariff, c.draw, dates);
    double freeMoney = 0;
    double freeRun = 0;
    for (int k = 0; k < c.price.length; k++) {
      double on = count.runByBand[k];
      double off = count.byBand[k] - on;
      assertThat(free.pumpJByBand()[k])
          .as(what)
          .isCloseTo(on * c.draw.pumpW(), within(1e-9 * on * c.draw.pumpW()));
      freeRun += on;
      freeMoney += (on * watts(c.draw, 1) + off * watts(c.draw, 0)) * c.price[k];
    }
    assertThat(free.starts()).as(what).isEqualTo(count.starts);
    assertThat(free.runS()).as(what).isEqualTo(freeRun);
    assertThat(free.energyCost()).as(what).isCloseTo(freeMoney, within(1e-9 * freeMoney));
    return all;
  }

  private static double watts(Draw draw, double share) {
    double coil =
        draw.coil() == Coil.WHILE_RUNNING
            ? share
            : draw.coil() == Coil.WHILE_RESTING ? 1 - share : 0;
    return draw.pumpW() * share + draw.controllerW() + draw.coilW() * coil;
  }

  private static Count walk(Case c) {
    Count count = new Count();
    count.seconds = new long[c.run.length][c.price.length];
    count.runByBand = new long[c.price.length];
    count.byBand = new long[c.price.length];
    ZoneRules rules = c.zone.getRules();
    long end = c.from.plusDays(c.days).atStartOfDay(c.zone).toEpochSecond();
    int left = 0;
    int run = 0;
    int age = 0;
    boolean ran = false;
    for (long t = c.from.atStartOfDay(c.zone).toEpochSecond(); t < end; t++) {
      ZoneOffset offset = rules.getOffset(Instant.ofEpochSecond(t));
      LocalDateTime local = LocalDateTime.ofEpochSecond(t, 0, offset);
      int second = local.getHour() * 3600 + local.getMinute() * 60 + local.getSecond();
      int timing = last(c.timingEntries, second, local.getMonth(), local.getDayOfWeek());
      int band = last(c.bandEntries, second, local.getMonth(), local.getDayOfWeek());
      count.seconds[timing][band]++;
      count.byBand[band]++;
      if (left == 0) {
        run = c.run[timing];
        left = run + c.rest[timing];
        age = 0;
      }
      boolean runs = age < run;
      if (runs) {
        count.runByBand[band]++;
        if (!ran) {
          count.starts++;
        }
      }
      ran = runs;
      age++;
      left--;
    }
    return count;
  }

  private static int last(List<Entry> entries, int second, Month month, DayOfWeek day) {
    int last = -1;
    for (int i = 0; i < entries.size(); i++) {
      if (entries.get(i).holds(second, month, day)) {
        last = i;
      }
    }
    return last;
  }

  private static Case draw(Random random) {
    ZoneId zone = ZoneId.of(ZONES[random.nextInt(ZONES.length)]);
    LocalDate from = LocalDate.of(1985, 1, 1).plusDays(random.nextInt(20_000));
    if (random.nextInt(4) > 0) {
      ZoneOffsetTransition next =
          zone.getRules().nextTransition(from.atStartOfDay(zone).toInstant());
      if (next != null) {
        from = next.getDateTimeBefore().toLocalDate();
      }
    }
    int days = 1 + random.nextInt(2);
    if (zone.getId().equals("Pacific/Apia") && from.equals(LocalDate.of(2011, 12, 30))) {
      days = 2; // the day itself was skipped there
    }
    int timings = 1 + random.nextInt(3);
    int[] run = new int[timings];
    int[] rest = new int[timings];
    for (int i = 0; i < timings; i++) {
      run[i] = 1 + random.nextInt(random.nextBoolean() ? 120 : 3000);
      rest[i] = random.nextInt(12) == 0 ? 0 : 1 + random.nextInt(4000);
    }
    int bands = 1 + random.nextInt(4);
    double[] price = new double[bands];
    for (int k = 0; k < bands; k++) {
      price[k] = random.nextDouble() * 1e-7;
    }
    Draw draw =
        new Draw(
            5 + random.nextInt(40),
            random.nextInt(3),
            random.nextDouble(),
            Coil.values()[random.nextInt(3)]);
    return new Case(
        zone, from, days, entries(random, timings), run, rest, entries(random, bands), price, draw);
  }

  private static List<Entry> entries(Random random, int n) {
    List<Entry> entries = new ArrayList<>();
    entries.add(new Entry(0, 0, EnumSet.allOf(Month.class), EnumSet.allOf(DayOfWeek.class)));
    while (entries.size() < n) {
      int step = new int[] {1, 60, 1800, 3600}[random.nextInt(4)];
      int to = random.nextInt(86_400 / step) * step;
      int night = random.nextInt(5 * 3600 / step) * step;
      int from = random.nextBoolean() ? night : random.nextInt(86_400 / step) * step;
      Set<Month> months = EnumSet.allOf(Month.class);
      Set<DayOfWeek> days = EnumSet.allOf(DayOfWeek.class);
      if (random.nextInt(3) == 0) {
        months.removeIf(m -> random.nextInt(4) == 0);
        months.add(Month.MARCH);
      }
      if (random.nextInt(3) == 0) {
        days.removeIf(d -> random.nextBoolean());
        days.add(DayOfWeek.SUNDAY);
      }
      entries.add(new Entry(from, to, months, days));
    }
    return entries;
  }
}
