package leat.answer;

import leat.quantity.JsonText;
import leat.quantity.NumberText;

/** Writes an answer as one JSON object, or an array of objects; always metric. */
final class JsonWriter {
  private final boolean quiet;
  private final boolean explain;
  private final StringBuilder out = new StringBuilder();

  JsonWriter(boolean quiet, boolean explain) {
    this.quiet = quiet;
    this.explain = explain;
  }

  String write(Answer answer) {
    if (answer.head != null) {
      whole(answer);
      return out.append('\n').toString();
    }
    boolean array = answer.list || answer.rows.size() != 1;
    if (array) {
      out.append("[");
    }
    for (int r = 0; r < answer.rows.size(); r++) {
      out.append(r == 0 ? (array ? "\n" : "") : ",\n");
      object(answer, answer.rows.get(r));
    }
    out.append(array ? "\n]\n" : "\n");
    return out.toString();
  }

  /** One object with arrays in it. */
  private void whole(Answer answer) {
    out.append('{');
    fields(answer.head, answer.head.rows.get(0), "\n  ");
    for (int i = 0; i < answer.arrays.size(); i++) {
      Answer inner = answer.arrays.get(i);
      out.append(",\n  ");
      name(answer.arrayNames.get(i));
      out.append('[');
      for (int r = 0; r < inner.rows.size(); r++) {
        out.append(r == 0 ? "\n    {" : ",\n    {");
        fields(inner, inner.rows.get(r), " ");
        out.append('}');
      }
      out.append(inner.rows.isEmpty() ? "]" : "\n  ]");
    }
    aside(answer);
  }

  private void fields(Answer answer, Row row, String before) {
    for (int c = 0; c < answer.columns.length; c++) {
      Column column = answer.columns[c];
      String space = c == 0 && before.equals(" ") ? "" : before;
      out.append(c == 0 ? "" : ",").append(space);
      name(column.key());
      JsonValue.append(out, row.get(c), column);
    }
  }

  private void object(Answer answer, Row row) {
    out.append('{');
    fields(answer, row, "\n  ");
    aside(answer);
  }

  /** What was taken, notes and workings, and the end of the object. */
  private void aside(Answer answer) {
    if (!quiet) {
      taken(answer);
    }
    if (!quiet || hasSafety(answer)) {
      notes(answer);
    }
    if (explain) {
      workings(answer);
    }
    out.append("\n}");
  }

  private void taken(Answer answer) {
    out.append(",\n  \"taken\": [");
    for (int i = 0; i < answer.taken.size(); i++) {
      out.append(i == 0 ? "" : ", ").append(JsonText.string(answer.taken.get(i).render(false)));
    }
    out.append(']');
  }

  private void notes(Answer answer) {
    out.append(",\n  \"notes\": [");
    boolean first = true;
    for (int i = 0; i < answer.minds.size(); i++) {
      Answer.Note note = answer.minds.get(i);
      if (quiet && !note.safety) {
        continue;
      }
      out.append(first ? "\n    {" : ",\n    {");
      field("code", note.code, true);
      field("text", note.text.render(false), false);
      out.append('}');
      first = false;
    }
    out.append(first ? "]" : "\n  ]");
  }

  private static boolean hasSafety(Answer answer) {
    for (int i = 0; i < answer.minds.size(); i++) {
      if (answer.minds.get(i).safety) {
        return true;
      }
    }
    return false;
  }

  private void workings(Answer answer) {
    out.append(",\n  \"workings\": [");
    for (int i = 0; i < answer.workings.size(); i++) {
      Working w = answer.workings.get(i);
      out.append(i == 0 ? "\n    {" : ",\n    {");
      field("what", w.what, true);
      field("formula", w.formula, false);
      field("with", w.with.render(false), false);
      out.append(", ");
      name("result");
      double shown = w.show == null ? w.result : w.show.metric().fromBase(w.result);
      out.append(NumberText.shortest(shown));
      field("unit", w.show == null ? "" : w.show.metric().symbol(), false);
      field("range", w.range, false);
      field("source", w.source, false);
      out.append('}');
    }
    out.append(answer.workings.isEmpty() ? "]" : "\n  ]");
  }

  private void field(String key, String value, boolean first) {
    out.append(first ? "" : ", ");
    name(key);
    out.append(JsonText.string(value));
  }

  private void name(String key) {
    out.append(JsonText.string(key)).append(": ");
  }
}
