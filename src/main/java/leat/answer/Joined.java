package leat.answer;

import java.util.List;

/** The same question answered for several plans: one text, one table, one array. */
public final class Joined {
  private static final Column PLAN = Column.plain("plan", "plan");

  private final List<String> names;
  private final List<Answer> answers;

  /** Answers with the names of their plans; at least one. */
  public Joined(List<String> names, List<Answer> answers) {
    this.names = names;
    this.answers = answers;
  }

  /** What goes to standard output or the file: in text a block for each plan, under its name. */
  public String write(Format format) {
    if (!"text".equals(format.name)) {
      return format.write(together());
    }
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < answers.size(); i++) {
      out.append(i == 0 ? "" : "\n").append(names.get(i)).append(":\n");
      out.append(format.write(answers.get(i)));
    }
    return out.toString();
  }

  /** What goes to standard error beside a CSV. */
  public String aside(Format format) {
    return format.aside(together());
  }

  /** One answer whose rows name their plan first; notes and workings name theirs, too. */
  private Answer together() {
    Column[] columns = answers.get(0).columns;
    Column[] all = new Column[columns.length + 1];
    all[0] = PLAN;
    System.arraycopy(columns, 0, all, 1, columns.length);
    Answer joined = new Answer(all).asList().csvColumns(answers.get(0).csvColumns + 1);
    for (int i = 0; i < answers.size(); i++) {
      add(joined, names.get(i), answers.get(i), columns);
    }
    return joined;
  }

  private static void add(Answer joined, String name, Answer one, Column[] columns) {
    for (int r = 0; r < one.rows.size(); r++) {
      Row row = joined.row().set(PLAN, name);
      for (int c = 0; c < columns.length; c++) {
        row.setAny(columns[c], one.rows.get(r).get(c));
      }
    }
    for (int i = 0; i < one.taken.size(); i++) {
      joined.taken(Phrase.of(name + ": ").add(one.taken.get(i)));
    }
    for (int i = 0; i < one.minds.size(); i++) {
      Answer.Note note = one.minds.get(i);
      Phrase words = Phrase.of(name + ": ").add(note.text);
      joined.minds.add(new Answer.Note(note.code, words, note.safety));
    }
    joined.workings.addAll(one.workings);
  }
}
