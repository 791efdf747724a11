package leat.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leat.plan.KindReader;
import leat.plan.Plan;
import leat.plan.Problem;
import leat.plan.Refused;

/** What was typed behind a command: its flags as quantities, and operands. */
public class TypedLine {
  public final Command command;
  final Flag[] flags;
  final Map<String, List<String>> values;
  final List<String> operands;
  private List<String> words = List.of();

  TypedLine(Command command) {
    this.command = command;
    this.flags = CommonFlags.all(command);
    this.values = new HashMap<>();
    this.operands = new ArrayList<>();
  }

  /** The same line. */
  TypedLine(TypedLine line) {
    this.command = line.command;
    this.flags = line.flags;
    this.values = line.values;
    this.operands = line.operands;
    this.words = line.words;
  }

  /** Reads the words behind a command. */
  static TypedLine of(Command command, String[] args) {
    TypedLine line = plain(command, args);
    if (line == null) {
      line = CommandLines.withPicocli(command, args);
    }
    line.words = java.util.Arrays.asList(args);
    return line;
  }

  /**
   * Reads a plain line, each flag written out with its value behind or joined to it, without
   * picocli, which costs half of a one-off sum's start; null for anything else, also for every
   * mistake.
   */
  static TypedLine plain(Command command, String[] args) {
    TypedLine line = new TypedLine(command);
    int i = 0;
    while (i < args.length) {
      int taken = line.take(args, i);
      if (taken == 0) {
        return null;
      }
      i += taken;
    }
    return line;
  }

  /** Takes the word there, and the value behind it; how many words that were, 0 if not plain. */
  private int take(String[] args, int i) {
    String arg = args[i];
    int equals = arg.startsWith("--") ? arg.indexOf('=') : -1;
    Flag flag = named(equals < 0 ? arg : arg.substring(0, equals));
    if (flag == null || equals > 0 && !flag.hasValue()) {
      operands.add(arg);
      return arg.startsWith("-") ? 0 : 1;
    }
    if (equals > 0) {
      // joined to its flag a value may begin with a minus
      return put(flag, arg.substring(equals + 1)) ? 1 : 0;
    }
    if (!flag.hasValue()) {
      return put(flag, "true") ? 1 : 0;
    }
    boolean there = i + 1 < args.length && !args[i + 1].startsWith("-");
    return there && put(flag, args[i + 1]) ? 2 : 0;
  }

  /** False for a second value of a flag that takes one. */
  private boolean put(Flag flag, String value) {
    List<String> given = values.get(flag.name);
    if (given == null) {
      given = new ArrayList<>();
      values.put(flag.name, given);
    } else if (!flag.repeatable) {
      return false;
    }
    given.add(value);
    return true;
  }

  /** The flag of a name, short name or alias, or null. */
  final Flag named(String arg) {
    for (int i = 0; i < flags.length; i++) {
      Flag flag = flags[i];
      if (arg.equals(flag.name) || arg.equals(flag.shortName) || arg.equals(flag.alias)) {
        return flag;
      }
    }
    return null;
  }

  /** The same line with other values and operands laid over it later. */
  TypedLine copy() {
    TypedLine other = new TypedLine(command);
    other.values.putAll(values);
    other.operands.addAll(operands);
    return other;
  }

  /** The same line with one plan in place of all that are operands. */
  TypedLine with(String plan) {
    TypedLine other = new TypedLine(command);
    other.values.putAll(values);
    for (int i = 0; i < operands.size(); i++) {
      if (!Call.isPlanName(operands.get(i))) {
        other.operands.add(operands.get(i));
      }
    }
    other.operands.add(plan);
    return other;
  }

  /** A flag that the command has. */
  Flag flag(String name) {
    Flag flag = named(name);
    if (flag == null) {
      throw new IllegalArgumentException(name + " is not a flag of " + command.name());
    }
    return flag;
  }

  boolean has(Flag flag) {
    return values.containsKey(flag.name);
  }

  /** Whether a flag was given. */
  public boolean has(String name) {
    return has(flag(name));
  }

  /** The text of a flag, or null. */
  public String text(String name) {
    List<String> all = texts(name);
    return all.isEmpty() ? null : all.get(0);
  }

  /** The texts of a repeatable flag. */
  public List<String> texts(String name) {
    List<String> given = values.get(flag(name).name);
    return given == null ? new ArrayList<>() : given;
  }

  /** The value of a flag as its kind reads it, or null. */
  public Object value(String name) {
    String text = text(name);
    return text == null ? null : KindReader.read(flag(name).kind, name, text);
  }

  /** The values of a repeatable flag as its kind reads them. */
  public List<Object> values(String name) {
    List<String> all = texts(name);
    List<Object> result = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      result.add(KindReader.read(flag(name).kind, name, all.get(i)));
    }
    return result;
  }

  /** A quantity in its base unit, or null. */
  public Double quantity(String name) {
    Object value = value(name);
    return value == null ? null : Double.valueOf(((Number) value).doubleValue());
  }

  /** A quantity above 0, or null. */
  public Double above0(String name) {
    Double value = quantity(name);
    if (value != null && !(value > 0)) {
      throw new Refused(CommandErrors.mustBeAbove0(name, text(name)));
    }
    return value;
  }

  /** A quantity from 0, or null. */
  public Double from0(String name) {
    Double value = quantity(name);
    if (value != null && value < 0) {
      throw new Refused(CommandErrors.cannotBeNegative(name, text(name)));
    }
    return value;
  }

  /** Refuses a flag that says something about a question that is not asked. */
  void refuseWithoutQuestion() {
    for (int i = 0; i < flags.length; i++) {
      String[] questions = flags[i].questions;
      boolean asked = questions.length == 0 || !has(flags[i]);
      for (int k = 0; k < questions.length && !asked; k++) {
        asked = has(flag(questions[k]));
      }
      if (!asked) {
        throw new Refused(CommandErrors.withoutItsQuestion(command, flags[i].name, questions));
      }
    }
  }

  /**
   * Refuses a word that a flag does not know; otherwise what is asked by words would go on without.
   */
  void refuseOtherWords() {
    for (int i = 0; i < flags.length; i++) {
      if (flags[i].hasValue() && flags[i].kind.words() != null) {
        values(flags[i].name);
      }
    }
  }

  /**
   * The refusal for flags that this question cannot do without: those of them that were not given,
   * all at once.
   */
  public Refused needs(String... names) {
    List<Problem> missing = new ArrayList<>();
    for (int i = 0; i < names.length; i++) {
      if (names.length == 1 || !has(names[i])) {
        missing.add(CommandErrors.needed(command, flag(names[i])));
      }
    }
    return new Refused(missing);
  }

  /** Adds flags to a line as they were typed, those whose question is among them. */
  void again(StringBuilder line, String... kept) {
    for (int i = 0; i < kept.length; i++) {
      if (isAskedBy(kept, flag(kept[i]))) {
        again(line, flag(kept[i]));
      }
    }
  }

  private void again(StringBuilder line, Flag flag) {
    if (!has(flag)) {
      return;
    }
    List<String> all = values.get(flag.name);
    for (int i = 0; i < all.size(); i++) {
      line.append(' ').append(flag.name);
      if (flag.hasValue()) {
        line.append(' ').append(ShellWord.quoted(all.get(i)));
      }
    }
  }

  /** Whether a flag stands alone, or its question is kept, too. */
  private boolean isAskedBy(String[] kept, Flag flag) {
    boolean asked = flag.questions.length == 0;
    for (int i = 0; i < flag.questions.length; i++) {
      for (int k = 0; k < kept.length; k++) {
        asked |= kept[k].equals(flag.questions[i]) && has(flag(kept[k]));
      }
    }
    return asked;
  }

  /** Lays the flags that are keys of a plan over one. */
  void lay(Plan.Draft draft) {
    for (int i = 0; i < flags.length; i++) {
      Flag flag = flags[i];
      if (flag.planPath == null) {
        continue;
      }
      draft.flag(flag.planPath, flag.name);
      List<String> given = texts(flag.name);
      if (flag.repeatable && !given.isEmpty()) {
        draft.setList(flag.planPath, flag.name, given);
      } else if (!given.isEmpty()) {
        draft.setText(flag.planPath, flag.name, given.get(0));
      }
    }
  }

  /** The words behind the command, as typed. */
  List<String> words() {
    return words;
  }
}
