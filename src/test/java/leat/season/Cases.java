package leat.season;

import java.util.List;
import leat.Sheet;
import leat.Sheet.Row;

/** The seasons of season-balance.csv with the days of season-balance-daily.csv. */
final class Cases {
  private Cases() {}

  static Row row(String id) {
    return Sheet.of("season-balance.csv")
        .where(r -> r.id().equals(id))
        .atLeast(1)
        .findFirst()
        .orElseThrow();
  }

  static List<Row> daily(String id) {
    return Sheet.of("season-balance-daily.csv").where(r -> r.id().equals(id)).rows();
  }

  static TankPlan plan(Row r) {
    return new TankPlan(
        new Marks(
            r.num("full_L"), r.num("low_L"), r.num("intake_L"), r.num("rim_L"), r.num("heel_L")),
        new Feeding(
            r.num("water_ec_mS_cm"),
            r.num("target_ec_mS_cm"),
            r.num("rate_mL_L"),
            r.num("rate_ec_mS_cm")),
        new RainCatch(r.num("rain_area_m2"), r.num("catch"), r.num("rain_ec_mS_cm")),
        upkeep(r),
        EcBand.ANY,
        r.num("uptake_ec_mS_cm"),
        r.num("volume_start_L"),
        r.num("ec_start_mS_cm"));
  }

  private static Upkeep upkeep(Row r) {
    Refill refill =
        switch (r.text("refill")) {
          case "low" -> Refill.AT_LOW;
          case "every" -> Refill.every((int) r.num("refill_days"));
          case "none" -> Refill.NONE;
          default -> throw new IllegalStateException(r.text("refill"));
        };
    return new Upkeep(
        refill,
        r.numOr("dose_below_mS_cm", 0),
        r.numOr("dilute_above_mS_cm", Upkeep.NEVER),
        (int) r.numOr("change_days", 0),
        r.numOr("change_added", Upkeep.NEVER));
  }

  static SeasonDays days(String id) {
    List<Row> daily = daily(id);
    return SeasonDays.of(
        column(daily, "in_plants_L"), column(daily, "in_open_L"), column(daily, "in_rain_mm"));
  }

  private static double[] column(List<Row> rows, String name) {
    return rows.stream().mapToDouble(r -> r.num(name)).toArray();
  }
}
