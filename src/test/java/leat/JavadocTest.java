package leat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A function of bare numbers says the unit of each, and its class where the formula comes from. */
class JavadocTest {
  private static final Pattern FUNCTION =
      Pattern.compile(
          "(/\\*\\*(?:(?!\\*/).)*\\*/)?\\s*\\n *public static (?:<[^>]*> )?([\\w.<>\\[\\]]+) (\\w+)\\(([^)]*)\\)",
          Pattern.DOTALL);
  private static final Pattern NUMBER = Pattern.compile("\\bdouble(?:\\[\\]|\\.\\.\\.)* (\\w+)");
  private static final Pattern OF_CLASS =
      Pattern.compile("(/\\*\\*(?:(?!\\*/).)*\\*/)\\s*\\npublic ", Pattern.DOTALL);

  @Test
  void functionsOfNumbersSayTheirUnits() throws IOException {
    List<String> missing = new ArrayList<>();
    int seen = 0;
    for (String trade : ArchitectureTest.trade()) {
      for (Path file : sources(trade)) {
        String source = Files.readString(file);
        Matcher function = FUNCTION.matcher(source);
        boolean any = false;
        while (function.find()) {
          String javadoc = function.group(1) == null ? "" : function.group(1);
          Matcher number = NUMBER.matcher(function.group(4));
          while (number.find()) {
            any = true;
            seen++;
            if (!Pattern.compile("@param " + number.group(1) + "\\s+[^@\\s*]")
                .matcher(javadoc)
                .find()) {
              missing.add(
                  file.getFileName() + " " + function.group(3) + ": @param " + number.group(1));
            }
          }
        }
        Matcher head = OF_CLASS.matcher(source);
        if (any && !(head.find() && head.group(1).contains("Source:"))) {
          missing.add(file.getFileName() + ": Source:");
        }
      }
    }
    assertThat(seen).isGreaterThan(50);
    assertThat(missing).isEmpty();
  }

  @Test
  void everyTradeHasItsChapterOfSources() throws IOException {
    String page = Files.readString(Path.of("man/leat-sources.7"));
    for (String trade : ArchitectureTest.trade()) {
      assertThat(page.contains(".SH \"" + trade.toUpperCase(java.util.Locale.ROOT) + "\""))
          .as("%s: a word in TRADES of leat.docs.Sources, then the pages anew", trade)
          .isTrue();
    }
  }

  private static List<Path> sources(String trade) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/leat", trade))) {
      return files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
    }
  }
}
