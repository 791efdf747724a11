package leat.solution.pitzer;

import static leat.solution.pitzer.Species.CA;
import static leat.solution.pitzer.Species.CL;
import static leat.solution.pitzer.Species.COUNT;
import static leat.solution.pitzer.Species.H2PO4;
import static leat.solution.pitzer.Species.K;
import static leat.solution.pitzer.Species.MG;
import static leat.solution.pitzer.Species.NA;
import static leat.solution.pitzer.Species.NH4;
import static leat.solution.pitzer.Species.NO3;
import static leat.solution.pitzer.Species.SO4;

import leat.solution.Salt;

/**
 * What a gram of a salt, as sold, brings into a bottle: ions and room.
 *
 * <p>Room is that of the anhydrous salt; crystal water counts as water. Chelates, borate and
 * molybdate bring no ions that count.
 *
 * <p>Source: volumes by Laliberte (2009), as tabled in the package chemicals, at 20 % salt and 15
 * C; NH4H2PO4 from memory; the chlorides of calcium and magnesium from their nitrates by the
 * difference of nitrate and chloride in the salts of potassium and sodium, 10.8 mL/mol (own sum).
 * Check values: solution-mixed.csv.
 */
public final class BottleSalt {
  /** Room of what the list lacks, mL a gram of its ions: the middle of the list (by analogy). */
  static final double USUAL_ML_PER_G = 0.35;

  private static final double CALCIUM_NITRATE_G_MOL = 164.086;
  private static final double AMMONIUM_NITRATE_G_MOL = 80.043;
  private static final double GREENHOUSE_ML_PER_G =
      (0.295 * 5 * CALCIUM_NITRATE_G_MOL + 0.61 * AMMONIUM_NITRATE_G_MOL)
          / (5 * CALCIUM_NITRATE_G_MOL + AMMONIUM_NITRATE_G_MOL);

  // name, waters of crystal, mL/g anhydrous, then ion and count
  private static final BottleSalt[] TABLE = {
    new BottleSalt("calcium-nitrate-4h2o", 4, 0.295, CA, 1, NO3, 2),
    new BottleSalt("potassium-nitrate", 0, 0.40, K, 1, NO3, 1),
    new BottleSalt("magnesium-sulfate-7h2o", 7, 0.09, MG, 1, SO4, 1),
    new BottleSalt("potassium-sulfate", 0, 0.26, K, 2, SO4, 1),
    new BottleSalt("monopotassium-phosphate", 0, 0.345, K, 1, H2PO4, 1),
    new BottleSalt("monoammonium-phosphate", 0, 0.45, NH4, 1, H2PO4, 1),
    new BottleSalt("magnesium-nitrate-6h2o", 6, 0.29, MG, 1, NO3, 2),
    new BottleSalt("calcium-nitrate-greenhouse", 10, GREENHOUSE_ML_PER_G, CA, 5, NH4, 1, NO3, 11),
    new BottleSalt("ammonium-nitrate", 0, 0.61, NH4, 1, NO3, 1),
    new BottleSalt("ammonium-sulfate", 0, 0.47, NH4, 2, SO4, 1),
    new BottleSalt("ammonium-chloride", 0, 0.72, NH4, 1, CL, 1),
    new BottleSalt("magnesium-sulfate-1h2o", 1, 0.09, MG, 1, SO4, 1),
    new BottleSalt("potassium-chloride", 0, 0.40, K, 1, CL, 1),
    new BottleSalt("calcium-chloride-2h2o", 2, 0.24, CA, 1, CL, 2),
    new BottleSalt("magnesium-chloride-6h2o", 6, 0.225, MG, 1, CL, 2),
    new BottleSalt("sodium-nitrate", 0, 0.36, NA, 1, NO3, 1),
    new BottleSalt("sodium-chloride", 0, 0.335, NA, 1, CL, 1),
    new BottleSalt("gypsum", 2, USUAL_ML_PER_G, CA, 1, SO4, 1),
  };

  private final String name;
  private final double[] molPerGram;
  private final double mlPerGram;
  private final double hydrogenPhosphate;
  private final Fit fit;

  /** How well the model fits a salt. */
  enum Fit {
    /** All its ions are in the model. */
    FULL,
    /** Its ions count, but as others' by analogy. */
    ANALOGY,
    /** It brings nothing that counts as an ion. */
    INERT,
    /** It brings more than the model knows, so none of its ions count. */
    BEYOND
  }

  private BottleSalt(String name, int crystalWater, double mlPerGram, int... ions) {
    double anhydrous = 0;
    for (int i = 0; i < ions.length; i += 2) {
      anhydrous += ions[i + 1] * Species.molarMass(ions[i]);
    }
    double sold = anhydrous + crystalWater * Species.WATER_G_MOL;
    this.name = name;
    this.molPerGram = new double[COUNT];
    for (int i = 0; i < ions.length; i += 2) {
      molPerGram[ions[i]] = ions[i + 1] / sold;
    }
    this.mlPerGram = mlPerGram * anhydrous / sold;
    this.hydrogenPhosphate = 0;
    this.fit = Fit.FULL;
  }

  BottleSalt(
      String name, double[] molPerGram, double mlPerGram, double hydrogenPhosphate, Fit fit) {
    this.name = name;
    this.molPerGram = molPerGram;
    this.mlPerGram = mlPerGram;
    this.hydrogenPhosphate = hydrogenPhosphate;
    this.fit = fit;
  }

  /** The salt of a name of the list; null when the list lacks it. */
  public static BottleSalt find(String name) {
    for (int i = 0; i < TABLE.length; i++) {
      if (TABLE[i].name.equals(name)) {
        return TABLE[i];
      }
    }
    return null;
  }

  /** Any salt or own product: by the list when it is there, by its ions otherwise. */
  public static BottleSalt of(Salt salt) {
    BottleSalt listed = salt.formula().isEmpty() ? null : find(salt.name());
    return listed == null ? OtherSalt.of(salt) : listed;
  }

  /** Its name. */
  public String name() {
    return name;
  }

  /** Ions a gram as sold brings, mol/g. */
  double molPerGram(int ion) {
    return molPerGram[ion];
  }

  /** Room that a gram as sold takes beside its crystal water, mL/g. */
  double mlPerGram() {
    return mlPerGram;
  }

  /** HPO4 that a gram brings, which the model lacks, mol/g. */
  double hydrogenPhosphate() {
    return hydrogenPhosphate;
  }

  /** How well the model fits it. */
  Fit fit() {
    return fit;
  }

  /** Whether its ions count in the model. */
  boolean counts() {
    return fit == Fit.FULL || fit == Fit.ANALOGY;
  }

  boolean bringsIonOf(Solid solid) {
    for (int i = 0; i < COUNT; i++) {
      if (solid.count(i) > 0 && molPerGram[i] > 0) {
        return true;
      }
    }
    return false;
  }
}
