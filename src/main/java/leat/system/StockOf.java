package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.plan.Named;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;
import leat.solution.Salt;
import leat.solution.pitzer.UnlistedSalt;
import leat.solution.stock.Stock;
import leat.solution.stock.StockSalt;
import leat.solution.stock.StockSalts;
import leat.solution.stock.StockWater;

/** The bottles of own salts of a plan's {@code feed.stock} section, and the water they go into. */
public final class StockOf {
  private StockOf() {}

  /** What is weighed into the bottles of a plan; empty when nothing is named. */
  public static List<Stock.Weighed> salts(Plan plan) {
    Section stock = plan.section("feed").section("stock");
    List<Stock.Weighed> salts = new ArrayList<>();
    Named grams = stock.named("grams");
    for (int i = 0; i < grams.size(); i++) {
      StockSalt salt = find(plan, grams.name(i));
      String path = stock.path("grams");
      if (salt == null) {
        throw new Refused(
            grams.problem(i, path, "unknown-stock-salt", unknown(plan, grams.name(i))));
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

  /**
   * The salt of a name, by what bags and shops call it too: of the table of stock bottles, else of
   * the plan's own or the long list, with a solubility that is not known; null when there is none.
   */
  public static StockSalt find(Plan plan, String name) {
    StockSalt salt = StockSalts.find(name);
    if (salt != null) {
      return salt;
    }
    Salt other = SaltsOf.find(plan, name);
    if (other == null) {
      return null;
    }
    StockSalt called = StockSalts.find(other.name());
    return called == null ? UnlistedSalt.of(other) : called;
  }

  /** The mend for a salt that is none. */
  public static String unknown(Plan plan, String name) {
    List<String> known = StockSalts.names();
    List<String> others = SaltsOf.names(plan);
    for (int i = 0; i < others.size(); i++) {
      if (!known.contains(others.get(i))) {
        known.add(others.get(i));
      }
    }
    String meant = SaltsOf.meant(name, known);
    return "no salt \""
        + name
        + "\""
        + (meant.isEmpty()
            ? "; known: " + String.join(", ", known)
            : "; did you mean " + meant + "?");
  }

  /** What the water brings; pure water, noted as taken, when nothing is known of it. */
  public static StockWater water(Section water, Taken taken) {
    if (!water.has("calcium") && !water.has("sulfate") && !water.has("alkalinity")) {
      taken.note("pure water");
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
