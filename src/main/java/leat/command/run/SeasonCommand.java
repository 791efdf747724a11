package leat.command.run;

import java.util.List;
import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.command.sense.LoggedTank;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.season.Goal;
import leat.season.Money;
import leat.season.Period;
import leat.season.SeasonRun;
import leat.season.Totals;
import leat.season.YearRuns;
import leat.system.MoneyOf;
import leat.system.SeasonOf;
import leat.system.SeenFull;
import leat.weather.SeasonFile;

/** {@code leat season}: the year before it happens, day by day. */
public final class SeasonCommand extends Command {
  @Override
  public String name() {
    return "season";
  }

  @Override
  public String operands() {
    return "[PLAN]";
  }

  @Override
  public String[] formats() {
    return new String[] {"text", "csv", "json", "html", "ics"};
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of("--by", "SPAN", Kind.choice("week", "month"), "week", "rows of weeks or months"),
      LoggedTank.LOG,
      LoggedTank.NOW
    };
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    if (!call.hasPlan()) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    LoggedSeason logged = LoggedSeason.of(call);
    Plan plan = logged == null ? call.plan() : logged.plan();
    SeasonOf season = SeasonFile.of(plan, call.taken());
    YearRuns runs = YearRuns.of(season.tank(), season.years(), season.thirst());
    MoneyOf energy = MoneyOf.of(plan, season, call.taken());
    Money money = energy.money();
    SeasonRun run = runs.run();
    if ("ics".equals(call.text("--format"))) {
      return SeasonCalendar.of(plan, season, runs, run);
    }
    SeenFull seen = SeenFull.of(plan, runs, call.taken());
    Answer sums = new SeasonSums(season, runs, energy, money, seen).answer(plan.currency());
    if (logged != null) {
      logged.fill(sums.row(0));
    }
    Answer answer = SeasonRows.answer();
    SeasonRows rows = new SeasonRows(season, energy, money, season.weather(season.shown(runs)));
    rows(call, season, run, rows, answer);
    answer.jsonObject(sums).array("days", answer);
    judge(answer, runs.totals());
    new SeasonText(call, season, runs, run, money, sums.row(0)).write(answer, logged, seen);
    if (call.wantsChart()) {
      new SeasonChart(season, runs, run).draw(answer, money, plan.currency());
    }
    call.withTaken(answer);
    return answer;
  }

  private static void rows(
      Call call, SeasonOf season, SeasonRun run, SeasonRows rows, Answer answer) {
    String by = call.text("--by");
    if (by == null) {
      rows.days(answer, run.days());
      return;
    }
    boolean week = "week".equals(call.value("--by"));
    List<Period> periods =
        week ? Period.weeks(run.days(), season.from()) : Period.months(run.days(), season.from());
    rows.periods(answer, periods);
    table(answer);
  }

  private static void table(Answer answer) {
    answer.table(
        SeasonRows.DATE,
        SeasonRows.VOLUME,
        SeasonRows.EC,
        SeasonRows.LOW,
        SeasonRows.USE,
        SeasonRows.RAIN,
        SeasonRows.WATER,
        SeasonRows.FEED,
        SeasonRows.DRAINED,
        SeasonRows.COST,
        SeasonRows.EVENT);
  }

  private static void judge(Answer answer, Totals shown) {
    if (!Goal.NEVER_DRY.met(shown) || !Goal.EC_IN_BAND.met(shown)) {
      answer.no();
    }
  }
}
