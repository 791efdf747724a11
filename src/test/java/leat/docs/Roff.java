package leat.docs;

import java.util.ArrayList;
import java.util.List;

/** Writes a manual page in roff's man macros. */
final class Roff {
  private final StringBuilder out = new StringBuilder();

  Roff(String title, int section, String name, String summary) {
    out.append(".\\\" Made from the declarations of the program; change those.\n");
    out.append(".TH ").append(quoted(title)).append(' ').append(section);
    out.append(" \"\" \"leat\" \"leat manual\"\n");
    head("NAME");
    out.append(text(name)).append(" \\- ").append(text(summary)).append('\n');
  }

  /** Text with everything escaped that roff would take for its own. */
  static String text(String text) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '\\' -> out.append("\\e");
        case '-' -> out.append("\\-");
        case '\'' -> out.append("\\(aq");
        case '`' -> out.append("\\(ga");
        case '^' -> out.append("\\(ha");
        case '~' -> out.append("\\(ti");
        case '.' -> out.append(i == 0 || text.charAt(i - 1) == '\n' ? "\\&." : ".");
        default -> {
          if (c < 128) {
            out.append(c);
          } else {
            out.append(String.format("\\[u%04X]", (int) c));
          }
        }
      }
    }
    return out.toString();
  }

  private static String quoted(String text) {
    return '"' + text(text).replace("\"", "\\(dq") + '"';
  }

  static String bold(String text) {
    return "\\fB" + text(text) + "\\fR";
  }

  static String italic(String text) {
    return "\\fI" + text(text) + "\\fR";
  }

  Roff head(String head) {
    out.append(".SH ").append(quoted(head)).append('\n');
    return this;
  }

  Roff subhead(String head) {
    out.append(".SS ").append(quoted(head)).append('\n');
    return this;
  }

  /** A paragraph of plain text. */
  Roff paragraph(String plain) {
    return marked(text(plain));
  }

  /** A paragraph that is escaped already. */
  Roff marked(String roff) {
    out.append(".PP\n").append(roff).append('\n');
    return this;
  }

  /** A hanging entry: its tag and its text, both escaped already. */
  Roff entry(String tag, String roff) {
    out.append(".TP\n").append(tag).append('\n').append(roff).append('\n');
    return this;
  }

  /** Widest line that is shown as it is; with its margins it stays within 120 characters. */
  static final int WIDEST = 104;

  /** Lines shown as they are; longer ones are folded at a blank, or cut where there is none. */
  Roff verbatim(String plain) {
    out.append(".PP\n.RS 4\n.nf\n");
    for (String line : plain.split("\n", -1)) {
      for (String part : folded(line)) {
        out.append(part.isEmpty() ? "\\&" : text(part)).append('\n');
      }
    }
    out.append(".fi\n.RE\n");
    return this;
  }

  private static List<String> folded(String line) {
    List<String> parts = new ArrayList<>();
    boolean command = line.startsWith("$ ") || line.startsWith("Next: leat ");
    String rest = line;
    while (rest.length() > WIDEST) {
      int at = rest.lastIndexOf(' ', WIDEST - 2);
      int flag = rest.lastIndexOf(" --", WIDEST - 2);
      at = command && flag > WIDEST / 2 ? flag : at;
      while (command
          && at > 0
          && rest.substring(0, at).chars().filter(c -> c == '"').count() % 2 > 0) {
        at = rest.lastIndexOf(' ', at - 1);
      }
      if (at <= 6 || rest.substring(0, at).isBlank()) {
        parts.add(rest.substring(0, WIDEST - 4) + " ...");
        return parts;
      }
      parts.add(rest.substring(0, at).stripTrailing() + (command ? " \\" : ""));
      rest = "      " + rest.substring(at + 1);
    }
    parts.add(rest);
    return parts;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
