package leat.plan;

import java.io.File;

/** A text that values were typed in: a plan file, standard input, or one flag. */
public final class Source {
  private final String name;
  private final String text;
  private final boolean file;
  private final File folder;

  private Source(String name, String text, boolean file, File folder) {
    this.name = name;
    this.text = text;
    this.file = file;
    this.folder = folder;
  }

  /** A file or standard input, with its whole text. */
  public static Source file(String name, String text) {
    return new Source(name, text, true, null);
  }

  /** The same with the folder that paths in it start from. */
  public static Source file(String name, String text, File folder) {
    return new Source(name, text, true, folder);
  }

  /** A flag, such as {@code --bore}, with the value typed behind it. */
  public static Source flag(String name, String text) {
    return new Source(name, text, false, null);
  }

  /** File name, {@code -} for standard input, or the flag. */
  public String name() {
    return name;
  }

  /** The text itself. */
  public String text() {
    return text;
  }

  /** Whether places in it are lines and columns of a file. */
  public boolean isFile() {
    return file;
  }

  /** The folder that paths in it start from, or null for the one the command runs in. */
  File folder() {
    return folder;
  }

  /** Line {@code number}, counted from 1, without its end. */
  String line(int number) {
    int start = 0;
    for (int i = 1; i < number; i++) {
      int end = endOfLine(start);
      if (end >= text.length()) {
        return "";
      }
      boolean pair =
          text.charAt(end) == '\r' && end + 1 < text.length() && text.charAt(end + 1) == '\n';
      start = pair ? end + 2 : end + 1;
    }
    return text.substring(start, endOfLine(start));
  }

  /** Lines end where the YAML parser ends them. */
  private int endOfLine(int start) {
    int i = start;
    while (i < text.length() && !isLineEnd(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
  }
}
