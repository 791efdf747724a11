package leat.answer.chart;

import leat.answer.Phrase;

/**
 * One thing drawn: values over places of the x axis, in base units; NaN is a gap.
 *
 * @param kind how it is drawn
 * @param label what it is
 * @param x places, rising
 * @param low lower ends of a band or of bars that do not stand on 0, else null
 * @param y values, or upper ends
 * @param words said of each value beside the number; null for none
 * @param tone good, doubt or bad where a colour has that meaning besides the words; else empty
 */
public record Series(
    Kind kind, String label, double[] x, double[] low, double[] y, Phrase[] words, String tone) {
  /** How a series is drawn. */
  public enum Kind {
    /** Values joined by straight lines. */
    LINE("line"),
    /** A value that holds until the next. */
    STEPS("steps"),
    /** A bar a name, from 0 or between two ends. */
    BARS("bars"),
    /** Values alone. */
    POINTS("points"),
    /** All between two lines. */
    BAND("band");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in a page's data. */
    public String word() {
      return word;
    }
  }

  /**
   * @throws IllegalArgumentException when the arrays differ in length
   */
  public Series {
    boolean lows = low == null || low.length == x.length;
    boolean said = words == null || words.length == x.length;
    if (y.length != x.length || !lows || !said) {
      throw new IllegalArgumentException(label + ": as many values as places");
    }
  }

  /** The same in a tone. */
  Series in(String other) {
    return new Series(kind, label, x, low, y, words, other);
  }

  /** Number of values. */
  public int size() {
    return x.length;
  }

  /** Whether two ends are drawn. */
  public boolean hasLow() {
    return low != null;
  }

  /** Words of a value; empty for none. */
  public String said(int i, boolean us) {
    return words == null || words[i] == null ? "" : words[i].render(us);
  }
}
