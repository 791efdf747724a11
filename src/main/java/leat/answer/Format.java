package leat.answer;

/** How an answer is written: format, units, separators, and what is left out. */
public final class Format {
  /** Bare values of one key, see {@link Bare}. */
  public static final String VALUE = "value";

  /** text, csv, json or value. */
  public final String name;

  /** US customary units in text. */
  public final boolean us;

  /** No Taken, Mind, Next. */
  public final boolean quiet;

  /** Each formula with its numbers. */
  public final boolean explain;

  /** Words of csv as they are, even those a spreadsheet takes for formulas. */
  public final boolean raw;

  final char delimiter;
  final char decimal;
  private int width;
  private boolean painted;
  private boolean charted;
  private boolean boxes;

  /** All choices at once. */
  public Format(
      String name,
      boolean us,
      boolean quiet,
      boolean explain,
      boolean raw,
      char delimiter,
      char decimal) {
    this.name = name;
    this.us = us;
    this.quiet = quiet;
    this.explain = explain;
    this.raw = raw;
    this.delimiter = delimiter;
    this.decimal = decimal;
  }

  /** Text wrapped to a width (0 for lines that stay whole), with or without colour. */
  public Format on(int columns, boolean inColor) {
    width = columns;
    painted = inColor;
    return this;
  }

  /** With the charts under the text, drawn with box characters or without. */
  public Format charted(boolean withBoxes) {
    charted = true;
    boxes = withBoxes;
    return this;
  }

  /** A CSV writer with this format's separators. */
  public CsvWriter csv() {
    return new CsvWriter(delimiter, decimal, raw);
  }

  /** What goes to standard output or the file. */
  public String write(Answer answer) {
    if (answer.verbatim != null) {
      return answer.verbatim;
    }
    switch (name) {
      case "csv":
        return csv().write(answer);
      case "json":
        return new JsonWriter(quiet, explain).write(answer);
      default:
        return new TextWriter(us, quiet, explain, width, painted)
            .write(answer, charted ? TextCharts.of(answer, us, width, boxes) : "");
    }
  }

  /**
   * What goes to standard error beside a CSV or one text: its notes, workings where asked for, and
   * what such a text is; empty otherwise.
   */
  public String aside(Answer answer) {
    boolean rowsAlone = "csv".equals(name) || VALUE.equals(name);
    if (quiet || !rowsAlone && answer.verbatim == null) {
      return "";
    }
    StringBuilder out = new StringBuilder();
    if (answer.verbatim != null && !answer.sentence.isEmpty()) {
      out.append(answer.sentence.render(us)).append('\n');
    }
    if (explain) {
      out.append(TextWriter.workings(answer.workings, us));
    }
    if (!answer.taken.isEmpty()) {
      out.append(TextWriter.takenLine(answer, us)).append('\n');
    }
    for (int i = 0; i < answer.minds.size(); i++) {
      out.append("Mind: ").append(answer.minds.get(i).text.render(us)).append('\n');
    }
    return out.toString();
  }
}
