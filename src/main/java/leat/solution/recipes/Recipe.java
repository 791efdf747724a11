package leat.solution.recipes;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.solution.Elements;
import leat.solution.Ions;
import leat.solution.conductivity.IonConductivity;
import leat.solution.conductivity.IonEc;

/**
 * Weighed salts in a volume of water: elements, ions, charge balance, EC.
 *
 * <pre>
 * mg/L of e       = 1000 sum g_s w(s,e) / V
 * mmol/L of an ion = 1000 sum g_s n(s,ion) / (M_s V)
 * </pre>
 *
 * <p>H2PO4 counts one charge and HPO4 two, as the salt brings them; pH moves them, about 1 % of EC
 * up to pH 6.5. The volume is that of the finished solution.
 *
 * <p>Source: arithmetic; {@link IonConductivity} for EC. Published recipes (Hoagland and Arnon
 * 1950, Steiner) are reproduced by tests. Check values: sheet solution-recipe.csv.
 *
 * @param salts what was weighed
 * @param litres volume, L
 * @param fromSalts elements the salts bring, mg/L; nitrogen's forms are unknown when a salt hides
 *     them
 * @param fromWater elements the water brings, mg/L
 * @param total both, mg/L
 * @param saltIons ions the salts bring, mmol/L
 * @param ions ions of salts and water, mmol/L
 * @param ionsComplete whether all charge is known; if not, EC is too low
 * @param tapWater whether the water brings ions
 * @param ec conductivity, or null when too strong for the sum (a stock bottle)
 * @param totalGrams all salts together, g
 * @param cost of all salts that have a price, currency
 * @param costComplete whether every salt has a price
 */
public record Recipe(
    List<Weighed> salts,
    double litres,
    Elements fromSalts,
    Elements fromWater,
    Elements total,
    Ions saltIons,
    Ions ions,
    boolean ionsComplete,
    boolean tapWater,
    IonEc ec,
    double totalGrams,
    double cost,
    boolean costComplete) {
  private static final double LEAST_LITRES = 1e-3;
  private static final double MOST_LITRES = 1e6;

  /**
   * The forward sum.
   *
   * @param salts what is weighed
   * @param litres volume of the finished solution, L
   * @param water ions of the water, mmol/L; {@link Ions#NONE} for pure water
   * @throws Impossible if the volume is not above 0, or beyond 1 mL to 1000 m3
   */
  public static Recipe mix(List<Weighed> salts, double litres, Ions water) {
    checkVolume(litres);
    Elements brought = Elements.zero();
    Ions ions = Ions.NONE;
    boolean complete = true;
    boolean priced = true;
    double grams = 0;
    double cost = 0;
    for (Weighed weighed : salts) {
      double perLitre = weighed.grams() / litres;
      if (weighed.grams() > 0) {
        brought = brought.plus(weighed.salt().fractions().unknownAsZero().times(1000 * perLitre));
      }
      ions = ions.plus(weighed.salt().ionsPerGram().times(perLitre));
      complete &= weighed.salt().ionsKnown() || weighed.grams() == 0;
      priced &= weighed.salt().hasPrice() || weighed.grams() == 0;
      grams += weighed.grams();
      cost += weighed.cost();
    }
    Elements inWater = water.elements();
    Ions all = ions.plus(water);
    return new Recipe(
        List.copyOf(salts),
        litres,
        brought,
        inWater,
        brought.plus(inWater),
        ions,
        all,
        complete,
        !water.isEmpty(),
        ecOf(all),
        grams,
        cost,
        priced);
  }

  /**
   * Grams of one salt in another volume of the same solution.
   *
   * @param salt its place in the list, from 0
   * @param volume finished solution, L
   * @return mass, g
   */
  public double gramsFor(int salt, double volume) {
    return salts.get(salt).grams() / litres * volume;
  }

  /**
   * Grams of all salts in another volume of the same solution.
   *
   * @param volume finished solution, L
   * @return mass, g
   */
  public double gramsFor(double volume) {
    return totalGrams / litres * volume;
  }

  /**
   * Whether a salt is too little to weigh at home in another volume.
   *
   * @param volume finished solution, L
   */
  public boolean scaledTooSmall(double volume) {
    for (int i = 0; i < salts.size(); i++) {
      if (new Weighed(salts.get(i).salt(), gramsFor(i, volume)).isTooLittle()) {
        return true;
      }
    }
    return false;
  }

  static void checkVolume(double litres) {
    Impossible.unlessPositive("volume", litres);
    Impossible.unlessWithin(
        "volume", litres, LEAST_LITRES, MOST_LITRES, "a volume between 1 mL and 1000 m3 is needed");
  }

  private static IonEc ecOf(Ions ions) {
    boolean bottle = IonConductivity.ionicStrength(ions) > IonConductivity.LARGEST_IONIC_STRENGTH;
    return bottle ? null : IonConductivity.of(ions);
  }

  /**
   * The same recipe weighed on a scale: every amount to its nearest step.
   *
   * @param step smallest step the scale shows, g
   * @param water ions of the water, mmol/L, as given before
   * @throws Impossible if the step is not above 0
   */
  public Recipe rounded(double step, Ions water) {
    List<Weighed> onScale = new ArrayList<>();
    for (Weighed weighed : salts) {
      onScale.add(weighed.rounded(step));
    }
    return mix(onScale, litres, water);
  }

  /** Whether an amount is too little to weigh at home. */
  public boolean hasTooLittle() {
    for (Weighed weighed : salts) {
      if (weighed.isTooLittle()) {
        return true;
      }
    }
    return false;
  }
}
