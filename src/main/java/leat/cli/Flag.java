package leat.cli;

import leat.plan.Kind;
import leat.plan.KindReader;

/**
 * One flag of a command, declared once: parsing, help, manual and completion follow it. A flag with
 * a plan path sets that key; the others are the command's own questions.
 */
public final class Flag {
  final String name;
  final String shortName;
  final String label;
  final Kind kind;
  final String meaning;
  String example = "";
  String planPath;
  boolean repeatable;
  boolean required;
  String byDefault;
  String alias;
  String[] questions = {};

  private Flag(String name, String shortName, String label, Kind kind, String meaning) {
    this.name = name;
    this.shortName = shortName;
    this.label = label;
    this.kind = kind;
    this.meaning = meaning;
  }

  /** A flag with a value. */
  public static Flag of(String name, String label, Kind kind, String example, String meaning) {
    Flag flag = new Flag(name, null, label, kind, meaning);
    flag.example = example;
    return flag;
  }

  /** A flag with a value and a short name. */
  public static Flag of(
      String name, String shortName, String label, Kind kind, String example, String meaning) {
    Flag flag = new Flag(name, shortName, label, kind, meaning);
    flag.example = example;
    return flag;
  }

  /** A flag without a value. */
  public static Flag on(String name, String meaning) {
    return new Flag(name, null, null, null, meaning);
  }

  /** A flag without a value, with a short name. */
  public static Flag on(String name, String shortName, String meaning) {
    return new Flag(name, shortName, null, null, meaning);
  }

  /** It sets this key of the plan. */
  public Flag sets(String path) {
    planPath = path;
    return this;
  }

  /** It may be given several times. */
  public Flag repeatable() {
    repeatable = true;
    return this;
  }

  /** What is taken when it is not given, as help shows it; keys of a plan have their own. */
  public Flag byDefault(String value) {
    byDefault = value;
    return this;
  }

  /** It says something about one of these questions only, and is refused without. */
  public Flag belongsTo(String... flags) {
    questions = flags;
    return this;
  }

  /** A second accepted name. */
  public Flag alias(String other) {
    alias = other;
    return this;
  }

  /**
   * The flag with a bare value that it could be for, {@code --at "28 C"}; null when it cannot. A
   * number takes the unit of the example.
   */
  String withBare(String typed) {
    boolean starts = !typed.isEmpty() && typed.charAt(0) >= '0' && typed.charAt(0) <= '9';
    if (!starts || kind == null || kind.dimension() == null) {
      return null;
    }
    int blank = example.indexOf(' ');
    String united = blank < 0 ? typed : typed + example.substring(blank);
    String value = KindReader.reads(kind, typed) ? typed : united;
    return KindReader.reads(kind, value) ? name + " " + ShellWord.quoted(value) : null;
  }

  boolean hasValue() {
    return label != null;
  }

  /** The flag's name, such as {@code --bore}. */
  public String name() {
    return name;
  }

  /** Its short name, or null. */
  public String shortName() {
    return shortName;
  }

  /** Word for its value in help, or null for none. */
  public String label() {
    return label;
  }

  /** What it means. */
  public String meaning() {
    return meaning;
  }

  /** A value as one would type it. */
  public String example() {
    return example;
  }

  /** Kind of its value, or null. */
  public Kind kind() {
    return kind;
  }

  /** Key of the plan it sets, or null. */
  public String planPath() {
    return planPath;
  }

  /** Whether it may be given several times. */
  public boolean isRepeatable() {
    return repeatable;
  }

  /** A second accepted name, or null. */
  public String alias() {
    return alias;
  }
}
