package leat.system;

import leat.climate.Exposure;
import leat.climate.Site;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.plan.Value;
import leat.quantity.Units;

/**
 * The place of a plan, as the climate needs it: what it reads is asked for when a place is made of
 * it.
 *
 * @param latitude north positive
 * @param altitude over the sea
 * @param coast whether it lies at one
 * @param windHeight height at which the wind is measured
 */
public record SiteOf(Value latitude, Value altitude, Value coast, Value windHeight) {
  /** The place of a plan, of which nothing is asked yet. */
  static SiteOf read(Plan plan, Taken taken) {
    Section site = plan.section("site");
    return new SiteOf(
        site.value("latitude"),
        site.value("altitude"),
        site.value("coast", taken),
        site.value("wind_height", taken));
  }

  /**
   * Latitude, altitude, coast, height of the wind; refused without a latitude.
   *
   * @param plan the plan
   * @param wind whether a wind is known, whose height counts then
   * @param light whether light is asked for, for which the coast counts
   * @param taken notes the defaults that are taken
   */
  public static Site of(Plan plan, boolean wind, boolean light, Taken taken) {
    return read(plan, taken).site(wind, light, taken);
  }

  Site site(boolean wind, boolean light, Taken taken) {
    boolean bare = !wind && !light;
    double degrees = Units.DEG.fromBase(latitude.need());
    if (!bare && !altitude.isKnown()) {
      taken.note("at sea level");
    }
    return new Site(
        degrees,
        altitude.orElse(0),
        (light ? coast.orTaken() : coast.orElse(0)) != 0,
        wind ? windHeight.orTaken() : windHeight.orElse(Site.USUAL_WIND_HEIGHT_M));
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
