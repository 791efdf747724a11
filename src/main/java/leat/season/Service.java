package leat.season;

/** What was done in an evening. */
public enum Service {
  NONE(""),
  CHANGE("change"),
  TOP_UP("top-up"),
  DILUTE("dilute"),
  DOSE("dose");

  private final String word;

  Service(String word) {
    this.word = word;
  }

  /** The word in a table; empty for none. */
  public String word() {
    return word;
  }
}
