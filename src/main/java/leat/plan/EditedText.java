package leat.plan;

/**
 * A plan's text as it stands at one moment of an edit, with the spots of its values and its lines.
 */
final class EditedText {
  final String text;
  final YamlSpot root;

  EditedText(String text) {
    this.text = text;
    this.root = YamlSpot.of(text);
  }

  /** The text with a stretch of it replaced. */
  EditedText with(int from, int to, String word) {
    return new EditedText(text.substring(0, from) + word + text.substring(to));
  }

  /** What ends its lines. */
  String lineEnd() {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  String shown(YamlSpot spot) {
    String typed = text.substring(spot.contentStart(), spot.contentEnd(text));
    return typed.indexOf('\n') < 0 ? typed : "several lines";
  }

  /** A scalar's text without quotes. */
  String words(YamlSpot spot) {
    String typed = text.substring(spot.start, spot.end);
    boolean quoted = typed.length() > 1 && "\"'".indexOf(typed.charAt(0)) >= 0;
    return quoted ? typed.substring(1, typed.length() - 1) : typed;
  }

  boolean isFirstInLine(int offset) {
    return text.substring(lineStart(offset), offset).isBlank();
  }

  int lineAt(int offset) {
    int line = 1;
    for (int i = 0; i < offset && i < text.length(); i++) {
      line += text.charAt(i) == '\n' ? 1 : 0;
    }
    return line;
  }

  int lineStart(int offset) {
    return text.lastIndexOf('\n', offset - 1) + 1;
  }

  /** Offset of the end of a line, before its line feed. */
  int lineEndAt(int offset) {
    int end = text.indexOf('\n', offset);
    if (end < 0) {
      return text.length();
    }
    return end > 0 && text.charAt(end - 1) == '\r' ? end - 1 : end;
  }

  int endLength(int lineEnd) {
    return text.startsWith("\r\n", lineEnd) ? 2 : 1;
  }

  int endBefore(int lineStart) {
    return lineStart > 1 && text.charAt(lineStart - 2) == '\r' ? 2 : 1;
  }

  int column(int offset) {
    return offset - lineStart(offset);
  }
}
