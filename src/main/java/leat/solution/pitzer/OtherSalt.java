package leat.solution.pitzer;

import static leat.solution.pitzer.Species.CATIONS;
import static leat.solution.pitzer.Species.COUNT;

import leat.solution.Element;
import leat.solution.Ion;
import leat.solution.Ions;
import leat.solution.Salt;

/**
 * A salt or own product that {@link BottleSalt}'s list lacks, by the ions that {@link Salt} says.
 *
 * <p>Own products whose charges do not close, and salts with ions beyond the model, are marked as
 * not modelled. Borates and molybdates of the list bring nothing that counts.
 *
 * <p>Source: arithmetic; the share that counts is our own.
 */
final class OtherSalt {
  /** Charges that may stay open, of all charges, -: what labels round (own choice). */
  private static final double OPEN_CHARGES = 0.1;

  private static final double MMOL = 1000; // mmol/mol

  private OtherSalt() {}

  static BottleSalt of(Salt salt) {
    double[] ions = new double[COUNT];
    double hydrogenPhosphate = 0;
    BottleSalt.Fit fit = BottleSalt.Fit.INERT;
    if (salt.formula().isEmpty() || !isMinor(salt)) {
      Ions brought = salt.ionsPerGram();
      double metals = 0;
      for (int i = 0; i < Ion.count(); i++) {
        metals += add(ions, Ion.at(i), brought.of(Ion.at(i)) / MMOL);
      }
      hydrogenPhosphate = brought.of(Ion.HPO4) / MMOL;
      fit = fit(salt, ions, hydrogenPhosphate, metals);
    }
    return new BottleSalt(salt.name(), ions, room(ions), hydrogenPhosphate, fit);
  }

  private static BottleSalt.Fit fit(
      Salt salt, double[] ions, double hydrogenPhosphate, double metals) {
    if (!salt.ionsKnown() || hydrogenPhosphate > 0 || !chargesClose(ions)) {
      return BottleSalt.Fit.BEYOND;
    }
    if (grams(ions) == 0) {
      return BottleSalt.Fit.INERT;
    }
    return metals > 0 || salt.formula().isEmpty() ? BottleSalt.Fit.ANALOGY : BottleSalt.Fit.FULL;
  }

  private static boolean isMinor(Salt salt) {
    return salt.fraction(Element.B) > 0 || salt.fraction(Element.MO) > 0;
  }

  /** Adds an ion; returns its moles when it is a metal that counts as magnesium. */
  private static double add(double[] ions, Ion ion, double mol) {
    boolean metal = ion == Ion.MN || ion == Ion.ZN || ion == Ion.CU || ion == Ion.FE;
    int place = metal ? Species.MG : Species.of(ion.symbol());
    if (place >= 0) {
      ions[place] += mol;
    }
    return metal ? mol : 0;
  }

  private static boolean chargesClose(double[] ions) {
    double open = 0;
    double all = 0;
    for (int i = 0; i < COUNT; i++) {
      double charge = ions[i] * Species.charge(i);
      open += i < CATIONS ? charge : -charge;
      all += charge;
    }
    return Math.abs(open) <= OPEN_CHARGES * all;
  }

  private static double room(double[] ions) {
    double grams = grams(ions);
    return BottleSalt.USUAL_ML_PER_G * (grams > 0 ? grams : 1);
  }

  private static double grams(double[] ions) {
    double grams = 0;
    for (int i = 0; i < COUNT; i++) {
      grams += ions[i] * Species.molarMass(i);
    }
    return grams;
  }
}
