package leat.check;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;

/**
 * One design rule. Subclasses say what they measure and judge a {@link Subject}; a missing key
 * makes the finding unknown by itself, because {@link Subject} asks for it with {@code need}.
 */
public abstract class Rule {
  /** The value must reach the limit. */
  public static final String AT_LEAST = "at least";

  /** The value must not pass the limit. */
  public static final String AT_MOST = "at most";

  /** Something guessed must be measured. */
  public static final String MEASURED = "measured";

  /** A value that only rounding keeps from the limit has reached it, a share. */
  private static final double ROUNDING = 1e-9;

  /** Kebab-case id, as in {@code limits} of a plan. */
  public abstract String id();

  /** What it measures and why it matters, one or two sentences. */
  public abstract String meaning();

  /** {@link #AT_LEAST}, {@link #AT_MOST}, {@link #MEASURED} or other words. */
  public abstract String need();

  /** Unit of value and limit; null when the value is words. */
  public abstract Show show();

  /** The usual limit in the base unit, or null when the plan itself gives it. */
  public abstract Double usualLimit();

  /** Where the limit comes from: a source, or "common practice, no source". */
  public abstract String source();

  /** Keys of the plan it reads, separated by spaces. */
  public abstract String reads();

  /**
   * Judges a plan; one finding, or one for each tower that differs.
   *
   * @throws leat.plan.Refused when a key is missing
   */
  public abstract List<Finding> judge(Subject subject);

  /** The limit in force: the plan's {@code limits} entry, else the usual one. */
  protected final double limit(Subject subject) {
    Double own = subject.ownLimit(this);
    return own != null ? own : usualLimit();
  }

  /** At or over the limit passes; under it is {@code breach}. */
  protected final Finding atLeast(double value, double limit, Verdict breach, Phrase advice) {
    boolean holds = value >= limit - Math.abs(limit) * ROUNDING;
    return Finding.of(
        this, holds ? Verdict.PASS : breach, value, limit, holds ? Phrase.of() : advice);
  }

  /** At or under the limit passes; over it is {@code breach}. */
  protected final Finding atMost(double value, double limit, Verdict breach, Phrase advice) {
    boolean holds = value <= limit + Math.abs(limit) * ROUNDING;
    return Finding.of(
        this, holds ? Verdict.PASS : breach, value, limit, holds ? Phrase.of() : advice);
  }
}
