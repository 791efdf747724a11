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
    {"sense", "level"},
    {"feed", "ec"},
    {"feed", "dose"},
    {"feed", "stock"},
    {"feed", "topup"},
    {"feed", "acid"},
    {"feed", "crops"},
    {"feed", "oxygen"},
    {"feed", "clean"},
    {"run", "duty"},
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
      case "level":
        return new LevelCommand();
      case "topup":
        return new TopupCommand();
      case "acid":
        return new AcidCommand();
      case "stock":
        return new StockCommand();
      case "clean":
        return new CleanCommand();
      case "duty":
        return new DutyCommand();
      case "ec":
        return new EcCommand();
      case "crops":
        return new CropsCommand();
      case "oxygen":
        return new OxygenCommand();
      case "dose":
        return new DoseCommand();
      case "check":
        return new CheckCommand();
      case "plan":
        return new PlanCommand();
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
      case "plan new":
        return new PlanNewCommand();
      case "plan schema":
        return new PlanSchemaCommand();
      case "plan show":
        return new PlanShowCommand();
      case "plan keys":
        return new PlanKeysCommand();
      case "level table":
        return new LevelTableCommand();
      case "level ladder":
        return new LevelLadderCommand();
      case "level divider":
        return new LevelDividerCommand();
      case "level fit":
        return new LevelFitCommand();
      case "duty backup":
        return new DutyBackupCommand();
      case "duty cable":
        return new DutyCableCommand();
      case "dose salts":
        return new DoseSaltsCommand();
      default:
        return null;
    }
  }
}
