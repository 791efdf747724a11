package leat.plan;

/** What shops and other languages call the words of a choice. */
final class OtherWords {
  private static final String[][] PAIRS = {
    {"bleach", "hypochlorite"},
    {"chlorine", "hypochlorite"},
    {"h2o2", "peroxide"},
    {"agm", "lead"},
    {"sla", "lead"},
    {"gel", "lead"},
    {"lead-acid", "lead"},
    {"lifepo4", "lithium"},
    {"lfp", "lithium"},
    {"li-ion", "lithium"},
    {"imperial", "us"},
    {"usa", "us"},
    {"si", "metric"},
    {"yes", "true"},
    {"no", "false"},
    {"on", "true"},
    {"off", "false"},
    {"rectangle", "box"},
    {"bucket", "cone"},
    {"barrel", "cylinder"},
  };

  private OtherWords() {}

  /** The word of a choice that another word means, or null. */
  static String among(String typed, String[] words) {
    for (int i = 0; i < PAIRS.length; i++) {
      if (PAIRS[i][0].equalsIgnoreCase(typed)) {
        for (int k = 0; k < words.length; k++) {
          if (words[k].equals(PAIRS[i][1])) {
            return words[k];
          }
        }
      }
    }
    return null;
  }
}
