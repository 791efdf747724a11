package leat.solution.tank;

import leat.numeric.Impossible;

/**
 * A dose poured with a measuring cup or syringe that has marks: each part to its nearest mark, and
 * what that does to the EC and to the balance of the parts.
 *
 * <pre>part' = s round(part / s)      EC = (a V + Q 0.001 sum part') / (V + 0.001 sum part')</pre>
 *
 * The rounded total is taken to have the strength of all parts together; which part brings how much
 * salt is not on a label.
 *
 * <p>Source: mass balance; no sheet.
 *
 * @param stepMl the mark's step s, mL
 * @param partMl each part as it is poured, mL
 * @param concentrateMl all parts, mL
 * @param finalVolumeL water and concentrate, L
 * @param finalEcMsCm EC then, mS/cm
 * @param ecOffMsCm that EC minus the unrounded one, mS/cm
 * @param ecOffPct the same in per cent of the unrounded one
 * @param worstPartOffPct the part that is furthest from its exact amount, per cent, signed; 0 when
 *     nothing is dosed
 * @param aPartVanishes whether a part that is wanted rounds to nothing: the step is too coarse
 */
public record DoseRounding(
    double stepMl,
    double[] partMl,
    double concentrateMl,
    double finalVolumeL,
    double finalEcMsCm,
    double ecOffMsCm,
    double ecOffPct,
    double worstPartOffPct,
    boolean aPartVanishes) {
  private static final double COARSE_PCT = 10;

  /** Whether a part is further off than labels are, 10 % (common practice). */
  public boolean isCoarse() {
    return aPartVanishes || Math.abs(worstPartOffPct) > COARSE_PCT;
  }

  /**
   * Rounds a dose that was reached.
   *
   * @param answer the dose
   * @param volumeL water there, L
   * @param fromMsCm its EC, mS/cm
   * @param parts the feed
   * @param stepMl the step of the cup or syringe, mL
   * @return the rounded dose
   * @throws Impossible if the step is 0 or less, or the dose has no amounts
   */
  public static DoseRounding of(
      Dose.Answer answer, double volumeL, double fromMsCm, FeedParts parts, double stepMl) {
    Impossible.unlessWithin("step", stepMl, 1e-6, 1e6, "a step lies between a drop and a barrel");
    if (!answer.reached()) {
      throw new Impossible("step", "there is no dose to round");
    }
    double[] exact = answer.partMl();
    double[] rounded = new double[exact.length];
    double total = 0;
    double worst = 0;
    boolean vanishes = false;
    for (int i = 0; i < exact.length; i++) {
      rounded[i] = stepMl * Math.rint(exact[i] / stepMl);
      total += rounded[i];
      if (exact[i] > 0) {
        double off = 100 * (rounded[i] - exact[i]) / exact[i];
        worst = Math.abs(off) > Math.abs(worst) ? off : worst;
        vanishes |= rounded[i] == 0;
      }
    }
    double ec = Dose.ecAfter(volumeL, fromMsCm, total, parts.together());
    double off = ec - answer.finalEcMsCm();
    double offPct = answer.finalEcMsCm() > 0 ? 100 * off / answer.finalEcMsCm() : 0;
    return new DoseRounding(
        stepMl, rounded, total, volumeL + 0.001 * total, ec, off, offPct, worst, vanishes);
  }
}
