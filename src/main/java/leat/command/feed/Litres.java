package leat.command.feed;

import leat.quantity.Units;

/**
 * Between the litres, millilitres and grams of {@code leat.solution} and the base units of rows,
 * flags and plans.
 */
final class Litres {
  private Litres() {}

  /** Litres of a volume in m3. */
  static double of(double m3) {
    return Units.L.fromBase(m3);
  }

  /** m3 of litres; null stays null. */
  static Double base(Double litres) {
    return litres == null ? null : Double.valueOf(Units.L.toBase(litres));
  }

  /** m3 of millilitres; null stays null. */
  static Double baseOfMl(Double ml) {
    return ml == null ? null : Double.valueOf(Units.ML.toBase(ml));
  }

  /** kg of grams; null stays null. */
  static Double baseOfG(Double g) {
    return g == null ? null : Double.valueOf(Units.G.toBase(g));
  }
}
