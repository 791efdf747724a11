package leat.command.run;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.energy.LongestRest;
import leat.numeric.Impossible;
import leat.plan.Refused;
import leat.quantity.DateWords;
import leat.system.PlantUse;
import leat.weather.SeasonFile;

/** The rest by day that the water in plug and root allows, and the plant that drinks it. */
final class PlugRest {
  static final Column USE = Column.of("plant_use_L_d", "a plant drinks", Show.L_D);
  private static final Column CROP = Column.plain("crop", "crop");
  private static final Column DAY = Column.plain("day", "day");

  /** The longest rest by day. */
  final LongestRest longest;

  private final PlantUse use;

  private PlugRest(LongestRest longest, PlantUse use) {
    this.longest = longest;
    this.use = use;
  }

  /**
   * By day the water held by plug and root may bind before the dry limit.
   *
   * @param limit the dry limit, s
   */
  static PlugRest of(Call call, double limit) {
    Double held = call.above0("--plug-water");
    Double typed = call.above0("--plant-use");
    if (held == null && typed == null) {
      return new PlugRest(LongestRest.of(limit), null);
    }
    if (held == null) {
      throw call.needs("--plug-water");
    }
    PlantUse use = typed == null ? ofPlan(call) : new PlantUse(null, null, typed);
    call.taken().note("half of the held water usable, noon 2.5 times the mean use");
    double lasts =
        LongestRest.plugWaterS(
            held, LongestRest.USUAL_USABLE_SHARE, use.perSecond(), LongestRest.USUAL_PEAK_FACTOR);
    return new PlugRest(LongestRest.of(limit, lasts), use);
  }

  /** By the season's forecast; where that cannot be worked out, by the crops' {@code water}. */
  private static PlantUse ofPlan(Call call) {
    PlantUse found = null;
    try {
      found = PlantUse.of(SeasonFile.of(call.plan(), call.taken()));
    } catch (Refused e) {
      call.taken().note("no season: " + e.problems().get(0).message());
    } catch (Impossible e) {
      call.taken().note("no season: " + e.getMessage());
    }
    found = found == null ? PlantUse.ofWater(call.plan()) : found;
    if (found == null) {
      throw call.needs("--plant-use");
    }
    return found;
  }

  /** What the plant drinks; null when plug and root were not asked for. */
  Double perSecond() {
    return use == null ? null : use.perSecond();
  }

  /** Says which plant it is, where the plan was asked. */
  void figure(Answer answer, Row best) {
    if (use == null || use.crop() == null) {
      return;
    }
    Row plant = Row.aside(CROP, DAY).set(CROP, use.crop());
    if (use.day() != null) {
      plant.set(DAY, DateWords.day(use.day()));
    }
    answer.figure(
        "thirstiest plant",
        best.with(plant),
        "{plant_use_L_d}",
        use.day() == null ? "{crop}, water in the plan" : "{crop} on {day}, in a thirsty year");
    answer.mind(
        "roots-hold-more",
        best.with(plant),
        "{crop} is judged full-grown, and its roots then hold more than the plug of a seedling: weigh it dripping wet and again when it begins to wilt, and give the difference as --plug-water.");
  }
}
