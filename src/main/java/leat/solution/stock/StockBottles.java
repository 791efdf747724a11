package leat.solution.stock;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.solution.Accepted;

/**
 * Two stock bottles out of the salts for a litre of tower water: which salt goes where, how strong
 * they can be, how far they go.
 *
 * <p>Calcium salts and iron chelates go into bottle 1, sulfates, phosphates and all others into
 * bottle 2; a salt that is calcium and sulfate at once belongs in neither.
 *
 * <p>Source: common practice; arithmetic. The verdicts are {@link Stock}'s.
 */
public final class StockBottles {
  private StockBottles() {}

  /**
   * The bottle of a salt.
   *
   * @param salt which
   * @return 1 for calcium and chelates, 2 for the rest, 0 for neither: weigh it into the tank
   */
  public static int bottleFor(StockSalt salt) {
    if (salt.hasCalcium()) {
      return salt.hasSulfateOrPhosphate() ? 0 : 1;
    }
    return salt.brings("Fe") ? 1 : 2;
  }

  /**
   * The salts of one bottle.
   *
   * @param salts all salts
   * @param bottle 1, 2 or 0 as in {@link #bottleFor}
   * @return those that belong there, in order
   */
  public static List<Stock.Weighed> of(List<Stock.Weighed> salts, int bottle) {
    List<Stock.Weighed> there = new ArrayList<>();
    for (Stock.Weighed one : salts) {
      if (bottleFor(one.salt()) == bottle) {
        there.add(one);
      }
    }
    return there;
  }

  /**
   * Grams for a bottle out of grams for a volume of tower water.
   *
   * @param forTower grams in the tower water
   * @param towerL that tower water, L
   * @param madeL tower water that the bottle is to make, L
   * @return grams in the bottle
   * @throws Impossible if a volume is 0
   */
  public static List<Stock.Weighed> scaled(
      List<Stock.Weighed> forTower, double towerL, double madeL) {
    Accepted.someVolume("volume", towerL);
    Accepted.someVolume("makes", madeL);
    List<Stock.Weighed> scaled = new ArrayList<>(forTower.size());
    for (Stock.Weighed one : forTower) {
      scaled.add(new Stock.Weighed(one.salt(), one.grams() * madeL / towerL));
    }
    return scaled;
  }

  /**
   * The strongest these salts may stand in a bottle: litres of tower water that a litre of it makes
   * when its worst salt is at 80 % of what the cold holds. Salts of unknown solubility are not
   * seen.
   *
   * @param forTower grams in the tower water of the salts of one bottle
   * @param towerL that tower water, L
   * @param celsius the coldest it gets, C
   * @return litres of tower water a litre of bottle makes, -; null when no salt limits it
   * @throws Impossible if there are no salts, the volume is 0, or the temperature outside 0 to 60 C
   */
  public static Double strongest(List<Stock.Weighed> forTower, double towerL, double celsius) {
    Stock.Share worst = Stock.bottle(forTower, towerL, celsius, 6).worst();
    if (worst == null) {
      return null;
    }
    double times = Stock.WORKING_SHARE / worst.share();
    return times < Accepted.LARGEST_VOLUME_L ? (Double) times : null;
  }

  /**
   * Tower water that a bottle makes.
   *
   * @param bottleL the bottle, L
   * @param rateMlPerL of it per litre of tower water, mL/L
   * @return tower water, L
   * @throws Impossible if one is 0
   */
  public static double towerWaterL(double bottleL, double rateMlPerL) {
    Accepted.someVolume("bottle", bottleL);
    Impossible.unlessWithin(
        "rate", rateMlPerL, 1e-3, 1000, "a rate lies between 0.001 and 1000 mL a litre");
    return 1000 * bottleL / rateMlPerL;
  }

  /**
   * How far bottles go.
   *
   * @param exact bottles of each kind used up in the season, -
   * @param whole bottles to make, a whole number
   */
  public record Season(double exact, int whole) {}

  /**
   * Solution that a season takes: the first fill, every change, and what the plants drink, all of
   * it at feed strength.
   *
   * @param fullL the tank at its full mark, L
   * @param days length of the season, d
   * @param changeDays days between changes of the whole tank, d; null for none
   * @param drinksLPerDay what the plants take, L/d
   * @return solution, L
   * @throws Impossible if the tank is empty, the season shorter than a day or over 10 years, a
   *     change comes oftener than daily, or the thirst is negative
   */
  public static double seasonL(double fullL, double days, Double changeDays, double drinksLPerDay) {
    Accepted.someVolume("full", fullL);
    Impossible.unlessWithin("season", days, 1, 3653, "a season lasts a day to ten years");
    Accepted.volume("drinks", drinksLPerDay);
    double changes = 0;
    if (changeDays != null) {
      Impossible.unlessWithin("change", changeDays, 1, 3653, "a change comes daily at most");
      changes = Math.max(0, Math.ceil(days / changeDays - 1e-9) - 1);
    }
    return fullL * (1 + changes) + drinksLPerDay * days;
  }

  /**
   * Bottles that a season needs, of each kind.
   *
   * @param seasonL solution made up in the season: first fill, changes and top-ups at feed
   *     strength, L
   * @param madeL tower water that one bottle makes, L
   * @return bottles
   * @throws Impossible if the season is negative, a bottle makes nothing, or it takes over a
   *     million
   */
  public static Season season(double seasonL, double madeL) {
    Accepted.volume("season", seasonL);
    Accepted.someVolume("makes", madeL);
    double exact = seasonL / madeL;
    if (exact > 1e6) {
      throw new Impossible("bottle", "the season would take over a million bottles");
    }
    return new Season(exact, (int) Math.ceil(exact - 1e-9));
  }
}
