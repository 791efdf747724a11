package leat.solution.stock;

import java.util.ArrayList;
import java.util.List;

/**
 * The salts that a stock bottle may hold, with their solubility in cold and warmth.
 *
 * <p>Solubility is in grams of the <em>anhydrous</em> salt in 100 g of water at 0, 10, 20 and 30 C,
 * straight between. The greenhouse grade of calcium nitrate counts in grams as sold: 110 at 20 C is
 * common practice, the other temperatures follow the pure salt's course (our estimate). Chelates
 * and dipotassium phosphate are known at 20 C only.
 *
 * <p>Gypsum: the table behind solution-stock.csv has 0.223, 0.244, 0.255, 0.264, which are grams of
 * the dihydrate and not anhydrous: saturated gypsum, measured 15.2 mmol/L at 25 C, would stand at a
 * share of 0.80 and not 1. Here are the anhydrous 0.176, 0.193, 0.202 of solution-salts.csv, 15.2
 * mmol/L at 25 C, and 0.209 at 30 C (handbook, from memory).
 *
 * <p>Source: common handbook tables (from memory; potassium nitrate and monoammonium phosphate
 * checked in public texts). First eight rows: the table behind sheet solution-stock.csv; the
 * others: solution-salts.csv to 20 C, and handbook values at 30 C from memory.
 */
public final class StockSalts {
  private static final double[] COLD_TO_WARM = {0, 10, 20, 30};
  private static final double[] ROOM = {20};

  private static final StockSalt[] TABLE = {
    salt("calcium-nitrate-4h2o", 236.15, 164.09, 1, 0, 0, 2, "Ca NO3", 102, 115, 129, 152),
    salt("potassium-nitrate", 101.10, 101.10, 0, 0, 0, 2, "K NO3", 13.3, 20.9, 31.6, 45.8),
    salt("magnesium-sulfate-7h2o", 246.47, 120.37, 0, 1, 0, 4, "Mg SO4", 22.0, 28.2, 33.7, 38.9),
    salt("potassium-sulfate", 174.26, 174.26, 0, 1, 0, 2, "K SO4", 7.4, 9.3, 11.1, 13.0),
    salt("monopotassium-phosphate", 136.09, 136.09, 0, 0, 1, 1, "K PO4", 14.8, 18.3, 22.6, 28.0),
    salt("monoammonium-phosphate", 115.03, 115.03, 0, 0, 1, 1, "NH4 PO4", 22.7, 29.5, 37.4, 46.4),
    salt("magnesium-nitrate-6h2o", 256.41, 148.31, 0, 0, 0, 6, "Mg NO3", 62.1, 66.0, 69.5, 73.6),
    new StockSalt(
        "gypsum",
        172.17,
        136.14,
        new double[] {0, 10, 20, 25, 30},
        new double[] {0.176, 0.193, 0.202, 0.2076, 0.209},
        1,
        1,
        0,
        0,
        "Ca SO4"),
    salt(
        "calcium-nitrate-greenhouse",
        1080.623,
        1080.623,
        5,
        0,
        0,
        12,
        "Ca NO3 NH4",
        87,
        98,
        110,
        130),
    salt("ammonium-nitrate", 80.043, 80.043, 0, 0, 0, 2, "NH4 NO3", 118, 150, 192, 242),
    salt("ammonium-sulfate", 132.134, 132.134, 0, 1, 0, 2, "NH4 SO4", 70.6, 73.0, 75.4, 78.0),
    salt("diammonium-phosphate", 132.056, 132.056, 0, 0, 1, 2, "NH4 PO4", 42.9, 62.9, 68.9, 75.1),
    salt("magnesium-sulfate-1h2o", 138.376, 120.37, 0, 1, 0, 4, "Mg SO4", 22.0, 28.2, 33.7, 38.9),
    salt("potassium-chloride", 74.548, 74.548, 0, 0, 0, 2, "K Cl", 28.0, 31.2, 34.2, 37.2),
    salt("calcium-chloride-2h2o", 147.008, 110.98, 1, 0, 0, 2, "Ca Cl", 59.5, 64.7, 74.5, 100),
    new StockSalt(
        "dipotassium-phosphate", 174.174, 174.174, ROOM, new double[] {150}, 0, 0, 1, 2, "K PO4"),
    chelate("iron-edta-13", 9),
    chelate("iron-dtpa-11", 10),
    chelate("iron-eddha-6", 6),
    salt("boric-acid", 61.831, 61.831, 0, 0, 0, 0, "B", 2.52, 3.49, 4.72, 6.23),
  };

  /** Other names of a salt of the table: name, name in the table. */
  private static final String[][] ALSO = {
    {"calcium-sulfate-2h2o", "gypsum"},
  };

  private StockSalts() {}

  private static StockSalt salt(
      String name,
      double sold,
      double anhydrous,
      double calcium,
      double sulfate,
      double phosphate,
      double othersZ2,
      String ions,
      double... solubility) {
    return new StockSalt(
        name,
        sold,
        anhydrous,
        COLD_TO_WARM,
        solubility,
        calcium,
        sulfate,
        phosphate,
        othersZ2,
        ions);
  }

  /** A chelate: no simple ions; its molar mass plays no part and stands as 1. */
  private static StockSalt chelate(String name, double gPer100gWater) {
    return new StockSalt(name, 1, 1, ROOM, new double[] {gPer100gWater}, 0, 0, 0, 0, "Fe");
  }

  /** The names that can be asked for. */
  public static List<String> names() {
    List<String> names = new ArrayList<>();
    for (StockSalt salt : TABLE) {
      names.add(salt.name());
    }
    for (String[] also : ALSO) {
      names.add(also[0]);
    }
    return names;
  }

  /** The salt of a name, or null when the table lacks it. */
  public static StockSalt find(String name) {
    String wanted = name;
    for (String[] also : ALSO) {
      if (also[0].equals(name)) {
        wanted = also[1];
      }
    }
    for (StockSalt salt : TABLE) {
      if (salt.name().equals(wanted)) {
        return salt;
      }
    }
    return null;
  }
}
