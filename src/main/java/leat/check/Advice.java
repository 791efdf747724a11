package leat.check;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;

/**
 * What can be done about a finding: cures by key and value, the best first, each tried on the plan
 * before it is told; words for when none works, and words for any case.
 */
public final class Advice {
  private final List<Cure> cures = new ArrayList<>();
  private Phrase otherwise = Phrase.of();
  private Phrase also = Phrase.of();
  private Phrase note = Phrase.of();

  private Advice() {}

  /** Nothing is known. */
  public static Advice none() {
    return new Advice();
  }

  /** Words alone. */
  public static Advice of(String words) {
    return none().say(words);
  }

  /** One more cure; null adds none. */
  public Advice cure(Cure cure) {
    if (cure != null) {
      cures.add(cure);
    }
    return this;
  }

  /** Words told when no cure works. */
  public Advice say(String words) {
    otherwise = Phrase.of(words);
    return this;
  }

  /** Another way, told in any case, after the cures. */
  public Advice also(String words) {
    return also(Phrase.of(words));
  }

  /** Another way, told in any case, after the cures. */
  public Advice also(Phrase words) {
    also = words;
    return this;
  }

  /** Why, told in any case, last. */
  public Advice note(Phrase words) {
    note = words;
    return this;
  }

  /** The cures, the best first. */
  public List<Cure> cures() {
    return cures;
  }

  /** The words for when no cure works. */
  public Phrase otherwise() {
    return otherwise;
  }

  /** Another way, for any case. */
  public Phrase also() {
    return also;
  }

  /** Why. */
  public Phrase note() {
    return note;
  }
}
