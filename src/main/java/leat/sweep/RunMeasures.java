package leat.sweep;

import static leat.sweep.Measure.Better.LESS;
import static leat.sweep.Measure.Better.MORE;

import java.util.List;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Rules;
import leat.check.Subject;
import leat.energy.RelayLife;
import leat.quantity.Units;
import leat.system.DrawOf;
import leat.system.RunNeeds;

/** What {@code leat duty} answers, and the rules about timing. */
final class RunMeasures {
  private static final String DUTY = "duty";
  private static final Show MONEY = Show.of(Units.MONEY_UNIT, 3);

  private RunMeasures() {}

  static List<Measure> all() {
    return List.of(
        Measure.of(
            "least_run_s",
            "check --rule run-covers",
            "limit",
            LESS,
            "least run",
            Show.S,
            RunMeasures::leastRun),
        Measure.of(
            "run_share_pct",
            DUTY,
            "run_share_pct",
            LESS,
            "pump runs",
            Show.PERCENT,
            s -> s.duty().share()),
        Measure.number(
            "starts_per_day",
            DUTY,
            "starts_per_day",
            LESS,
            "starts per day",
            s -> s.duty().startsPerDay()),
        Measure.of(
            "kwh_day", DUTY, "kwh_day", LESS, "energy per day", Show.KWH, s -> s.duty().jDay()),
        Measure.of(
            "kwh_season",
            DUTY,
            "kwh_total",
            LESS,
            "energy of the season",
            Show.KWH,
            s -> inSeason(s, s.duty().j())),
        Measure.of(
            "cost_electricity",
            DUTY,
            "cost_total",
            LESS,
            "electricity of the season",
            MONEY,
            s -> s.duty().priced() ? inSeason(s, s.duty().cost()) : Double.NaN),
        Measure.number(
            "relay_days", DUTY, "relay_days", MORE, "relay lasts days", RunMeasures::relay),
        rest("dry_day_min", "rest-day", "longest rest by day"),
        rest("dry_night_min", "rest-night", "longest rest at night"));
  }

  /** Without dates there is no season, only a year that {@code duty} takes. */
  private static double inSeason(Subject subject, double value) {
    boolean dated = subject.section("season").has("from") && subject.section("season").has("to");
    return dated ? value : Double.NaN;
  }

  private static double leastRun(Subject subject) {
    RunNeeds needs =
        RunNeeds.of(subject.plan(), subject.waterway(), subject.flowsLow(), subject.taken());
    return needs.dryTower() != null ? Double.NaN : needs.least().seconds();
  }

  private static double relay(Subject subject) {
    return RelayLife.days(
            DrawOf.operations(subject.plan(), subject.taken()), subject.duty().startsPerDay())
        .orElse(Double.NaN);
  }

  /** What a rule about rests finds. */
  private static Measure rest(String name, String rule, String label) {
    Rule[] only = {Rules.find(rule)};
    return Measure.of(
        name,
        "check --rule " + rule,
        "value",
        LESS,
        label,
        Show.MIN,
        s -> {
          List<Finding> found = Rules.judge(s, only);
          return found.isEmpty() || !found.get(0).hasValue() ? Double.NaN : found.get(0).value();
        });
  }
}
