package leat.html;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Words without the folders of a machine: a page is sent to others, whom they do not concern. Of an
 * absolute path the last name remains; paths as typed are known, others are found by their shape.
 */
public final class BarePaths {
  private static final Pattern PATH =
      Pattern.compile("(?<![\\p{Alnum}_.~/)%-])~?/(?:[^\\s/\"'<>|;,]+/)+([^\\s/\"'<>|;,]*)");

  private final List<String> typed = new ArrayList<>();

  /** Knows the words of a command line. */
  public BarePaths(List<String> words) {
    for (String word : words) {
      int equals = word.indexOf('=');
      note(word);
      note(equals < 0 ? "" : word.substring(equals + 1));
    }
  }

  private void note(String word) {
    if (word.startsWith("/") && word.indexOf('/', 1) > 0) {
      typed.add(word);
    }
  }

  /** The words with the last names of paths only. */
  public String of(String words) {
    if (words.indexOf('/') < 0) {
      return words;
    }
    String bare = words;
    for (String path : typed) {
      bare = bare.replace(path, path.substring(path.lastIndexOf('/') + 1));
    }
    return PATH.matcher(bare).replaceAll("$1");
  }
}
