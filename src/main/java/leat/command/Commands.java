package leat.command;

/** The one list of commands: name, group, summary, in the order help shows them. */
public final class Commands {
  private Commands() {}

  /** Groups in the order of help. */
  static final String[] GROUPS = {"build", "sense", "feed", "run", "plans"};

  /** Group and name of each command. */
  static final String[][] LIST = {
    {"build", "head"},
    {"build", "pump"},
    {"build", "tank"},
    {"plans", "check"},
    {"plans", "plan"},
    {"plans", "units"},
  };

  /** Names of all commands. */
  public static String[] names() {
    String[] names = new String[LIST.length];
    for (int i = 0; i < names.length; i++) {
      names[i] = LIST[i][1];
    }
    return names;
  }

  /** Builds the command of a name, or null. Only the class of that command is loaded. */
  public static Command of(String name) {
    switch (name) {
      case "head":
        return new HeadCommand();
      case "pump":
        return new PumpCommand();
      case "tank":
        return new TankCommand();
      case "check":
        return new CheckCommand();
      case "plan":
        return null;
      case "units":
        return new UnitsCommand();
      default:
        return null;
    }
  }

  /**
   * Command lines may name a command in two words, such as {@code plan new}; the command of two
   * words, or null.
   */
  static Command of(String first, String second) {
    switch (first + " " + second) {
      default:
        return null;
    }
  }
}
