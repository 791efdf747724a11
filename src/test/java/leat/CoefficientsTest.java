package leat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every coefficient of a trade (a number of three digits or more, or a constant of its own) says
 * where it comes from: in the remark above it, or in its class's {@code Source:} line. The weakest
 * word counts: what is partly from memory is from memory. Counts by kind are printed.
 */
class CoefficientsTest {
  /** Numbers that are so by definition: seconds of a day, millimetres of a metre, per cent. */
  private static final Set<String> EXACT =
      Set.of(
          "0",
          "1",
          "2",
          "10",
          "60",
          "100",
          "1000",
          "1e3",
          "1_000",
          "1_000_000",
          "1e6",
          "1e-3",
          "0.001",
          "360",
          "180",
          "365",
          "366",
          "3600",
          "3_600_000",
          "60_000",
          "60_000.0",
          "1440",
          "86_400",
          "86400",
          "86_400.0",
          "86_400_000",
          "86_400_000.0",
          "1000.0",
          "100.0");

  /** The kinds, the weakest first, with words that tell each. */
  private static final Map<String, Pattern> KINDS = new LinkedHashMap<>();

  static {
    KINDS.put("memory", Pattern.compile("from memory"));
    KINDS.put(
        "common practice",
        Pattern.compile(
            "common practice|our own|no source|usual|[Ss]ource: none|decision|common sense|choices"
                + "|defaults|is ours|are ours|own bounds"));
    KINDS.put(
        "published",
        Pattern.compile(
            "\\b1[6-9]\\d\\d\\b|\\b20[012]\\d\\b|FAO|ISO|\\bEN\\b|IEC|CRC|WMO|IUPAC|TP-410|RFC|handbook"
                + "|[Pp]ublic|published|printed|table|textbook|equations? \\d|maker"));
    KINDS.put(
        "computed",
        Pattern.compile(
            "[Aa]rithmetic|[Gg]eometry|[Dd]efinition|balance|[Dd]erivation|[Cc]alculus|inverse|law"
                + "|link|analysis|[Hh]ydrostatics|distribution|[Cc]ounting|momentum|sheets? |see there"));
  }

  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);
  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\w.])(\\d[\\d_]*\\.?\\d*(?:[eE]-?\\d+)?)[dDlL]?(?![\\w.])");
  private static final Pattern CONSTANT =
      Pattern.compile("static final (?:double|int|long) \\w+ =\\s*-?$");

  @Test
  void eachSaysItsSource() throws IOException {
    Map<String, Integer> counts = new LinkedHashMap<>();
    List<String> without = new ArrayList<>();
    for (String trade : ArchitectureTest.trade()) {
      for (Path file : sources(trade)) {
        String source = Files.readString(file).replaceAll("\"[^\"\n]*\"", "\"\"");
        String ofClass = ofClass(source);
        String code = blanked(source);
        for (Matcher number = NUMBER.matcher(code); number.find(); ) {
          if (!isCoefficient(code, number)) {
            continue;
          }
          String kind = kind(above(source, code, number.start()));
          kind = kind == null ? kind(ofClass) : kind;
          counts.merge(kind == null ? "without any" : kind, 1, Integer::sum);
          if (kind == null) {
            without.add(file + ": " + number.group(1));
          }
        }
      }
    }
    System.out.println("coefficients by source: " + counts);
    assertThat(counts.getOrDefault("published", 0)).isGreaterThan(200);
    assertThat(without)
        .as("coefficients without unit and source: a remark above, or in the class's Source:")
        .isEmpty();
  }

  private static boolean isCoefficient(String code, Matcher number) {
    String text = number.group(1);
    String digits = text.replaceAll("[eE].*", "").replaceAll("[._]", "").replaceFirst("^0+", "");
    boolean constant =
        CONSTANT.matcher(code.substring(Math.max(0, number.start() - 120), number.start())).find();
    return !EXACT.contains(text) && (digits.length() >= 3 || constant);
  }

  private static String kind(String words) {
    for (Map.Entry<String, Pattern> kind : KINDS.entrySet()) {
      if (kind.getValue().matcher(words).find()) {
        return kind.getKey();
      }
    }
    return null;
  }

  /** The source's remarks as blanks, so that places stay. */
  private static String blanked(String source) {
    return COMMENT.matcher(source).replaceAll(m -> m.group().replaceAll("[^\\n]", " "));
  }

  /** From "Source:" in a remark to its end; all of them in a file. */
  private static String ofClass(String source) {
    StringBuilder all = new StringBuilder();
    for (Matcher m = COMMENT.matcher(source); m.find(); ) {
      int at = m.group().indexOf("Source:");
      all.append(at < 0 ? "" : m.group().substring(at).replaceAll("\\n\\s*\\*", ""));
    }
    return all.toString();
  }

  /** Remarks between the end of the statement before and a place. */
  private static String above(String source, String code, int at) {
    int from = Math.max(code.lastIndexOf(';', at), code.lastIndexOf("{\n", at));
    StringBuilder all = new StringBuilder();
    for (Matcher m = COMMENT.matcher(source.substring(from + 1, at)); m.find(); ) {
      all.append(m.group().replaceAll("\\n\\s*\\*", ""));
    }
    return all.toString();
  }

  private static List<Path> sources(String trade) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/leat", trade))) {
      return files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
    }
  }
}
