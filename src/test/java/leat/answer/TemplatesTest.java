package leat.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;

/** Sentences of the commands, as they stand in the source. */
class TemplatesTest {
  /** All of them in one file, to be read through as text. */
  private static final Path LISTING = Path.of("target/templates.txt");

  @Test
  void everyKeyIsAColumnOfItsGroup() {
    Set<String> keys = Templates.keys();
    List<String> unknown = new ArrayList<>();
    List<Templates.Found> all = Templates.all();
    for (Templates.Found found : all) {
      Matcher key = Templates.KEY.matcher(found.text().replace("{{", ""));
      while (key.find()) {
        if (!keys.contains(found.room() + ":" + key.group(1))) {
          unknown.add(found.place() + ": {" + key.group(1) + "} in " + found.text());
        }
      }
    }
    assertThat(unknown).isEmpty();
    assertThat(all).hasSizeGreaterThan(5);
  }

  @Test
  void areListedForReading() throws IOException {
    List<String> lines = new ArrayList<>();
    Path before = null;
    for (Templates.Found found : Templates.all()) {
      if (!found.file().equals(before)) {
        lines.add("");
        lines.add(Templates.SOURCES.relativize(found.file()).toString());
      }
      before = found.file();
      lines.add("  " + found.line() + "  " + found.text().replace("\n", "\\n"));
    }
    Files.createDirectories(LISTING.getParent());
    Files.write(LISTING, lines);
    assertThat(LISTING).isNotEmptyFile();
  }
}
