package leat.hydraulics;

/**
 * How water flows in a pipe, by its Reynolds number.
 *
 * <p>Source: sheet hydraulics.md section 2: laminar to 2000, turbulent from 4000; between them the
 * flow may flicker and friction is uncertain by a fifth.
 */
public enum Regime {
  /** Smooth threads of water, Re to 2000. */
  LAMINAR,
  /** Neither surely, Re between 2000 and 4000. */
  TRANSITIONAL,
  /** Eddies, Re from 4000. */
  TURBULENT;

  /** Highest Reynolds number of laminar flow. */
  public static final double LAMINAR_TO = 2000;

  /** Lowest Reynolds number of surely turbulent flow. */
  public static final double TURBULENT_FROM = 4000;

  /**
   * The regime at a Reynolds number.
   *
   * @param re Reynolds number, -, 0 or more
   * @return the regime
   */
  public static Regime of(double re) {
    if (re <= LAMINAR_TO) {
      return LAMINAR;
    }
    return re < TURBULENT_FROM ? TRANSITIONAL : TURBULENT;
  }
}
