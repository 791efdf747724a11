package leat.climate;

import java.util.List;

/**
 * Light a crop needs. Under the low mark it grows thin and pale.
 *
 * <p>Source: each row's own, sheet season-light.md section 3.
 *
 * @param name lower case, words joined by a hyphen
 * @param lowMolM2 low mark, mol/m2 a day
 * @param goodMolM2 what suits it well, mol/m2 a day
 * @param known how the marks are known: V seen, M from memory, P common practice
 * @param source where they stand
 */
public record LightNeed(
    String name, double lowMolM2, double goodMolM2, String known, String source) {
  /** Usual longest lamp day of leaf crops, h (common practice). */
  public static final double USUAL_LAMP_HOURS = 16;

  /** Usual longest lamp day of fruit crops, h (common practice). */
  public static final double FRUIT_LAMP_HOURS = 18;

  private static final String GREENS =
      "dry mass of kale and spinach 8 to 14 (abstract), leafy greens 12 or more (Plants 2024, 13,"
          + " 652)";

  private static final LightNeed[] TABLE = {
    new LightNeed(
        "lettuce",
        10,
        17,
        "V",
        "Paz and others 2019; Runkle, Michigan 12 to 14; Horticulturae 2020, 6, 7: 17"),
    new LightNeed("basil", 9, 13, "low V, good M", "Dou and others 2018, 9.3 to 17.8 tried"),
    new LightNeed("parsley", 7, 15, "V", "Agronomy 2019, 9, 389; herbs 15, Produce Grower"),
    new LightNeed("mint", 8.6, 13, "low V, good P", "Environ. Control Biol. 48, 141"),
    new LightNeed("spinach", 10, 14, "P", GREENS),
    new LightNeed("kale", 10, 14, "P", GREENS),
    new LightNeed("chard", 10, 14, "P", GREENS),
    new LightNeed("rocket", 10, 14, "P", GREENS),
    new LightNeed("strawberry", 10, 20, "V", "Ohio State: 10 to 12, 20 to 25, over 30 stress"),
    new LightNeed("tomato", 15, 25, "V", "Runkle 15, better 20; Gagne and Mattson 2019: 20 to 30"),
    new LightNeed("sweet-pepper", 15, 20, "V", "Runkle, vine crops: 15, better over 20"),
    new LightNeed("cucumber", 15, 20, "V", "Runkle, vine crops: 15, better over 20"),
  };

  /** All rows. */
  public static List<LightNeed> all() {
    return List.of(TABLE);
  }

  /** The crop of that name, pepper being sweet pepper; null when the table lacks it. */
  public static LightNeed find(String name) {
    String wanted = name.equals("pepper") ? "sweet-pepper" : name;
    for (int i = 0; i < TABLE.length; i++) {
      if (TABLE[i].name.equals(wanted)) {
        return TABLE[i];
      }
    }
    return null;
  }

  /**
   * A need that the grower types: low mark and good mark are the same.
   *
   * @param molM2 light wanted, mol/m2 a day
   */
  public static LightNeed typed(double molM2) {
    return new LightNeed("", molM2, molM2, "typed", "the grower's own");
  }

  /** Whether the grower typed it. */
  public boolean isTyped() {
    return name.isEmpty();
  }

  /** Longest lamp day that suits the crop, h. */
  public double lampHours() {
    boolean fruit =
        name.equals("tomato")
            || name.equals("sweet-pepper")
            || name.equals("cucumber")
            || name.equals("strawberry");
    return fruit ? FRUIT_LAMP_HOURS : USUAL_LAMP_HOURS;
  }

  /** Light that is missing to what suits it well, mol/m2 a day. */
  public double missingMolM2(double natural) {
    return Math.max(0, goodMolM2 - natural);
  }

  /** The one of the highest low mark; null when there is none. */
  public static LightNeed neediest(List<LightNeed> needs) {
    LightNeed most = null;
    for (int i = 0; i < needs.size(); i++) {
      most = most == null || needs.get(i).lowMolM2 > most.lowMolM2 ? needs.get(i) : most;
    }
    return most;
  }
}
