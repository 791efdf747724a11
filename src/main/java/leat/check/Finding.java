package leat.check;

import leat.answer.Phrase;
import leat.answer.Show;

/** What a rule found in a plan: verdict, value against limit, and what to change. */
public final class Finding {
  final Rule rule;
  final Verdict verdict;
  final Double value;
  final String words;
  final Double limit;
  final Phrase advice;
  final String place;

  private Finding(
      Rule rule,
      Verdict verdict,
      Double value,
      String words,
      Double limit,
      Phrase advice,
      String place) {
    this.rule = rule;
    this.verdict = verdict;
    this.value = value;
    this.words = words;
    this.limit = limit;
    this.advice = advice;
    this.place = place;
  }

  /** A measured value against a limit. */
  public static Finding of(Rule rule, Verdict verdict, double value, double limit, Phrase advice) {
    return new Finding(rule, verdict, value, null, limit, advice, null);
  }

  /** A value that is not held against a number. */
  public static Finding valueOnly(Rule rule, Verdict verdict, double value, Phrase advice) {
    return new Finding(rule, verdict, value, null, null, advice, null);
  }

  /** A finding in words, such as "not measured". */
  public static Finding words(Rule rule, Verdict verdict, String words, Phrase advice) {
    return new Finding(rule, verdict, null, words, null, advice, null);
  }

  /** A key is missing or the rule has nothing to judge. */
  public static Finding unknown(Rule rule, Phrase why) {
    return new Finding(rule, Verdict.UNKNOWN, null, null, null, why, null);
  }

  /** The same, said of one part of the system such as a tower. */
  public Finding at(String where) {
    return new Finding(rule, verdict, value, words, limit, advice, where);
  }

  /** Rule that found it. */
  public Rule rule() {
    return rule;
  }

  /** Verdict. */
  public Verdict verdict() {
    return verdict;
  }

  /** Value in the base unit of the rule's show, or null. */
  public Double value() {
    return value;
  }

  /** Value in words, or null. */
  public String words() {
    return words;
  }

  /** Limit in the base unit, or null. */
  public Double limit() {
    return limit;
  }

  /** What to change, or why it is unknown; may be empty. */
  public Phrase advice() {
    return advice;
  }

  /** Tower or entry it was found at, or null for the whole. */
  public String place() {
    return place;
  }

  /** How it is shown. */
  public Show show() {
    return rule.show();
  }
}
