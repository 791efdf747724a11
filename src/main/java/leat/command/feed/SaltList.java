package leat.command.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.solution.Element;
import leat.solution.Elements;
import leat.solution.Salt;
import leat.solution.Salts;
import leat.system.SaltsOf;

/** The table of salts that {@code leat dose salts --list} prints. */
final class SaltList {
  static final Column SALT = Column.plain("salt", "salt");
  static final Column FORMULA = Column.plain("formula", "formula");
  static final Column ELEMENTS = Column.plain("elements", "brings, by mass");
  static final Column MOLAR = Column.number("molar_mass_g_mol", "g/mol", 5);
  static final Column AT_0 = Column.number("solubility_0_C_g_kg", "0 C", 3);
  static final Column AT_10 = Column.number("solubility_10_C_g_kg", "10 C", 3);
  static final Column AT_20 = Column.number("solubility_20_C_g_kg", "20 C, g/kg water", 3);
  static final Column NOTE = Column.plain("note", "note");

  private SaltList() {}

  static Answer answer(Call call) {
    Column[] columns = columns();
    Answer answer = new Answer(columns).asList();
    List<Salt> salts = all(call);
    for (int i = 0; i < salts.size(); i++) {
      row(answer, columns, salts.get(i));
    }
    answer.sentence(
        Row.aside(SaltText.COUNT).set(SaltText.COUNT, salts.size()),
        "{count} salts that can be weighed; own ones go into feed.salts of a plan.");
    answer.table(SALT, FORMULA, ELEMENTS, AT_0, AT_10, AT_20);
    answer.mind(
        "label-wins",
        "chelates and trade products vary: the label of the bag wins. Solubility is of the salt as sold, in water added.");
    return call.withTaken(answer);
  }

  /** The plan's own salts, then those of the table. */
  private static List<Salt> all(Call call) {
    List<Salt> salts = new ArrayList<>(SaltsOf.own(call.plan()));
    int own = salts.size();
    String[] table = Salts.names();
    for (int i = 0; i < table.length; i++) {
      boolean twice = false;
      for (int j = 0; j < own; j++) {
        twice |= salts.get(j).name().equals(table[i]);
      }
      if (!twice) {
        salts.add(Salts.of(table[i]));
      }
    }
    return salts;
  }

  private static Column[] columns() {
    Column[] columns = new Column[8 + Element.count()];
    Column[] first = {SALT, FORMULA, ELEMENTS, MOLAR, AT_0, AT_10, AT_20, NOTE};
    System.arraycopy(first, 0, columns, 0, first.length);
    for (int i = 0; i < Element.count(); i++) {
      String label = Element.at(i).label();
      columns[8 + i] = Column.of(label.replace('-', '_') + "_pct", label, Show.PERCENT);
    }
    return columns;
  }

  private static void row(Answer answer, Column[] columns, Salt salt) {
    Row row = answer.row();
    row.set(SALT, salt.name()).set(FORMULA, salt.formula()).set(ELEMENTS, words(salt));
    row.set(MOLAR, salt.molarMass() > 0 ? (Double) salt.molarMass() : null);
    row.set(AT_0, solubility(salt, 0));
    row.set(AT_10, solubility(salt, 1));
    row.set(AT_20, solubility(salt, 2));
    row.set(NOTE, salt.note());
    Elements fractions = salt.fractions();
    for (int i = 0; i < Element.count(); i++) {
      Element element = Element.at(i);
      row.set(columns[8 + i], fractions.knows(element) ? (Double) fractions.of(element) : null);
    }
  }

  private static Double solubility(Salt salt, int i) {
    return salt.knowsSolubility(i) ? (Double) salt.solubility(i) : null;
  }

  private static String words(Salt salt) {
    StringBuilder out = new StringBuilder();
    boolean forms = salt.fraction(Element.N_NO3) > 0 || salt.fraction(Element.N_NH4) > 0;
    for (int i = 0; i < Element.count(); i++) {
      Element element = Element.at(i);
      if (salt.fraction(element) > 0 && !(element == Element.N && forms)) {
        out.append(out.length() == 0 ? "" : ", ").append(element.label()).append(' ');
        out.append(NumberText.significant(Units.PERCENT.fromBase(salt.fraction(element)), 3))
            .append(" %");
      }
    }
    return out.toString();
  }
}
