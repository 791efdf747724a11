package leat.answer;

import leat.quantity.NumberText;

/**
 * One column of an answer: the JSON key and CSV header (the unit in the name), the label of the
 * text, and how its value is shown. Values are held in the base unit of their dimension.
 */
public final class Column {
  private final String key;
  private final String label;
  private final Show show;
  private final int digits;
  private final boolean money;

  private Column(String key, String label, Show show, int digits) {
    this(key, label, show, digits, false);
  }

  private Column(String key, String label, Show show, int digits, boolean money) {
    this.key = key;
    this.label = label;
    this.show = show;
    this.digits = digits;
    this.money = money;
  }

  /** A quantity; the key must end in the metric unit's own suffix. */
  public static Column of(String key, String label, Show show) {
    return new Column(key, label, show, show.digits());
  }

  /** A bare number with significant digits. */
  public static Column number(String key, String label, int digits) {
    return new Column(key, label, null, digits);
  }

  /** An amount of money in the plan's currency, shown as a till prints it. */
  public static Column money(String key, String label) {
    return new Column(key, label, null, 6, true);
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

  /** Whether it is an amount of money. */
  boolean isMoney() {
    return money;
  }

  /** A number without a unit, as text. */
  String bare(double value) {
    return money ? Phrase.till(value) : NumberText.significant(value, digits);
  }

  /** Significant digits in text. */
  public int digits() {
    return digits;
  }
}
