package leat.cli;

/** A word of a command line that is told, as a shell takes it. */
public final class ShellWord {
  private ShellWord() {}

  /** A word as a POSIX shell takes it: plain, in double quotes, or in single. */
  public static String quoted(String word) {
    boolean plain = !word.isEmpty();
    boolean easy = true;
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      plain &= Character.isLetterOrDigit(c) || "._-+/:,%=@".indexOf(c) >= 0;
      easy &= "\"\\$`!".indexOf(c) < 0;
    }
    if (plain) {
      return word;
    }
    return easy ? '"' + word + '"' : "'" + word.replace("'", "'\\''") + "'";
  }
}
