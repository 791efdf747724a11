package leat.command.run;

import java.time.LocalDate;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.climate.SeasonWeather;
import leat.climate.TankWarmth;
import leat.plan.Plan;
import leat.quantity.DateWords;
import leat.quantity.Units;
import leat.season.Fortnight;
import leat.season.Money;
import leat.season.SeasonRun;
import leat.season.Totals;
import leat.season.YearRuns;
import leat.system.SeasonOf;
import leat.system.SeenFull;

/** What the season's answer says: sentence and figures; notes stand in {@link SeasonMinds}. */
final class SeasonText {
  private static final Show DAYS = Show.of(Units.D, 2);
  private static final Column FROM = Column.plain("from", "from");
  private static final Column TO = Column.plain("to", "to");
  private static final Column CAN = Column.of("can_L", "can", Show.L);
  private static final Column CAN_DAYS = Column.of("can_d", "a can lasts", DAYS);
  private static final Column BUSY_DAYS = Column.of("busy_can_d", "a can lasts then", DAYS);
  private static final Column BUSY = Column.plain("busy", "busiest");
  private static final Column BUSY_USE = Column.of("busy_L", "drunk", Show.L);
  private static final Column WARMEST = Column.of("warmest_C", "warmest", Show.C);
  private static final Column TOO_WARM = Column.of("too_warm_C", "too warm", Show.C.digits(2));
  private static final Column WARM_SPAN = Column.plain("warm_span", "warm");
  private static final Column FIRST_DRY = Column.plain("first_dry", "first dry");
  private static final Column DRY_OUT = Column.plain("dry_out", "dry days");
  private static final double USUAL_CAN = Units.L.toBase(10);

  private final Call call;
  private final SeasonOf season;
  private final YearRuns runs;
  private final SeasonRun run;
  private final Money money;
  private final Row sums;

  SeasonText(Call call, SeasonOf season, YearRuns runs, SeasonRun run, Money money, Row sums) {
    this.call = call;
    this.season = season;
    this.runs = runs;
    this.run = run;
    this.money = money;
    this.sums = sums;
  }

  /**
   * Writes all.
   *
   * @param logged null when the season starts as the plan says
   * @param seen null when the sender sees to the full mark
   */
  void write(Answer answer, LoggedSeason logged, SeenFull seen) {
    Plan plan = call.plan();
    double can = plan.section("season").getOr("catch", USUAL_CAN, "a can of 10 L", call.taken());
    Row all = sums.with(words(can));
    sentence(answer, all, can);
    if (logged != null) {
      logged.figures(answer, all);
    }
    figures(answer, all);
    SeasonHarvest.write(answer, sums, all);
    warmth(answer, all);
    new SeasonAway(season, runs).write(answer);
    new SeasonMinds(call, season, runs, run, money, seen).write(answer, sums);
    if (logged != null) {
      logged.minds(answer, all);
      logged.next(answer);
    }
    next(answer, logged != null);
  }

  private Row words(double can) {
    Row words =
        Row.aside(
            FROM, TO, CAN, CAN_DAYS, BUSY_DAYS, BUSY, BUSY_USE, WARMEST, TOO_WARM, WARM_SPAN,
            FIRST_DRY, DRY_OUT);
    Totals totals = runs.totals();
    if (totals.counts().dryOutsideAway() > 0) {
      words
          .set(FIRST_DRY, DateWords.day(SeasonDates.date(season, totals.firstDry())))
          .set(DRY_OUT, totals.counts().dryOutsideAway());
    }
    Fortnight busiest = Fortnight.busiest(run.days());
    double litres = Units.L.fromBase(can);
    LocalDate first = season.from().plusDays(busiest.first());
    words
        .set(FROM, DateWords.day(season.from()))
        .set(TO, DateWords.day(season.to()))
        .set(CAN, can)
        .set(BUSY, DateWords.span(first, first.plusDays(busiest.days() - 1L)))
        .set(BUSY_USE, Units.L.toBase(busiest.thirstL()));
    if (drinks() && busiest.thirstL() > 0) {
      words
          .set(CAN_DAYS, Units.D.toBase(runs.totals().daysACan(litres)))
          .set(BUSY_DAYS, Units.D.toBase(busiest.daysACan(litres)));
    }
    SeasonWeather weather = season.weather(season.shown(runs));
    if (weather != null && weather.warmest() >= 0) {
      int day = weather.warmest();
      words
          .set(WARMEST, weather.meanCelsius(day, day))
          .set(TOO_WARM, Units.C.toBase(TankWarmth.WARM_CELSIUS))
          .set(WARM_SPAN, DateWords.day(season.from().plusDays(day)));
    }
    return words;
  }

  private boolean drinks() {
    return runs.totals().flows().waterUseL() > 0;
  }

  private void sentence(Answer answer, Row all, double can) {
    boolean sure = SeasonSums.USE.isOneNumber(sums);
    String start =
        dry()
            + (sure
                ? "From {from} to {to} it drinks {water_use_L}"
                : season.days() == 1
                    ? "On {from} it drinks {water_use_L} ({water_use_low_L!} to {water_use_high_L!})"
                    : "From {from} to {to} it drinks {water_use_L} ({water_use_low_L!} to {water_use_high_L!})");
    if (!drinks() && runs.totals().flows().shortL() > 0) {
      answer.sentence(all, "From {from} to {to} the plants find no water: {short_L} short.");
    } else if (!drinks()) {
      answer.sentence(all, "From {from} to {to} nothing drinks.");
    } else if (sums.get(SeasonSums.COST.middle()) == null) {
      answer.sentence(all, start + cans(can, ": ") + ".");
    } else {
      answer.sentence(
          all, start + cans(can, ", wants ") + ", and costs {cost_season:money} {currency}.");
    }
  }

  /** What is said first: that it runs dry although somebody is there. */
  private String dry() {
    int days = runs.totals().counts().dryOutsideAway();
    return days == 0
        ? ""
        : days == 1
            ? "The tank runs dry on {first_dry}, {short_L} short. "
            : "The tank runs dry on {dry_out} days, first on {first_dry}, {short_L} short. ";
  }

  /** How many cans: none, where one would outlast the season. */
  private String cans(double can, String before) {
    if ((Double) sums.get(SeasonSums.USE.middle()) < can) {
      return ", less than a can of {can_L}";
    }
    return season.days() <= Fortnight.DAYS || evenly(can)
        ? before + "a can of {can_L} every {can_d}"
        : before + "a can of {can_L} every {can_d}, every {busy_can_d} from {busy}";
  }

  /** Whether a can lasts as long in the busiest days as in all, to the digits that are shown. */
  private boolean evenly(double can) {
    double litres = Units.L.fromBase(can);
    double busy = Fortnight.busiest(run.days()).daysACan(litres);
    return shown(runs.totals().daysACan(litres)).equals(shown(busy));
  }

  private static String shown(double days) {
    return Phrase.of(Units.D.toBase(days), DAYS).render(false);
  }

  private void figures(Answer answer, Row all) {
    boolean rain = runs.totals().flows().rainL() > 0;
    boolean over = runs.totals().counts().overflowDays() > 0;
    line(
        answer,
        all,
        "water",
        "{topup_water_L}",
        SeasonSums.COST_WATER,
        "{cost_water:money} {currency}",
        over
            ? "rain gives {rain_L}, of which {overflow_L} runs over"
            : rain ? "rain gives {rain_L} more" : topups());
    line(
        answer,
        all,
        "feed",
        "{topup_concentrate_mL}",
        SeasonSums.COST_FEED,
        "{cost_feed:money} {currency}",
        runs.plan().since().isEarlier() ? "" : "first fill {first_fill_concentrate_mL} more");
    if (sums.get(SeasonSums.ACID.middle()) != null) {
      line(
          answer,
          all,
          "acid",
          "{acid_mL}",
          SeasonSums.COST_ACID,
          "{cost_acid:money} {currency}",
          "");
    }
    if (sums.get(SeasonSums.KWH) != null) {
      line(
          answer,
          all,
          "electricity",
          "{kwh}",
          SeasonSums.COST_ENERGY,
          "{cost_energy:money} {currency}",
          "the pump runs {pump_h}");
    }
    Totals.Counts n = runs.totals().counts();
    if (n.changes() > 0 || n.dilutions() > 0) {
      answer.figure(
          "drained",
          all,
          "{drained_L}",
          n.dilutions() > 0
              ? "by {changes} changes and {dilutions} dilutions"
              : n.changes() == 1 ? "by one change" : "by {changes} changes");
    }
    Phrase ec =
        Phrase.of()
            .range(
                (Double) sums.get(SeasonSums.EC_MIN),
                (Double) sums.get(SeasonSums.EC_MAX),
                Show.MS_CM);
    answer.figure("EC", ec, Phrase.of("in the evening"));
    if (season.days() > Fortnight.DAYS) {
      answer.figure("busiest fortnight", all, "{busy_L}", "{busy}");
    }
    if (runs.plan().marks().heldL() > 0) {
      answer.figure(
          "in the towers",
          all,
          "{hold_up_L}",
          "while they run: the pump draws air under {air_L} in all");
    }
  }

  private String topups() {
    int n = runs.totals().counts().topups();
    return n == 0 ? "no top-up" : n == 1 ? "one top-up" : "{topups} top-ups";
  }

  private void line(
      Answer answer,
      Row all,
      String label,
      String amount,
      SeasonSums.Ends cost,
      String money,
      String more) {
    if (sums.get(cost.middle()) == null) {
      answer.figure(label, all, amount, more);
    } else {
      answer.figure(label, all, amount, money, more);
    }
  }

  private void warmth(Answer answer, Row all) {
    Object days = sums.get(SeasonSums.WARM);
    if (days != null) {
      answer.figure("warmest day", all, "{warmest_C}", warm((Integer) days));
    }
  }

  private static String warm(int days) {
    return days == 0
        ? "{warm_span}, mean air"
        : days == 1
            ? "{warm_span}; mean air over {too_warm_C} on one day"
            : "{warm_span}; mean air over {too_warm_C} on {warm_days} days";
  }

  private void next(Answer answer, boolean logged) {
    answer.next(
        call.again("season", logged ? new String[] {"--log", "--now"} : new String[0])
            + " --by month   the months, one row each");
    if (!season.crops().isEmpty()) {
      answer.next(call.again("sow") + "   what to sow when");
    }
  }
}
