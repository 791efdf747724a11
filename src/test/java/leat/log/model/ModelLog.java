package leat.log.model;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * A seeded log of an invented tower with what truly happened, in steps of 30 s. Written from sheet
 * log.md alone. The plants' thirst is invented; numbers without a source are of common practice.
 */
public final class ModelLog {
  private static final int DT = 30;
  private static final double CAP_TAU_S = 45 * 60;

  private record Happening(String kind, long start, long end, double size) {}

  private final ModelSystem s;
  private final Random chance;
  private final ZoneId zone;
  private final long begin;
  private final long stop;
  private final boolean moved;
  private final List<Happening> plan = new ArrayList<>();
  private final List<String> truth = new ArrayList<>();
  private final List<String> rows = new ArrayList<>();
  private final Map<LocalDate, Double> used = new TreeMap<>();

  private double volume;
  private double held;
  private double salt;
  private double dryness = 0.2;
  private double rainMm;
  private int step;
  private int frozen = -1;
  private double weather = 1;
  private LocalDate today;
  private double left;

  /**
   * @param moved whether what befalls the tower comes at any hour, or where the sheet's logs have
   *     it
   */
  public ModelLog(ModelSystem system, long seed, boolean moved) {
    this.s = system;
    this.chance = new Random(seed * 7919 + system.name().hashCode());
    this.zone = ZoneId.of(system.zone());
    this.moved = moved;
    LocalDate first = LocalDate.parse(system.start()).plusDays(moved ? 0 : seed % 3);
    this.begin = first.atStartOfDay(zone).toEpochSecond();
    this.stop = first.plusDays(system.days()).atStartOfDay(zone).toEpochSecond();
    schedule(first);
    run();
  }

  public String csv() {
    boolean semicolons = s.times().equals("local");
    StringBuilder out = new StringBuilder(head(semicolons)).append('\n');
    rows.forEach(r -> out.append(r).append('\n'));
    return out.toString();
  }

  private String head(boolean semicolons) {
    String head =
        "time," + (s.counts() ? "counts" : "ohm") + ",ec_mS_cm,water_C,pump,cap_counts,rain_mm";
    return semicolons ? head.replace(',', ';') : head;
  }

  /** Truth in the shape of the sheet's truth files. */
  public String truth() {
    StringBuilder out = new StringBuilder("{\"mean_step_L\": " + s.meanStepL() + ", \"days\": [");
    List<String> days = new ArrayList<>();
    used.forEach((d, u) -> days.add("{\"date\": \"" + d + "\", \"used_L\": " + u + "}"));
    out.append(String.join(",\n", days)).append("], \"events\": [");
    out.append(String.join(",\n", truth)).append("], \"at_end\": {\"litres\": " + left + "}}");
    return out.toString();
  }

  // ---- what befalls it

  private void schedule(LocalDate first) {
    List<String> kinds =
        new ArrayList<>(
            List.of(
                "solution_change",
                "rain",
                "rain",
                "leak",
                "pump_failure",
                "stuck_float",
                "sensor_open",
                "sensor_short",
                "gap",
                "hose"));
    Collections.shuffle(kinds, chance);
    double day = 3 + chance.nextDouble();
    if (s.weekGapDays() > 0) {
      add("gap", first, 9, 7, (int) (s.weekGapDays() * 86_400), 0);
    }
    for (String kind : kinds) {
      double longest = kind.equals("stuck_float") ? 6.5 : 2.6;
      if (s.weekGapDays() > 0 && day + longest > 8.5 && day < 19) {
        day = 19 + chance.nextDouble();
      }
      if (day + longest > s.days() - 1) {
        continue;
      }
      place(kind, first, (int) day);
      day += longest + (moved ? 0.9 * chance.nextDouble() : 0.3 * chance.nextDouble());
    }
  }

  private void place(String kind, LocalDate first, int day) {
    double hour = moved ? 24 * chance.nextDouble() : Double.NaN;
    switch (kind) {
      case "solution_change" -> add(kind, first, day, or(hour, 10), 5400 + chance.nextInt(2400), 0);
      case "rain" ->
          add(
              kind,
              first,
              day,
              or(hour, 2 + chance.nextInt(18)),
              3600 * (2 + chance.nextInt(5)),
              s.meanStepL() * (1.05 + 1.5 * chance.nextDouble()));
      case "leak" -> {
        int hours = 8 + chance.nextInt(20);
        double steps = Math.max(2.5, 1.5 + 4 * s.thirstL() / s.meanStepL() * hours / 24 * 0.8);
        add(kind, first, day, or(hour, 20), 3600 * hours, s.meanStepL() * Math.min(5, steps));
      }
      case "pump_failure" -> add(kind, first, day, or(hour, 11), 3600 * (6 + chance.nextInt(7)), 0);
      case "hose" -> add(kind, first, day, or(hour, 9), 3600 * (7 + chance.nextInt(5)), 0);
      case "stuck_float" ->
          add(kind, first, day, or(hour, 22), (int) (86_400 * (3 + 2 * chance.nextDouble())), 0);
      case "gap" -> add(kind, first, day, or(hour, 9), 3600 * (4 + chance.nextInt(10)), 0);
      default -> add(kind, first, day, or(hour, 13), 3600 * (3 + chance.nextInt(4)), 0);
    }
  }

  private static double or(double hour, double usual) {
    return Double.isNaN(hour) ? usual : hour;
  }

  private void add(String kind, LocalDate first, int day, double hour, int seconds, double size) {
    long start = first.plusDays(day).atStartOfDay(zone).toEpochSecond() + Math.round(hour * 3600);
    plan.add(new Happening(kind, start, start + seconds, size));
  }

  private Happening now(String kind, long t) {
    for (Happening h : plan) {
      if (h.kind().equals(kind) && t >= h.start() && t < h.end()) {
        return h;
      }
    }
    return null;
  }

  /** A keeper who means to change the solution today pours no can before it. */
  private boolean soon(long t) {
    for (Happening h : plan) {
      if (h.kind().equals("solution_change") && h.start() > t && h.start() - t < 4 * 3600) {
        return true;
      }
    }
    return false;
  }

  private void tell(String kind, long start, long end, boolean countable, double litres) {
    truth.add(
        "{\"kind\": \""
            + kind
            + "\", \"start\": \""
            + iso(start)
            + "\", \"end\": \""
            + iso(end)
            + "\", \"countable\": "
            + countable
            + ", \"litres\": "
            + litres
            + "}");
  }

  private String iso(long t) {
    return OffsetDateTime.ofInstant(Instant.ofEpochSecond(t), zone).toString();
  }

  // ---- the tower

  private void run() {
    volume = s.litres(s.fullMm()) * 0.9;
    salt = 1.6 * volume;
    step = seen(s.mm(volume));
    double pourLeft = 0;
    long pourStart = 0;
    double pourTotal = 0;
    double before = 0;
    long next = begin;
    long fixHose = -1;
    for (long t = begin; t < stop; t += DT) {
      ZonedDateTime local = Instant.ofEpochSecond(t).atZone(zone);
      newDay(local.toLocalDate());
      Happening change = now("solution_change", t);
      Happening hose = now("hose", t);
      boolean dead = now("pump_failure", t) != null;
      boolean on = change == null && commanded(t, local.getHour());
      boolean air = s.mm(volume - held) < s.stepMm()[0] - 5;
      pump(on && !dead && !air, hose != null);
      drink(local, dead || hose != null && air);
      fall(t);
      leak(t);
      if (change != null) {
        change(change, t);
      }
      boolean blocked =
          change != null
              || soon(t)
              || hose != null
              || now("stuck_float", t) != null
              || now("gap", t) != null
              || now("leak", t) != null
              || now("sensor_open", t) != null
              || now("sensor_short", t) != null;
      boolean fixed = fixHose > 0 && t >= fixHose;
      if (hose != null) {
        fixHose = hose.end();
      }
      boolean thirsty =
          volume < s.litres(s.lowMm()) * 1.9
              && local.getHour() == (moved ? 7 + local.getDayOfMonth() % 13 : 18);
      boolean empty = volume < s.litres(s.lowMm()) * 1.15;
      if (pourLeft <= 0
          && !blocked
          && (fixed
              || thirsty && local.getMinute() < 55 && chance.nextInt(60) == 0
              || empty && chance.nextInt(400) == 0)) {
        fixHose = -1;
        pourTotal = s.litres(s.fullMm()) * (0.92 + 0.08 * chance.nextDouble()) - volume;
        pourLeft = pourTotal;
        pourStart = t;
        before = volume;
      }
      if (pourLeft > 0) {
        double part = Math.min(pourLeft, pourTotal / (2 * (3 + pourTotal / 15)));
        pourLeft -= part;
        volume += part;
        salt += (1.6 * (before + pourTotal) - 1.2 * before) / pourTotal * part * 0.85;
        if (pourLeft <= 1e-9) {
          pourLeft = 0;
          salt = 1.6 * volume;
          boolean big = pourTotal > 4.2 * s.meanStepL();
          tell("refill", pourStart, t + DT, big, pourTotal);
        }
      }
      boolean wet = on && !dead && !air && hose == null;
      cap(wet);
      thirst(t, wet, change != null || hose != null || dead);
      sense(t);
      if (t >= next) {
        row(t, on);
        next += 60L * s.intervalMin();
      }
    }
    left = volume;
    if (stop - wetAt > 3560 && !toldOtherwise) {
      tell("pump_failure", wetAt, stop, stop - wetAt > 6 * 3600 && !unseen, 0);
    }
    for (Happening h : plan) {
      if (h.kind().startsWith("sensor")
          || h.kind().equals("gap")
          || h.kind().equals("pump_failure")) {
        tell(h.kind(), h.start(), h.end(), true, 0);
      }
    }
  }

  private void newDay(LocalDate date) {
    if (!date.equals(today)) {
      today = date;
      weather = Math.exp(0.7 * Math.log(weather) + 0.16 * chance.nextGaussian());
      for (Happening h : plan) {
        if (h.kind().equals("rain")
            && Instant.ofEpochSecond(h.start()).atZone(zone).toLocalDate().equals(date)) {
          weather *= 0.75;
        }
      }
    }
  }

  private boolean commanded(long t, int hour) {
    boolean night = hour >= 22 || hour < 6;
    int run = night ? s.nightRunS() : s.runS();
    int cycle = run + (night ? s.nightRestS() : s.restS());
    return Math.floorMod(t - begin, (long) cycle) < run;
  }

  /** The running tower takes its hold-up in about a minute and gives it back in about three. */
  private void pump(boolean lifts, boolean hoseOff) {
    if (lifts && hoseOff) {
      double lost = 3.0 * DT / 60;
      salt -= salt / volume * lost;
      volume -= lost;
    } else if (lifts) {
      held = Math.min(s.holdUpL(), held + s.holdUpL() * DT / 60.0);
      held = Math.min(held, volume);
    }
    if (!lifts || hoseOff) {
      held = Math.max(0, held - s.holdUpL() * DT / 170.0);
    }
  }

  private void drink(ZonedDateTime local, boolean wilts) {
    double hour = local.getHour() + local.getMinute() / 60.0;
    double sun = hour > 6 && hour < 20 ? Math.sin(Math.PI * (hour - 6) / 14) : 0;
    double shape = (0.08 + 0.92 * sun) / (0.08 * 24 + 0.92 * 28 / Math.PI);
    double age = 1 + 0.01 * (local.toEpochSecond() - begin) / 86_400.0;
    double use = s.thirstL() * weather * age * shape * (wilts ? 0.5 : 1) * DT / 3600.0;
    use = Math.min(use, Math.max(0, volume - 0.3));
    salt -= 0.7 * salt / volume * use;
    volume -= use;
    used.merge(local.toLocalDate(), use, Double::sum);
  }

  private void fall(long t) {
    Happening rain = now("rain", t);
    if (rain == null) {
      return;
    }
    double litres = rain.size() * DT / (rain.end() - rain.start());
    rainMm += litres / s.rainM2();
    volume = Math.min(volume + litres, s.litres(s.rimMm()));
    if (t + DT >= rain.end()) {
      tell("rain", rain.start(), rain.end(), true, rain.size());
    }
  }

  private void leak(long t) {
    Happening leak = now("leak", t);
    if (leak == null) {
      Happening hose = now("hose", t);
      if (hose != null && t + DT >= hose.end()) {
        long dry = hose.start() + 7200;
        tell("leak", hose.start(), Math.min(hose.end(), dry), true, 0);
        tell("pump_failure", hose.start(), hose.end(), true, 0);
      }
      return;
    }
    double lost = leak.size() * DT / (leak.end() - leak.start());
    if (volume - lost > s.litres(s.stepMm()[1])) {
      salt -= salt / volume * lost;
      volume -= lost;
      leaked += lost;
    }
    if (t + DT >= leak.end()) {
      tell(
          "leak",
          leak.start(),
          leak.end(),
          leaked > 0.9 * leak.size() && leak.size() > 2 * s.meanStepL(),
          leaked);
      leaked = 0;
    }
  }

  private double leaked;
  private double drainRate;
  private double filled;
  private boolean worthwhile;

  /** Pump off; a quarter of an hour of emptying, a pause, ten minutes of filling. */
  private void change(Happening c, long t) {
    if (t - DT < c.start()) {
      worthwhile = s.mm(volume) > 0.45 * s.stepMm()[s.stepMm().length - 1];
      drainRate = volume * 0.97 / 900 * DT;
      filled = 0;
    }
    if (!worthwhile) {
      return;
    }
    if (t < c.start() + 900) {
      salt -= salt / volume * drainRate;
      volume -= drainRate;
    }
    double aim = s.litres(s.fullMm()) * 0.95;
    if (t >= c.end() - 600 && volume < aim) {
      double part = aim / 600 * DT;
      volume += part;
      filled += part;
      salt += 1.6 * part;
    }
    if (t + DT >= c.end()) {
      tell("solution_change", c.start(), c.end(), true, filled);
    }
  }

  private void cap(boolean wet) {
    dryness = wet ? Math.max(0, dryness - 0.5) : 1 - (1 - dryness) * Math.exp(-DT / CAP_TAU_S);
  }

  private long wetAt;
  private boolean toldOtherwise;
  private boolean unseen;

  /** The pump drew air by itself: a failure too, though nothing was planned. */
  private void thirst(long t, boolean wet, boolean known) {
    if (wet) {
      if (wetAt > 0 && t - wetAt > 3560 && !toldOtherwise) {
        tell("pump_failure", wetAt, t, t - wetAt > 6 * 3600 && !unseen, 0);
      }
      wetAt = t;
      toldOtherwise = false;
      unseen = false;
    }
    unseen |= now("gap", t) != null;
    toldOtherwise |= known;
  }

  // ---- its sensors

  private int seen(double mm) {
    int k = 0;
    while (k + 1 < s.stepMm().length && mm >= s.stepMm()[k + 1]) {
      k++;
    }
    return k;
  }

  private long stuckFrom;
  private double stuckUse;
  private boolean stuckTold;

  private void sense(long t) {
    double mm = s.mm(volume - held);
    while (step + 1 < s.stepMm().length && mm >= s.stepMm()[step + 1]) {
      step++;
    }
    while (step > 0 && mm < s.stepMm()[step] - s.hysteresisMm()) {
      step--;
    }
    Happening stuck = now("stuck_float", t);
    if (stuck == null) {
      frozen = -1;
      return;
    }
    if (frozen < 0) {
      frozen = step;
      stuckFrom = t;
      stuckUse = volume;
    }
    if (t + DT >= stuck.end()) {
      boolean ends = frozen > 0 && frozen < s.stepMm().length - 1;
      boolean felt = stuckUse - volume > 3.2 * s.meanStepL();
      tell("stuck_float", stuckFrom, stuck.end(), ends && felt, 0);
    }
  }

  private void row(long t, boolean on) {
    if (now("gap", t) != null) {
      rainMm = 0;
      return;
    }
    double ohm =
        s.stepOhm()[frozen >= 0 ? frozen : step] + 0.5 + 0.3 * s.noise() * chance.nextGaussian();
    if (now("sensor_open", t) != null || chance.nextInt(1500) == 0) {
      ohm = 1e6;
    } else if (now("sensor_short", t) != null) {
      ohm = 0.6;
    }
    String cell = reading(ohm);
    double mm = Math.round(rainMm * 100) / 100.0;
    rainMm -= mm;
    int cap =
        (int)
            Math.round(1350 + 1400 * Math.min(1, dryness) + 20 * s.noise() * chance.nextGaussian());
    double ec = salt / volume + 0.01 * s.noise() * chance.nextGaussian();
    String water =
        chance.nextInt(600) == 0 ? "85.00" : chance.nextInt(600) == 0 ? "-127.00" : f("%.2f", 18.0);
    String line =
        String.join(
            ",",
            stamp(t + chance.nextInt(4)),
            chance.nextInt(500) == 0 ? "nan" : cell,
            chance.nextInt(500) == 0 ? "" : f("%.3f", ec),
            water,
            on ? "1" : "0",
            "" + cap,
            f("%.2f", mm));
    if (s.times().equals("local")) {
      line = line.replace(',', ';').replace('.', ',');
    }
    if (chance.nextInt(400) == 0 && rows.size() > 8 && !s.times().equals("local")) {
      rows.add(
          rows.size() - 1 - chance.nextInt(Math.max(1, Math.min(6, 100 / s.intervalMin()))), line);
      return;
    }
    rows.add(line);
    if (chance.nextInt(500) == 0) {
      rows.add(line);
    }
    if (chance.nextInt(2500) == 0) {
      rows.add(head(s.times().equals("local")));
    }
    if (chance.nextInt(2500) == 0) {
      rows.add(
          line.replaceFirst("^[^,;]*", s.times().equals("unix") ? "12" : "1970-01-01T00:00:12Z"));
    }
  }

  private String reading(double ohm) {
    if (!s.counts()) {
      return f("%.1f", Math.min(ohm, 99_999));
    }
    long top = (1L << s.bits()) - 1;
    double code = (top + 1) * ohm / (ohm + s.seriesOhm()) + 0.5 * s.noise() * chance.nextGaussian();
    return "" + Math.max(0, Math.min(top, Math.round(code)));
  }

  private static String f(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }

  private String stamp(long t) {
    Instant at = Instant.ofEpochSecond(t);
    return switch (s.times()) {
      case "utc" -> at.toString();
      case "unix" -> "" + t;
      case "local" ->
          at.atZone(zone)
              .toLocalDateTime()
              .withNano(0)
              .format(java.time.format.DateTimeFormatter.ISO_LOCAL_DATE_TIME);
      default ->
          at.atZone(zone)
              .format(java.time.format.DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ssxxx"));
    };
  }
}
