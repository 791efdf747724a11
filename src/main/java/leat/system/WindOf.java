package leat.system;

import leat.numeric.Impossible;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;
import leat.stability.SiteWind;
import leat.stability.Terrain;

/** The wind of a plan's site. */
public final class WindOf {
  /** What the trade calls a quantity, and the key it stands in. */
  private static final String[][] KEYS = {
    {"height above ground", "height_above_ground"},
    {"shelter", "shelter"},
    {"gust factor", "gust_factor"},
  };

  private WindOf() {}

  /** Density of the air, kg/m3. */
  public static double density(Section site, Taken taken) {
    return Units.KG_M3.fromBase(site.get("air_density", taken));
  }

  /** Terrain of the site; null when it is not told. */
  public static Terrain terrain(Section site) {
    return site.has("terrain") ? Terrain.named(site.text("terrain")) : null;
  }

  /** The wind that the plan names. */
  public static SiteWind of(Section site, Taken taken) {
    Section wind = site.section("wind");
    double speed = wind.need("speed");
    return "gust".equals(wind.needRaw("is"))
        ? ofGust(site, speed, taken)
        : ofMean(site, speed, taken);
  }

  /** The wind of a gust at the tower, m/s. */
  public static SiteWind ofGust(Section site, double gust, Taken taken) {
    if (!site.has("terrain") || !site.has("height_above_ground")) {
      return SiteWind.gustAlone(gust);
    }
    try {
      return SiteWind.ofGust(
          gust,
          terrain(site),
          site.need("height_above_ground"),
          shelter(site, taken),
          factor(site));
    } catch (Impossible e) {
      throw refused(site, e);
    }
  }

  /** The wind of a mean of open country, m/s. */
  public static SiteWind ofMean(Section site, double mean, Taken taken) {
    site.needRaw("terrain");
    double height = site.need("height_above_ground");
    try {
      return SiteWind.ofMean(mean, terrain(site), height, shelter(site, taken), factor(site));
    } catch (Impossible e) {
      throw refused(site, e);
    }
  }

  private static double shelter(Section site, Taken taken) {
    return site.getOr("shelter", SiteWind.SHELTER, "no shelter, and no windy corner either", taken);
  }

  private static Double factor(Section site) {
    return site.maybe("gust_factor");
  }

  private static RuntimeException refused(Section site, Impossible e) {
    for (int i = 0; i < KEYS.length; i++) {
      if (KEYS[i][0].equals(e.quantity()) && site.has(KEYS[i][1])) {
        return new Refused(PlanErrors.refusedByTrade(site, KEYS[i][1], e));
      }
    }
    return e;
  }
}
