package leat.climate;

import java.util.List;

/**
 * Thirst of crops, each with how it is known. Stages are those of the field; a tower's plants come
 * from a nursery and are given {@link GrowthStages#usual}.
 *
 * <p>Source: FAO-56 (1998) Tables 11, 12, 17; sheet season.md section 2, check values
 * season-kc.csv.
 */
public final class CropWaters {
  /** Litres of water for a kg of lettuce, and how far off that may be (Barbosa and others 2015). */
  public static final double LETTUCE_L_PER_KG = 20;

  public static final double LETTUCE_SPREAD_L_PER_KG = 3.8;

  /** Least and most litres of a whole tomato crop under cover, L a plant (PMC7885021 Table 2). */
  public static final double TOMATO_LOW_L = 41.7;

  public static final double TOMATO_HIGH_L = 103;

  private static final CropWater[] TABLE = {
    new CropWater(
        "lettuce",
        0.7,
        1,
        0.95,
        0.9,
        "Kc V, Kcb M",
        days(20, 30, 15, 10),
        "V (April, Mediterranean)",
        0.05,
        0.08,
        0.4,
        "0.25 m across; band from 20 to 36 L per kg fresh head, V"),
    new CropWater("spinach", 0.7, 1, 0.95, 0.9, "V", days(20, 20, 20, 5), "M", 0.04, 0.05, 0.3, ""),
    new CropWater(
        "radish", 0.7, 0.9, 0.85, 0.85, "V", days(5, 10, 15, 5), "M", 0.015, 0.02, 0.12, ""),
    new CropWater(
        "basil",
        0.6,
        1.15,
        1.1,
        1.1,
        "Kc of mint V, Kcb M; basil itself has no row",
        null,
        "-",
        0.06,
        0.05,
        0.5,
        "mint stands in"),
    new CropWater("mint", 0.6, 1.15, 1.1, 1.1, "Kc V, Kcb M", null, "-", 0.06, 0.05, 0.6, ""),
    new CropWater(
        "strawberry",
        0.4,
        0.85,
        0.75,
        0.8,
        "Kc V, Kcb M",
        null,
        "no row in Table 11, M",
        0.07,
        0.05,
        0.5,
        ""),
    new CropWater(
        "tomato",
        0.6,
        1.15,
        0.8,
        1.1,
        "V; Kc end 0.70 to 0.90",
        days(35, 40, 50, 30),
        "V (April/May, California)",
        0.4,
        0.5,
        4,
        "a whole crop used 42 to 103 L a plant under cover, V"),
    new CropWater(
        "cucumber",
        0.6,
        1,
        0.75,
        0.95,
        "V",
        days(20, 30, 40, 15),
        "V (June/August, arid)",
        0.4,
        0.5,
        4,
        ""),
    new CropWater(
        "sweet-pepper",
        0.6,
        1.05,
        0.9,
        1,
        "V",
        days(30, 35, 40, 20),
        "M (April/June, Europe and Mediterranean)",
        0.25,
        0.3,
        2.5,
        "30/40/110/30 in arid October, V"),
  };

  private CropWaters() {}

  private static int[] days(int initial, int development, int mid, int late) {
    return new int[] {initial, development, mid, late};
  }

  /** All rows. */
  public static List<CropWater> all() {
    return List.of(TABLE);
  }

  /** The crop of that name, pepper being sweet pepper; null when the table lacks it. */
  public static CropWater find(String name) {
    String wanted = name.equals("pepper") ? "sweet-pepper" : name;
    for (int i = 0; i < TABLE.length; i++) {
      if (TABLE[i].name().equals(wanted)) {
        return TABLE[i];
      }
    }
    return null;
  }
}
