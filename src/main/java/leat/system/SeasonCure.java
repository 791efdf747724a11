package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.level.Tank;
import leat.plan.Plan;
import leat.plan.Taken;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.season.CropPart;
import leat.season.Cure;
import leat.season.Goal;
import leat.season.Help;
import leat.season.Lever;
import leat.season.Refill;
import leat.season.SeasonDays;
import leat.season.Steps;
import leat.season.TankPlan;
import leat.season.Totals;
import leat.season.YearRuns;

/**
 * A key of the plan and the value that mends its season, found by running it.
 *
 * @param key such as {@code tank.low}
 * @param value as it is typed, such as {@code 135 mm}
 */
public record SeasonCure(String key, String value) {
  /** Longest time between services or changes that is tried, d. */
  private static final int MOST_DAYS = 60;

  /**
   * What would mend a season, the smallest move first, then other ways of serving.
   *
   * @param plan the plan
   * @param season its season
   * @param runs its runs
   * @param goal what is wanted
   * @param taken notes the defaults that are taken
   * @return keys and values; empty when nothing alone does
   */
  public static List<SeasonCure> of(
      Plan plan, SeasonOf season, YearRuns runs, Goal goal, Taken taken) {
    return new Search(TankOf.of(plan.section("tank"), taken), season, runs, goal).found();
  }

  private static final class Search {
    private final TankPlan tank;
    private final Tank shape;
    private final SeasonDays days;
    private final double thirst;
    private final List<CropPart> parts;
    private final List<Grown> crops;
    private final Goal goal;
    private final List<SeasonCure> cures = new ArrayList<>();

    Search(Tank shape, SeasonOf season, YearRuns runs, Goal goal) {
      this.shape = shape;
      tank = season.tank();
      days = runs.days();
      thirst = runs.thirst().middle();
      parts = season.parts(season.shown(runs));
      crops = season.crops();
      this.goal = goal;
    }

    List<SeasonCure> found() {
      List<Help.Option> options = Help.options(tank, days, thirst, parts, goal);
      for (int i = 0; i < options.size(); i++) {
        Help.Option option = options.get(i);
        if (option.lever() == null) {
          if (option.to() >= 1) {
            add(pots(), Integer.toString((int) option.to()));
          }
        } else if (option.lever() == Lever.TARGET) {
          add("target.ec", NumberText.shortest(option.to()).concat(" mS/cm"));
        } else {
          level(option.lever(), option.to());
        }
      }
      if (goal == Goal.NO_OVERFLOW) {
        lower();
      } else {
        service();
      }
      return cures;
    }

    private void add(String key, String value) {
      cures.add(new SeasonCure(key, value));
    }

    private String pots() {
      CropPart most = CropPart.thirstiest(parts);
      int i = parts.indexOf(most);
      return "crops[".concat(Integer.toString(crops.get(i).index())).concat("].pots");
    }

    /** A mark in whole millimetres that does it, from the litres that do. */
    private void level(Lever lever, double litres) {
      double mm = Math.ceil(Units.MM.fromBase(shape.level(Units.L.toBase(litres))) - 1e-9);
      double level = Math.min(Units.MM.toBase(mm), shape.height());
      double rounded = Units.L.fromBase(shape.volume(level));
      if (met(lever.set(tank, rounded))) {
        add(
            lever == Lever.LOW ? "tank.low" : "tank.full",
            NumberText.shortest(Units.MM.fromBase(level)).concat(" mm"));
      }
    }

    private boolean met(TankPlan changed) {
      return goal.met(totals(changed));
    }

    private Totals totals(TankPlan changed) {
      return leat.season.Season.totals(changed, days, thirst);
    }

    /** A lower full mark leaves room for rain. */
    private void lower() {
      double full = tank.marks().fullL();
      double low = tank.marks().lowL();
      double[] values = Steps.falling(full, Help.MARK_STEP_L, low + Help.MARK_STEP_L);
      Double to = Cure.first(tank, days, thirst, Lever.FULL, values, goal);
      if (to != null) {
        double mm = Math.floor(Units.MM.fromBase(shape.level(Units.L.toBase(to))));
        double rounded = Units.L.fromBase(shape.volume(Units.MM.toBase(mm)));
        if (met(Lever.FULL.set(tank, rounded))) {
          add("tank.full", NumberText.shortest(mm).concat(" mm"));
        }
      }
    }

    private void service() {
      boolean strength = goal != Goal.NEVER_DRY && goal != Goal.AWAY_CARRIED;
      Refill refill = tank.upkeep().refill();
      int from = refill.kind() == Refill.Kind.EVERY ? refill.days() : MOST_DAYS / 2;
      Double every = first(Lever.REFILL_DAYS, Steps.falling(from, 1, 1));
      if (every != null) {
        String typed = "every ".concat(Integer.toString(every.intValue())).concat(" d");
        add("season.refill", every == 1 ? "daily" : typed);
      }
      if (strength) {
        strength();
      }
    }

    private void strength() {
      double target = tank.feeding().targetMsCm();
      double high = tank.band().highMsCm();
      if (goal != Goal.EC_NOT_LOW && high < Double.POSITIVE_INFINITY) {
        Double over =
            first(Lever.DILUTE_ABOVE, Steps.falling(high + 1e-6, Help.EC_STEP_MS_CM, target));
        ec("season.dilute_above", over);
      }
      if (goal != Goal.EC_NOT_HIGH && tank.band().lowMsCm() > 0) {
        double low = tank.band().lowMsCm();
        ec(
            "season.dose_below",
            first(Lever.DOSE_BELOW, Steps.rising(low - 1e-6, Help.EC_STEP_MS_CM, target)));
      }
      int now = tank.upkeep().changeDays();
      Double change = first(Lever.CHANGE_DAYS, Steps.falling(now > 0 ? now : MOST_DAYS, 1, 1));
      if (change != null) {
        add("season.change.every", Integer.toString(change.intValue()).concat(" d"));
      }
    }

    private void ec(String key, Double value) {
      if (value != null) {
        double rounded = Math.rint(value / Help.EC_STEP_MS_CM) * Help.EC_STEP_MS_CM;
        add(key, NumberText.significant(rounded, 3).concat(" mS/cm"));
      }
    }

    private Double first(Lever lever, double[] values) {
      return Cure.first(tank, days, thirst, lever, values, goal);
    }
  }
}
