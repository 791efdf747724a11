package leat.answer;

import leat.quantity.NumberText;

/** One formula with the numbers in it, for {@code --explain}. */
public final class Working {
  final String what;
  final String formula;
  final Phrase with;
  final double result;
  final Show show;
  final int digits;
  final String range;
  final String source;

  private Working(
      String what,
      String formula,
      Phrase with,
      double result,
      Show show,
      int digits,
      String range,
      String source) {
    this.what = what;
    this.formula = formula;
    this.with = with;
    this.result = result;
    this.show = show;
    this.digits = digits;
    this.range = range;
    this.source = source;
  }

  /**
   * @param what the result in words
   * @param formula as a handbook prints it
   * @param with the numbers that went in
   * @param result in the base unit
   * @param show how it is shown
   * @param range where the formula holds
   * @param source standard, handbook or "common practice, no source"
   */
  public static Working of(
      String what,
      String formula,
      Phrase with,
      double result,
      Show show,
      String range,
      String source) {
    return new Working(what, formula, with, result, show, show.digits(), range, source);
  }

  /** A working whose result is a bare number. */
  public static Working number(
      String what,
      String formula,
      Phrase with,
      double result,
      int digits,
      String range,
      String source) {
    return new Working(what, formula, with, result, null, digits, range, source);
  }

  /** The result in words. */
  String result(boolean us) {
    return show == null
        ? NumberText.significant(result, digits)
        : Phrase.of(result, show).render(us);
  }
}
