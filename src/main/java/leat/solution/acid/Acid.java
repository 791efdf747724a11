package leat.solution.acid;

import leat.numeric.Impossible;

/**
 * An acid as it stands in its bottle: what it is, how strong, how heavy, and how many protons a
 * molecule gives at a pH.
 *
 * <pre>
 * protons n = sum(i ti) / sum(ti), t0 = 1, ti = K1 .. Ki / h^i     h = 10^-pH
 * mol/L = 10 p density / M                                         p per cent by weight
 * </pre>
 *
 * Nitric and hydrochloric acid give one proton, sulfuric two (above pH 3.5 to a per cent),
 * phosphoric about one at the pH of a tank, citric two.
 *
 * <p>Source: constants at 25 C from common handbook tables (from memory). Check values:
 * solution-acid.csv.
 */
public final class Acid {
  /** Which acid. */
  public enum Kind {
    /** HNO3; brings nitrogen. */
    NITRIC("nitric", 63.013, 1, new double[0]),
    /** H3PO4; brings phosphorus. */
    PHOSPHORIC("phosphoric", 97.994, 0, new double[] {2.15, 7.20, 12.35}),
    /** H2SO4; brings sulfur. */
    SULFURIC("sulfuric", 98.078, 2, new double[0]),
    /** HCl; brings chloride. */
    HYDROCHLORIC("hydrochloric", 36.461, 1, new double[0]),
    /** C6H8O7, solid. */
    CITRIC("citric", 192.124, 0, new double[] {3.13, 4.76, 6.40}),
    /** C6H8O7.H2O, solid. */
    CITRIC_HYDRATE("citric-1h2o", 210.139, 0, new double[] {3.13, 4.76, 6.40});

    /** The name as it is typed, without the strength. */
    public final String word;

    /** Molar mass, g/mol. */
    public final double gPerMol;

    private final double strongProtons;
    private final double[] pk;

    Kind(String word, double gPerMol, double strongProtons, double[] pk) {
      this.word = word;
      this.gPerMol = gPerMol;
      this.strongProtons = strongProtons;
      this.pk = pk;
    }

    /** Whether it is weighed, not measured by volume. */
    public boolean isSolid() {
      return this == CITRIC || this == CITRIC_HYDRATE;
    }
  }

  /** Over this share by weight an acid is no household good, % (common practice). */
  public static final double HOUSEHOLD_PCT = 40;

  /** Nitric acid over this is restricted for the public in the EU (2019/1148, from memory), %. */
  public static final double NITRIC_RESTRICTED_PCT = 3;

  /** Sulfuric acid over this is restricted for the public in the EU (2019/1148, from memory), %. */
  public static final double SULFURIC_RESTRICTED_PCT = 15;

  private static final double LEAST_PCT = 0.1;
  private static final double N_G_MOL = 14.007;
  private static final double P_G_MOL = 30.974;
  private static final double S_G_MOL = 32.06;
  private static final double CL_G_MOL = 35.45;

  private final Kind kind;
  private final double percent;
  private final double densityKgL;

  private Acid(Kind kind, double percent, double densityKgL) {
    this.kind = kind;
    this.percent = percent;
    this.densityKgL = densityKgL;
  }

  /**
   * A dissolved acid of a strength and density.
   *
   * @param kind which acid; not a solid one
   * @param percent strength, % by weight
   * @param densityKgL density, kg/L; {@link Acids#density} when the label is silent
   * @return the acid
   * @throws Impossible if the strength is outside 0.1 to 100 %, the density outside 0.9 to 2 kg/L,
   *     or the acid is a solid
   */
  public static Acid liquid(Kind kind, double percent, double densityKgL) {
    if (kind.isSolid()) {
      throw new Impossible("acid", "citric acid is taken as the solid: weigh it");
    }
    Impossible.unlessPositive("strength", percent);
    Impossible.unlessWithin("strength", percent, 0, 100, "a strength cannot be over 100 %");
    Impossible.unlessWithin(
        "strength", percent, LEAST_PCT, 100, "under a tenth of a per cent it is water, not acid");
    Impossible.unlessWithin(
        "density", densityKgL, 0.9, 2, "an acid's density lies between 0.9 and 2 kg/L");
    return new Acid(kind, percent, densityKgL);
  }

  /**
   * A solid acid.
   *
   * @param kind citric acid, dry or with a crystal water
   * @return the acid
   * @throws Impossible if the acid is not a solid
   */
  public static Acid solid(Kind kind) {
    if (!kind.isSolid()) {
      throw new Impossible("acid", "this acid is a liquid: its strength is needed");
    }
    return new Acid(kind, 100, 0);
  }

  /** Which acid. */
  public Kind kind() {
    return kind;
  }

  /** Strength, % by weight; 100 for a solid. */
  public double percent() {
    return percent;
  }

  /** Density at 20 C, kg/L; 0 for a solid. */
  public double densityKgL() {
    return densityKgL;
  }

  /** Whether it is weighed. */
  public boolean isSolid() {
    return kind.isSolid();
  }

  /** Moles in a litre of the bottle, mol/L; 0 for a solid. */
  public double molPerL() {
    return 10 * percent * densityKgL / kind.gPerMol;
  }

  /**
   * Protons that a molecule has given at a pH.
   *
   * @param ph pH, -
   * @return protons a molecule, -
   */
  public double protons(double ph) {
    if (kind.pk.length == 0) {
      return kind.strongProtons;
    }
    double share = 1;
    double all = 1;
    double given = 0;
    for (int i = 0; i < kind.pk.length; i++) {
      share *= Math.pow(10, ph - kind.pk[i]);
      all += share;
      given += (i + 1) * share;
    }
    return given / all;
  }

  /** Nitrogen it brings, mg a mmol. */
  public double nitrogenMgPerMmol() {
    return kind == Kind.NITRIC ? N_G_MOL : 0;
  }

  /** Phosphorus it brings, mg a mmol. */
  public double phosphorusMgPerMmol() {
    return kind == Kind.PHOSPHORIC ? P_G_MOL : 0;
  }

  /** Sulfur it brings, mg a mmol. */
  public double sulfurMgPerMmol() {
    return kind == Kind.SULFURIC ? S_G_MOL : 0;
  }

  /** Chloride it brings, mg a mmol. */
  public double chlorideMgPerMmol() {
    return kind == Kind.HYDROCHLORIC ? CL_G_MOL : 0;
  }

  /** Whether it lasts: citric acid is eaten by microbes in days (common practice). */
  public boolean lasts() {
    return !isSolid();
  }

  /** Whether it is stronger than a household should keep: a liquid over 40 %. */
  public boolean isOverHousehold() {
    return !isSolid() && percent > HOUSEHOLD_PCT;
  }

  /** Whether the EU restricts it for the public: nitric over 3 %, sulfuric over 15 %. */
  public boolean isRestricted() {
    return kind == Kind.NITRIC && percent > NITRIC_RESTRICTED_PCT
        || kind == Kind.SULFURIC && percent > SULFURIC_RESTRICTED_PCT;
  }
}
