package leat.sweep;

import leat.answer.Column;
import leat.check.Subject;
import leat.numeric.Impossible;
import leat.plan.Refused;

/** A number of a design that a command answers, by which designs are compared. */
public abstract class Measure {
  private final String command;
  private final Column column;
  private final boolean upIsBetter;

  Measure(String command, boolean upIsBetter, Column column) {
    this.command = command;
    this.column = column;
    this.upIsBetter = upIsBetter;
  }

  /** Name, with its unit, as in csv. */
  public String name() {
    return column.key();
  }

  /** The command that answers it. */
  public String command() {
    return command;
  }

  /** Its column. */
  public Column column() {
    return column;
  }

  /** Whether more of it is better. */
  public boolean upIsBetter() {
    return upIsBetter;
  }

  /**
   * Its value in the base unit of its column.
   *
   * @return NaN when the design does not tell it
   * @throws leat.plan.Refused when a key is missing
   * @throws leat.numeric.Impossible when the models have no answer
   */
  public abstract double of(Subject subject);

  /** A value in the unit of its name; null for unknown. */
  public Double shown(double base) {
    if (Double.isNaN(base)) {
      return null;
    }
    return column.show() == null ? base : column.show().metric().fromBase(base);
  }

  /** Its value; NaN also where a key is missing or the models have no answer. */
  final double known(Subject subject) {
    try {
      return of(subject);
    } catch (Refused | Impossible e) {
      // a design that does not tell this number has none: null in its row, last in a ranking
      return Double.NaN;
    }
  }
}
