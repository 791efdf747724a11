package leat.sweep;

import static leat.sweep.Measure.Better.LESS;
import static leat.sweep.Measure.Better.MORE;

import java.util.List;
import java.util.function.ToDoubleFunction;
import leat.answer.Show;
import leat.quantity.Units;
import leat.season.Totals;

/** What {@code leat season} answers of the shown run; it is run when one of these is asked for. */
final class SeasonMeasures {
  private static final String SEASON = "season";
  private static final Show MONEY = Show.of(Units.MONEY_UNIT, 3);

  private SeasonMeasures() {}

  static List<Measure> all() {
    return List.of(
        litres("drunk_season_L", "water_use_L", "drunk", t -> t.flows().waterUseL()),
        litres("water_season_L", "topup_water_L", "water poured", t -> t.flows().waterL()),
        Measure.of(
            "feed_season_mL",
            SEASON,
            "topup_concentrate_mL",
            LESS,
            "feed poured",
            Show.ML,
            s -> Units.ML.toBase(s.seasonRuns().totals().flows().concentrateMl())),
        litres("drained_season_L", "drained_L", "drained", t -> t.flows().drainedL()),
        Measure.of(
            "lowest_L",
            SEASON,
            "lowest_L",
            MORE,
            "least in the tank",
            Show.L,
            s -> Units.L.toBase(s.seasonRuns().totals().evenings().lowestL())),
        count("topups", "top-ups", t -> t.counts().topups()),
        count("changes", "changes", t -> t.counts().changes()),
        count("dry_days", "dry days", t -> t.counts().dryDays()),
        count("overflow_days", "days run over", t -> t.counts().overflowDays()),
        ec("ec_min_mS_cm", MORE, "least EC", t -> t.evenings().ecMinMsCm()),
        ec("ec_max_mS_cm", LESS, "most EC", t -> t.evenings().ecMaxMsCm()),
        Measure.of(
            "cost_season",
            SEASON,
            "cost_season",
            LESS,
            "cost of the season",
            MONEY,
            s -> s.money().money().season(s.seasonRuns().totals())),
        Measure.of(
            "harvest_kg",
            SEASON,
            "harvest_kg",
            MORE,
            "harvest",
            Show.KG,
            s -> s.money().harvestKg()),
        Measure.number(
            "payback_seasons",
            SEASON,
            "payback_seasons",
            LESS,
            "paid back after seasons",
            s -> s.money().money().payback(s.seasonRuns().totals())));
  }

  private static Measure litres(
      String name, String reads, String label, ToDoubleFunction<Totals> value) {
    return Measure.of(
        name,
        SEASON,
        reads,
        LESS,
        label,
        Show.L,
        s -> Units.L.toBase(value.applyAsDouble(s.seasonRuns().totals())));
  }

  private static Measure count(String name, String label, ToDoubleFunction<Totals> value) {
    return Measure.number(
        name, SEASON, name, LESS, label, s -> value.applyAsDouble(s.seasonRuns().totals()));
  }

  private static Measure ec(
      String name, Measure.Better better, String label, ToDoubleFunction<Totals> value) {
    return Measure.of(
        name,
        SEASON,
        name,
        better,
        label,
        Show.MS_CM,
        s -> value.applyAsDouble(s.seasonRuns().totals()));
  }
}
