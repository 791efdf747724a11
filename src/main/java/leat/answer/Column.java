package leat.answer;

/**
 * One column of an answer: the JSON key and CSV header (the unit in the name), the label of the
 * text, and how its value is shown. Values are held in the base unit of their dimension.
 */
public final class Column {
  private final String key;
  private final String label;
  private final Show show;
  private final int digits;

  private Column(String key, String label, Show show, int digits) {
    this.key = key;
    this.label = label;
    this.show = show;
    this.digits = digits;
  }

  /** A quantity; the key must end in the metric unit's own suffix. */
  public static Column of(String key, String label, Show show) {
    return new Column(key, label, show, show.digits());
  }

  /** A bare number with significant digits. */
  public static Column number(String key, String label, int digits) {
    return new Column(key, label, null, digits);
  }

  /** A word, a count, or true and false. */
  public static Column plain(String key, String label) {
    return new Column(key, label, null, 6);
  }

  /** JSON key and CSV header. */
  public String key() {
    return key;
  }

  /** Label in text. */
  public String label() {
    return label;
  }

  /** Units, or null for bare values. */
  public Show show() {
    return show;
  }

  /** Significant digits in text. */
  public int digits() {
    return digits;
  }
}
