package leat.check;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.plan.Plan;
import leat.quantity.NumberText;

/**
 * One way to mend a finding: keys of the plan with the values to write there. Numbers are rounded
 * to what is shown, to the side that passes.
 */
public final class Cure {
  private static final String OF = " of ";
  private static final String WITH = " with ";

  private final List<String> keys = new ArrayList<>();
  private final List<String> values = new ArrayList<>();
  private final Phrase words = Phrase.of();

  private Cure() {}

  /** A value that must be reached. */
  public static Cure atLeast(String key, double least, Show show) {
    return new Cure().andAtLeast(key, least, show);
  }

  /** A value that must not be passed. */
  public static Cure atMost(String key, double most, Show show) {
    return new Cure().andAtMost(key, most, show);
  }

  /** A value as it is typed: a word, a whole number, a size one can buy. */
  public static Cure typed(String key, String value) {
    return new Cure().andTyped(key, value);
  }

  /** A value as it is typed, with metric measures that a reader in inches is shown in inches. */
  public static Cure measures(String key, String value) {
    Cure cure = new Cure();
    cure.put(key, value);
    cure.words.add(Phrase.said(value));
    return cure;
  }

  /** Another key that goes with it; its value must be reached. */
  public Cure andAtLeast(String key, double least, Show show) {
    put(key, written(least, show, 1));
    words.addAtLeast(least, show);
    return this;
  }

  /** Another key that goes with it; its value must not be passed. */
  public Cure andAtMost(String key, double most, Show show) {
    put(key, written(most, show, -1));
    words.addAtMost(most, show);
    return this;
  }

  /** Another key that goes with it, as it is typed. */
  public Cure andTyped(String key, String value) {
    put(key, value);
    words.add(value);
    return this;
  }

  /** This and another cure together; null when both change one key. */
  Cure and(Cure other) {
    Cure both = new Cure();
    for (int i = 0; i < other.keys.size(); i++) {
      if (keys.contains(other.keys.get(i))) {
        return null;
      }
    }
    both.keys.addAll(keys);
    both.keys.addAll(other.keys);
    both.values.addAll(values);
    both.values.addAll(other.values);
    both.words.add(words).add(WITH).add(other.words);
    return both;
  }

  /** A remark behind the values. */
  public Cure remark(String more) {
    words.add(more);
    return this;
  }

  private void put(String key, String value) {
    words.add(keys.isEmpty() ? "" : WITH).add(key + OF);
    keys.add(key);
    values.add(value);
  }

  private static String written(double value, Show show, int towards) {
    double rounded = Phrase.rounded(value, show, false, towards);
    String symbol = show.metric().symbol();
    String number = NumberText.shortest(show.metric().fromBase(rounded));
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  /** The keys it sets. */
  public List<String> keys() {
    return keys;
  }

  /** The values, as they are typed. */
  public List<String> values() {
    return values;
  }

  /** The words: "tank.low of 60 mm". */
  public Phrase words() {
    return words;
  }

  /**
   * The plan with these values in it.
   *
   * @throws leat.plan.Refused when they do not go together with the rest
   */
  public Plan on(Plan plan) {
    Plan changed = plan;
    for (int i = 0; i < keys.size(); i++) {
      changed = changed.with(keys.get(i), values.get(i));
    }
    return changed;
  }
}
