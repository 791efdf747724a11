package leat.log;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Recall and precision by section 6 of sheet log.md. */
final class Score {
  /** How far a found and a true interval may lie apart, minutes; section 6. */
  private static final Map<String, Integer> WIDER =
      Map.of(
          "refill",
          45,
          "rain",
          60,
          "solution_change",
          60,
          "leak",
          240,
          "pump_failure",
          90,
          "stuck_float",
          120,
          "sensor_open",
          30,
          "sensor_short",
          30,
          "gap",
          30);

  static final class Tally {
    int countable;
    int matched;
    int found;
    int right;

    double recall() {
      return countable == 0 ? 1 : (double) matched / countable;
    }

    double precision() {
      return found == 0 ? 1 : (double) right / found;
    }

    private void add(Tally o) {
      countable += o.countable;
      matched += o.matched;
      found += o.found;
      right += o.right;
    }
  }

  final Map<String, Tally> byKind = new TreeMap<>();
  final Tally all = new Tally();
  final List<String> wrong = new ArrayList<>();
  final List<String> litres = new ArrayList<>();
  int logs;
  int endInside;
  int endWide;
  int useDays;
  double useSquares;
  int useSumsWithin;
  int useSums;

  void add(Score o) {
    o.byKind.forEach((k, t) -> byKind.computeIfAbsent(k, x -> new Tally()).add(t));
    all.add(o.all);
    wrong.addAll(o.wrong);
    litres.addAll(o.litres);
    logs += o.logs;
    endInside += o.endInside;
    endWide += o.endWide;
    useDays += o.useDays;
    useSquares += o.useSquares;
    useSums += o.useSums;
    useSumsWithin += o.useSumsWithin;
  }

  double useRms() {
    return useDays == 0 ? 0 : Math.sqrt(useSquares / useDays);
  }

  static Score of(String name, LogReport report, Truth truth) {
    Score s = new Score();
    s.logs = 1;
    s.events(name, report, truth);
    s.litres(name, report, truth);
    return s;
  }

  private void events(String name, LogReport report, Truth truth) {
    Set<LogEvent> used = new HashSet<>();
    Set<LogEvent> free = new HashSet<>();
    for (Truth.Happening t : truth.events()) {
      LogEvent match = null;
      for (LogEvent e : report.events()) {
        if (!used.contains(e) && e.kind().word().equals(t.kind()) && touches(e, t)) {
          match = match == null || overlap(e, t) > overlap(match, t) ? e : match;
        }
      }
      for (LogEvent e : report.events()) {
        if (e != match && e.kind().word().equals(t.kind()) && touches(e, t)) {
          free.add(e);
        }
      }
      Tally tally = byKind.computeIfAbsent(t.kind(), k -> new Tally());
      if (t.countable()) {
        tally.countable++;
        all.countable++;
      }
      if (match != null) {
        used.add(match);
        if (t.countable()) {
          tally.matched++;
          tally.found++;
          tally.right++;
          all.matched++;
          all.found++;
          all.right++;
          refill(name, match, t, truth.meanStep(), report);
        }
      } else if (t.countable()) {
        wrong.add(name + " missed " + t.kind() + " " + span(t.start(), t.end()));
      }
    }
    for (LogEvent e : report.events()) {
      if (!used.contains(e) && !free.contains(e)) {
        byKind.computeIfAbsent(e.kind().word(), k -> new Tally()).found++;
        all.found++;
        wrong.add(
            name + " false " + e.kind().word() + " " + span(e.start(), e.end()) + " " + e.cause());
      }
    }
  }

  private void refill(String name, LogEvent e, Truth.Happening t, double step, LogReport report) {
    if (!t.kind().equals("refill")) {
      return;
    }
    boolean inside =
        t.litres() >= 1000 * e.volumeLow() - 0.1 * step
            && t.litres() <= 1000 * e.volumeHigh() + 0.1 * step;
    if (!inside
        || Math.abs(1000 * e.volume() - t.litres()) > 1.5 * step
            && e.volumeHigh() - e.volumeLow() < 2.5e-3 * step) {
      litres.add(
          name
              + " refill "
              + span(t.start(), t.end())
              + " "
              + t.litres()
              + " L, found "
              + 1000 * e.volume()
              + " in "
              + 1000 * e.volumeLow()
              + " to "
              + 1000 * e.volumeHigh());
    }
  }

  private void litres(String name, LogReport report, Truth truth) {
    double low = 1000 * report.volumeLow();
    double high = 1000 * report.volumeHigh();
    if (truth.litresAtEnd() >= low && truth.litresAtEnd() <= high) {
      endInside++;
    } else {
      litres.add(name + " end " + truth.litresAtEnd() + " L, band " + low + " to " + high);
    }
    if (high - low > 1.5 * truth.meanStep()) {
      endWide++;
    }
    double sum = 0;
    double found = 0;
    int n = 0;
    double squares = 0;
    for (LogDay day : report.days()) {
      Double used = truth.used().get(day.date());
      if (day.isSure() && used != null) {
        double error = (1000 * day.used() - used) / truth.meanStep();
        squares += error * error;
        n++;
        sum += used;
        found += 1000 * day.used();
      }
    }
    useDays += n;
    useSquares += squares;
    if (n >= 3) {
      useSums++;
      useSumsWithin += Math.abs(found / sum - 1) <= 0.10 ? 1 : 0;
      if (Math.abs(found / sum - 1) > 0.10) {
        litres.add(name + " use " + found + " for " + sum + " L in " + n + " sure days");
      }
    }
  }

  private static long widened(String kind) {
    return WIDER.get(kind) * 60_000L;
  }

  private static boolean touches(LogEvent e, Truth.Happening t) {
    return overlap(e, t) + widened(t.kind()) >= 0;
  }

  private static long overlap(LogEvent e, Truth.Happening t) {
    return Math.min(e.end(), t.end()) - Math.max(e.start(), t.start());
  }

  private static String span(long a, long b) {
    return Instant.ofEpochMilli(a) + " to " + Instant.ofEpochMilli(b);
  }

  String table(String title) {
    StringBuilder out = new StringBuilder(title).append('\n');
    byKind.forEach((k, t) -> out.append(line(k, t)));
    out.append(line("all", all));
    out.append(
        String.format(
            java.util.Locale.ROOT,
            "  logs %d, litres at the end inside %d (band over 1.5 steps: %d), use: rms %.2f mean step a day, sums within 10 %%: %d of %d%n",
            logs,
            endInside,
            endWide,
            useRms(),
            useSumsWithin,
            useSums));
    return out.toString();
  }

  private static String line(String k, Tally t) {
    return String.format(
        java.util.Locale.ROOT,
        "  %-16s countable %4d  recall %5.1f %%   found %4d  precision %5.1f %%%n",
        k,
        t.countable,
        100 * t.recall(),
        t.found,
        100 * t.precision());
  }
}
