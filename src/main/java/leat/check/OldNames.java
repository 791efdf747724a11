package leat.check;

/** Ids that rules once had, for the did-you-mean. */
final class OldNames {
  private static final String[] OLD = {
    "tower-starved",
    "run-out",
    "siphon-back",
    "film-flood",
    "gap-clogs",
    "riser-fast",
    "riser-slow",
    "pump-guess",
    "sender-blind",
    "step-against-thirst",
    "sender-guess",
    "meter-guess"
  };
  private static final String[] NOW = {
    "tower-fed",
    "pump-on-curve",
    "no-siphon",
    "film-not-flooding",
    "gap-clear",
    "riser-not-fast",
    "riser-not-slow",
    "pump-measured",
    "full-seen",
    "step-under-thirst",
    "sender-fitted",
    "meters-checked"
  };

  private OldNames() {}

  /** Today's id of a rule that was renamed, or null. */
  static String now(String old) {
    for (int i = 0; i < OLD.length; i++) {
      if (OLD[i].equals(old)) {
        return NOW[i];
      }
    }
    return null;
  }
}
