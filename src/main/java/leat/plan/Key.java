package leat.plan;

/**
 * The one declaration of a plan key: reading, schema, {@code plan new}, {@code plan keys}, flags
 * and the manual follow it.
 */
public final class Key {
  /** How many values a key holds. */
  public enum Shape {
    /** One value. */
    ONE,
    /** A list of values. */
    LIST,
    /** A map of keys, declared one by one. */
    SECTION,
    /** A list of sections. */
    SECTIONS,
    /** A map from free or listed names to values of one kind. */
    NAMED
  }

  final String name;
  final Shape shape;
  final Kind kind;
  final String meaning;
  String example = "";
  String byDefault;
  String takenAs;
  double least = Double.NEGATIVE_INFINITY;
  boolean open;
  int fewest;
  double most = Double.POSITIVE_INFINITY;
  Key[] keys = new Key[0];
  private volatile int[] places;
  private Object defaultValue;
  private GuessRange guess;
  private GuessRange guessOnceStated;
  String[] allowedNames;

  private Key(String name, Shape shape, Kind kind, String meaning) {
    this.name = name;
    this.shape = shape;
    this.kind = kind;
    this.meaning = meaning;
  }

  /** The declared default as a value; read once, because it never changes. */
  Object defaultValue() {
    if (defaultValue == null) {
      if (byDefault == null) {
        throw new IllegalArgumentException(name + " has no default");
      }
      defaultValue = kind.read(byDefault, true);
    }
    return defaultValue;
  }

  static Key one(String name, Kind kind, String example, String meaning) {
    Key key = new Key(name, Shape.ONE, kind, meaning);
    key.example = example;
    return key;
  }

  static Key list(String name, Kind kind, String example, String meaning) {
    Key key = new Key(name, Shape.LIST, kind, meaning);
    key.example = example;
    return key;
  }

  static Key section(String name, String meaning, Key... keys) {
    Key key = new Key(name, Shape.SECTION, null, meaning);
    key.keys = keys;
    return key;
  }

  static Key sections(String name, String meaning, Key... keys) {
    Key key = new Key(name, Shape.SECTIONS, null, meaning);
    key.keys = keys;
    return key;
  }

  /** A map from names to values; {@code allowed} null lets any name in. */
  static Key named(String name, Kind kind, String example, String meaning, String[] allowed) {
    Key key = new Key(name, Shape.NAMED, kind, meaning);
    key.example = example;
    key.allowedNames = allowed;
    return key;
  }

  /** Its value must be above 0. */
  Key above0() {
    least = 0;
    open = true;
    return this;
  }

  /** Its value must not be negative. */
  Key from0() {
    least = 0;
    return this;
  }

  /** Its value must lie between two ends, in the base unit. */
  Key within(double low, double high) {
    least = low;
    most = high;
    return this;
  }

  /** Its list must have so many items. */
  Key atLeast(int items) {
    fewest = items;
    return this;
  }

  /**
   * The value taken when nobody names one.
   *
   * @param typed the value as one would type it
   * @param as how {@code Taken:} says it
   */
  Key byDefault(String typed, String as) {
    byDefault = typed;
    takenAs = as;
    return this;
  }

  /** Nobody has measured its value: it may lie anywhere between these ends, in the base unit. */
  Key guess(double low, double high, String source, String settledBy) {
    guess = new GuessRange(GuessRange.Of.VALUES, low, high, source, settledBy, null);
    return this;
  }

  /** It is no guess any more in a plan that states another key. */
  Key settledOnce(String path) {
    guess =
        new GuessRange(
            guess.of(), guess.low(), guess.high(), guess.source(), guess.settledBy(), path);
    return this;
  }

  /** Its value may be so many times off. */
  Key guessTimes(double low, double high, String source, String settledBy) {
    guess = new GuessRange(GuessRange.Of.FACTORS, low, high, source, settledBy, null);
    return this;
  }

  /** It may lie between these ends as long as the plan does not state it. */
  Key guessUntold(double low, double high, String source, String settledBy) {
    guess = new GuessRange(GuessRange.Of.UNTOLD, low, high, source, settledBy, null);
    return this;
  }

  /** Once stated, it may still be so many times off. */
  Key thenTimes(double low, double high, String source) {
    guessOnceStated =
        new GuessRange(GuessRange.Of.FACTORS, low, high, source, guess.settledBy(), null);
    return this;
  }

  /** How far its value may be off; null when it is no guess. */
  public GuessRange guess(boolean stated) {
    boolean untold = guess != null && guess.of() == GuessRange.Of.UNTOLD;
    return stated && untold ? guessOnceStated : guess;
  }

  /** The declared default of a number, in its base unit; null without one. */
  public Double defaultNumber() {
    return byDefault == null ? null : Double.valueOf(((Number) defaultValue()).doubleValue());
  }

  /** The key's name. */
  public String name() {
    return name;
  }

  /** One value, a list, a section. */
  public Shape shape() {
    return shape;
  }

  /** Kind of the value or of the items; null for sections. */
  public Kind kind() {
    return kind;
  }

  /** What it means, one clause. */
  public String meaning() {
    return meaning;
  }

  /** A value as one would type it; of a section, its first key with a value. */
  public String example() {
    if (!example.isEmpty() || keys.length == 0) {
      return example;
    }
    String one = "{" + keys[0].name + ": " + keys[0].example() + "}";
    return shape == Shape.SECTIONS ? "[" + one + "]" : one;
  }

  /** What may stand there in words: "a length", "list: a flow at a head", "section". */
  public String holds() {
    switch (shape) {
      case SECTION:
        return "section";
      case SECTIONS:
        return "list of sections";
      case LIST:
        return "list: " + kind.word();
      case NAMED:
        return "map of names: " + kind.word();
      default:
        return kind.word();
    }
  }

  /** The default as one would type it, or null. */
  public String byDefault() {
    return byDefault;
  }

  /** The default in the words of {@code Taken:}, or null. */
  public String takenAs() {
    return takenAs;
  }

  /** Keys of a section. */
  public Key[] keys() {
    return keys;
  }

  /** Number of a key of this section, which must be declared. */
  int indexOf(String child) {
    int[] table = places;
    if (table == null) {
      table = places();
      places = table;
    }
    int mask = table.length - 1;
    for (int i = child.hashCode() & mask; table[i] > 0; i = (i + 1) & mask) {
      String own = keys[table[i] - 1].name;
      // names are literals on both sides, so that most are found without comparing letters
      if (own == child || own.equals(child)) {
        return table[i] - 1;
      }
    }
    throw new IllegalArgumentException("no key " + child + " is declared in " + name);
  }

  /** Numbers of the keys, from 1, at the hashes of their names; every second place or more is 0. */
  private int[] places() {
    int[] table = new int[2 * Integer.highestOneBit(2 * keys.length + 1)];
    for (int k = 0; k < keys.length; k++) {
      int i = keys[k].name.hashCode() & (table.length - 1);
      while (table[i] > 0) {
        i = (i + 1) & (table.length - 1);
      }
      table[i] = k + 1;
    }
    return table;
  }

  /** The key of this name in the section, or null. */
  public Key find(String child) {
    for (int i = 0; i < keys.length; i++) {
      if (keys[i].name.equals(child)) {
        return keys[i];
      }
    }
    return null;
  }
}
