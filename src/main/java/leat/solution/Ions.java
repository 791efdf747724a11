package leat.solution;

import leat.numeric.Impossible;

/**
 * Concentrations of ions in a solution, mmol/L. Never changes once made.
 *
 * <pre>meq/L = mmol/L |z|      balance = cations - anions</pre>
 *
 * <p>Source: definition; a balance beyond 5 % of the mean of both sides speaks against a water
 * analysis: common practice of water laboratories. Check values: sheets solution-ec-ions.csv,
 * solution-recipe.csv.
 */
public final class Ions {
  /** Pure water. */
  public static final Ions NONE = new Ions(new double[Ion.count()]);

  /** Balance error, per cent, beyond which a water analysis is doubtful. */
  public static final double DOUBTFUL_BALANCE_PCT = 5;

  private static final double MOST_MILLIMOLES = 1e5; // mmol/L; water itself is 55,500

  private final double[] millimoles;

  private Ions(double[] millimoles) {
    this.millimoles = millimoles;
  }

  /**
   * These ions and more of one.
   *
   * @param ion which
   * @param more mmol/L, not negative
   * @throws Impossible if negative or over 1e5 mmol/L
   */
  public Ions and(Ion ion, double more) {
    Impossible.ifNegative(ion.symbol(), more);
    Impossible.unlessWithin(
        ion.symbol(), more, 0, MOST_MILLIMOLES, "it is more than a litre of water can hold");
    double[] sum = millimoles.clone();
    sum[ion.ordinal()] += more;
    return new Ions(sum);
  }

  /**
   * These ions and more of one, as a laboratory prints it.
   *
   * @param name such as {@code IonName.of("N-NO3")}
   * @param mgPerL mg/L of what is named
   * @throws Impossible if negative or over 1e5 mmol/L
   */
  public Ions andMilligrams(IonName name, double mgPerL) {
    return and(name.ion(), name.millimoles(mgPerL));
  }

  /**
   * These ions and more of one, by its charge.
   *
   * @param ion which
   * @param meqPerL meq/L
   * @throws Impossible if negative or over 1e5 mmol/L
   */
  public Ions andMilliequivalents(Ion ion, double meqPerL) {
    return and(ion, meqPerL / Math.abs(ion.charge()));
  }

  /**
   * These ions and alkalinity, taken as bicarbonate (true within a few per cent below pH 8.3).
   *
   * @param meqPerL alkalinity, meq/L
   * @throws Impossible if negative or over 1e5 mmol/L
   */
  public Ions andAlkalinity(double meqPerL) {
    return andMilliequivalents(Ion.HCO3, meqPerL);
  }

  /**
   * These ions with bicarbonate enough to close the charges, as in a water of which nobody measured
   * the alkalinity; unchanged when the anions already make up for the cations.
   */
  public Ions closedByBicarbonate() {
    double open = balance();
    return open > 0 ? and(Ion.HCO3, open) : this;
  }

  /** The sum of two solutions in the same volume. */
  public Ions plus(Ions other) {
    double[] sum = millimoles.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += other.millimoles[i];
    }
    return new Ions(sum);
  }

  /** All concentrations times a factor that is not negative. */
  public Ions times(double factor) {
    Impossible.ifNegative("factor", factor);
    double[] scaled = millimoles.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    return new Ions(scaled);
  }

  /** Concentration of an ion, mmol/L. */
  public double of(Ion ion) {
    return millimoles[ion.ordinal()];
  }

  /** Whether there is nothing in it. */
  public boolean isEmpty() {
    for (double c : millimoles) {
      if (c > 0) {
        return false;
      }
    }
    return true;
  }

  /** Positive charge, meq/L. */
  public double cations() {
    return charge(1);
  }

  /** Negative charge, as a positive figure, meq/L. */
  public double anions() {
    return charge(-1);
  }

  private double charge(int sign) {
    double sum = 0;
    for (int i = 0; i < millimoles.length; i++) {
      int z = Ion.at(i).charge() * sign;
      if (z > 0) {
        sum += millimoles[i] * z;
      }
    }
    return sum;
  }

  /** Cations less anions, meq/L: 0 for whole salts. */
  public double balance() {
    return cations() - anions();
  }

  /** The balance in per cent of the mean of both sides; 0 when there are no ions. */
  public double balancePct() {
    double mean = (cations() + anions()) / 2;
    return mean > 0 ? 100 * balance() / mean : 0;
  }

  /** How far the charges miss each other, per cent of their mean, without sign. */
  public double offPct() {
    return Math.abs(balancePct());
  }

  /** Concentration of an ion by weight, mg/L. */
  public double milligrams(Ion ion) {
    return of(ion) * ion.molarMass();
  }

  /** Charge of an ion without its sign, meq/L. */
  public double milliequivalents(Ion ion) {
    return of(ion) * Math.abs(ion.charge());
  }

  /** Whether the charges miss each other by more than 5 %. */
  public boolean isDoubtful() {
    return Math.abs(balancePct()) > DOUBTFUL_BALANCE_PCT;
  }

  /** The elements in it, mg/L; what it has none of is 0. */
  public Elements elements() {
    Elements sum = Elements.zero();
    for (int i = 0; i < millimoles.length; i++) {
      Element element = Ion.at(i).element();
      if (element != null && millimoles[i] > 0) {
        double mg = millimoles[i] * element.atom().weight();
        sum = sum.with(element, sum.of(element) + mg);
      }
    }
    return sum.with(Element.N, sum.of(Element.N_NO3) + sum.of(Element.N_NH4));
  }
}
