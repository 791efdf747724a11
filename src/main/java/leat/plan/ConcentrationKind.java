package leat.plan;

import leat.quantity.Dimension;
import leat.quantity.IonAmount;
import leat.quantity.QuantityReader;
import leat.quantity.SchemaPattern;
import leat.quantity.Unreadable;
import leat.solution.IonName;
import leat.solution.tank.Clean;

/** Concentrations that may be typed in other ways, too; read as mg/L, a Double. */
public abstract class ConcentrationKind extends Kind {
  private ConcentrationKind(String word) {
    super(word);
  }

  @Override
  public Dimension dimension() {
    return Dimension.MASS_CONCENTRATION;
  }

  /**
   * An ion of the water, by weight, by number or by charge.
   *
   * @param name under which laboratories report it, see {@link IonName}
   */
  static Kind ofIon(String name) {
    return new ConcentrationKind("the concentration of an ion") {
      @Override
      Object read(String typed, boolean quoted) {
        IonName ion = IonName.of(name);
        return IonAmount.mgPerL(typed, ion.milligramsPerMillimole(), Math.abs(ion.ion().charge()));
      }

      @Override
      String schema() {
        return patterned(SchemaPattern.ionAmount());
      }
    };
  }

  /** A strength, also in per cent: grams in 100 mL. */
  public static final Kind STRENGTH =
      new ConcentrationKind("a concentration, or per cent") {
        @Override
        Object read(String typed, boolean quoted) {
          try {
            return QuantityReader.read(typed, Dimension.MASS_CONCENTRATION).value();
          } catch (Unreadable noConcentration) {
            return inPerCent(typed, noConcentration);
          }
        }

        @Override
        String schema() {
          return patterned(SchemaPattern.strength());
        }
      };

  private static Double inPerCent(String typed, Unreadable otherwise) {
    try {
      return Clean.mgLOfPct(100 * QuantityReader.read(typed, Dimension.SHARE).value());
    } catch (Unreadable e) {
      throw otherwise;
    }
  }
}
