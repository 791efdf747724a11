package leat.check;

import leat.answer.Show;

/** A rule whose words are given at once. */
public abstract class DeclaredRule extends Rule {
  public static final String PRACTICE = "common practice, no source";

  private final String id;
  private final String need;
  private final Show show;
  private final Double usualLimit;
  private final String source;
  private final String reads;
  private final String meaning;

  public DeclaredRule(
      String id,
      String need,
      Show show,
      Double usualLimit,
      String source,
      String reads,
      String meaning) {
    this.id = id;
    this.need = need;
    this.show = show;
    this.usualLimit = usualLimit;
    this.source = source;
    this.reads = reads;
    this.meaning = meaning;
  }

  @Override
  public final String id() {
    return id;
  }

  @Override
  public final String meaning() {
    return meaning;
  }

  @Override
  public final String need() {
    return need;
  }

  @Override
  public final Show show() {
    return show;
  }

  @Override
  public final Double usualLimit() {
    return usualLimit;
  }

  @Override
  public final String source() {
    return source;
  }

  @Override
  public final String reads() {
    return reads;
  }
}
