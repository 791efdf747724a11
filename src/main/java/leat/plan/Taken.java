package leat.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The defaults that were used to answer, in the words of {@code Taken:}. Whoever asks makes it and
 * hands it along with the plan; a plan keeps nothing of what was taken from it.
 */
public final class Taken {
  private final List<String> words = new ArrayList<>();

  /** Notes a default, once. */
  public void note(String as) {
    if (!words.contains(as)) {
      words.add(as);
    }
  }

  /** What was taken, in order. */
  public List<String> words() {
    return words;
  }
}
