package leat.command.run;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.climate.Method;
import leat.plan.Problem;
import leat.quantity.DateWords;
import leat.quantity.Units;
import leat.season.Batch;
import leat.season.Doubt;
import leat.season.Goal;
import leat.season.Money;
import leat.season.SeasonRun;
import leat.season.Streak;
import leat.season.Totals;
import leat.season.YearRuns;
import leat.system.Grown;
import leat.system.LightOf;
import leat.system.PotsOf;
import leat.system.SeasonCure;
import leat.system.SeasonOf;
import leat.system.SeenFull;
import leat.system.Sown;

/** What to mind about a season: what runs wrong and its cure, doubts, and how little is known. */
final class SeasonMinds {
  private static final Column DAY = Column.plain("day", "day");
  private static final Column DAYS = Column.plain("days", "days");
  private static final Column FROM_L = Column.of("from_L", "from", Show.L);
  private static final Column TO_L = Column.of("to_L", "to", Show.L);
  private static final Column SERVICES = Column.plain("services", "services");
  private static final Column SERVICES_THEN = Column.plain("services_then", "services then");
  private static final Column WHAT = Column.plain("what", "what");

  private final Call call;
  private final SeasonOf season;
  private final YearRuns runs;
  private final SeasonRun run;
  private final Money money;
  private final SeenFull seen;

  SeasonMinds(
      Call call, SeasonOf season, YearRuns runs, SeasonRun run, Money money, SeenFull seen) {
    this.seen = seen;
    this.call = call;
    this.season = season;
    this.runs = runs;
    this.run = run;
    this.money = money;
  }

  void write(Answer answer, Row sums) {
    dry(answer);
    strength(answer);
    doubts(answer, sums);
    blindTop(answer, sums);
    DutyBounds.rests(answer, call.plan(), call.taken());
    tapSalt(answer);
    pots(answer);
    if (season.file() != null) {
      SeasonWeatherWords.write(answer, season);
    }
    if (!money.prices().any() && money.energyOfDay() == null) {
      answer.mind("no-prices", "no price is named: water.price, feed.parts[].price, tariff.price.");
    }
    left(answer);
    known(answer, sums);
  }

  private void dry(Answer answer) {
    Totals shown = runs.totals();
    if (Goal.NEVER_DRY.met(shown)) {
      return;
    }
    Row row = Row.aside(DAY, DAYS);
    row.set(DAY, DateWords.day(SeasonDates.date(season, shown.firstDry())))
        .set(DAYS, shown.counts().dryOutsideAway());
    answer.mind(
        "dry",
        row,
        shown.counts().dryOutsideAway() == 1
            ? "it runs dry on {day}, although somebody is there."
            : "it runs dry on {days} days, first on {day}, although somebody is there.");
    cures(answer, Goal.NEVER_DRY);
  }

  private void strength(Answer answer) {
    Totals.Evenings evenings = runs.totals().evenings();
    if (Goal.EC_IN_BAND.met(runs.totals())) {
      return;
    }
    boolean high = !Goal.EC_NOT_HIGH.met(runs.totals());
    Streak streak =
        high
            ? evenings.above()
            : !Goal.EC_NOT_LOW.met(runs.totals()) ? evenings.below() : evenings.outside();
    Row row = Row.aside(DAY, DAYS);
    row.set(DAY, DateWords.day(SeasonDates.date(season, streak.first()))).set(DAYS, streak.days());
    if (high) {
      answer.mind(
          "ec-high", row, "from {day} on, {days} evenings in a row lie over target.ec_high.");
    } else {
      answer.mind(
          "ec-low", row, "from {day} on, {days} evenings in a row lie outside the target's band.");
    }
    cures(answer, Goal.EC_IN_BAND);
  }

  private void cures(Answer answer, Goal goal) {
    List<SeasonCure> cures = SeasonCure.of(call.plan(), season, runs, goal, call.taken());
    if (cures.isEmpty()) {
      answer.mind("no-cure", "no one key of the plan mends it.");
    }
    for (int i = 0; i < cures.size(); i++) {
      Row row = Row.aside(WHAT, DAY);
      row.set(WHAT, cures.get(i).key()).set(DAY, cures.get(i).value());
      answer.mind("cure", row, i == 0 ? "{what}: {day} would mend it." : "or {what}: {day}.");
    }
  }

  private void doubts(Answer answer, Row sums) {
    List<Doubt> doubts = Doubt.of(season.tank(), runs.days(), runs.thirst().middle());
    for (int i = 0; i < doubts.size(); i++) {
      doubt(answer, doubts.get(i), sums);
    }
  }

  private void doubt(Answer answer, Doubt doubt, Row sums) {
    boolean held = season.tank().marks().heldL() > 0;
    switch (doubt) {
      case MARKS_OUT_OF_ORDER:
        answer.mind(
            "marks-order", "the tank's marks should rise: heel, intake, low, full, rim_overflow.");
        break;
      case LOW_UNDER_INTAKE:
        answer.mind(
            "low-under-intake",
            sums,
            held
                ? "the running towers hold {hold_up_L}, and with that taken out tank.low is not over tank.intake: the pump draws air before it is ever topped up."
                : "tank.low is not over tank.intake: the pump draws air before it is ever topped up.");
        break;
      case RESERVE_UNDER_HOTTEST_DAY:
        Row row = Row.aside(FROM_L, TO_L);
        row.set(FROM_L, Units.L.toBase(Doubt.reserveL(season.tank().marks())))
            .set(TO_L, Units.L.toBase(runs.days().mostThirstL(runs.thirst().middle())));
        answer.mind(
            "reserve",
            row.with(sums),
            held
                ? "the hottest day drinks {to_L}, and from the low mark {from_L} can be drunk until the running pump draws air: topped up at low, it may run dry within a day."
                : "the hottest day drinks {to_L}, and {from_L} lie between low mark and intake: topped up at low, it may run dry within a day.");
        break;
      case RUNS_OVER_AT_A_STOP:
        Row over =
            Row.aside(FROM_L).set(FROM_L, Units.L.toBase(Doubt.overL(season.tank().marks())));
        answer.mind(
            "fill-at-rest",
            over.with(sums),
            "fill up with the pump off: filled to the full mark while the towers run, the tank spills {from_L} at the next stop, when {hold_up_L} come back.");
        break;
      case CHANGE_LONGER_THAN_SEASON:
        if (runs.totals().counts().changes() == 0) {
          answer.mind(
              "change-longer", "season.change.every is longer than the season: never changed.");
        }
        break;
      default:
        answer.mind("water-over-target", "the water alone is stronger than target.ec.");
    }
  }

  private void blindTop(Answer answer, Row sums) {
    if (seen == null) {
      return;
    }
    Totals.Counts then = seen.totals().counts();
    Row row = Row.aside(TO_L, SERVICES, SERVICES_THEN, DAYS);
    row.set(TO_L, Units.L.toBase(season.tank().marks().fullL()))
        .set(SERVICES, runs.totals().counts().services())
        .set(SERVICES_THEN, then.services())
        .set(DAYS, then.dryOutsideAway());
    answer.mind(
        "blind-top",
        row.with(sums),
        "the sender sees no further than {sender_sees_L}, and tank.full is {to_L}: fill to a mark on the tank.");
    if (then.dryOutsideAway() > runs.totals().counts().dryOutsideAway()) {
      answer.mind(
          "filled-by-sender",
          row,
          "filled only until the top step shows, it runs dry on {days} days.");
    } else if (then.services() > runs.totals().counts().services()) {
      answer.mind(
          "filled-by-sender",
          row,
          "filled only until the top step shows, the tank wants looking after on {services_then} evenings, not {services}.");
    }
  }

  private void tapSalt(Answer answer) {
    Totals.TapSalt salt = runs.totals().tapSalt();
    if (!Goal.TAP_SALT_LOW.met(runs.totals())) {
      Row row = Row.aside(DAY, SeasonSums.TAP);
      row.set(DAY, DateWords.day(SeasonDates.date(season, salt.mostDay())))
          .set(SeasonSums.TAP, salt.most());
      answer.mind(
          "tap-salt",
          row,
          "by {day} the tap water's own salt is {tap_salt_share_pct} of the target EC: change sooner, season.change.");
    }
  }

  private void pots(Answer answer) {
    List<Sown> sown = new ArrayList<>();
    boolean stands = false;
    for (int i = 0; i < season.crops().size(); i++) {
      Sown crop = season.crops().get(i).sown();
      sown.add(crop);
      for (Batch batch : crop.batches().batches()) {
        stands |= Grown.stands(batch, season.from(), season.to());
      }
      if (crop.batches().sowing().leavesPotsEmpty() && crop.batches().batches().size() > 1) {
        Row row = Row.aside(WHAT, DAYS);
        row.set(WHAT, crop.name()).set(DAYS, crop.batches().sowing().emptyDaysBetween());
        answer.mind(
            "every-longer",
            row,
            "the pots of {what} stand empty for {days} days between batches: sowings lie further apart (every) than the plants grow (growing).");
      }
    }
    if (!sown.isEmpty() && !stands) {
      answer.mind(
          "no-plants",
          "no plant stands in the tower in these days: look at crops[].sow, crops[].until and the season's dates.");
    }
    Problem over = sown.isEmpty() ? null : PotsOf.overfull(call.plan(), sown);
    if (over != null) {
      answer.mind("pots-overfull", over.message() + ".");
    }
  }

  private void left(Answer answer) {
    for (int i = 0; i < season.leftOut().size(); i++) {
      Row row = Row.aside(DAY, DAYS);
      row.set(DAY, String.valueOf(season.leftOut().get(i).year()))
          .set(DAYS, season.leftOut().get(i).daysMissing());
      answer.mind(
          "year-left-out",
          row,
          season.leftOut().get(i).daysMissing() == 1
              ? "the year {day} lacks one day of the season and is left out."
              : "the year {day} lacks {days} days of the season and is left out.");
    }
  }

  private void known(Answer answer, Row sums) {
    Method method = season.method(season.shown(runs));
    if (method == Method.DRINKS) {
      answer.mind(
          "no-weather",
          "without weather every day is alike: no rain, no heat, no cool spring. site.months or site.weather tell far more.");
    } else if (runs.count() == 1) {
      answer.mind(
          "one-year",
          sums,
          SeasonSums.USE.isOneNumber(sums)
              ? "one year of weather says nothing of wetter or hotter ones."
              : "the range is {water_use_low_L} to {water_use_high_L} from the doubt about thirst alone: one year of weather says nothing of wetter or hotter ones.");
    } else {
      answer.mind(
          "range",
          sums,
          "range from {years_used} years in the weather file and the doubt about thirst; {year} is shown, the year of median use.");
    }
    counted(answer, method);
    answer.mind(
        "plan-no-promise", "a plan, not a promise: look at the tank. Your hours are not counted.");
  }

  /** What of the plan is not in the figures. */
  private void counted(Answer answer, Method method) {
    if (method != Method.DRINKS && UnusedDrinks.isIn(call.plan())) {
      UnusedDrinks.tell(answer);
    }
    if (LightOf.hasLamp(call.plan())) {
      answer.mind(
          "lamp-not-counted",
          "the lamp is counted neither in the energy nor in the costs: leat season light tells its hours and its energy.");
    }
  }
}
