package leat.hydraulics;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * A stretch of one bore with the fittings that count on that bore.
 *
 * <p>Source: sheet hydraulics.md sections 2 to 4; check values: hydraulics-headloss.csv.
 *
 * @param length m, 0 to 10000, along the pipe
 * @param bore inside diameter, m, 0.0001 to 2
 * @param roughness of the wall, m, 0 to a twentieth of the bore; see {@link Roughness}
 * @param fittingsK sum of the loss coefficients on this bore, -, 0 to 1E9; see {@link Fitting}
 * @param ridges distance from ridge to ridge of a corrugated hose, m, above 0; 0 for a plain wall
 */
public record PipeSection(
    double length, double bore, double roughness, double fittingsK, double ridges) {
  /** Bores that the sheets checked; a pipe outside gets a caution. */
  public static final Validity USUAL = Validity.of("bore, m", 0.004, 0.050);

  /** Sharp entrance 0.5 and exit 1: what is taken when no K and no fittings are named, -. */
  public static final double K_WHEN_NOT_NAMED = 1.5;

  /**
   * @throws Impossible for a pipe that cannot be
   */
  public PipeSection {
    Impossible.unlessWithin("length", length, 0, 1e4, "a length is between 0 and 10 km");
    Impossible.unlessPositive("bore", bore);
    Impossible.unlessWithin("bore", bore, 1e-4, 2, "a pipe's bore is between 0.1 mm and 2 m");
    Impossible.ifNegative("roughness", roughness);
    FrictionFactor.acceptRoughness(roughness / bore);
    Impossible.unlessWithin("k", fittingsK, 0, 1e9, "a sum of K is 0 or more, 1E9 at most");
    Impossible.unlessWithin(
        "ridges", ridges, 0, 2 * bore, "ridges lie closer than two bores, or there are none");
  }

  /** A pipe with a plain wall. */
  public PipeSection(double length, double bore, double roughness, double fittingsK) {
    this(length, bore, roughness, fittingsK, 0);
  }

  /** Cross-section, m2. */
  public double area() {
    return Math.PI / 4 * bore * bore;
  }

  /** The same stretch with another bore; K keeps its number. */
  public PipeSection withBore(double other) {
    return new PipeSection(length, other, roughness, fittingsK, ridges);
  }

  /** Friction factor of the ridges, -, whatever the flow; 0 for a plain wall. */
  double ridgeFactor() {
    return ridges > 0 ? Bend.corrugatedFactor(bore, ridges) : 0;
  }

  /** The same stretch with {@code more} K added, such as a valve. */
  public PipeSection withMoreK(double more) {
    return new PipeSection(length, bore, roughness, fittingsK + more, ridges);
  }
}
