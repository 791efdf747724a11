package leat.answer;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks text at its blanks so that no line is wider than a screen, unless one word is. A number
 * stays with its unit, and a command in backquotes stays whole.
 */
public final class Wrap {
  private Wrap() {}

  /**
   * The lines of a text without line feeds.
   *
   * @param text what to break
   * @param first room of the first line, in characters
   * @param rest room of the others
   */
  public static List<String> lines(String text, int first, int rest) {
    List<String> lines = new ArrayList<>();
    int room = first;
    int start = 0;
    while (text.length() - start > room) {
      int end = lastBreak(text, start, start + room);
      if (end < 0) {
        break;
      }
      lines.add(text.substring(start, end));
      start = end + 1;
      room = rest;
    }
    lines.add(text.substring(start));
    return lines;
  }

  /** A text with its line feeds, each line wrapped; further lines begin with {@code indent}. */
  public static String text(String text, int width, String indent) {
    if (width <= 0) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    String[] whole = text.split("\n", -1);
    for (int i = 0; i < whole.length; i++) {
      out.append(i == 0 ? "" : "\n");
      out.append(String.join("\n" + indent, lines(whole[i], width, width - indent.length())));
    }
    return out.toString();
  }

  /** The last blank up to {@code limit} where a line may end, else the first behind it, else -1. */
  private static int lastBreak(String text, int start, int limit) {
    int best = -1;
    boolean quoted = false;
    int command = command(text, start);
    for (int i = start; i < text.length(); i++) {
      char c = text.charAt(i);
      quoted ^= c == '`';
      if (i == command) {
        i = endOfCommand(text, i);
        c = i < text.length() ? text.charAt(i) : '.';
        command = command(text, i);
      }
      if (c == ' ' && i > start && !quoted && !isBehindNumber(text, i)) {
        if (i <= limit) {
          best = i;
        } else {
          return best < 0 ? i : best;
        }
      } else if (i > limit && best >= 0) {
        return best;
      }
    }
    return best;
  }

  /** The command line in a text, as one would type it; null for none. */
  public static String commandIn(String text) {
    int start = command(text, 0);
    return start < 0 ? null : text.substring(start, endOfCommand(text, start)).strip();
  }

  /** Where the next command line starts, or -1. */
  private static int command(String text, int from) {
    int at = text.indexOf("leat ", from);
    while (at > 0 && text.charAt(at - 1) != ' ') {
      at = text.indexOf("leat ", at + 1);
    }
    return at >= 0 && at + 5 < text.length() && Character.isLowerCase(text.charAt(at + 5))
        ? at
        : -1;
  }

  /** A command line goes on to a comma or semicolon before a blank, or to the end. */
  private static int endOfCommand(String text, int from) {
    for (int i = from; i < text.length(); i++) {
      if (text.startsWith(", ", i) || text.startsWith("; ", i) || text.startsWith("   ", i)) {
        return i;
      }
    }
    return text.length();
  }

  /** Whether the word before a blank is a number, whose unit then follows. */
  private static boolean isBehindNumber(String text, int blank) {
    int i = blank - 1;
    boolean digit = false;
    while (i >= 0 && text.charAt(i) != ' ' && "(\"\n".indexOf(text.charAt(i)) < 0) {
      char c = text.charAt(i);
      boolean isDigit = c >= '0' && c <= '9';
      if (!isDigit && ".,+-\u2212/".indexOf(c) < 0) {
        return false;
      }
      if (i == blank - 1 && !isDigit) {
        return false;
      }
      digit |= isDigit;
      i--;
    }
    return digit;
  }
}
