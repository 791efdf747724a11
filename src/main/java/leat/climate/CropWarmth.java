package leat.climate;

import java.util.List;

/**
 * Base and upper temperature of a crop's degree days. How known: V seen second-hand, M from memory,
 * P common practice. Seed houses and books differ; the plan may set its own.
 *
 * <p>Source: tomato and sweet pepper Paredes and others 2025 (second-hand); lettuce, spinach and
 * strawberry from memory; basil and cucumber common practice; sheet season.md section 6.
 *
 * @param name lower case, words joined by a hyphen
 * @param baseCelsius temperature under which nothing grows, C
 * @param upperCelsius temperature over which nothing is gained, C; infinite for none
 * @param known V, M or P
 */
public record CropWarmth(String name, double baseCelsius, double upperCelsius, String known) {
  private static final CropWarmth[] TABLE = {
    new CropWarmth("tomato", 7, 28, "V"),
    new CropWarmth("sweet-pepper", 10, 35, "V"),
    new CropWarmth("lettuce", 4, 24, "M"),
    new CropWarmth("spinach", 4, 24, "M"),
    new CropWarmth("strawberry", 3, DegreeDays.NO_UPPER, "M"),
    new CropWarmth("basil", 10, 30, "P"),
    new CropWarmth("cucumber", 10, 30, "P"),
  };

  /** All rows. */
  public static List<CropWarmth> all() {
    return List.of(TABLE);
  }

  /** The crop of that name, pepper being sweet pepper; null when the table lacks it. */
  public static CropWarmth find(String name) {
    String wanted = name.equals("pepper") ? "sweet-pepper" : name;
    for (int i = 0; i < TABLE.length; i++) {
      if (TABLE[i].name.equals(wanted)) {
        return TABLE[i];
      }
    }
    return null;
  }
}
