package leat.system;

import leat.climate.Exposure;
import leat.climate.Site;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Units;

/** The place of a plan, as the climate needs it. */
public final class SiteOf {
  private SiteOf() {}

  /** Latitude, altitude, coast, height of the wind; refused without a latitude. */
  public static Site of(Plan plan) {
    Section site = plan.section("site");
    return new Site(
        latitudeDegrees(plan),
        site.getOr("altitude", 0, "at sea level"),
        site.yes("coast"),
        site.get("wind_height"));
  }

  /** Latitude, degrees, north positive; refused when it is missing. */
  public static double latitudeDegrees(Plan plan) {
    return Units.DEG.fromBase(plan.section("site").need("latitude"));
  }

  /** Whether rain is kept off. */
  public static boolean hasRoof(Plan plan) {
    Object exposure = plan.section("site").raw("exposure");
    Exposure known = exposure instanceof String word ? Exposure.of(word) : null;
    return known != null && known.hasRoof();
  }

  /** Factor on the thirst, -. */
  public static double exposure(Plan plan) {
    Object exposure = plan.section("site").orDefault("exposure");
    return exposure instanceof String word
        ? Exposure.of(word).factor()
        : ((Number) exposure).doubleValue();
  }
}
