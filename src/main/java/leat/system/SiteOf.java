package leat.system;

import leat.climate.Exposure;
import leat.climate.Site;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;

/** The place of a plan, as the climate needs it. */
public final class SiteOf {
  private SiteOf() {}

  /**
   * Latitude, altitude, coast, height of the wind; refused without a latitude.
   *
   * @param plan the plan
   * @param wind whether a wind is known, whose height counts then
   * @param light whether light is asked for, for which the coast counts
   * @param taken notes the defaults that are taken
   */
  public static Site of(Plan plan, boolean wind, boolean light, Taken taken) {
    Section site = plan.section("site");
    Double height = site.maybe("wind_height");
    boolean bare = !wind && !light;
    return new Site(
        latitudeDegrees(plan),
        bare && !site.has("altitude") ? 0 : site.getOr("altitude", 0, "at sea level", taken),
        light ? site.yes("coast", taken) : Boolean.TRUE.equals(site.raw("coast")),
        wind ? site.get("wind_height", taken) : height == null ? Site.USUAL_WIND_HEIGHT_M : height);
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
  public static double exposure(Plan plan, Taken taken) {
    Object exposure = plan.section("site").orDefault("exposure", taken);
    return exposure instanceof String word
        ? Exposure.of(word).factor()
        : ((Number) exposure).doubleValue();
  }
}
