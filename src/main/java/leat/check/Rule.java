package leat.check;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;

/**
 * One design rule: it measures a {@link Subject}, quickly and in bare numbers, and words a finding
 * only when it is written. A missing key makes the finding unknown by itself, because {@link
 * Subject} asks for it with {@code need}; so does a value that the models refuse.
 */
public abstract class Rule {
  /** The value must reach the limit. */
  public static final String AT_LEAST = "at least";

  /** The value must not pass the limit. */
  public static final String AT_MOST = "at most";

  /** The value must be over the limit. */
  public static final String MORE_THAN = "more than";

  /** Something guessed must be measured. */
  public static final String MEASURED = "measured";

  /** A value that only rounding keeps from the limit has reached it, a share. */
  private static final double ROUNDING = 1e-9;

  /** Kebab-case id, as in {@code limits} of a plan; it says the wish, so that "pass" reads on. */
  public abstract String id();

  /** What it measures and why it matters, one or two sentences. */
  public abstract String meaning();

  /** {@link #AT_LEAST}, {@link #AT_MOST}, {@link #MORE_THAN}, {@link #MEASURED} or other words. */
  public abstract String need();

  /** Unit of value and limit; null when the value is words. */
  public abstract Show show();

  /** The usual limit in the base unit, or null when the plan itself gives it. */
  public abstract Double usualLimit();

  /** Where the limit comes from: a source, or "common practice, no source". */
  public abstract String source();

  /** Keys of the plan it reads, separated by spaces; a section stands for all keys in it. */
  public abstract String reads();

  /**
   * Measures a plan: one finding, or one for each part that differs; empty when the rule does not
   * apply.
   *
   * @throws leat.plan.Refused when a key is missing
   * @throws leat.numeric.Impossible when the models have no answer
   */
  public abstract List<Finding> measure(Subject subject);

  /** What to change so that a fail or a warning passes; none when nothing is known. */
  public Advice advice(Subject subject, Finding finding) {
    return Advice.none();
  }

  /** The value of a finding in words. */
  public String words(Subject subject, Finding finding) {
    return "-";
  }

  /** Why a finding is unknown. */
  public Phrase why(Subject subject, Finding finding) {
    return finding.reason() == null ? Phrase.of() : Phrase.of(finding.reason());
  }

  /** Name of the part, such as a tower's, when the plan has several; null otherwise. */
  public String part(Subject subject, Finding finding) {
    return null;
  }

  /** Name of the tower a finding is of, or null. */
  public String tower(Subject subject, Finding finding) {
    return null;
  }

  /** Where in the plan a finding lies: a section such as {@code tank} or {@code towers[0]}. */
  public String place(Finding finding) {
    String first = reads();
    int end = 0;
    while (end < first.length() && ".[ ".indexOf(first.charAt(end)) < 0) {
      end++;
    }
    return first.substring(0, end);
  }

  /** Whether the plan may set a limit of its own for it. */
  public final boolean takesLimit() {
    return show() != null && !MEASURED.equals(need());
  }

  /** Whether a limit of the right dimension can be meant at all. */
  protected boolean allows(double limit) {
    return limit > 0;
  }

  /** What {@link #allows} asks, in words. */
  protected String allowed() {
    return "above 0";
  }

  /** The limit in force: the plan's {@code limits} entry, else the usual one. */
  protected final double limit(Subject subject) {
    return limitOr(subject, usualLimit());
  }

  /** The plan's {@code limits} entry, else what the plan's models give. */
  protected final double limitOr(Subject subject, double byPlan) {
    Double own = subject.ownLimit(this);
    return own != null ? own : byPlan;
  }

  /** Whether a value reaches a limit, or only rounding keeps it from it. */
  protected static boolean reaches(double value, double limit) {
    return value >= limit - Math.abs(limit) * ROUNDING;
  }

  /** At or over the limit passes; under it is {@code breach}. */
  protected final Finding atLeast(double value, double limit, Verdict breach) {
    return Finding.of(this, reaches(value, limit) ? Verdict.PASS : breach, value, limit);
  }

  /** At or under the limit passes; over it is {@code breach}. */
  protected final Finding atMost(double value, double limit, Verdict breach) {
    return Finding.of(this, reaches(-value, -limit) ? Verdict.PASS : breach, value, limit);
  }
}
