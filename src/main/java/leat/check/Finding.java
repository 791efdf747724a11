package leat.check;

/**
 * What a rule measured: verdict, value and limit as bare numbers. Words, place and advice are asked
 * of the rule, and only for what is written.
 */
public final class Finding {
  /** The part of a finding on the whole plan. */
  public static final int WHOLE = -1;

  private static final int REFUSED = -1;

  /** Values closer than this share of them are one value, -. */
  private static final double SAME = 1e-9;

  private final Rule rule;
  private final Verdict verdict;
  private final double value;
  private final double limit;
  private final int part;
  private final int saying;
  private final String reason;

  private Finding(
      Rule rule, Verdict verdict, double value, double limit, int part, int saying, String reason) {
    this.rule = rule;
    this.verdict = verdict;
    this.value = value;
    this.limit = limit;
    this.part = part;
    this.saying = saying;
    this.reason = reason;
  }

  /** A measured value against a limit, both in the base unit. */
  public static Finding of(Rule rule, Verdict verdict, double value, double limit) {
    return new Finding(rule, verdict, value, limit, WHOLE, 0, null);
  }

  /** A value that is not held against a number. */
  public static Finding valueOnly(Rule rule, Verdict verdict, double value) {
    return new Finding(rule, verdict, value, Double.NaN, WHOLE, 0, null);
  }

  /** A finding in words: {@code saying} is the rule's own number for them. */
  public static Finding words(Rule rule, Verdict verdict, int saying) {
    return new Finding(rule, verdict, Double.NaN, Double.NaN, WHOLE, saying, null);
  }

  /** Whether another finding gives the same verdict, value and words. */
  public boolean saysAs(Finding other) {
    if (verdict != other.verdict || hasValue() != other.hasValue() || saying != other.saying) {
      return false;
    }
    return !hasValue() || Math.abs(value - other.value) <= SAME * Math.abs(value);
  }

  /** Not to be judged; the rule says why. */
  public static Finding unknown(Rule rule) {
    return new Finding(rule, Verdict.UNKNOWN, Double.NaN, Double.NaN, WHOLE, 0, null);
  }

  /** Not to be judged, because keys are missing. */
  static Finding lacking(Rule rule, String keys) {
    return new Finding(rule, Verdict.UNKNOWN, Double.NaN, Double.NaN, WHOLE, 0, "needs " + keys);
  }

  /** Not to be judged, because the models have no answer. */
  static Finding refused(Rule rule, String reason) {
    return new Finding(rule, Verdict.UNKNOWN, Double.NaN, Double.NaN, WHOLE, REFUSED, reason);
  }

  /** Switched off by the plan. */
  static Finding off(Rule rule) {
    return new Finding(rule, Verdict.OFF, Double.NaN, Double.NaN, WHOLE, 0, null);
  }

  /** The same, found at one part of the system: the number of a tower, a timing, a bottle. */
  public Finding at(int which) {
    return new Finding(rule, verdict, value, limit, which, saying, reason);
  }

  /** Rule that found it. */
  public Rule rule() {
    return rule;
  }

  /** Verdict. */
  public Verdict verdict() {
    return verdict;
  }

  /** Whether it is a fail or a warning, which gets advice. */
  public boolean isBreach() {
    return verdict == Verdict.FAIL || verdict == Verdict.WARN;
  }

  /** Whether a number was measured. */
  public boolean hasValue() {
    return !Double.isNaN(value);
  }

  /** Value in the base unit of the rule's show; NaN without one. */
  public double value() {
    return value;
  }

  /** Whether it is held against a number. */
  public boolean hasLimit() {
    return !Double.isNaN(limit);
  }

  /** Limit in the base unit; NaN without one. */
  public double limit() {
    return limit;
  }

  /** Number of the tower, timing or bottle; {@link #WHOLE} for the whole. */
  public int part() {
    return part;
  }

  /** The rule's own number for its words. */
  public int saying() {
    return saying;
  }

  /** Whether it is unknown because the plan lacks a key. */
  public boolean lacksKeys() {
    return verdict == Verdict.UNKNOWN && saying != REFUSED;
  }

  /** Why it is unknown when the rule itself does not say, or null. */
  String reason() {
    return reason;
  }

  /** Whether it is the same rule at the same part. */
  boolean isSameAs(Finding other) {
    return part == other.part && rule.id().equals(other.rule.id());
  }
}
