package leat.solution.pitzer;

import static leat.solution.pitzer.Species.CA;
import static leat.solution.pitzer.Species.H2PO4;
import static leat.solution.pitzer.Species.K;
import static leat.solution.pitzer.Species.MG;
import static leat.solution.pitzer.Species.NH4;
import static leat.solution.pitzer.Species.SO4;

import java.util.ArrayList;
import java.util.List;
import leat.solution.Salts;
import leat.solution.stock.Stock;
import leat.solution.stock.StockSalt;

/**
 * What becomes of an undiluted stock bottle when all its ions are judged together.
 *
 * <ol>
 *   <li>crystals: the worst index is over the band
 *   <li>doubtful: HPO4 with ammonium and magnesium, which may make struvite
 *   <li>tight: the worst index lies within the band about 0: it may crystallise
 *   <li>unknown: more than {@link #MINOR_G_PER_L} of what the model does not know
 *   <li>clear: below
 * </ol>
 *
 * <p>Calcium with sulfate or phosphate is not computed: {@link Stock} says keep apart. Nor is the
 * share of each salt alone, which {@link Stock} judges; {@link #worse} joins both. A bottle can
 * stay over its limit for weeks before anything crystallises.
 *
 * <p>Source: {@link Pitzer}, {@link Solid}; band: nine in ten of 97 measured solubilities of
 * mixtures lie within -0.06 to 0.07; twice as wide with calcium and potassium, for which nothing
 * measured was found. Check values: solution-mixed.csv.
 */
public final class MixedBottle {
  /** Temperature up to which the solids' solubility is known, C. */
  public static final double WARMEST = 30;

  /** How far an index is to be trusted, -. */
  public static final double BAND = 0.10;

  /** The same with calcium and potassium together, or beyond the model's range, -. */
  public static final double WIDE_BAND = 0.20;

  /**
   * Of what the model does not know, this much may be in a bottle, g/L: it brings at most some 0.1
   * mol of ions, 0.02 of an index, and is below the solubility of borax (own sum).
   */
  public static final double MINOR_G_PER_L = 5;

  /** First look up to which a bottle is clear without the model, -. */
  static final double FIRST_LOOK_CLEAR = 0.7;

  private MixedBottle() {}

  /**
   * A salt in the bottle.
   *
   * @param salt which
   * @param grams as sold, g
   * @param shareKnown whether its own solubility is known, so that {@link Stock} judges it
   */
  record Poured(BottleSalt salt, double grams, boolean shareKnown) {
    /** Whether neither the model nor its own solubility judges it in full. */
    boolean beyond() {
      return salt.fit() != BottleSalt.Fit.FULL
          && !(shareKnown && salt.fit() == BottleSalt.Fit.INERT);
    }
  }

  /**
   * A solid that falls out.
   *
   * @param solid its formula with crystal water, such as "MgSO4.7H2O"
   * @param grams with its crystal water, g in the bottle
   */
  public record Fallen(String solid, double grams) {}

  /**
   * What becomes of a bottle.
   *
   * @param verdict by its ions alone
   * @param worstSolid the solid closest to falling out, such as "K2SO4"; null when the ions make
   *     none, or nothing is computed
   * @param worstIndex its index, -; null alike
   * @param band how far the index is to be trusted, -; null alike
   * @param fallsOutG all solids together at rest, g with crystal water in the bottle, 0 when none;
   *     null when nothing is computed
   * @param fallen what of each, the heaviest first
   * @param ions of the worst solid, such as "K" and "SO4"
   * @param salts those weighed that bring these ions
   */
  public record Answer(
      Stock.Verdict verdict,
      String worstSolid,
      Double worstIndex,
      Double band,
      Double fallsOutG,
      List<Fallen> fallen,
      List<String> ions,
      List<String> salts) {}

  /**
   * Judges an undiluted bottle by its ions.
   *
   * @param weighed what is weighed in
   * @param litres the bottle, L
   * @param celsius the coldest it gets, C
   * @return verdict, worst solid and what falls out
   */
  public static Answer of(List<Stock.Weighed> weighed, double litres, double celsius) {
    List<Poured> salts = poured(weighed);
    Contents contents = Contents.of(salts, litres, false);
    if (calciumMeets(salts, litres)) {
      return nothing(Stock.Verdict.CLEAR);
    }
    if (!(contents.waterKg() > 0)) {
      return nothing(Stock.Verdict.CRYSTALS);
    }
    Brine brine = new Brine(contents.moles(), celsius);
    double[] molality = contents.molality();
    double[] indices = brine.indices(molality);
    int worst = Brine.worst(indices);
    double band = band(molality);
    Stock.Verdict verdict = worst < 0 ? Stock.Verdict.CLEAR : verdict(indices[worst], band);
    if (verdict != Stock.Verdict.CRYSTALS && hydrogenPhosphate(salts)) {
      return nothing(worse(verdict, withHydrogenPhosphate(salts, litres, celsius)));
    }
    if (beyond(salts) > MINOR_G_PER_L * litres) {
      verdict = worse(verdict, Stock.Verdict.UNKNOWN);
    }
    return worst < 0
        ? new Answer(verdict, null, null, null, 0.0, List.of(), List.of(), List.of())
        : answer(verdict, brine, contents, worst, indices[worst], band, salts);
  }

  private static Answer answer(
      Stock.Verdict verdict,
      Brine brine,
      Contents contents,
      int worst,
      double index,
      double band,
      List<Poured> salts) {
    List<Fallen> fallen = new ArrayList<>();
    double grams = 0;
    if (index > 0) {
      FallOut out = new FallOut(brine, contents);
      for (int i = 0; i < brine.size(); i++) {
        if (out.moles(i) > 0) {
          grams += out.grams(i);
          insert(fallen, new Fallen(brine.solid(i).name(), out.grams(i)));
        }
      }
    }
    Solid solid = brine.solid(worst);
    return new Answer(
        verdict, solid.name(), index, band, grams, fallen, ions(solid), bringing(solid, salts));
  }

  private static void insert(List<Fallen> fallen, Fallen one) {
    int at = 0;
    while (at < fallen.size() && fallen.get(at).grams >= one.grams) {
      at++;
    }
    fallen.add(at, one);
  }

  private static Answer nothing(Stock.Verdict verdict) {
    return new Answer(verdict, null, null, null, null, List.of(), List.of(), List.of());
  }

  private static List<String> ions(Solid solid) {
    List<String> ions = new ArrayList<>();
    for (int i = 0; i < Species.COUNT; i++) {
      if (solid.count(i) > 0) {
        ions.add(Species.symbol(i));
      }
    }
    return ions;
  }

  private static List<String> bringing(Solid solid, List<Poured> salts) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < salts.size(); i++) {
      BottleSalt salt = salts.get(i).salt;
      if (salt.counts() && salt.bringsIonOf(solid) && !names.contains(salt.name())) {
        names.add(salt.name());
      }
    }
    return names;
  }

  /** The worse of two verdicts, such as that of the ions and that of the shares. */
  public static Stock.Verdict worse(Stock.Verdict one, Stock.Verdict other) {
    return one.ordinal() < other.ordinal() ? one : other;
  }

  /**
   * The verdict on an index.
   *
   * @param index the worst one, -
   * @param band how far it is to be trusted, -
   */
  static Stock.Verdict verdict(double index, double band) {
    if (index > band) {
      return Stock.Verdict.CRYSTALS;
    }
    return index >= -band ? Stock.Verdict.TIGHT : Stock.Verdict.CLEAR;
  }

  /** How far an index is to be trusted at these molalities, mol/kg. */
  static double band(double[] molality) {
    boolean calciumAndPotassium = molality[CA] > 0 && molality[K] > 0;
    boolean within = Pitzer.VALID.holds(0, Pitzer.ionicStrength(molality));
    return calciumAndPotassium || !within ? WIDE_BAND : BAND;
  }

  /** The salts as the model sees them. */
  static List<Poured> poured(List<Stock.Weighed> weighed) {
    List<Poured> salts = new ArrayList<>(weighed.size());
    for (int i = 0; i < weighed.size(); i++) {
      StockSalt salt = weighed.get(i).salt();
      double grams = weighed.get(i).grams();
      salts.add(new Poured(bottleSalt(salt), grams, salt.solubilityKnown()));
    }
    return salts;
  }

  private static BottleSalt bottleSalt(StockSalt salt) {
    if (salt.other() != null) {
      return BottleSalt.of(salt.other());
    }
    BottleSalt listed = BottleSalt.find(salt.name());
    return listed != null ? listed : BottleSalt.of(Salts.of(salt.name()));
  }

  static boolean calciumMeets(List<Poured> salts, double litres) {
    double[] ions = Contents.of(salts, litres, true).moles();
    return ions[CA] > 0 && (ions[SO4] + ions[H2PO4] > 0 || hydrogenPhosphate(salts));
  }

  private static boolean hydrogenPhosphate(List<Poured> salts) {
    for (int i = 0; i < salts.size(); i++) {
      if (salts.get(i).salt.hydrogenPhosphate() > 0 && salts.get(i).grams > 0) {
        return true;
      }
    }
    return false;
  }

  private static double beyond(List<Poured> salts) {
    double grams = 0;
    for (int i = 0; i < salts.size(); i++) {
      grams += salts.get(i).beyond() ? salts.get(i).grams : 0;
    }
    return grams;
  }

  /** The model lacks HPO4: struvite is doubtful, and beyond that the first look decides. */
  private static Stock.Verdict withHydrogenPhosphate(
      List<Poured> salts, double litres, double celsius) {
    double[] molality = Contents.of(salts, litres, true).molality();
    if (molality[NH4] > 0 && molality[MG] > 0) {
      return Stock.Verdict.DOUBTFUL;
    }
    boolean clear = firstLook(molality, celsius) <= FIRST_LOOK_CLEAR;
    return clear ? Stock.Verdict.CLEAR : Stock.Verdict.UNKNOWN;
  }

  /**
   * The largest of all solids' first looks, -; 0 when the ions make none.
   *
   * @param molality of the ions, mol/kg
   * @param celsius temperature, C
   */
  static double firstLook(double[] molality, double celsius) {
    double largest = 0;
    for (int i = 0; i < Solid.size(); i++) {
      if (Solid.at(i).presentIn(molality)) {
        double one = Solid.at(i).firstLook(molality, Math.min(celsius, WARMEST));
        largest = Math.max(largest, one);
      }
    }
    return largest;
  }
}
