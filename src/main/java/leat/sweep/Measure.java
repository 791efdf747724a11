package leat.sweep;

import java.util.function.ToDoubleFunction;
import leat.answer.Column;
import leat.answer.Show;
import leat.check.Subject;
import leat.numeric.Impossible;
import leat.plan.Refused;

/** A number of a design that a command answers, by which designs are compared. */
public final class Measure {
  /** Which of two is better. */
  enum Better {
    /** The larger. */
    MORE,
    /** The smaller. */
    LESS
  }

  private final String command;
  private final String reads;
  private final Column column;
  private final Better better;
  private final ToDoubleFunction<Subject> value;

  private Measure(
      String command, String reads, Column column, Better better, ToDoubleFunction<Subject> value) {
    this.command = command;
    this.reads = reads;
    this.column = column;
    this.better = better;
    this.value = value;
  }

  /**
   * A quantity.
   *
   * @param name its own name, ending in the unit's suffix
   * @param command the command line that answers it for one design
   * @param reads the column of that answer
   * @param better which of two is better
   * @param label in text
   * @param show its units
   * @param value in the base unit; NaN when the design does not tell it
   */
  static Measure of(
      String name,
      String command,
      String reads,
      Better better,
      String label,
      Show show,
      ToDoubleFunction<Subject> value) {
    return new Measure(command, reads, Column.of(name, label, show), better, value);
  }

  /** A bare number, as {@link #of}. */
  static Measure number(
      String name,
      String command,
      String reads,
      Better better,
      String label,
      ToDoubleFunction<Subject> value) {
    return new Measure(command, reads, Column.number(name, label, DIGITS), better, value);
  }

  private static final int DIGITS = 4;

  /** Name, with its unit, as in csv. */
  public String name() {
    return column.key();
  }

  /** The command that answers it. */
  public String command() {
    return command;
  }

  /** The column of that command that it reads. */
  public String reads() {
    return reads;
  }

  /** Symbol of its unit; empty for a bare number. */
  public String unit() {
    return column.show() == null ? "" : column.show().metric().symbol();
  }

  /** Its column. */
  public Column column() {
    return column;
  }

  /** Whether more of it is better. */
  public boolean upIsBetter() {
    return better == Better.MORE;
  }

  /** A value in the unit of its name; null for unknown. */
  public Double shown(double base) {
    if (Double.isNaN(base)) {
      return null;
    }
    return column.show() == null ? base : column.show().metric().fromBase(base);
  }

  /** Its value in the base unit; NaN where a key is missing or the models have no answer. */
  public double known(Subject subject) {
    try {
      return value.applyAsDouble(subject);
    } catch (Refused | Impossible e) {
      // a design that does not tell this number has none: null in its row, last in a ranking
      return Double.NaN;
    }
  }

  /** A number that may be missing. */
  static double orNaN(Double value) {
    return value == null ? Double.NaN : value;
  }
}
