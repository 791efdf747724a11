package leat.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import leat.cli.Ran;
import org.junit.jupiter.api.Test;

/** {@code leat --version -v}. */
class VersionCommandTest {
  private static final Pattern YEAR = Pattern.compile("\\b(19|20)\\d\\d\\b(?!-\\d-)");
  private static final Pattern PROPER = Pattern.compile("[A-Z][A-Za-z]{2,}|\\d{4,}");

  @Test
  void namesWhatItStandsOn() {
    JsonNode json = Ran.run("--version", "-v", "--format", "json").json();
    assertThat(json.path("java").asText()).startsWith(Runtime.version().toString());
    assertThat(json.path("java_home").asText()).isEqualTo(System.getProperty("java.home"));
    assertThat(json.path("zone").asText()).isEqualTo(java.time.ZoneId.systemDefault().getId());
    assertThat(json.path("zone_rules").asText()).matches("20\\d\\d[a-z]+");
    assertThat(json.path("start_archives").asText()).isEqualTo("none");
    assertThat(json.path("tables").size()).isGreaterThan(20);
    String[] csv = Ran.run("-V", "-v", "--format", "csv").lines();
    assertThat(csv[0]).isEqualTo("name,value,source");
    assertThat(csv).hasSize(1 + 9 + json.path("tables").size() + 1);
    Ran text = Ran.run("--version", "-v");
    assertThat(text.exit()).isZero();
    assertThat(text.lines()[0]).startsWith("leat ");
    assertThat(text.out()).contains("time zone", "cache folder", "IUPAC 2021");
  }

  @Test
  void aloneItIsOneLine() {
    assertThat(Ran.run("--version").lines()).hasSize(2);
    assertThat(Ran.run("--version", "--help").out()).contains("--verbose");
    assertThat(Ran.run("--version", "--verbos").exit()).isEqualTo(2);
  }

  /**
   * Each table is there, its class names the same years and names, and the newest is the newest.
   */
  @Test
  void tablesSayWhatTheirClassesSay() throws IOException {
    for (String line : VersionCommand.text().lines().toList()) {
      String[] cells = line.split("\\|");
      assertThat(cells).as(line).hasSize(4);
      String source = Files.readString(Path.of("src/main/java/leat", cells[1] + ".java"));
      for (String word : found(PROPER, cells[3])) {
        assertThat(source).as(line).contains(word);
      }
      String newest = found(YEAR, cells[3]).stream().max(String::compareTo).orElse("-");
      assertThat(cells[2]).as(line).isEqualTo(newest);
    }
  }

  private static List<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(MatchResult::group).toList();
  }
}
