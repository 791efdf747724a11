package leat.plan;

import java.util.OptionalDouble;

/**
 * A number of a plan in its base unit (1 and 0 for true and false), or its absence, which knows how
 * to ask for it.
 */
public final class Value {
  private final double number;
  private final boolean known;
  private final Section section;
  private final Key key;
  private final Taken taken;

  Value(Section section, Key key, Object value, Taken taken) {
    this.taken = taken;
    this.section = section;
    this.key = key;
    this.known = value != null;
    if (value instanceof Boolean yes) {
      this.number = yes ? 1 : 0;
    } else {
      this.number = value == null ? Double.NaN : ((Number) value).doubleValue();
    }
  }

  /** Whether it was given. */
  public boolean isKnown() {
    section.ask(key);
    return known;
  }

  /** The number; refused when absent, with the key's name and an example. */
  public double need() {
    if (!isKnown()) {
      throw section.missing(key.name);
    }
    return number;
  }

  /** The number, or another one when absent. */
  public double orElse(double other) {
    return isKnown() ? number : other;
  }

  /** The number, or empty. */
  public OptionalDouble orEmpty() {
    return isKnown() ? OptionalDouble.of(number) : OptionalDouble.empty();
  }

  /** The number; when absent the declared default, noted in what its section was given for it. */
  public double orTaken() {
    if (isKnown()) {
      return number;
    }
    taken.note(key.takenAs);
    Object value = key.defaultValue();
    return value instanceof Boolean yes ? (yes ? 1 : 0) : ((Number) value).doubleValue();
  }
}
