package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.plan.Named;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Nearest;
import leat.quantity.Units;
import leat.solution.stock.Stock;
import leat.solution.stock.StockSalt;
import leat.solution.stock.StockSalts;
import leat.solution.stock.StockWater;

/** The bottles of own salts of a plan's {@code feed.stock} section, and the water they go into. */
public final class StockOf {
  private StockOf() {}

  /** What is weighed into the bottles; empty when nothing is named. */
  public static List<Stock.Weighed> salts(Section stock) {
    List<Stock.Weighed> salts = new ArrayList<>();
    Named grams = stock.named("grams");
    for (int i = 0; i < grams.size(); i++) {
      StockSalt salt = StockSalts.find(grams.name(i));
      String path = stock.path("grams");
      if (salt == null) {
        throw new Refused(grams.problem(i, path, "unknown-stock-salt", unknown(grams.name(i))));
      }
      double kg = (Double) grams.value(i);
      if (kg < 0) {
        throw new Refused(
            grams.problem(i, path, "negative-weight", "a weight cannot be negative; leave it out"));
      }
      salts.add(new Stock.Weighed(salt, Units.G.fromBase(kg)));
    }
    return salts;
  }

  /** The mend for a salt that the table lacks. */
  public static String unknown(String name) {
    List<String> known = StockSalts.names();
    String near = Nearest.of(name, known);
    return "no salt \""
        + name
        + "\""
        + (near == null
            ? "; known: " + String.join(", ", known)
            : "; did you mean \"" + near + "\"?");
  }

  /** What the water brings; pure water, noted as taken, when nothing is known of it. */
  public static StockWater water(Section water) {
    if (!water.has("calcium") && !water.has("sulfate") && !water.has("alkalinity")) {
      water.took("pure water");
      return StockWater.PURE;
    }
    return StockWater.tap(
        or0(water, "calcium"),
        or0(water, "magnesium"),
        or0(water, "sulfate"),
        or0(water, "alkalinity"));
  }

  private static double or0(Section water, String key) {
    Double value = water.maybe(key);
    return value == null ? 0 : value;
  }
}
