package leat.plan;

import java.util.ArrayList;
import java.util.List;

/** The defaults that were used while a plan was read, in the words of {@code Taken:}. */
public final class Taken {
  private final String planName;
  private final List<String> words = new ArrayList<>();

  /** For the plan of this name; null when there is none. */
  public Taken(String planName) {
    this.planName = planName;
  }

  /** File name of the plan, or null when everything came from flags. */
  String planName() {
    return planName;
  }

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
