package leat.answer;

import java.util.ArrayList;
import java.util.List;
import leat.answer.chart.Chart;
import leat.quantity.NumberText;
import leat.quantity.Unit;

/** An answer as words in the units asked for, for those who lay it out elsewhere. */
public final class Told {
  /** Figures under a heading, which may be empty. */
  public record Block(String heading, List<Figure> figures) {}

  /** A line of figures; the label may be null. */
  public record Figure(String label, List<String> cells) {}

  /** What is to be minded. */
  public record Note(String text, boolean safety) {}

  /** A formula with its numbers. */
  public record Formula(
      String what, String formula, String with, String result, String range, String source) {}

  /**
   * Rows in words.
   *
   * @param name what they are; empty for the answer's own
   * @param heads of the columns
   * @param numbers which columns hold numbers
   * @param rows as many as were asked for
   * @param all how many there are
   */
  public record Table(
      String name, List<String> heads, boolean[] numbers, List<String[]> rows, int all) {}

  /** Digits of a column that names no unit and no digits of its own. */
  private static final int MANY_DIGITS = 6;

  private final Answer answer;
  private final Format format;

  /** The words of an answer, with what this format leaves out. */
  public Told(Answer answer, Format format) {
    this.answer = answer;
    this.format = format;
  }

  private List<String> words(List<Phrase> phrases) {
    List<String> words = new ArrayList<>();
    for (Phrase phrase : phrases) {
      words.add(phrase.render(format.us));
    }
    return words;
  }

  /** The one sentence; empty for none. */
  public String sentence() {
    return answer.sentence.render(format.us);
  }

  /** The figures. */
  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    for (int b = 0; b < answer.blocks.size(); b++) {
      List<Figure> figures = new ArrayList<>();
      for (Answer.Line line : answer.blocks.get(b)) {
        figures.add(new Figure(line.label, words(List.of(line.cells))));
      }
      blocks.add(new Block(answer.headings.get(b).render(format.us), figures));
    }
    return blocks;
  }

  /** Defaults that were used. */
  public List<String> taken() {
    return format.quiet ? List.of() : words(answer.taken);
  }

  /** Doubts and dangers; under quiet the dangers alone. */
  public List<Note> minds() {
    List<Note> minds = new ArrayList<>();
    for (Answer.Note note : answer.minds) {
      if (note.safety || !format.quiet) {
        minds.add(new Note(note.text.render(format.us), note.safety));
      }
    }
    return minds;
  }

  /** What to do next. */
  public List<String> nexts() {
    return format.quiet ? List.of() : words(answer.nexts);
  }

  /** Formulas, where they were asked for. */
  public List<Formula> formulas() {
    List<Formula> formulas = new ArrayList<>();
    for (int i = 0; format.explain && i < answer.workings.size(); i++) {
      Working w = answer.workings.get(i);
      formulas.add(
          new Formula(
              w.what, w.formula, w.with.render(format.us), w.result(format.us), w.range, w.source));
    }
    return formulas;
  }

  /** What is drawn. */
  public List<Chart> charts() {
    return answer.charts;
  }

  /** Units of the words. */
  public boolean us() {
    return format.us;
  }

  /** All rows, with the columns of csv; each table has {@code most} of them at most. */
  public List<Table> tables(int most) {
    List<Table> tables = new ArrayList<>();
    if (answer.head != null) {
      tables.add(table("all figures", answer.head, answer.head.columns.length, most));
    }
    if (!isAmongArrays()) {
      tables.add(table("", answer, answer.csvColumns, most));
    }
    for (int i = 0; i < answer.arrays.size(); i++) {
      Answer one = answer.arrays.get(i);
      String name = answer.arrayNames.get(i).replace('_', ' ');
      tables.add(table(name, one, one.csvColumns, most));
    }
    return tables;
  }

  /** Whether the rows are one of the arrays, as the same answer or as another of its columns. */
  private boolean isAmongArrays() {
    for (Answer one : answer.arrays) {
      boolean same = one.columns.length == answer.columns.length && one.size() == answer.size();
      for (int c = 0; same && c < one.columns.length; c++) {
        same = one.columns[c].key().equals(answer.columns[c].key());
      }
      if (same) {
        return true;
      }
    }
    return false;
  }

  private Table table(String name, Answer rows, int columns, int most) {
    List<String> heads = new ArrayList<>();
    boolean[] numbers = new boolean[columns];
    List<String[]> texts = new ArrayList<>();
    for (int c = 0; c < columns; c++) {
      heads.add(heading(rows.columns, c));
    }
    for (int r = 0; r < rows.rows.size() && r < most; r++) {
      String[] cells = new String[columns];
      for (int c = 0; c < columns; c++) {
        Object value = rows.rows.get(r).get(c);
        numbers[c] |= value instanceof Number;
        cells[c] = cell(value, rows.columns[c]);
      }
      texts.add(cells);
    }
    return new Table(name, heads, numbers, texts, rows.rows.size());
  }

  /** Label and unit; columns of one label, which the text tells one by one, by their keys, too. */
  private String heading(Column[] all, int c) {
    boolean twice = false;
    for (int i = 0; i < all.length; i++) {
      twice |= i != c && all[i].label().equals(all[c].label());
    }
    return twice ? heading(all[c]) + " (" + all[c].key() + ")" : heading(all[c]);
  }

  private String heading(Column column) {
    Unit unit =
        column.show() == null ? null : format.us ? column.show().us() : column.show().metric();
    return unit == null ? column.label() : column.label() + ", " + unit.symbol();
  }

  /** A column that holds numbers of several kinds has digits for the finest of them. */
  private static String bare(double number, int digits) {
    String text = NumberText.significant(number, digits);
    int end = text.length();
    while (digits >= MANY_DIGITS && text.indexOf('.') > 0 && text.charAt(end - 1) == '0') {
      end--;
    }
    return text.charAt(end - 1) == '.' ? text.substring(0, end - 1) : text.substring(0, end);
  }

  private String cell(Object value, Column column) {
    if (value == null) {
      return "-";
    }
    if (value instanceof Double number) {
      return column.show() == null
          ? column.isMoney() ? column.bare(number) : bare(number, column.digits())
          : Phrase.text(number, column.show(), format.us);
    }
    return value instanceof Boolean yes ? (yes ? "yes" : "no") : String.valueOf(value);
  }
}
