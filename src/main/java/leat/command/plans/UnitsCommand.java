package leat.command.plans;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.quantity.Dimension;
import leat.quantity.Nearest;
import leat.quantity.Unit;
import leat.quantity.Units;

/** {@code leat units}: what can be typed. */
public final class UnitsCommand extends Command {
  static final Column DIMENSION = Column.plain("dimension", "measures");
  static final Column SYMBOL = Column.plain("unit", "unit");
  static final Column NAME = Column.plain("name", "name");
  static final Column ALIASES = Column.plain("also", "also");
  static final Column FACTOR = Column.number("factor", "factor", 12);
  static final Column BASE = Column.plain("base", "base");

  @Override
  public String name() {
    return "units";
  }

  @Override
  public String operands() {
    return "[DIMENSION]";
  }

  @Override
  public boolean takesPlan() {
    return false;
  }

  @Override
  public Flag[] flags() {
    return new Flag[0];
  }

  @Override
  public Answer answer(Call call) {
    Answer answer = new Answer(DIMENSION, SYMBOL, NAME, ALIASES, FACTOR, BASE).asList();
    Dimension[] wanted = wanted(call);
    for (int d = 0; d < wanted.length; d++) {
      java.util.List<Unit> units = Units.of(wanted[d]);
      for (int i = 0; i < units.size(); i++) {
        Unit unit = units.get(i);
        Row row = answer.row();
        row.set(DIMENSION, word(wanted[d]));
        row.set(SYMBOL, unit.symbol());
        row.set(NAME, unit.name());
        row.set(ALIASES, String.join(", ", unit.aliases()));
        row.set(FACTOR, unit.toBase(1));
        row.set(BASE, wanted[d].base());
      }
    }
    answer.sentence(
        Phrase.of("What can be typed; a number, then the unit, with or without a space."));
    return answer.table(DIMENSION, SYMBOL, NAME, ALIASES);
  }

  static String word(Dimension dimension) {
    String word = dimension.word();
    return word.startsWith("an ") || word.startsWith("a ")
        ? word.substring(word.indexOf(' ') + 1)
        : word;
  }

  /** The words that the operand may be. */
  public static String[] words() {
    Dimension[] all = Dimension.values();
    String[] words = new String[all.length];
    for (int i = 0; i < words.length; i++) {
      words[i] = word(all[i]);
    }
    return words;
  }

  private Dimension[] wanted(Call call) {
    if (call.operands().isEmpty()) {
      return Dimension.values();
    }
    String asked = call.operands().get(0);
    java.util.List<String> words = new java.util.ArrayList<>();
    for (Dimension dimension : Dimension.values()) {
      if (word(dimension).equalsIgnoreCase(asked)) {
        return new Dimension[] {dimension};
      }
      words.add(word(dimension));
    }
    throw new leat.plan.Refused(
        CommandErrors.unknownWord("dimension", asked, Nearest.of(asked, words), words));
  }
}
