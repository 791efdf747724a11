package leat.solution.pitzer;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.solution.stock.Stock;

/** Random bottles of a litre: two to four salts, none over a share of 0.8 of its own. */
final class Bottles {
  private static final String[] POTASSIUM_SIDE = {
    "potassium-nitrate",
    "magnesium-sulfate-7h2o",
    "potassium-sulfate",
    "monopotassium-phosphate",
    "monoammonium-phosphate",
    "magnesium-nitrate-6h2o",
    "ammonium-nitrate",
    "ammonium-sulfate",
    "potassium-chloride",
    "sodium-nitrate"
  };
  private static final String[] CALCIUM_SIDE = {
    "calcium-nitrate-4h2o",
    "calcium-nitrate-greenhouse",
    "potassium-nitrate",
    "magnesium-nitrate-6h2o",
    "ammonium-nitrate",
    "calcium-chloride-2h2o"
  };
  private static final double SODIUM_NITRATE_G = 200;

  private Bottles() {}

  static List<Stock.Weighed> random(long seed, double celsius) {
    Random random = new Random(seed);
    String[] salts = random.nextInt(4) == 0 ? CALCIUM_SIDE : POTASSIUM_SIDE;
    List<Stock.Weighed> bottle = new ArrayList<>();
    int n = 2 + random.nextInt(3);
    for (int i = 0; i < n; i++) {
      String name = salts[random.nextInt(salts.length)];
      double share = 0.8 * random.nextDouble();
      double most =
          name.equals("sodium-nitrate")
              ? SODIUM_NITRATE_G
              : Math.min(300, 10 * MixedSheetTest.salt(name).solubility(celsius));
      bottle.add(new Stock.Weighed(MixedSheetTest.salt(name), share * most));
    }
    return bottle;
  }
}
