package leat.energy;

import java.util.OptionalDouble;
import leat.numeric.Impossible;

/**
 * What one duty saves against another: other minus this, negative when this one uses more.
 *
 * <p>Source: definition; sheet energy.md section 1, check values energy-duty.csv.
 *
 * @param energyJ energy saved, J
 * @param money money saved
 * @param share energy saved as a share of the <em>other's</em> energy; empty when the other uses
 *     none
 */
public record Saving(double energyJ, double money, OptionalDouble share) {
  /** Energy up to this is none, J. */
  private static final double NONE_J = 1e-6;

  /**
   * The difference of two energies and two costs.
   *
   * @param energyJ energy of this duty, J
   * @param cost its cost, money
   * @param againstJ energy of the other over the same period, J
   * @param againstCost its cost, money
   * @return the saving
   * @throws leat.numeric.Impossible if an energy or cost is negative
   */
  public static Saving of(double energyJ, double cost, double againstJ, double againstCost) {
    Accepted.energy(energyJ);
    Impossible.ifNegative("cost", cost);
    Accepted.energy(againstJ);
    Impossible.ifNegative("cost", againstCost);
    double saved = againstJ - energyJ;
    OptionalDouble share =
        againstJ > NONE_J ? OptionalDouble.of(saved / againstJ) : OptionalDouble.empty();
    return new Saving(saved, againstCost - cost, share);
  }

  /** Energy up to this is not worth a word, J. */
  private static final double UNTOLD_J = 1;

  /** Whether the two take the same, as far as anybody could see. */
  public boolean isNone() {
    return Math.abs(energyJ) < UNTOLD_J;
  }
}
