package leat.hydraulics;

import java.util.OptionalDouble;

/**
 * How much of the printed head is believed, and why: solved once for the tower as it was measured,
 * then carried along while the tower changes.
 *
 * <p>Source: sheets hydraulics.md section 5 and hydraulics-tower.md, "A bucket and a watch".
 *
 * @param kind why
 * @param share by which figures are computed, -
 * @param measured what the trial says, or null when nothing was measured
 */
public record Derate(Kind kind, double share, MeasuredDerate measured) {
  /** Why the share is believed. */
  public enum Kind {
    /** Named in the plan. */
    NAMED("named"),
    /** Explains a measured flow. */
    MEASURED("measured"),
    /** The measured flow is more than the printed pump gives: figures by 100 %. */
    OVER_100("over-100"),
    /** The measured flow lies past the end of the curve: figures by 100 %. */
    BEYOND_CURVE("beyond-curve"),
    /** Nothing came out: only a ceiling is known; figures by the ceiling. */
    NO_FLOW("no-flow"),
    /** Neither named nor measured: figures by the print, verdicts by 70 %. */
    NOT_NAMED("not-named");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word to print. */
    public String word() {
      return word;
    }
  }

  /**
   * A share that is told.
   *
   * @param share of the printed head, -, above 0, 2 at most as {@link PumpCurve#derated} wants it
   */
  public static Derate named(double share) {
    return new Derate(Kind.NAMED, share, null);
  }

  /** Nothing is told: the print. */
  public static Derate notNamed() {
    return new Derate(Kind.NOT_NAMED, 1, null);
  }

  /** What a trial leaves to believe. */
  public static Derate of(MeasuredDerate measured) {
    return switch (measured.status()) {
      case VALUE -> new Derate(Kind.MEASURED, measured.derate().getAsDouble(), measured);
      case OVER_100 -> new Derate(Kind.OVER_100, 1, measured);
      case BEYOND_CURVE -> new Derate(Kind.BEYOND_CURVE, 1, measured);
      case NO_FLOW -> new Derate(Kind.NO_FLOW, ceiling(measured), measured);
    };
  }

  /** Lift over shut-off head, at most the print; the print when not even that limits it. */
  private static double ceiling(MeasuredDerate measured) {
    double high = measured.high().getAsDouble();
    return high > 0 ? Math.min(1, high) : 1;
  }

  /** No derate explains what was measured: say so wherever a figure rests on it. */
  public boolean unexplained() {
    return kind == Kind.OVER_100 || kind == Kind.BEYOND_CURVE;
  }

  /** What the share is at most, -: after a trial without flow lift over shut-off head. */
  public OptionalDouble high() {
    return measured == null ? OptionalDouble.empty() : measured.high();
  }

  /** Share for a verdict, -: {@link PumpCurve#USUAL_DERATE_WORN} when nothing is told. */
  public double shareForVerdict() {
    return kind == Kind.NOT_NAMED ? PumpCurve.USUAL_DERATE_WORN : share;
  }

  /**
   * Share for another pump that nobody has tried, -: what is named, else {@link
   * PumpCurve#USUAL_DERATE_WORN}; a bucket tells of the pump it was held under only.
   */
  public double shareOfAnother() {
    return kind == Kind.NAMED ? Math.min(1, share) : PumpCurve.USUAL_DERATE_WORN;
  }
}
