package leat.solution.recipes;

import leat.solution.Element;

/**
 * What became of one asked element.
 *
 * <pre>missed = got - asked      missed_pct = 100 (got - asked)/asked</pre>
 *
 * <p>The sign matters: below nought there is too little of it. An element asked at nought has no
 * per cent; it is judged per 1 mg/L.
 *
 * <p>Source: definition. Check values: sheet solution-recipe-inverse.csv.
 *
 * @param element which
 * @param asked mg/L
 * @param fromWater part of {@code got} that the water brings, mg/L
 * @param got mg/L, water included
 * @param missed got less asked, mg/L
 * @param hasPct whether a per cent makes sense: asked above 0
 * @param missedPct per cent of asked; 0 when it makes no sense
 */
public record Missed(
    Element element,
    double asked,
    double fromWater,
    double got,
    double missed,
    boolean hasPct,
    double missedPct) {
  /** Divisor of the miss of an element asked at nought, mg/L. */
  static final double SCALE_OF_NOUGHT = 1;

  private static final double EXACT = 1e-9;

  /** Misses under this, per cent, are finer than any salt's purity: common practice. */
  private static final double WORTH_NAMING_PCT = 0.1;

  static Missed of(Asked asked, Recipe recipe) {
    double want = asked.mgPerL();
    double got = recipe.total().of(asked.element());
    boolean hasPct = want > 0;
    double miss = got - want;
    return new Missed(
        asked.element(),
        want,
        recipe.fromWater().of(asked.element()),
        got,
        miss,
        hasPct,
        hasPct ? 100 * miss / want : 0);
  }

  /** The miss that was minimised: relative to what was asked, or per 1 mg/L when that is 0. */
  public double relative() {
    return missed / scale(asked);
  }

  static double scale(double asked) {
    return asked > 0 ? asked : SCALE_OF_NOUGHT;
  }

  /** Whether it was hit, to the last digit worth naming. */
  public boolean isHit() {
    return Math.abs(relative()) <= EXACT;
  }

  /** How much it is missed by, without sign: per cent of asked, 0 when that makes no sense. */
  public double offPct() {
    return Math.abs(missedPct);
  }

  /** How much it is missed by, without sign, mg/L. */
  public double offMgL() {
    return Math.abs(missed);
  }

  /** Whether it is missed by more than a thousandth of what was asked. */
  public boolean isWorthNaming() {
    return Math.abs(100 * relative()) >= WORTH_NAMING_PCT;
  }
}
