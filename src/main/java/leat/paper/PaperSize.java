package leat.paper;

/** A sheet of paper, upright. */
public enum PaperSize {
  /** ISO 216. */
  A4("A4", 210, 297),
  /** ANSI A, 8.5 in x 11 in. */
  LETTER("Letter", 215.9, 279.4);

  private final String word;
  private final double width;
  private final double height;

  PaperSize(String word, double width, double height) {
    this.word = word;
    this.width = width;
    this.height = height;
  }

  /** The size of a word, a4 or letter. */
  public static PaperSize of(String word) {
    return "letter".equals(word) ? LETTER : A4;
  }

  /** Its name. */
  public String word() {
    return word;
  }

  /** Width, mm. */
  double width() {
    return width;
  }

  /** Height, mm. */
  double height() {
    return height;
  }

  /** The rule of CSS that makes a page of it. */
  String rule(String margin) {
    return "@page { size: "
        + Mm.of(width)
        + "mm "
        + Mm.of(height)
        + "mm; margin: "
        + margin
        + "; }\n";
  }
}
