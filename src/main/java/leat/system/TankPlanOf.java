package leat.system;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import leat.level.Tank;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Cadence;
import leat.quantity.Units;
import leat.season.EcBand;
import leat.season.Feeding;
import leat.season.Marks;
import leat.season.RainCatch;
import leat.season.Refill;
import leat.season.Since;
import leat.season.TankPlan;
import leat.season.Upkeep;
import leat.solution.Concentrate;

/** All that the tank's days of a plan follow, but the weather and the plants. */
public final class TankPlanOf {
  private TankPlanOf() {}

  /** The tank of a plan; refused with the key that is missing. */
  public static TankPlan of(Plan plan, Taken taken) {
    Section season = plan.section("season");
    Marks marks =
        marks(plan.section("tank"), refill(season, taken), plan.root().maybe("hold_up"), taken);
    Feeding feeding = feeding(plan);
    double target = feeding.targetMsCm();
    Double own = season.maybe("uptake");
    if (own == null) {
      taken.note("plants take up salt at 0.75 of the target EC");
    }
    TankPlan filled =
        TankPlan.filled(
            marks,
            feeding,
            rain(plan, taken),
            upkeep(season, taken),
            band(plan.section("target")),
            own == null ? TankPlan.UPTAKE_SHARE * target : own);
    Section start = season.section("start");
    Double volume = start.maybe("volume");
    Double ec = start.maybe("ec");
    return new TankPlan(
        marks,
        feeding,
        filled.rain(),
        filled.upkeep(),
        filled.band(),
        filled.uptakeMsCm(),
        volume == null ? filled.startL() : Units.L.fromBase(volume),
        ec == null ? filled.startMsCm() : ec,
        since(season, start));
  }

  /** Without dates it is filled for the first time on the evening before the season. */
  private static Since since(Section season, Section start) {
    if (!start.has("changed")) {
      return Since.FIRST_FILL;
    }
    LocalDate from = (LocalDate) season.needRaw("from");
    int changed = days(from, start, "changed");
    int filled = start.has("filled") ? days(from, start, "filled") : changed;
    Double added = start.maybe("added");
    return new Since(
        Math.max(filled, changed), changed, added == null ? 0 : Units.L.fromBase(added));
  }

  private static int days(LocalDate from, Section start, String key) {
    LocalDate date = (LocalDate) start.needRaw(key);
    int days = (int) ChronoUnit.DAYS.between(from, date);
    if (days >= 0) {
      throw new Refused(SeasonErrors.startAfterSeason(start, key));
    }
    return days;
  }

  private static Marks marks(Section tank, Refill refill, Double held, Taken taken) {
    Tank shape = TankOf.of(tank, taken);
    double full = litres(shape, tank.need("full"));
    double intake =
        litres(
            shape,
            tank.getOr("intake", shape.lowestLevel(), "the pump draws down to the floor", taken));
    boolean atLow = refill.kind() == Refill.Kind.AT_LOW;
    double low = !atLow && !tank.has("low") ? intake : litres(shape, tank.need("low"));
    double rim =
        litres(shape, tank.getOr("rim_overflow", shape.height(), "it runs over at the rim", taken));
    double heel = Units.L.fromBase(tank.get("heel", taken));
    return new Marks(full, low, intake, rim, heel, held == null ? 0 : Units.L.fromBase(held));
  }

  private static double litres(Tank shape, double level) {
    return Units.L.fromBase(shape.volume(level));
  }

  private static Feeding feeding(Plan plan) {
    Concentrate all = ConcentrateOf.of(plan.section("feed")).together();
    return new Feeding(
        plan.section("water").need("ec"),
        plan.section("target").need("ec"),
        all.rateMlPerL(),
        all.gainMsCm());
  }

  private static RainCatch rain(Plan plan, Taken taken) {
    Section tank = plan.section("tank");
    Double area = tank.maybe("rain_area");
    if (SiteOf.hasRoof(plan) || area == null || area == 0) {
      return RainCatch.ROOFED;
    }
    double ec =
        plan.section("rain").getOr("ec", RainCatch.RAIN_EC_MS_CM, "rain of 0.02 mS/cm", taken);
    return new RainCatch(area, tank.get("rain_share", taken), ec);
  }

  private static EcBand band(Section target) {
    Double low = target.maybe("ec_low");
    Double high = target.maybe("ec_high");
    return new EcBand(low == null ? 0 : low, high == null ? Upkeep.NEVER : high);
  }

  private static Refill refill(Section season, Taken taken) {
    Cadence cadence = (Cadence) season.orDefault("refill", taken);
    if (cadence.atLow()) {
      return Refill.AT_LOW;
    }
    return cadence.every() == null
        ? Refill.NONE
        : Refill.every(WholeDays.of(season, "refill", cadence.every().value()));
  }

  private static Upkeep upkeep(Section season, Taken taken) {
    Section change = season.section("change");
    Double dose = season.maybe("dose_below");
    Double dilute = season.maybe("dilute_above");
    Double added = change.maybe("or_added");
    return new Upkeep(
        refill(season, taken),
        dose == null ? 0 : dose,
        dilute == null ? Upkeep.NEVER : dilute,
        WholeDays.or(change, "every", 0),
        added == null ? Upkeep.NEVER : added);
  }
}
