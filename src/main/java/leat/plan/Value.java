package leat.plan;

import java.util.OptionalDouble;

/** A number of a plan in its base unit, or its absence, which knows how to ask for it. */
public final class Value {
  private final double number;
  private final Section section;
  private final String key;

  private Value(double number, Section section, String key) {
    this.number = number;
    this.section = section;
    this.key = key;
  }

  static Value of(double number) {
    return new Value(number, null, null);
  }

  /** The absence of a key. */
  public static Value missing(Section section, String key) {
    return new Value(Double.NaN, section, key);
  }

  /** Whether it was given. */
  public boolean isKnown() {
    return section == null;
  }

  /** The number; refused when absent, with the key's name and an example. */
  public double need() {
    if (section != null) {
      throw section.missing(key);
    }
    return number;
  }

  /** The number, or another one when absent. */
  public double orElse(double other) {
    return section == null ? number : other;
  }

  /** The number, or empty. */
  public OptionalDouble orEmpty() {
    return section == null ? OptionalDouble.of(number) : OptionalDouble.empty();
  }
}
