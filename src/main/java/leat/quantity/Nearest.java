package leat.quantity;

import java.util.List;

/**
 * The word a typing slip probably meant: fewest edits (a swap of neighbours counts as one), a
 * difference in case alone first; before two edits the only word of which the beginning was typed,
 * such as {@code --temperature} for {@code --temp}; else the only word of which it is a part, such
 * as {@code time_zone} for {@code zone}, or the only one that it begins, such as {@code --volume}
 * for {@code --vol}, or with which it begins, such as {@code overlap} for {@code overlapping};
 * nothing when all words are too far.
 */
public final class Nearest {
  /** Fewer letters are no half of a word. */
  private static final int LEAST_HALF = 5;

  private Nearest() {}

  /**
   * @param typed the word that is not known
   * @param known the words that are
   * @return the nearest of them, of equals the one that begins longest alike; null when none is
   *     near
   */
  public static String of(String typed, List<String> known) {
    String best = null;
    int fewest = most(typed) + 1;
    String lower = lower(typed);
    for (int i = 0; i < known.size(); i++) {
      String word = known.get(i);
      int longer = Math.abs(word.length() - typed.length());
      if (longer > fewest || best == null && longer == fewest) {
        continue;
      }
      int edits = edits(lower, lower(word));
      if (edits < fewest && edits < Math.max(word.length(), typed.length())
          || best != null && edits == fewest && begun(lower, word) > begun(lower, best)) {
        best = word;
        fewest = edits;
      }
    }
    String half = fewest > 1 && typed.length() >= LEAST_HALF ? onlyBegun(lower, known) : null;
    if (half != null || best != null || typed.length() <= 2) {
      return half != null ? half : best;
    }
    String part = partOf(lower, known);
    return part != null ? part : runOn(lower, known);
  }

  /** The only one that begins with this: it was typed by half; null when none or several do. */
  private static String onlyBegun(String lower, List<String> known) {
    String found = null;
    for (int i = 0; i < known.size(); i++) {
      if (known.get(i).length() > lower.length() && lower(known.get(i)).startsWith(lower)) {
        if (found != null) {
          return null;
        }
        found = known.get(i);
      }
    }
    return found;
  }

  /** The only one with which this begins; null when none or several do. */
  private static String runOn(String lower, List<String> known) {
    String found = null;
    for (int i = 0; i < known.size(); i++) {
      if (known.get(i).length() >= LEAST_HALF && lower.startsWith(lower(known.get(i)))) {
        if (found != null) {
          return null;
        }
        found = known.get(i);
      }
    }
    return found;
  }

  /** How many letters both begin with. */
  private static int begun(String lower, String word) {
    String other = lower(word);
    int same = 0;
    while (same < Math.min(lower.length(), other.length())
        && lower.charAt(same) == other.charAt(same)) {
      same++;
    }
    return same;
  }

  /**
   * The only one of which this is a part between underscores or hyphens, or the beginning; null
   * when none or several are.
   */
  private static String partOf(String lower, List<String> known) {
    String found = null;
    String begun = "-" + lower;
    String whole = begun + "-";
    for (int i = 0; i < known.size(); i++) {
      String word = "-" + lower(known.get(i)).replace('_', '-') + "-";
      if (word.contains(whole) || word.startsWith(begun)) {
        if (found != null) {
          return null;
        }
        found = known.get(i);
      }
    }
    return found;
  }

  /** How many edits still look like a slip: one in short words, about a third in longer ones. */
  private static int most(String typed) {
    int n = typed.length();
    if (n <= 1) {
      return 0;
    }
    return Math.min(4, Math.max(1, n / 3));
  }

  /** Lower case of ASCII letters and digits alike in every locale. */
  private static String lower(String s) {
    return s.toLowerCase(java.util.Locale.ROOT);
  }

  /** Optimal string alignment distance. */
  static int edits(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] now = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int least = Math.min(Math.min(now[j - 1], last[j]) + 1, last[j - 1] + (same ? 0 : 1));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          least = Math.min(least, before[j - 2] + 1);
        }
        now[j] = least;
      }
      int[] spare = before;
      before = last;
      last = now;
      now = spare;
    }
    return last[b.length()];
  }
}
