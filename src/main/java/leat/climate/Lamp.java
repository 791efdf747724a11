package leat.climate;

import leat.numeric.Impossible;

/**
 * A lamp over plants and what it must do for the light that is missing.
 *
 * <pre>PPFD = eta U P/A;  h = missing 1E6/(3600 PPFD);  kWh = missing A/(3.6 eta U)
 * watts needed = missing A 1E6/(3600 eta U longest)</pre>
 *
 * <p>Source: sheet season-light.md section 4; efficacies Nelson and Bugbee 2014, good LED from
 * memory; shares that land common practice; check values season-light.csv.
 *
 * @param watts power from the mains, W; NaN when no lamp is there yet
 * @param umolPerJ photons the fixture gives, umol/J
 * @param landing share of them that lands on the area, above 0 to 1
 * @param areaM2 area to be lit, m2
 */
public record Lamp(double watts, double umolPerJ, double landing, double areaM2) {
  /** A good LED now, umol/J (2.5 to 3, from memory). */
  public static final double LED_UMOL_J = 2.5;

  /** The best LED and double-ended sodium lamps of 2014, umol/J. */
  public static final double LED_2014_UMOL_J = 1.7;

  /** Older sodium lamps, umol/J. */
  public static final double SODIUM_UMOL_J = 1.02;

  /** Ceramic halide, umol/J. */
  public static final double HALIDE_UMOL_J = 1.46;

  /** Fluorescent, umol/J. */
  public static final double FLUORESCENT_UMOL_J = 0.95;

  /** Limit of LED, umol/J (Kusuma and others 2020, 3.4 to 4.1). */
  public static final double LIMIT_UMOL_J = 4.1;

  /** Share that lands over a bench, - (common practice). */
  public static final double OVER_BENCH = 0.7;

  /** Share that lands round a tower, - (common practice; 0.4 to 0.6). */
  public static final double ROUND_TOWER = 0.5;

  private static final double S_PER_H = 3600;
  private static final double UMOL = 1e6;
  private static final double J_PER_KWH = 3.6e6;

  /**
   * @throws Impossible if the power, efficacy or area is not above 0, the efficacy above {@link
   *     #LIMIT_UMOL_J}, or the share outside 0 to 1
   */
  public Lamp {
    if (!Double.isNaN(watts)) {
      Impossible.unlessPositive("lamp power", watts);
    }
    Impossible.unlessPositive("lamp efficacy", umolPerJ);
    Impossible.unlessWithin(
        "lamp efficacy", umolPerJ, 0, LIMIT_UMOL_J, "no lamp gives more than 4.1 umol/J");
    Impossible.unlessPositive("lamp share", landing);
    Accepted.share("lamp share", landing);
    Impossible.unlessPositive("lamp area", areaM2);
  }

  /**
   * Efficacy in photons of a lamp sold by lumens.
   *
   * @param lumenPerW light of the lamp, lm/W
   * @param luxPerUmol lux of 1 umol/m2 s of its light, see {@link LightMeter}
   * @return umol/J
   * @throws Impossible if one is not above 0
   */
  public static double ofLumenUmolJ(double lumenPerW, double luxPerUmol) {
    return Impossible.unlessPositive("lamp lumen", lumenPerW)
        / Impossible.unlessPositive("lux", luxPerUmol);
  }

  /** Photons on the area, umol/m2 s; NaN when no lamp is there. */
  public double ppfdUmolM2S() {
    return umolPerJ * landing * watts / areaM2;
  }

  /**
   * What the lamp does on a day; natural light, need in mol/m2, longest day of the lamp in h.
   *
   * @throws Impossible if light is negative or the longest day not above 0 to 24 h
   */
  public LampDay day(double naturalMolM2, double needMolM2, double longestHours) {
    Impossible.ifNegative("light", naturalMolM2);
    Impossible.unlessPositive("lamp hours", longestHours);
    Impossible.unlessWithin("lamp hours", longestHours, 0, 24, "a day has 24 hours");
    double missing = Math.max(0, Impossible.ifNegative("light", needMolM2) - naturalMolM2);
    double joule = missing * areaM2 * UMOL / (umolPerJ * landing);
    double needed = joule / (S_PER_H * longestHours);
    if (missing == 0) {
      return new LampDay(LampDay.Status.NONE_NEEDED, 0, 0, 0, 0, naturalMolM2);
    }
    if (Double.isNaN(watts)) {
      return new LampDay(
          LampDay.Status.SIZE, missing, longestHours, joule / J_PER_KWH, needed, needMolM2);
    }
    double hours = joule / (S_PER_H * watts);
    // A lamp sized for the longest day meets it exactly.
    if (hours <= longestHours * (1 + 1e-9)) {
      return new LampDay(LampDay.Status.OK, missing, hours, joule / J_PER_KWH, needed, needMolM2);
    }
    double reached = naturalMolM2 + LightMeter.molM2(ppfdUmolM2S(), longestHours);
    double kwh = watts * longestHours / 1000;
    return new LampDay(LampDay.Status.LAMP_TOO_SMALL, missing, longestHours, kwh, needed, reached);
  }
}
