package leat.quantity;

/** A text of two quantities with a mark between, and the errors that belong to it. */
final class Pair {
  private final String text;
  private final String mark;
  private final Dimension left;
  private final Dimension right;
  private final String example;
  private Quantity first;
  private Quantity second;

  /**
   * @param text the whole text
   * @param mark the mark as messages name it, such as "'@'"
   * @param example of the whole
   */
  Pair(String text, String mark, Dimension left, Dimension right, String example) {
    this.text = text;
    this.mark = mark;
    this.left = left;
    this.right = right;
    this.example = example;
  }

  Quantity first() {
    return first;
  }

  Quantity second() {
    return second;
  }

  /** No mark was found. */
  Unreadable unmarked(String mended) {
    String got = Spelling.trim(text);
    if (got.isEmpty()) {
      return QuantityErrors.expectedBeside(left, "before " + mark, example, got, 0, text.length());
    }
    return QuantityErrors.noMark(mark, left, right, example, got, mended, 0, text.length());
  }

  /** Reads both sides of the mark at [markFrom, markTo) of the stretch [from, to). */
  Pair split(int from, int markFrom, int markTo, int to, boolean unitMayBeShared) {
    boolean shared = unitMayBeShared && isBare(from, markFrom);
    if (!shared) {
      first = side(from, markFrom, left, null, "before " + mark);
    }
    second = side(markTo, to, right, null, "after " + mark);
    if (shared) {
      first = side(from, markFrom, left, second, "before " + mark);
    }
    return this;
  }

  /** One side; another thing there is named with its place. */
  Quantity side(int from, int to, Dimension wanted, Quantity like, String place) {
    try {
      Unit bare = like == null ? QuantityReader.bare(wanted) : like.unit();
      String currency = like == null ? null : like.currency();
      return QuantityReader.read(text, from, to, wanted, bare, currency);
    } catch (Unreadable e) {
      if (!e.isOtherThing()) {
        throw e;
      }
      String got = Spelling.trim(text.substring(from, to));
      int start = got.isEmpty() ? from : text.indexOf(got, from);
      throw QuantityErrors.expectedBeside(wanted, place, example, got, start, start + got.length());
    }
  }

  /** Whether a number stands there without a unit. */
  private boolean isBare(int from, int to) {
    boolean digits = false;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      digits |= c >= '0' && c <= '9';
      boolean letter = Character.isLetter(c) && c != 'e' && c != 'E';
      if (letter || c == '%' || c == '"' || c == '\'' || c == '\u00b0') {
        return false;
      }
    }
    return digits;
  }
}
