package leat.answer;

import java.util.ArrayList;
import java.util.List;
import leat.quantity.Visible;

/**
 * What a command answers: rows under one list of columns for CSV and JSON, and for text one
 * sentence, figures, what was taken, what to mind and what to do next.
 */
public final class Answer {
  /** A doubt, a range left or a danger. */
  static final class Note {
    final String code;
    final Phrase text;

    /** Somebody can be hurt: said under {@code --quiet}, too. */
    final boolean safety;

    Note(String code, Phrase text, boolean safety) {
      this.code = code;
      this.text = text;
      this.safety = safety;
    }
  }

  /** One line of figures: a label and cells; a null label is a line of words. */
  static final class Line {
    final String label;
    final Phrase[] cells;

    Line(String label, Phrase[] cells) {
      this.label = label;
      this.cells = cells;
    }
  }

  final Column[] columns;
  final List<Row> rows = new ArrayList<>();
  final List<List<Line>> blocks = new ArrayList<>();
  final List<Phrase> headings = new ArrayList<>();
  final List<Phrase> taken = new ArrayList<>();
  final List<Note> minds = new ArrayList<>();
  final List<Phrase> nexts = new ArrayList<>();
  final List<Working> workings = new ArrayList<>();
  Phrase sentence = Phrase.of();
  String verbatim;
  private boolean page;
  boolean list;
  int csvColumns;
  Answer head;
  final List<String> arrayNames = new ArrayList<>();
  final List<Answer> arrays = new ArrayList<>();
  Column[] tableColumns;
  final List<leat.answer.chart.Chart> charts = new ArrayList<>();
  private int exitCode;

  /** An answer with these columns. */
  public Answer(Column... columns) {
    this.columns = columns;
    this.csvColumns = columns.length;
  }

  /** An answer that is one text, such as a plan to paste; the same in all formats. */
  public static Answer verbatim(String text) {
    Answer answer = new Answer();
    answer.verbatim = text;
    return answer;
  }

  /** Whether it is one text, the same in all formats. */
  public boolean isVerbatim() {
    return verbatim != null;
  }

  /** An answer that is a page of html itself. */
  public static Answer page(String html) {
    Answer answer = verbatim(html);
    answer.page = true;
    return answer;
  }

  /** Whether it is a page of html itself. */
  public boolean isPage() {
    return page;
  }

  /** What a page of html itself is, or null. */
  public String pageText() {
    return page ? verbatim : null;
  }

  /** Its columns, in order. */
  public Column[] columns() {
    return columns.clone();
  }

  /** CSV has the first {@code n} columns only, JSON has all. */
  public Answer csvColumns(int n) {
    csvColumns = n;
    return this;
  }

  /** JSON is an array even for one row. */
  public Answer asList() {
    list = true;
    return this;
  }

  /**
   * JSON is one object: the one row of {@code figures}, then the arrays of {@link #array}. CSV
   * stays the rows of this answer.
   */
  public Answer jsonObject(Answer figures) {
    head = figures;
    return this;
  }

  /** One array of the JSON object: this answer's own rows, or others beside them. */
  public Answer array(String key, Answer rowsOfIt) {
    arrayNames.add(key);
    arrays.add(rowsOfIt);
    return this;
  }

  /** A new row. */
  public Row row() {
    Row row = new Row(columns);
    rows.add(row);
    return row;
  }

  /** A row written before. */
  public Row row(int i) {
    return rows.get(i);
  }

  /** Number of rows. */
  public int size() {
    return rows.size();
  }

  /** The one sentence that is the answer. */
  public Answer sentence(Phrase words) {
    sentence = words;
    return this;
  }

  /** The one sentence that is the answer, as a {@link Template} over a row. */
  public Answer sentence(Row row, String template) {
    return sentence(filled(row, template));
  }

  /** A template filled from a row. */
  public static Phrase filled(Row row, String template) {
    return Template.fill(row, template);
  }

  /** A line of figures in the current block: a label and templates over a row. */
  public Answer figure(String label, Row row, String... templates) {
    Phrase[] cells = new Phrase[templates.length];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = filled(row, templates[i]);
    }
    return figure(label, cells);
  }

  /** A line of one column: its own label, its value, then templates over the row. */
  public Answer figure(Row row, Column column, String template, String... more) {
    Phrase[] remarks = new Phrase[more.length + 1];
    remarks[0] = filled(row, template);
    for (int i = 0; i < more.length; i++) {
      remarks[i + 1] = filled(row, more[i]);
    }
    return figure(row, column, remarks);
  }

  /** A line of figures in the current block. */
  public Answer figure(String label, Phrase... cells) {
    if (blocks.isEmpty()) {
      block();
    }
    blocks.get(blocks.size() - 1).add(new Line(label, cells));
    return this;
  }

  /** A line of one column: its own label, its value of the row, then remarks. */
  public Answer figure(Row row, Column column, Phrase... remarks) {
    Phrase[] cells = new Phrase[remarks.length + 1];
    cells[0] = phrase(row, column);
    System.arraycopy(remarks, 0, cells, 1, remarks.length);
    return figure(column.label(), cells);
  }

  /** Value of a column in a row, as a phrase; "-" for unknown. */
  public static Phrase phrase(Row row, Column column) {
    Object value = row.get(column);
    if (value == null) {
      return Phrase.of("-");
    }
    if (value instanceof Double number) {
      return column.show() == null
          ? Phrase.of(column.bare(number))
          : Phrase.of(number, column.show());
    }
    return Phrase.of(Visible.of(String.valueOf(value)));
  }

  /** Figures from here on are aligned among themselves. */
  public Answer block() {
    return block(Phrase.of());
  }

  /** The same, under a sentence of their own. */
  public Answer block(Phrase heading) {
    blocks.add(new ArrayList<>());
    headings.add(heading);
    return this;
  }

  /** Text shows the rows as a table of these columns, after the figures. */
  public Answer table(Column... shown) {
    tableColumns = shown;
    return this;
  }

  /** What a chart or a page draws of it: declared only when one is asked for. */
  public Answer chart(leat.answer.chart.Chart chart) {
    charts.add(chart);
    return this;
  }

  /** A default that was used. */
  public Answer taken(Phrase what) {
    taken.add(what);
    return this;
  }

  /** Defaults that were used. */
  public Answer taken(List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      taken.add(Phrase.said(words.get(i)));
    }
    return this;
  }

  /** A danger, as a {@link Template} over a row. */
  public Answer safety(String code, Row row, String template) {
    return note(code, filled(row, template), true);
  }

  /** A doubt, a range left or a danger, under a kebab-case code. */
  public Answer mind(String code, Phrase text) {
    return note(code, text, false);
  }

  private Answer note(String code, Phrase text, boolean safety) {
    for (int i = 0; i < minds.size(); i++) {
      if (minds.get(i).code.equals(code)
          && minds.get(i).text.render(false).equals(text.render(false))) {
        return this;
      }
    }
    minds.add(new Note(code, text, safety));
    return this;
  }

  /**
   * A danger to somebody: a note as {@link #mind}, of which {@code --quiet} keeps the words in one
   * last line of the text and the note of JSON.
   */
  public Answer safety(String code, String text) {
    return note(code, Phrase.said(text), true);
  }

  /** A doubt, a range left or a danger, under a kebab-case code. */
  public Answer mind(String code, String text) {
    return mind(code, Phrase.said(text));
  }

  /** A doubt, a range left or a danger, as a {@link Template} over a row. */
  public Answer mind(String code, Row row, String template) {
    return mind(code, filled(row, template));
  }

  /** A default that was used, as a {@link Template} over a row. */
  public Answer taken(Row row, String template) {
    return taken(filled(row, template));
  }

  /** What to do next, as a {@link Template} over a row. */
  public Answer next(Row row, String template) {
    nexts.add(filled(row, template));
    return this;
  }

  /** What to do next, with the command to type. */
  public Answer next(String what) {
    nexts.add(Phrase.of(what));
    return this;
  }

  /** A formula with its numbers, for {@code --explain}. */
  public Answer working(Working working) {
    workings.add(working);
    return this;
  }

  /**
   * The same for a column's value of a row, told under the column's label; none when it is unknown.
   *
   * @param with the numbers that went in, as a {@link Template} over the row
   */
  public Answer working(
      Row row, Column column, String formula, String with, String range, String source) {
    if (!(row.get(column) instanceof Double result)) {
      return this;
    }
    Phrase numbers = filled(row, with);
    return working(
        column.show() == null
            ? Working.number(
                column.label(), formula, numbers, result, column.digits(), range, source)
            : Working.of(column.label(), formula, numbers, result, column.show(), range, source));
  }

  /** The answer is no: exit code 1. */
  public Answer no() {
    exitCode = 1;
    return this;
  }

  /** An exit code of its own, such as 2 when one of several plans could not be read. */
  public Answer exit(int code) {
    exitCode = code;
    return this;
  }

  /** 0, or 1 when the answer is no. */
  public int exitCode() {
    return exitCode;
  }
}
